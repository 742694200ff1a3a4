// SPDX-License-Identifier: MIT
// Whether the contents are what the author expects.
#include <algorithm>

#include "expected.hpp"
#include "passes.hpp"

namespace scruple::check {
namespace {

using diagnostics::Kind;

void judge_one(Reader& reader, const Expectation& expectation, const std::vector<Content>& contents) {
    const auto name = expected_name(reader.model, expectation);
    const auto content = content_of(reader.model, contents, expectation);
    if (!content) {
        reader.report(Kind::expectation_of_nothing, expectation.place.span, {name});
        return;
    }
    const auto value = in_unit(*content, expectation.unit);
    if (!value) {
        reader.report(
            Kind::wrong_kind_of_unit, expectation.place.span,
            {quantity::info(expectation.unit).shown, "a strength by weight or volume", "g/l, % w/v, mol/l or ppm"});
        return;
    }
    const double off = *value * content->give_or_take;
    const auto& [low, high] = expectation.range;
    const auto unit = " " + std::string(quantity::info(expectation.unit).shown);
    const auto wanted = range_text(expectation.range, expectation.unit);
    const auto is = quantity::significant_text(*value, 4) + unit;
    if (!lies_within(*value, expectation.range)) {
        reader.report(Kind::expectation_missed, expectation.place.span, {name, is, wanted});
        return;
    }
    const bool sure = *value - off >= low.to_double() && *value + off <= high.to_double();
    if (low != high && !sure)
        reader.report(Kind::content_in_doubt, expectation.place.span,
                      {name, is, quantity::significant_text(off, 2) + unit, wanted});
}

}  // namespace

void judge_expectations(Reader& reader, Id section, std::vector<ContentsTable>& tables) {
    const auto& solution = reader.model.sections[section];
    if (std::ranges::all_of(solution.expects, &Expectation::ph) || has_open_amount(solution)) return;
    for (std::size_t variant = 0; variant < variants_of(reader.model, solution); ++variant) {
        if (variant == tables.size()) tables.emplace_back(reader.model, variant);
        const auto& known = tables[variant].of(section);
        if (!known.whole) return;
        for (const auto& expectation : solution.expects) {
            if (!expectation.ph) judge_one(reader, expectation, known.contents);
        }
    }
}

}  // namespace scruple::check
