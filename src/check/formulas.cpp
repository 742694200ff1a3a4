// SPDX-License-Identifier: MIT
#include "formulas.hpp"

#include <algorithm>

namespace scruple::check {
namespace {

using diagnostics::Kind;

std::string_view why(chemistry::FormulaFault::What what) {
    using What = chemistry::FormulaFault::What;
    switch (what) {
        case What::empty:
            return "nothing stands there";
        case What::unknown_element:
            return "no element has this symbol";
        case What::unbalanced_bracket:
            return "a bracket has no partner";
        case What::unexpected:
            return "this does not belong in a formula";
        case What::charge_both_ways:
            return "its charge can be read two ways";
        case What::too_large:
            return "a number in it is too large";
    }
    return "";
}

/// `CO32-` → `CO3-2` and `CO32-1`: the last digit is the charge, or all digits count atoms.
std::pair<std::string, std::string> charge_readings(std::string_view formula) {
    const std::string sign(1, formula.back());
    const std::string body(formula.substr(0, formula.size() - 1));
    return {body.substr(0, body.size() - 1) + sign + body.back(), body + sign + "1"};
}

/// Water written with a nought for the letter: the usual slip of a hand or a scanner.
bool nought_for_letter(std::string_view formula) {
    return formula.ends_with("H20") && formula.size() > 3;
}

}  // namespace

std::optional<chemistry::Formula> read_formula(Reader& reader, text::Span span) {
    const auto written = reader.text(span);
    if (nought_for_letter(written)) {
        reader.report(Kind::formula_unreadable, span,
                      {written, "`H20` ends in a nought; water is `H2O`, with the letter O"});
        return std::nullopt;
    }
    auto read = chemistry::read_formula(written);
    if (auto* formula = std::get_if<chemistry::Formula>(&read)) return std::move(*formula);
    const auto& fault = std::get<chemistry::FormulaFault>(read);
    if (fault.what == chemistry::FormulaFault::What::charge_both_ways) {
        const auto [first, second] = charge_readings(written);
        reader.report(Kind::charge_both_ways, span, {written, "`" + first + "`", "`" + second + "`"});
    } else {
        std::string reason(why(fault.what));
        if (!fault.found.empty()) reason += " (`" + fault.found + "`)";
        reader.report(Kind::formula_unreadable, span, {written, reason});
    }
    return std::nullopt;
}

}  // namespace scruple::check
