// SPDX-License-Identifier: MIT
// Names that mean nothing here: what may have been meant instead.
#include "listed.hpp"
#include "nearly_named.hpp"
#include "reader.hpp"
#include "scruple/check/sayings.hpp"

namespace scruple::check {
namespace {

using diagnostics::Kind;

// As much as a message shows: words around a name are few.
constexpr std::size_t longest_looked_into = 240;

std::string nearest_substance(Reader& reader, std::string_view written, NameOf wanted) {
    if (reader.suggestions_left == 0) return {};
    --reader.suggestions_left;
    std::vector<std::string> solutions;
    for (Id id = 0; wanted != NameOf::chemical && id < reader.model.sections.size(); ++id)
        solutions.push_back(shown_name(reader.model, id));
    std::vector<std::string_view> known(solutions.begin(), solutions.end());
    if (wanted != NameOf::solution) {
        for (const auto& chemical : reader.model.chemicals) {
            known.push_back(chemical.name);
            for (const auto& [name, form] : chemical.also) known.push_back(name);
        }
    }
    return diagnostics::nearest(written, known);
}

/// The recipe text that was meant where words stand around a known name: `add metol`, `water up to`; or empty.
std::string known_inside(Reader& reader, std::string_view written, Id here) {
    std::string key;
    const auto known = [&](std::string_view name) {
        const auto& normal = reader.normal(name);
        return reader.model.chemical_names.contains(normal) || find_solution(reader.model, here, normal, key) != none;
    };
    for (auto blank = written.find(' '); blank != std::string_view::npos; blank = written.find(' ', blank + 1)) {
        if (const auto rest = written.substr(blank + 1); known(rest)) return "`" + std::string(rest) + "`";
    }
    constexpr std::string_view to_make[] = {" to", " up to",   " ad",         " q.s.",
                                            " qs", " to fill", " to make up", " to make up to"};
    for (const auto tail : to_make) {
        if (!written.ends_with(tail)) continue;
        const auto name = written.substr(0, written.size() - tail.size());
        if (known(name)) return "`" + std::string(name) + " to make` and the final volume";
    }
    return {};
}

/// The name means something, and not what belongs here.
bool report_other_kind(Reader& reader, const syntax::Name& name, Id here, NameOf wanted) {
    std::string key;
    const auto written = reader.text(name);
    const auto& normal = reader.normal(written);
    if (wanted == NameOf::solution && reader.model.chemical_names.contains(normal)) {
        reader.report(Kind::name_of_another_kind, name.span, {written, "a chemical", "a solution"});
        return true;
    }
    if (wanted == NameOf::chemical && find_solution(reader.model, here, normal, key) != none) {
        reader.report(Kind::name_of_another_kind, name.span, {written, "a solution", "a chemical"});
        return true;
    }
    return false;
}

/// The recipe that a name means, where the trouble is only that it has several solutions: `Lantern`, or
/// `Lantern working` with two workings.
const Recipe* recipe_of(Reader& reader, const syntax::Name& name, Id here) {
    auto normal = reader.normal(reader.text(name));
    if (normal == "working" && here != none) return &reader.model.recipes[here];
    constexpr std::string_view tail = " working";
    if (normal.ends_with(tail)) normal.resize(normal.size() - tail.size());
    const auto found = reader.model.recipe_names.find(normal);
    return found == reader.model.recipe_names.end() ? nullptr : &reader.model.recipes[found->second];
}

bool report_which_section(Reader& reader, const syntax::Name& name, Id here) {
    const auto* recipe = recipe_of(reader, name, here);
    if (recipe == nullptr || recipe->sections.size() < 2) return false;
    std::vector<std::string> choices;
    for (const Id id : recipe->sections) choices.push_back(shown_name(reader.model, id));
    reader.report(Kind::which_section, name.span, {reader.text(name), listed(choices)});
    return true;
}

/// The recipe whose solution is asked for: of `part C` the one that it stands in, of `Lantern part C` that of the name
/// before.
const Recipe* recipe_with_section(Reader& reader, std::string_view normal, Id here) {
    const auto& model = reader.model;
    if (begins_with_section_word(normal)) return here == none ? nullptr : &model.recipes[here];
    if (normal.size() > longest_looked_into) return nullptr;
    for (auto blank = normal.rfind(' '); blank != std::string_view::npos && blank > 0;
         blank = normal.rfind(' ', blank - 1)) {
        if (!begins_with_section_word(normal.substr(blank + 1))) continue;
        const auto found = model.recipe_names.find(std::string(normal.substr(0, blank)));
        if (found != model.recipe_names.end()) return &model.recipes[found->second];
    }
    return nullptr;
}

/// `stock`, `part C` or `Lantern part C` where the recipe has other parts, or none: which it has.
bool report_no_such_section(Reader& reader, const syntax::Name& name, Id here) {
    const auto* recipe = recipe_with_section(reader, reader.normal(reader.text(name)), here);
    if (recipe == nullptr) return false;
    const bool is_own = here != none && recipe == &reader.model.recipes[here];
    std::vector<std::string> choices;
    for (const Id id : recipe->sections) {
        const auto& section = reader.model.sections[id];
        const bool is_part = section.kind == SectionKind::part || section.kind == SectionKind::bath;
        if (!is_own || is_part) choices.push_back(is_own ? section_words(section) : shown_name(reader.model, id));
    }
    if (choices.empty()) return false;
    reader.report(Kind::unknown_name, name.span, {reader.text(name), listed(choices)});
    return true;
}

}  // namespace

std::string listed(const std::vector<std::string>& names) {
    std::string text;
    for (std::size_t i = 0; i < names.size(); ++i) {
        if (i > 0) text += i + 1 == names.size() ? " or " : ", ";
        text += quoted(names[i]);
    }
    return text;
}

void report_unknown(Reader& reader, const syntax::Name& name, Id recipe, NameOf wanted) {
    if (report_other_kind(reader, name, recipe, wanted)) return;
    if (wanted != NameOf::chemical && report_which_section(reader, name, recipe)) return;
    const auto written = reader.text(name);
    const auto saying = name.quoted ? Saying{} : saying_at(written);
    if (!saying.keyword.empty()) {
        reader.report(Kind::unread_fact, reader.statement_span(), {saying.keyword, saying.how});
        return;
    }
    if (report_no_such_section(reader, name, recipe)) return;
    std::string inside;
    if (written.size() <= longest_looked_into) {
        inside = known_inside(reader, written, recipe);
        if (inside.empty() && wanted != NameOf::solution) inside = nearly_named(reader, written);
    }
    if (!inside.empty()) {
        reader.report(Kind::unknown_name, name.span, {written, inside});
        return;
    }
    const auto near = nearest_substance(reader, written, wanted);
    const std::string_view otherwise = wanted == NameOf::solution
                                           ? "the name of a recipe, or of one of its solutions: `Lantern part A`"
                                           : "a name that the library or your files have, or declare it with a "
                                             "`chemical` block";
    reader.report(Kind::unknown_name, name.span, {written, near.empty() ? std::string(otherwise) : "`" + near + "`"});
}

std::string nearest_or(Reader& reader, std::string_view written, const std::vector<std::string_view>& known,
                       std::string_view otherwise) {
    if (reader.suggestions_left == 0) return std::string(otherwise);
    --reader.suggestions_left;
    const auto near = diagnostics::nearest(written, known);
    return near.empty() ? std::string(otherwise) : "`" + near + "`";
}

}  // namespace scruple::check
