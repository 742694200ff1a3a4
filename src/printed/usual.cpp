// SPDX-License-Identifier: MIT
#include "usual.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "scruple/syntax/normal.hpp"
#include "wording.hpp"

namespace scruple::printed {
namespace {

constexpr double usual_deviation = 0.69;   ///< of what is made outside the usual range: a factor of two
constexpr double most_unusual_cost = 3.5;  ///< a slip is as likely as 1 in 33

struct Row {
    Role role;
    std::string_view chemical, form;
    Range range;
};
#define SCRUPLE_USUAL(ROLE, CHEMICAL, FORM, LEAST, MOST) Row{Role::ROLE, CHEMICAL, FORM, {LEAST, MOST}},
constexpr std::array rows{
#include "usual_ranges.inc"
};
#undef SCRUPLE_USUAL

struct RoleWord {
    std::string_view word;
    Role role;
};
constexpr std::array role_words{RoleWord{"stop", Role::stop_bath},
                                RoleWord{"clearing", Role::clearing_bath},
                                RoleWord{"eliminat", Role::clearing_bath},
                                RoleWord{"bleach", Role::bleach},
                                RoleWord{"toner", Role::toner},
                                RoleWord{"toning", Role::toner},
                                RoleWord{"sepia", Role::toner},
                                RoleWord{"reduc", Role::reducer},
                                RoleWord{"intensif", Role::intensifier},
                                RoleWord{"harden", Role::hardener},
                                RoleWord{"fix", Role::fixer}};

Role role_said(std::string_view purpose) {
    const std::string said = lower(purpose);
    const auto has = [&](std::string_view word) { return said.find(word) != std::string::npos; };
    if (has("develop")) {
        if (has("paper") || has("print")) return has("film") ? Role::developer : Role::paper_developer;
        return has("film") || has("plate") || has("negative") ? Role::film_developer : Role::developer;
    }
    for (const RoleWord& one : role_words)
        if (has(one.word)) return one.role;
    return Role::unknown;
}

Role role_by_contents(const check::Model& model, const Layout& layout) {
    const auto holds = [&](std::initializer_list<std::string_view> names) {
        return std::ranges::any_of(layout.lines, [&](const Known& known) {
            return known.what.chemical != check::none &&
                   std::ranges::find(names, model.chemicals[known.what.chemical].name) != names.end();
        });
    };
    if (holds({"metol", "hydroquinone", "phenidone", "dimezone", "dimezone S", "glycin", "amidol", "pyrogallol",
               "catechol", "4-aminophenol", "4-aminophenol hydrochloride", "p-phenylenediamine"}))
        return Role::developer;
    const bool hypo = holds({"sodium thiosulfate", "ammonium thiosulfate"});
    if (holds({"potassium ferricyanide"})) return hypo ? Role::reducer : Role::bleach;
    return hypo ? Role::fixer : Role::unknown;
}

bool is_developer(Role role) {
    return role == Role::film_developer || role == Role::paper_developer || role == Role::developer;
}

/// A developer that is not said to be for film or paper may be for either, and what has no row for paper has that for
/// film.
std::optional<Range> range_of_row(Role role, std::string_view chemical, std::string_view& form) {
    std::optional<Range> found;
    for (const Row& row : rows) {
        if (row.chemical != chemical) continue;
        const bool other_developer = is_developer(role) && is_developer(row.role) && row.role != role;
        if (row.role != role && !other_developer) continue;
        form = row.form;
        if (row.role == role) return row.range;
        found =
            found ? Range{std::min(found->least, row.range.least), std::max(found->most, row.range.most)} : row.range;
    }
    return found;
}

}  // namespace

Role role_of(const check::Model& model, const check::PrintedPage& typed, const Layout& layout) {
    const Role said = role_said(typed.purpose);
    return said != Role::unknown ? said : role_by_contents(model, layout);
}

std::string_view in_plural(Role role) {
    switch (role) {
        case Role::unknown:
            return "solutions";
        case Role::film_developer:
            return "film developers";
        case Role::paper_developer:
            return "paper developers";
        case Role::developer:
            return "developers";
        case Role::stop_bath:
            return "stop baths";
        case Role::fixer:
            return "fixers";
        case Role::clearing_bath:
            return "clearing baths";
        case Role::bleach:
            return "bleaches";
        case Role::toner:
            return "toners";
        case Role::reducer:
            return "reducers";
        case Role::intensifier:
            return "intensifiers";
        case Role::hardener:
            return "hardeners";
    }
    return "";
}

std::optional<Range> usual_range(const check::Model& model, Role role, check::Id chemical, check::Id form) {
    if (role == Role::unknown || chemical == check::none) return std::nullopt;
    const check::Chemical& it = model.chemicals[chemical];
    std::string_view of_form;
    auto range = range_of_row(role, it.name, of_form);
    if (!range || of_form.empty() || form >= it.forms.size()) return range;
    const auto named = std::ranges::find(it.forms, of_form, &check::Form::name);
    if (named == it.forms.end()) return range;
    const double factor = (it.forms[form].molar_mass / named->molar_mass).to_double();
    return Range{range->least * factor, range->most * factor};
}

std::optional<Range> usual_ph(Role role) {
    switch (role) {
        case Role::film_developer:
        case Role::developer:
            return Range{6.8, 13.3};
        case Role::paper_developer:
            return Range{6.8, 12.8};
        case Role::stop_bath:
            return Range{1.8, 5.8};
        case Role::fixer:
            return Range{3.8, 10.2};
        case Role::clearing_bath:
            return Range{4.5, 11};
        default:
            return std::nullopt;
    }
}

double outside(const Range& range, double value) {
    if (value < range.least) return std::log(value / range.least);
    return value > range.most ? std::log(value / range.most) : 0;
}

double cost_of_unusual(const Range& range, double value) {
    const double z = outside(range, value) / usual_deviation;
    return std::min(z * z / 2, most_unusual_cost);
}

}  // namespace scruple::printed
