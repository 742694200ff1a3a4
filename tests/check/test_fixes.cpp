// SPDX-License-Identifier: MIT
// What diagnostics offer to write is put in its place, in every case file: the fault must then be gone from there.
#include <doctest/doctest.h>

#include <algorithm>
#include <set>

#include "scruple/diagnostics/fix.hpp"
#include "workspace.hpp"

using namespace scruple;
using diagnostics::Diagnostic;

namespace {

std::string with(const std::string& bytes, const diagnostics::Fix& fix) {
    return bytes.substr(0, fix.span.begin) + fix.text + bytes.substr(fix.span.end);
}

bool still_there(const std::vector<Diagnostic>& found, const Diagnostic& fault, const diagnostics::Fix& fix) {
    return std::ranges::any_of(found, [&](const Diagnostic& d) {
        return d.kind == fault.kind && d.span.begin >= fix.span.begin &&
               d.span.begin <= fix.span.begin + fix.text.size();
    });
}

std::vector<Diagnostic> faults_of(test::Workspace& workspace, const std::string& path, const std::string& bytes) {
    workspace.clear();
    workspace.add(path, bytes);
    workspace.check();
    return workspace.diagnostics();
}

}  // namespace

TEST_CASE("what a diagnostic offers to write mends it, where it is put") {
    test::Workspace workspace;
    std::set<diagnostics::Kind> mended;
    int edits = 0;
    for (const auto& path : test::recipe_files_in("tests/cases/check")) {
        const auto bytes = test::read_whole(path);
        const text::Source source{path, bytes};
        for (const Diagnostic& fault : faults_of(workspace, path, bytes))
            for (const auto& fix : diagnostics::fixes_of(fault, source)) {
                CAPTURE(path);
                CAPTURE(fault.message);
                CAPTURE(fix.text);
                CHECK(!still_there(faults_of(workspace, path, with(bytes, fix)), fault, fix));
                mended.insert(fault.kind);
                ++edits;
            }
    }
    CHECK(mended.size() == 23);
    CHECK(edits >= 150);
}
