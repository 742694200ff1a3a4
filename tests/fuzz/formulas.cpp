// SPDX-License-Identifier: MIT
// Formulas, and the reactions that they make when there are several, apart by `+` and `->`.
#include <algorithm>
#include <cstdint>
#include <string_view>

#include "demand.hpp"
#include "scruple/chemistry/balance.hpp"
#include "scruple/chemistry/core.hpp"

using namespace scruple::chemistry;
using scruple::quantity::Exact;

namespace {

void demand_sound(const Formula& formula, std::string_view text) {
    const auto by_element = [](const auto& a, const auto& b) { return a.element < b.element; };
    fuzz::demand(std::ranges::is_sorted(formula.atoms, by_element), "atoms are sorted", text);
    fuzz::demand(std::ranges::all_of(formula.atoms, [](const auto& count) { return count.atoms > 0; }),
                 "no count is 0 or less", text);
    fuzz::demand(!formula.atoms.empty() && molar_mass(formula) > 0, "a formula weighs something", text);
    fuzz::demand(molar_mass(without_water(formula)) <= molar_mass(formula), "water weighs something", text);
    static_cast<void>(molar_mass_off(formula));
    static_cast<void>(cores_of(formula));
}

std::vector<Formula> read_side(std::string_view text) {
    std::vector<Formula> side;
    while (!text.empty()) {
        const std::string_view piece = text.substr(0, text.find(" + "));
        text.remove_prefix(std::min(text.size(), piece.size() + 3));
        const auto read = read_formula(piece);
        if (const auto* fault = std::get_if<FormulaFault>(&read))
            fuzz::demand(fault->at <= piece.size(), "a fault is in the text", piece);
        else
            side.push_back(std::get<Formula>(read));
        if (const auto* formula = std::get_if<Formula>(&read)) demand_sound(*formula, piece);
    }
    return side;
}

/// Right less left of each element is nothing, and so it is of charge.
bool comes_out_even(const Coefficients& numbers, const std::vector<Formula>& left, const std::vector<Formula>& right) {
    std::vector<Exact> surplus(256);
    Exact charge;
    for (std::size_t i = 0; i < numbers.size(); ++i) {
        const bool is_left = i < left.size();
        const Formula& formula = is_left ? left[i] : right[i - left.size()];
        const Exact number = is_left ? -numbers[i] : numbers[i];
        for (const Formula::Count& count : formula.atoms) surplus[count.element] += number * count.atoms;
        charge += number * Exact(formula.charge);
    }
    return charge.is_zero() && std::ranges::all_of(surplus, &Exact::is_zero);
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    const std::size_t arrow = std::min(text.find(" -> "), size);
    const auto left = read_side(text.substr(0, arrow));
    const auto right = read_side(text.substr(std::min(size, arrow + 4)));
    const Balances found = balances(left, right);
    for (const Coefficients& way : found.ways) {
        fuzz::demand(comes_out_even(way, left, right), "what balances a reaction comes out even", text);
        fuzz::demand(std::ranges::all_of(way, [](const Exact& n) { return n >= 0 && n.is_whole(); }),
                     "numbers are whole and not below 0", text);
    }
    for (const Coefficients* other : {&found.turned, &found.together})
        fuzz::demand(other->empty() || comes_out_even(*other, left, right), "so do the others", text);
    return 0;
}
