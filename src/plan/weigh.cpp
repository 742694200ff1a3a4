// SPDX-License-Identifier: MIT
#include "scruple/plan/weigh.hpp"

#include <fmt/format.h>

#include "scruple/check/contents.hpp"

namespace scruple::plan {

namespace {

using check::Chemical;
using check::Exact;
using check::Form;
using check::Id;

std::string molar_mass_text(const Exact& value) {
    return quantity::decimal_text(value, 3);
}

std::string mass_line(const Form& form) {
    return fmt::format("{}, {}: {}{}g/mol", form.name, form.formula_text, molar_mass_text(form.molar_mass), unit_blank);
}

std::string factor_line(const Form& from, const Form& to, const Exact& factor) {
    return fmt::format("{} ÷ {} = {}", molar_mass_text(to.molar_mass), molar_mass_text(from.molar_mass),
                       quantity::significant_text(factor, 5));
}

std::string sum_line(const Weighing& weighing) {
    return fmt::format("{} × {} = {}", weighing.grams.with_unit(), quantity::significant_text(weighing.factor, 5),
                       weighing.as.with_unit());
}

std::string moles_line(const Weighing& weighing) {
    return fmt::format("both are {}{}mol", quantity::significant_text(weighing.mol, 4), unit_blank);
}

std::string forms_text(const Chemical& chemical) {
    std::string text;
    for (const Form& form : chemical.forms) text += (text.empty() ? "`" : ", `") + std::string(form.name) + "`";
    return text;
}

}  // namespace

std::variant<Weighing, Refusal> weigh_as(const check::Model& model, Id chemical, Id from, const Exact& grams, Id to) {
    const Chemical& it = model.chemicals[chemical];
    if (from >= it.forms.size() || to >= it.forms.size())
        return Refusal{fmt::format("Which form of {} is meant is not said. Its forms: {}.", it.name, forms_text(it))};
    const Form& have = it.forms[from];
    const Form& want = it.forms[to];
    Weighing weighing{std::string(it.name),
                      std::string(have.name),
                      std::string(want.name),
                      plain_grams(grams),
                      plain_grams(check::as_form(have, want, grams)),
                      check::as_form(have, want, 1),
                      (grams / have.molar_mass).to_double(),
                      {}};
    weighing.lines = {mass_line(have), mass_line(want), factor_line(have, want, weighing.factor), sum_line(weighing),
                      moles_line(weighing)};
    return weighing;
}

}  // namespace scruple::plan
