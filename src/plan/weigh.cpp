// SPDX-License-Identifier: MIT
#include "scruple/plan/weigh.hpp"

#include <fmt/format.h>

#include "kinship.hpp"
#include "scruple/check/contents.hpp"
#include "words.hpp"

namespace scruple::plan {

namespace {

using check::Addition;
using check::Exact;
using check::Model;

std::string molar_mass_text(const Exact& value) {
    return quantity::decimal_text(value, 3);
}

Exact molar_mass(const Substance& what) {
    return chemistry::molar_mass(what.formula);
}

/// Words in parentheses after the name; where a chemical has but one form, that one.
std::string form_or_strength(const Model& model, const Addition& addition) {
    const std::string words = form_words(model, addition);
    return words.empty() ? std::string(model.chemicals[addition.chemical].forms[addition.form].name) : words;
}

/// All that goes into the sum.
struct Sum {
    const Model& model;
    Taken called, there;
    Kin kin;
    Exact grams;   ///< of the pure substance that is there
    Exact amount;  ///< of what is there, in its unit
};

std::string mass_line(const Sum& sum, const Substance& what) {
    const bool one_chemical = sum.called.what.chemical == sum.there.what.chemical;
    const auto& form = sum.model.chemicals[what.chemical].forms[what.form];
    return fmt::format("{}, {}: {}{}g/mol", one_chemical ? std::string(form.name) : what.name, what.formula_text,
                       molar_mass_text(molar_mass(what)), unit_blank);
}

bool is_pure(const Taken& taken) {
    return taken.unit == "g" && taken.amount == taken.grams;
}

void add_called(const Sum& sum, std::vector<std::string>& lines) {
    lines.push_back(mass_line(sum, sum.called.what));
    if (sum.called.what.formula_text != sum.there.what.formula_text) lines.push_back(mass_line(sum, sum.there.what));
    if (!is_pure(sum.called))
        lines.push_back(fmt::format("{} of {} hold {}", figure_of(sum.called, sum.called.amount).with_unit(),
                                    sum.called.name, plain_grams(sum.called.grams).with_unit()));
    if (!sum.kin.because.empty()) lines.push_back(sum.kin.because);
}

void add_factor(const Sum& sum, std::vector<std::string>& lines) {
    const Exact from = molar_mass(sum.called.what), to = molar_mass(sum.there.what);
    if (from == to && sum.kin.moles == Exact(1)) return;
    const Exact factor = sum.kin.moles * to / from;
    const std::string times = sum.kin.moles == Exact(1) ? "" : quantity::exact_text(sum.kin.moles) + " × ";
    lines.push_back(
        fmt::format("{}{} ÷ {} = {}", times, molar_mass_text(to), molar_mass_text(from), working_text(factor)));
    lines.push_back(fmt::format("{} × {} = {}", plain_grams(sum.called.grams).with_unit(), working_text(factor),
                                plain_grams(sum.grams).with_unit()));
}

void add_measure(const Sum& sum, const Weighing& weighing, std::vector<std::string>& lines) {
    const Exact a_unit = sum.there.grams / sum.there.amount;
    if (!is_pure(sum.there))
        lines.push_back(fmt::format("1{0}{1} of {2} holds {3}{0}g: {4} ÷ {3} = {5}", unit_blank, sum.there.unit,
                                    sum.there.name, working_text(a_unit), plain_grams(sum.grams).with_unit(),
                                    weighing.as.with_unit()));
    if (weighing.as_measured)
        lines.push_back(fmt::format("{} ÷ {}{}g/ml = {}", weighing.as.with_unit(),
                                    working_text(weighing.as.exact / weighing.as_measured->exact), unit_blank,
                                    weighing.as_measured->with_unit()));
}

std::string moles_line(const Sum& sum) {
    const std::string mol = quantity::significant_text(sum.called.mol, 4) + unit_blank + "mol";
    if (sum.kin.moles == Exact(1)) return "both are " + mol;
    return fmt::format("{}, for which {}{}mol of {}", mol,
                       quantity::significant_text(sum.called.mol * sum.kin.moles, 4), unit_blank, sum.there.what.name);
}

/// Molar masses of NaOH and KOH.
std::string alkali_line(const Sum& sum) {
    const bool sodium = sum.kin.alkali_of == "Na";
    const auto lye = std::get<chemistry::Formula>(chemistry::read_formula(sodium ? "NaOH" : "KOH"));
    const Exact mol = sum.called.mol * quantity::magnitude(sum.kin.alkali);
    const std::string how_much =
        fmt::format("{} of {} hydroxide ({}{}mol)", plain_grams(mol * chemistry::molar_mass(lye)).with_unit(),
                    sodium ? "sodium" : "potassium", quantity::significant_text(mol, 4), unit_blank);
    return sum.kin.alkali > 0
               ? fmt::format("it stands for the {} together with {}: leave that out, and the solution is the same",
                             sum.called.what.name, how_much)
               : fmt::format("with {} besides, the solution is the same", how_much);
}

/// In millilitres too, where the density of what is there is known and it is given in grams.
std::optional<Figure> measured(const Model& model, const Addition& there, const Exact& grams) {
    if (there.by != Addition::By::mass) return std::nullopt;
    const auto density = check::density_of(model.chemicals[there.chemical], there.form, there.strength);
    if (!density) return std::nullopt;
    return plain_ml(grams / *density);
}

Weighing weighed(const Sum& sum, const Addition& called, const Addition& there) {
    const auto& chemicals = sum.model.chemicals;
    Weighing weighing{std::string(chemicals[called.chemical].name),
                      form_or_strength(sum.model, called),
                      figure_of(sum.called, sum.called.amount),
                      std::string(chemicals[there.chemical].name),
                      form_or_strength(sum.model, there),
                      sum.kin.how,
                      figure_of(sum.there, sum.amount),
                      measured(sum.model, there, sum.amount),
                      sum.amount / sum.called.amount,
                      sum.called.mol.to_double(),
                      {}};
    add_called(sum, weighing.lines);
    add_factor(sum, weighing.lines);
    add_measure(sum, weighing, weighing.lines);
    weighing.lines.push_back(moles_line(sum));
    if (!sum.kin.alkali_of.empty()) weighing.lines.push_back(alkali_line(sum));
    return weighing;
}

}  // namespace

std::variant<Weighing, Refusal> weigh_as(const Model& model, const Addition& called, const Addition& there) {
    auto kin = kin_of(model, called.chemical, there.chemical);
    if (auto* refusal = std::get_if<Refusal>(&kin)) return std::move(*refusal);
    Sum sum{model, taken_of(model, called), taken_of(model, there), std::get<Kin>(std::move(kin)), {}, {}};
    sum.grams = sum.called.mol * sum.kin.moles * molar_mass(sum.there.what);
    sum.amount = sum.grams * sum.there.amount / sum.there.grams;
    return weighed(sum, called, there);
}

}  // namespace scruple::plan
