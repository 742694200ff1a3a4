// SPDX-License-Identifier: MIT
// The library that is built in, against what reading and checking it gives.
#include <doctest/doctest.h>

#include <stdexcept>

#include "scruple/check/packed.hpp"
#include "scruple/driver/library.hpp"
#include "scruple/syntax/parse.hpp"

namespace {

using namespace scruple;

constexpr const char* with_faults =
    "recipe Reed\n    is a   stop bath\n    water   800 ml\n    citric acid   15 g\n    sodium sulfide   2 g\n"
    "    acetic acid (80 % w/w)   30 ml\n    sodium metaborate (anhydrous)   8 g, by conversion\n    water to make   1 "
    "l\n";
constexpr const char* with_a_chemical =
    "chemical reed salt\n    form   dry   NaCl\n    source   invented for this test\n";

driver::Loaded loaded(std::initializer_list<const char*> texts) {
    std::vector<driver::RecipeFile> files;
    for (const char* text : texts)
        files.push_back({{"reed" + std::to_string(files.size()) + ".scruple", text}, std::nullopt});
    return driver::load(std::move(files));
}

std::vector<std::string> told(const driver::Loaded& all) {
    std::vector<std::string> messages;
    for (const auto& found : all.checked.diagnostics) messages.push_back(found.message);
    return messages;
}

}  // namespace

TEST_CASE("what was packed when the program was built is what checking the library gives") {
    const auto& sources = driver::library();
    std::vector<syntax::SharedTree> trees;
    for (const auto& source : sources) trees.push_back(syntax::parse(source));
    const auto checked = check::check({sources, trees, sources.size()}, 1);
    for (const auto& fault : checked.diagnostics) FAIL_CHECK(fault.message);
    const auto model = driver::library_model(sources);
    CHECK(model.chemicals.size() > 100);
    CHECK(model.chemicals.size() == checked.model.chemicals.size());
    const auto bytes = check::packed(checked.model, sources);
    CHECK(check::packed(model, sources) == bytes);
    CHECK(check::packed(check::unpacked(bytes, sources), sources) == bytes);
}

TEST_CASE("a workspace is told the same whether its library comes packed or is read with it") {
    const auto without = loaded({with_faults});
    const auto with = loaded({with_faults, with_a_chemical});
    CHECK(without.trees.front()->statements.empty());
    CHECK_FALSE(with.trees.front()->statements.empty());
    CHECK(told(without).size() > 2);
    CHECK(told(without) == told(with));
}

TEST_CASE("a library is packed that holds nothing but what libraries do") {
    const std::vector<text::Source> sources{{"reed.scruple", "supplier Kiln Lane\n    postage   5 EUR\n"}};
    const std::vector trees{syntax::SharedTree(syntax::parse(sources.front()))};
    const auto checked = check::check({sources, trees, 1}, 1);
    CHECK_THROWS_AS((void)check::packed(checked.model, sources), std::logic_error);
}
