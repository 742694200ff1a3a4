// SPDX-License-Identifier: MIT
// Names of the text to chemicals, forms, solutions and film formats.
#include <fmt/format.h>

#include <algorithm>

#include "listed.hpp"
#include "reader.hpp"

namespace scruple::check {
namespace {

using diagnostics::Kind;
using quantity::Unit;

std::vector<std::string> form_choices(const Chemical& chemical, std::string_view name) {
    std::vector<std::string> choices;
    for (const auto& form : chemical.forms) choices.push_back(std::string(name) + " (" + std::string(form.name) + ")");
    return choices;
}

Id find_form(Reader& reader, const Chemical& chemical, std::string_view written) {
    const auto& wanted = reader.normal(written);
    const auto is_called = [&](const Form& form) { return std::ranges::count(form.called, wanted) > 0; };
    const auto found = std::ranges::find_if(chemical.forms, is_called);
    return found == chemical.forms.end() ? none : static_cast<Id>(found - chemical.forms.begin());
}

std::string_view find_grade(Reader& reader, const Chemical& chemical, std::string_view written) {
    const std::string wanted = reader.normal(written);
    const auto found =
        std::ranges::find_if(chemical.grades, [&](std::string_view grade) { return reader.normal(grade) == wanted; });
    return found == chemical.grades.end() ? std::string_view{} : *found;
}

void report_unknown_form(Reader& reader, const Chemical& chemical, const syntax::Name& word) {
    std::vector<std::string> choices;
    if (chemical.forms.size() > 1) {
        for (const auto& form : chemical.forms) choices.emplace_back(form.name);
    }
    for (const auto grade : chemical.grades) choices.emplace_back(grade);
    const auto write = choices.empty() ? "the name alone: it has only one form" : listed(choices);
    reader.report(Kind::unknown_form, word.span, {reader.text(word), chemical.name, write});
}

bool read_form_words(Reader& reader, const Chemical& chemical, const syntax::FormGiven& given, Resolved& resolved) {
    bool fine = true;
    bool form_named = false;
    for (const auto& word : syntax::Tree::run(reader.tree.names, given.words)) {
        const auto written = reader.text(word);
        if (const Id form = find_form(reader, chemical, written); form != none) {
            if (form_named) {
                reader.report(Kind::said_twice, word.span, {"form"});
                fine = false;
            }
            form_named = true;
            resolved.form = form;
        } else if (const auto grade = find_grade(reader, chemical, written); !grade.empty()) {
            resolved.grade = grade;
        } else {
            report_unknown_form(reader, chemical, word);
            fine = false;
        }
    }
    return fine;
}

/// What a solution is made with must be known; water is said by saying nothing.
bool is_chemical(Reader& reader, text::Span solvent) {
    if (solvent.empty() || reader.model.chemical_names.contains(reader.normal(reader.text(solvent)))) return true;
    report_unknown(reader, {.span = solvent}, none, NameOf::chemical);
    return false;
}

bool read_form_given(Reader& reader, const Chemical& chemical, const syntax::FormGiven& given, Resolved& resolved) {
    bool fine = read_form_words(reader, chemical, given, resolved);
    if (given.strength != syntax::nowhere) {
        resolved.strength = read_strength(reader, reader.tree.quantities[given.strength]);
        fine = fine && resolved.strength.has_value();
    }
    if (given.saturated) {
        resolved.saturated = true;
        if (given.saturated_at != syntax::nowhere)
            resolved.saturated_at = read_celsius(reader, reader.tree.ranges[given.saturated_at]);
    }
    resolved.solvent = reader.text(given.solvent);
    return is_chemical(reader, given.solvent) && fine;
}

/// `acetic acid` may be the glacial acid or a dilute one from another bottle.
void report_strength_not_stated(Reader& reader, const Form& form, const syntax::Name& name) {
    const std::string written(reader.text(name));
    const auto bottle = shown_strength(*form.sold_as);
    reader.report(Kind::strength_not_stated, name.span,
                  {written, "`" + written + " (" + std::string(form.name) + ")`, which is " + bottle + ", or `" +
                                written + " (10 % w/w)` with the strength on the label"});
}

/// In moles the form makes no difference, so a molar solution need not name it.
bool form_is_immaterial(const Resolved& resolved) {
    return resolved.strength &&
           (resolved.strength->unit == Unit::mole_per_litre || resolved.strength->unit == Unit::millimole_per_litre);
}

bool settle_form(Reader& reader, const Chemical& chemical, const syntax::Substance& substance, FormNeed need,
                 Resolved& resolved) {
    if (resolved.form != none || chemical.forms.empty()) return true;
    const auto name = reader.text(substance.name);
    if (chemical.forms.size() == 1 || form_is_immaterial(resolved)) {
        resolved.form = 0;
        const bool said = resolved.strength || resolved.saturated || need != FormNeed::required;
        if (said || !chemical.forms.front().sold_as) return true;
        report_strength_not_stated(reader, chemical.forms.front(), substance.name);
        return false;
    }
    if (need == FormNeed::free) return true;
    reader.report(Kind::form_not_stated, substance.name.span, {name, listed(form_choices(chemical, name))});
    return false;
}

std::optional<Resolved> as_chemical(Reader& reader, const syntax::Substance& substance, std::pair<Id, Id> found,
                                    FormNeed need) {
    const auto& chemical = reader.model.chemicals[found.first];
    Resolved resolved{.chemical = found.first, .form = found.second};
    if (substance.form != syntax::nowhere &&
        !read_form_given(reader, chemical, reader.tree.forms[substance.form], resolved)) {
        return std::nullopt;
    }
    if (!settle_form(reader, chemical, substance, need, resolved)) return std::nullopt;
    return resolved;
}

bool is_solution(const Resolved& resolved) {
    return resolved.strength || resolved.saturated;
}

void report_solution(Reader& reader, const syntax::Substance& substance, const Resolved& resolved) {
    const auto& forms = reader.model.chemicals[resolved.chemical].forms;
    std::string itself(reader.text(substance.name));
    if (forms.size() > 1 && resolved.form < forms.size()) itself += fmt::format(" ({})", forms[resolved.form].name);
    const text::Span span{substance.name.span.begin, reader.tree.forms[substance.form].span.end};
    reader.report(Kind::solution_of_chemical, span, {reader.text(span), itself});
}

std::optional<Resolved> as_solution(Reader& reader, const syntax::Substance& substance, Id solution) {
    if (substance.form != syntax::nowhere) {
        reader.report(Kind::form_of_solution, reader.tree.forms[substance.form].span, {reader.text(substance.name)});
        return std::nullopt;
    }
    return Resolved{.solution = solution};
}

/// Films are called by numbers, and the number next to one is simply another film.
std::string nearest_format(Reader& reader, std::string_view written) {
    constexpr std::string_view otherwise = "a `format` block with its `area`, or the size: `8x10 in`";
    const auto of_only = [written](std::string_view bytes) { return written.find_first_not_of(bytes) == written.npos; };
    if (of_only("0123456789")) return std::string(otherwise);
    if (of_only("0123456789.x")) return fmt::format("its unit, too: `{0} in`, `{0} cm` or `{0} mm`", written);
    if (written == "35mm" || written == "35 mm") return "`135`, the film of 35 mm in its cartridge";
    return suggestion(reader, written, reader.model.formats, otherwise);
}

}  // namespace

bool begins_with_section_word(std::string_view normal) {
    constexpr std::string_view words[] = {"part ", "bath ", "working", "replenisher", "stock"};
    return std::ranges::any_of(words, [normal](std::string_view word) { return normal.starts_with(word); });
}

Id find_solution(const Model& model, Id recipe, const std::string& normal, std::string& key) {
    if (recipe != none && begins_with_section_word(normal)) {
        key = model.recipes[recipe].normal;
        key += ' ';
        key += normal;
        if (const auto local = model.section_names.find(key); local != model.section_names.end()) return local->second;
    }
    const auto found = model.section_names.find(normal);
    return found == model.section_names.end() ? none : found->second;
}

std::optional<Resolved> resolve(Reader& reader, const syntax::Substance& substance, Id recipe, FormNeed need) {
    const auto& normal = reader.normal(reader.text(substance.name));
    if (const auto chemical = reader.model.chemical_names.find(normal); chemical != reader.model.chemical_names.end()) {
        return as_chemical(reader, substance, chemical->second, need);
    }
    std::string key;
    if (const Id solution = find_solution(reader.model, recipe, normal, key); solution != none) {
        return as_solution(reader, substance, solution);
    }
    report_unknown(reader, substance.name, recipe);
    return std::nullopt;
}

std::optional<Resolved> resolve_chemical(Reader& reader, const syntax::Substance& substance, FormNeed need) {
    const auto found = reader.model.chemical_names.find(reader.normal(reader.text(substance.name)));
    if (found != reader.model.chemical_names.end()) {
        auto resolved = as_chemical(reader, substance, found->second, need);
        if (resolved && need != FormNeed::required && is_solution(*resolved)) {
            report_solution(reader, substance, *resolved);
            return std::nullopt;
        }
        return resolved;
    }
    report_unknown(reader, substance.name, none, NameOf::chemical);
    return std::nullopt;
}

Id resolve_solution(Reader& reader, const syntax::Name& name, Id recipe) {
    std::string key;
    const auto& normal = reader.normal(reader.text(name));
    const Id solution = find_solution(reader.model, recipe, normal, key);
    if (solution != none) return solution;
    report_unknown(reader, name, recipe, NameOf::solution);
    return none;
}

std::optional<ResolvedFormat> resolve_format(Reader& reader, const syntax::FilmFormat& format) {
    if (!format.width.loose() && !format.height.loose()) {
        const Exact inch_cm(127, 50);
        const Exact step = format.length_unit == 'i' ? inch_cm : format.length_unit == 'm' ? Exact(1, 10) : Exact(1);
        if (format.width.value() <= Exact(0) || format.height.value() <= Exact(0)) {
            reader.report(Kind::not_above_nothing, format.span, {reader.text(format.span)});
            return std::nullopt;
        }
        return ResolvedFormat{none, format.width.value() * step * (format.height.value() * step)};
    }
    const auto written = reader.text(format.span);
    const auto found = reader.model.format_names.find(reader.normal(written));
    if (found != reader.model.format_names.end())
        return ResolvedFormat{found->second, reader.model.formats[found->second].area_cm2};
    reader.report(Kind::unknown_film, format.span, {written, nearest_format(reader, written)});
    return std::nullopt;
}

}  // namespace scruple::check
