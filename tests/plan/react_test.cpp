// SPDX-License-Identifier: MIT
// Reactions worked out exactly; the figures of worked examples are held to in tests/cli/test_react.py.
#include "scruple/plan/react.hpp"

#include "plan/shopping_workspace.hpp"

using namespace scruple;
using namespace scruple::test;
using check::Exact;

namespace {

const Workspace& desk() {
    static const Workspace workspace("");
    return workspace;
}

plan::Substance formula(const std::string& text) {
    return plan::substance_of(desk().model(), text, std::get<chemistry::Formula>(chemistry::read_formula(text)));
}

plan::Reacted worked_out(const plan::Reaction& reaction, const std::vector<plan::Taken>& taken) {
    auto made = plan::react(desk().model(), reaction, taken);
    const auto* refusal = std::get_if<plan::Refusal>(&made);
    REQUIRE_MESSAGE(refusal == nullptr, refusal->message);
    return std::get<plan::Reacted>(std::move(made));
}

}  // namespace

TEST_CASE("thirds of a mole are thirds: nothing is left where nothing should be") {
    // 3 NaOH to 1 H3PO4; a third of a mole has no end in decimals.
    const plan::Reaction reaction{{formula("NaOH"), formula("H3PO4")}, {formula("Na3PO4"), formula("H2O")}, {}};
    const auto reacted = worked_out(
        reaction, {plan::taken_of(formula("NaOH"), 1, true), plan::taken_of(formula("H3PO4"), Exact(1, 3), true)});
    CHECK(reacted.reaction == "3 NaOH + H3PO4 -> Na3PO4 + 3 H2O");
    CHECK(reacted.reagents[0].limits);
    CHECK(reacted.reagents[1].limits);
    CHECK(reacted.products[0].mol.exact == Exact(1, 3));
}

TEST_CASE("a formula is the chemical that alone has it, whatever it is called") {
    CHECK(formula("NaOH").chemical == desk().model().chemical_names.at("sodium hydroxide").first);
    CHECK(formula("H3PO4").chemical == check::none);
}

TEST_CASE("several amounts of one substance are added, and what is left is shared out as it was taken") {
    const plan::Reaction reaction{{formula("NaOH"), formula("HCl")}, {formula("NaCl"), formula("H2O")}, {}};
    const auto reacted =
        worked_out(reaction, {plan::taken_of(formula("NaOH"), 1, true), plan::taken_of(formula("NaOH"), 3, true),
                              plan::taken_of(formula("HCl"), 2, true)});
    const auto& lye = reacted.reagents[0];
    REQUIRE(lye.left_over.size() == 2);
    CHECK(shown(lye.left_over[0]) == "0.5 mol");
    CHECK(shown(lye.left_over[1]) == "1.5 mol");
    CHECK(shown(*lye.excess_percent) == "100 %");
}

TEST_CASE("with nothing taken a mole of the reaction is worked out") {
    const plan::Reaction reaction{{formula("NaOH"), formula("HCl")}, {formula("NaCl"), formula("H2O")}, {}};
    const auto reacted = worked_out(reaction, {});
    CHECK(shown(reacted.products[0].made) == "58.44 g");  // NaCl, molar_masses.csv: 58.440
    CHECK_FALSE(reacted.reagents[0].taken);
}
