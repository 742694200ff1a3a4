// SPDX-License-Identifier: MIT
#include "in_water.hpp"

#include <algorithm>

#include "formulas.hpp"
#include "scruple/check/balance.hpp"

namespace scruple::check {
namespace {

using diagnostics::Kind;

/// False where a number could not be read; that is reported.
bool read_optional(Reader& reader, syntax::Index number, std::optional<double>& into) {
    if (number == syntax::nowhere) return true;
    const auto value = read_number(reader, reader.tree.numbers[number]);
    if (value) into = value->to_double();
    return value.has_value();
}

std::optional<chemistry::Constant> read_constant(Reader& reader, const syntax::Equilibrium& line) {
    const auto pk = read_number(reader, reader.tree.numbers[line.pk]);
    if (!pk) return std::nullopt;
    chemistry::Constant constant{.pk = pk->to_double()};
    std::optional<double> give_or_take;
    if (!read_optional(reader, line.enthalpy, constant.enthalpy)) return std::nullopt;
    if (!read_optional(reader, line.heat_capacity, constant.heat_capacity)) return std::nullopt;
    if (!read_optional(reader, line.give_or_take, give_or_take)) return std::nullopt;
    constant.give_or_take = give_or_take.value_or(usual_give_or_take);
    return constant;
}

std::optional<Ion> read_ion(Reader& reader, text::Span span, int coefficient = 1) {
    auto formula = read_formula(reader, span);
    if (!formula) return std::nullopt;
    return Ion{coefficient, reader.text(span), std::move(*formula)};
}

bool read_side(Reader& reader, syntax::Slice slice, std::vector<Ion>& side) {
    side.reserve(slice.count);
    bool whole = true;
    for (const auto& written : syntax::Tree::run(reader.tree.ions, slice)) {
        auto ion = read_ion(reader, written.formula, written.coefficient);
        whole = whole && ion;
        if (ion) side.push_back(std::move(*ion));
    }
    return whole;
}

std::vector<chemistry::Term> terms(const std::vector<Ion>& side) {
    std::vector<chemistry::Term> all;
    all.reserve(side.size());
    for (const auto& ion : side) all.push_back({ion.coefficient, ion.formula});
    return all;
}

std::vector<Reactant> reactants(const std::vector<Ion>& side) {
    std::vector<Reactant> result;
    result.reserve(side.size());
    for (const Ion& ion : side) result.push_back({std::string(ion.text), ion.formula});
    return result;
}

}  // namespace

void read_equilibrium(Reader& reader, const syntax::Equilibrium& line, Chemical& chemical) {
    Equilibrium read{.source = reader.text(line.source), .place = reader.place(reader.statement_span())};
    const bool whole = read_side(reader, line.left, read.left) && read_side(reader, line.right, read.right);
    const auto constant = read_constant(reader, line);
    if (!whole || !constant) return;
    read.constant = *constant;
    const auto off = chemistry::imbalance(terms(read.left), terms(read.right));
    if (!off.balanced()) {
        reader.report(Kind::does_not_balance, reader.statement_span(),
                      {imbalance_words(off), balance_offer({reactants(read.left), reactants(read.right)})});
        return;
    }
    chemical.equilibria.push_back(std::move(read));
}

void read_escape(Reader& reader, const syntax::Equilibrium& line, Chemical& chemical) {
    auto molecule = read_ion(reader, line.formula);
    const auto constant = read_constant(reader, line);
    std::optional<double> in_air;
    if (!molecule || !constant || !read_optional(reader, line.in_air, in_air)) return;
    chemical.escapes.push_back({std::move(*molecule), *constant, in_air.value_or(0), reader.text(line.source)});
}

void read_pair(Reader& reader, const syntax::Interaction& line, Chemical& chemical) {
    auto one = read_ion(reader, line.one);
    auto other = read_ion(reader, line.other);
    const auto value = read_number(reader, line.value);
    std::optional<double> give_or_take;
    if (!one || !other || !value || !read_optional(reader, line.give_or_take, give_or_take)) return;
    if (one->formula.charge * other->formula.charge >= 0) {
        reader.report(Kind::no_ion_pair, reader.statement_span(), {one->text, other->text});
        return;
    }
    chemical.pairs.push_back(
        {std::move(*one), std::move(*other), value->to_double(), give_or_take, reader.text(line.source)});
}

void read_bystanders(Reader& reader, const syntax::Bystanders& line, Chemical& chemical) {
    for (const auto& written : syntax::Tree::run(reader.tree.names, line.formulas)) {
        auto ion = read_ion(reader, written.span);
        if (ion) chemical.bystanders.push_back({std::move(*ion), reader.text(line.source)});
    }
}

}  // namespace scruple::check
