// SPDX-License-Identifier: MIT
// `expect` lines.
#include <algorithm>

#include "expected.hpp"
#include "reader.hpp"
#include "scruple/check/sayings.hpp"

namespace scruple::check {
namespace {

using diagnostics::Kind;
using quantity::Dimension;

std::optional<Expectation> read_ph(Reader& reader, const syntax::Expect& line) {
    const auto bounds = syntax::Tree::run(reader.tree.numbers, line.ph_bounds);
    const auto low = read_number(reader, bounds.front());
    const auto high = bounds.size() == 1 ? low : read_number(reader, bounds.back());
    if (!low || !high) return std::nullopt;
    if (*high < *low) {
        const text::Span span{bounds.front().span.begin, bounds.back().span.end};
        reader.report(Kind::range_backwards, span, {reader.text(span)});
        return std::nullopt;
    }
    return Expectation{.ph = true, .range = {*low, *high}};
}

/// `ph`, `PH:`, `pH =`
bool is_ph_miswritten(std::string_view name) {
    std::string letters(name.substr(0, name.find_first_of(":= ")));
    std::ranges::transform(letters, letters.begin(), [](char c) { return c >= 'A' && c <= 'Z' ? char(c + 32) : c; });
    return letters == "ph" && name.find_first_not_of(":= ", 2) == std::string_view::npos;
}

/// `Na+`, `SO3-2`, where nothing is called so.
std::optional<Ion> read_ion(Reader& reader, const syntax::Substance& of) {
    const auto text = reader.text(of.name);
    if (of.form != syntax::nowhere || reader.model.chemical_names.contains(reader.normal(text))) return std::nullopt;
    const auto read = chemistry::read_formula(text);
    const auto* formula = std::get_if<chemistry::Formula>(&read);
    if (formula == nullptr || formula->charge == 0) return std::nullopt;
    return Ion{1, text, *formula};
}

bool read_what(Reader& reader, const syntax::Substance& of, Expectation& expectation) {
    if (auto ion = read_ion(reader, of)) {
        expectation.ion = *std::move(ion);
        return true;
    }
    const auto chemical = resolve_chemical(reader, of, FormNeed::pure);
    if (!chemical) return false;
    expectation.chemical = chemical->chemical;
    expectation.form = chemical->form;
    return true;
}

std::optional<Expectation> read_content(Reader& reader, const syntax::Expect& line) {
    if (is_ph_miswritten(reader.text(line.of.name))) {
        reader.report(Kind::unread_fact, reader.statement_span(), {"expect", how_to_say("expect")});
        return std::nullopt;
    }
    Expectation expectation;
    const auto& range = reader.tree.ranges[line.range];
    const bool known = read_what(reader, line.of, expectation);
    const auto interval = read_interval(reader, range, Dimension::strength);
    if (!known || !interval) return std::nullopt;
    expectation.range = *interval;
    expectation.unit = range.high.unit;
    return expectation;
}

}  // namespace

std::optional<Expectation> read_expectation(Reader& reader, const syntax::Expect& line) {
    auto expectation = line.ph ? read_ph(reader, line) : read_content(reader, line);
    if (expectation) expectation->place = reader.place(reader.statement_span());
    return expectation;
}

}  // namespace scruple::check
