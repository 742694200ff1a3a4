// SPDX-License-Identifier: MIT
#include "why_lines.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "scruple/check/contents.hpp"
#include "scruple/chemistry/weights.hpp"
#include "words.hpp"

namespace scruple::plan {

namespace {

using check::Addition;
using check::Chemical;
using check::Conversion;
using check::Exact;
using check::Form;
using check::Id;
using By = Addition::By;
using Side = check::Conversion::Side;

constexpr const char* arithmetic = "arithmetic";
constexpr const char* weights = "abridged standard atomic weights 2021, IUPAC CIAAW";

std::string with_unit(const Exact& value, std::string_view unit) {
    return fmt::format("{}{}{}", working_text(value), unit_blank, unit);
}

std::string molar_mass_text(const Form& form) {
    return quantity::decimal_text(form.molar_mass, 3) + unit_blank + "g/mol";
}

const Side& side_of(const std::vector<Side>& sides, Id chemical) {
    return *std::ranges::find(sides, chemical, &Side::chemical);
}

/// `6 × 12.011 + 8 × 1.008`
std::string sum_of_atoms(const chemistry::Formula& formula) {
    std::string sum;
    for (const auto& [element, atoms] : formula.atoms)
        sum += fmt::format("{}{} × {}", sum.empty() ? "" : " + ", quantity::exact_text(atoms),
                           quantity::decimal_text(chemistry::atomic_weight(element), 3));
    return sum;
}

std::string source_of(const Conversion& conversion, const check::Model& model) {
    return fmt::format("conversion of {}, {}",
                       check::shown_name(model.chemicals[conversion.product], conversion.product_form),
                       conversion.built_in ? "the library" : "your own");
}

/// `pH 9.8`, `sodium sulfite 48 to 52 g/l`
std::string expectation_words(const check::Model& model, const check::Expectation& expected) {
    std::string range = quantity::exact_text(expected.range.low);
    if (expected.range.high != expected.range.low) range += " to " + quantity::exact_text(expected.range.high);
    if (expected.ph) return "pH " + range;
    const std::string what = expected.ion ? std::string(expected.ion->text)
                                          : check::shown_name(model.chemicals[expected.chemical], expected.form);
    return fmt::format("{} {}{}{}", what, range, unit_blank, quantity::info(expected.unit).shown);
}

}  // namespace

std::string unit_of(const Addition& addition) {
    switch (addition.by) {
        case By::mass:
            return "g";
        case By::volume:
            return "ml";
        case By::amount:
            return "mol";
        case By::drops:
            return "drops";
    }
    return {};
}

void WhyLines::written(const Addition& addition, const std::string& what, const Exact& amount, const Exact& makes_ml) {
    lines_.push_back(
        {fmt::format("{}: {} for {}", what,
                     addition.written.empty() ? with_unit(amount, unit_of(addition)) : std::string(addition.written),
                     with_unit(makes_ml, "ml")),
         "", "", addition.place});
    const std::string base = with_unit(amount, unit_of(addition));
    if (!as_written(addition).empty())
        say(fmt::format("{} is {}", addition.written, base), "", "definition of the unit, docs/units.md");
}

void WhyLines::found_from(const Addition& addition, const check::Section& section, const Exact& amount) {
    for (const check::Expectation& expected : section.expects)
        lines_.push_back({fmt::format("expected: {}", expectation_words(model_, expected)), "", "", expected.place});
    say("? is found by trying amounts until what is expected comes of them", with_unit(amount, unit_of(addition)),
        "six digits of it are kept");
    const auto of_it = [&](const check::Expectation& expected) {
        return !expected.ion && expected.chemical == addition.chemical;
    };
    if (std::ranges::any_of(section.expects, of_it)) by_the_litre(addition, amount, section.makes_ml);
}

void WhyLines::parted(const Addition& addition, const std::string& what, const Exact& parts, const Exact& ml) {
    lines_.push_back({fmt::format("{}: {} of {} parts, for {}", what, working_text(*addition.parts),
                                  working_text(parts), with_unit(ml, "ml")),
                      "", "", addition.place});
    say(fmt::format("{} ÷ {} × {}", with_unit(ml, "ml"), working_text(parts), working_text(*addition.parts)),
        with_unit(ml / parts * *addition.parts, "ml"), arithmetic);
}

Exact WhyLines::by_the_litre(const Addition& addition, const Exact& measure, const Exact& ml) {
    const Exact grams = addition.by == By::amount ? grams_by_mole(addition, measure) : grams_held(addition, measure);
    const Exact litres = ml / 1000;
    say(fmt::format("{} ÷ {}", with_unit(grams, "g"), with_unit(litres, "l")), with_unit(grams / litres, "g/l"),
        arithmetic);
    return grams / litres;
}

/// Of a line in moles.
Exact WhyLines::grams_by_mole(const Addition& addition, const Exact& mol) {
    const Chemical& chemical = model_.chemicals[addition.chemical];
    return grams_of(mol, chemical, addition.form);
}

void WhyLines::less(const Exact& written, const Exact& taken, const std::string& unit) {
    say(fmt::format("{} less the {} that a conversion takes of it", with_unit(written, unit), with_unit(taken, unit)),
        with_unit(written - taken, unit), "arithmetic; the conversion's own lines");
}

void WhyLines::measured(const Addition& reagent, const Exact& measure, const std::string& what) {
    if (reagent.by == By::mass && !reagent.strength) return;
    const Exact grams = check::dose_of(model_, reagent, measure).grams;
    say(fmt::format("{} are in {} of {}", with_unit(grams, "g"), with_unit(measure, unit_of(reagent)), what), "",
        "its strength or density, `scruple chemical`");
}

void WhyLines::scaled(const Exact& amount, const std::string& unit, const Exact& scale, const Exact& makes_ml) {
    if (scale == Exact(1)) return;
    say(fmt::format("{} ÷ {}", with_unit(makes_ml * scale, "ml"), with_unit(makes_ml, "ml")), working_text(scale),
        arithmetic);
    say(fmt::format("{} × {}", with_unit(amount, unit), working_text(scale)), with_unit(amount * scale, unit),
        arithmetic);
}

void WhyLines::molar_mass(const Chemical& chemical, Id form) {
    const Form& of = chemical.forms[form];
    say(fmt::format("{}, {}: {}", check::shown_name(chemical, form), of.formula_text, sum_of_atoms(of.formula)),
        molar_mass_text(of), weights);
}

Exact WhyLines::grams_held(const Addition& addition, const Exact& measure) {
    Exact grams = check::dose_of(model_, addition, measure).grams;
    if (addition.by != By::mass || addition.strength)
        say(fmt::format("{} of {} hold {}", with_unit(measure, unit_of(addition)), substance_words(model_, addition),
                        with_unit(grams, "g")),
            "", "its strength or density, `scruple chemical`");
    return grams;
}

/// Of the form that is asked for: mole for mole whatever form the reaction is written with.
Exact WhyLines::moles_of(const Addition& product, const Exact& measure, Id form) {
    const Chemical& chemical = model_.chemicals[product.chemical];
    const Form& of = chemical.forms[product.form < chemical.forms.size() ? product.form : form];
    const Exact grams = grams_held(product, measure);
    molar_mass(chemical, static_cast<Id>(&of - chemical.forms.data()));
    Exact mol = grams / of.molar_mass;
    say(fmt::format("{} ÷ {}", with_unit(grams, "g"), molar_mass_text(of)), with_unit(mol, "mol"), arithmetic);
    return mol;
}

Exact WhyLines::grams_of(const Exact& mol, const Chemical& chemical, Id form) {
    molar_mass(chemical, form);
    Exact grams = mol * chemical.forms[form].molar_mass;
    say(fmt::format("{} × {}", with_unit(mol, "mol"), molar_mass_text(chemical.forms[form])), with_unit(grams, "g"),
        arithmetic);
    return grams;
}

/// Grams of what the jar holds, for so many of the substance.
Exact WhyLines::as_sold(const Exact& grams, const Form& form) {
    const Exact pure = check::purity(form);
    if (pure == Exact(1)) return grams;
    say(fmt::format("{} ÷ {}", with_unit(grams, "g"), working_text(pure)), with_unit(grams / pure, "g"),
        "how pure it is sold, `scruple chemical`");
    return grams / pure;
}

Exact WhyLines::with_excess(const Conversion& conversion, const Addition& reagent, const Exact& grams) {
    if (conversion.excess_of != reagent.chemical || conversion.excess_percent.is_zero()) return grams;
    const Exact times = Exact(1) + conversion.excess_percent / 100;
    say(fmt::format("{} × {}", with_unit(grams, "g"), working_text(times)), with_unit(grams * times, "g"),
        fmt::format("{}{}% more than it needs: {}", quantity::exact_text(conversion.excess_percent), unit_blank,
                    source_of(conversion, model_)));
    return grams * times;
}

void WhyLines::reacted(const Conversion& conversion, const Addition& product, const Exact& measure,
                       const Addition& reagent) {
    const Side& right = side_of(conversion.right, product.chemical);
    const Side& left = side_of(conversion.left, reagent.chemical);
    const Exact mol = moles_of(product, measure, right.form);
    const Exact reagent_mol = mol / right.coefficient * left.coefficient;
    say(fmt::format("{} ÷ {} × {}", with_unit(mol, "mol"), right.coefficient, left.coefficient),
        with_unit(reagent_mol, "mol"), "the numbers of the reaction: " + source_of(conversion, model_));
    const Chemical& chemical = model_.chemicals[reagent.chemical];
    const Id form = reagent.form < chemical.forms.size() ? reagent.form : left.form;
    with_excess(conversion, reagent, as_sold(grams_of(reagent_mol, chemical, form), chemical.forms[left.form]));
}

void WhyLines::taken_for(const Addition& written, const Exact& amount, const Addition& taken) {
    const Chemical& chemical = model_.chemicals[taken.chemical];
    const Id form = taken.form < chemical.forms.size() ? taken.form : 0;
    Exact grams = taken.form == written.form ? grams_held(written, amount)
                                             : grams_of(moles_of(written, amount, 0), chemical, form);
    if (!taken.strength) grams = as_sold(grams, chemical.forms[form]);
    const Exact grams_a_unit = check::dose_of(model_, taken, 1).grams;
    measured(taken, grams / grams_a_unit, substance_words(model_, taken));
}

void WhyLines::rounded(const Addition& addition, const Exact& measure, const Exact& grams, const Reading& reading) {
    const bool by_mole = addition.by == By::amount;
    const std::string unit = by_mole ? "g" : unit_of(addition);
    if (by_mole) grams_by_mole(addition, measure);
    if (reading.instrument == nullptr) return;
    say(fmt::format("{} to the nearest {}", with_unit(by_mole ? grams : measure, unit),
                    with_unit(reading.instrument->division, unit)),
        reading.figure.with_unit(), reading.figure.instrument);
}

}  // namespace scruple::plan
