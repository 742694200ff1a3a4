// SPDX-License-Identifier: MIT
// Run when the program is built: checks the library, and writes its model as a C++ source. A library with a fault is
// told like any other recipe file, and not built in.
#include <cstdio>
#include <fstream>

#include "scruple/check/check.hpp"
#include "scruple/check/packed.hpp"
#include "scruple/diagnostics/show.hpp"
#include "scruple/driver/driver.hpp"
#include "scruple/syntax/parse.hpp"

namespace {

using namespace scruple;

constexpr std::size_t bytes_a_line = 30;

/// Three octal digits a byte: no further digit can be taken for a part of one.
std::string as_literal(std::string_view bytes) {
    std::string text;
    for (std::size_t i = 0; i < bytes.size(); ++i) {
        if (i % bytes_a_line == 0) text += "\"\n    \"";
        const auto byte = static_cast<unsigned char>(bytes[i]);
        text += '\\';
        for (const int shift : {6, 3, 0}) text += static_cast<char>('0' + ((byte >> shift) & 7));
    }
    return text;
}

std::string as_source(std::string_view bytes) {
    return "// Made from src/library by pack.cpp.\n#include <string_view>\n\nnamespace scruple::driver {\n\n"
           "std::string_view packed_library() {\n    return {\"" +
           as_literal(bytes) + "\",\n    " + std::to_string(bytes.size()) +
           "};\n}\n\n}  // namespace scruple::driver\n";
}

}  // namespace

int main(int, char** words) {
    const auto& sources = driver::library();
    std::vector<syntax::SharedTree> trees;
    trees.reserve(sources.size());
    for (const auto& source : sources) trees.emplace_back(syntax::parse(source));
    const auto checked = check::check({sources, trees, sources.size()}, 1);
    if (!checked.diagnostics.empty()) {
        std::fputs(diagnostics::as_text(checked.diagnostics, sources, {}).c_str(), stderr);
        return 1;
    }
    std::ofstream file(words[1], std::ios::binary);
    file << as_source(check::packed(checked.model, sources)) << std::flush;
    return file ? 0 : 1;
}
