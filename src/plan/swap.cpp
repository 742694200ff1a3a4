// SPDX-License-Identifier: MIT
#include "scruple/plan/swap.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "script.hpp"
#include "settle.hpp"
#include "words.hpp"

namespace scruple::plan {

namespace {

using check::Addition;
using check::Id;
using check::Model;

constexpr std::string_view needs_quotes = "(),\"#";

std::string plain_blanks(std::string text) {
    for (std::size_t at = text.find(unit_blank); at != std::string::npos; at = text.find(unit_blank))
        text.replace(at, std::string_view(unit_blank).size(), " ");
    return text;
}

std::string in_recipe_text(std::string_view name) {
    const bool digit_first = !name.empty() && name.front() >= '0' && name.front() <= '9';
    return digit_first || name.find_first_of(needs_quotes) != std::string_view::npos ? fmt::format("\"{}\"", name)
                                                                                     : std::string(name);
}

std::string substance_text(const Model& model, const Addition& line) {
    if (line.solution != check::none) return in_recipe_text(check::shown_name(model, line.solution));
    const std::string name = in_recipe_text(model.chemicals[line.chemical].name);
    const std::string form = plain_blanks(form_words(model, line));
    return form.empty() ? name : fmt::format("{} ({})", name, form);
}

bool same_thing(const Addition& a, const Addition& b) {
    return a.chemical == b.chemical && a.solution == b.solution && a.form == b.form && a.strength == b.strength &&
           a.by == b.by;
}

bool takes(const check::Conversion& conversion, Id chemical) {
    return std::ranges::find(conversion.left, chemical, &check::Conversion::Side::chemical) != conversion.left.end();
}

/// Behind `by conversion`: the reagent that tells this conversion from the others of its product; nothing where it is
/// the only one.
std::string made_words(const Model& model, const check::Conversion& conversion) {
    const auto rivals_with = [&](Id reagent) {
        return std::ranges::count_if(model.conversions, [&](const check::Conversion& other) {
            return &other != &conversion && other.product == conversion.product && check::is_worked(model, other) &&
                   (reagent == check::none || takes(other, reagent));
        });
    };
    if (rivals_with(check::none) == 0) return "by conversion";
    const auto tells = std::ranges::min_element(conversion.left, {}, [&](const auto& side) {
        return std::pair(side.chemical == model.water, rivals_with(side.chemical));
    });
    return "by conversion from " + in_recipe_text(model.chemicals[tells->chemical].name);
}

/// What differs between a line as it is written and as it was settled; nothing where it is the same.
std::optional<Rewriting> difference(const Model& model, const Addition& before, const Addition& now) {
    Rewriting anew{.statement = before.place.statement};
    if (now.by_conversion && now.made_by < model.conversions.size() && before.made_from == check::none) {
        anew.made = made_words(model, model.conversions[now.made_by]);
        return before.by_conversion && anew.made == "by conversion" ? std::nullopt : std::optional(std::move(anew));
    }
    if (now.by_conversion) return std::nullopt;
    const bool rest = now.how == Addition::How::the_rest;
    const bool same_measure = rest || (now.shares == before.shares && now.now == before.now);
    if (same_thing(before, now) && same_measure) return std::nullopt;
    if (!rest) {
        anew.amounts.assign(now.shares.begin(), now.shares.end());
        anew.unit = now.by == Addition::By::volume ? "ml" : "g";
        anew.now = now.now;
    }
    if (same_thing(before, now)) return anew;
    anew.substance = substance_text(model, now);
    if (!rest) anew.in_place_of = plain_blanks(substance_words(model, before));
    return anew;
}

void add_differences(const Model& before, const Model& now, Id section, std::vector<Rewriting>& all) {
    const auto& old_lines = before.sections[section].lines;
    const auto& new_lines = now.sections[section].lines;
    for (std::size_t i = 0; i < old_lines.size(); ++i) {
        const auto* from = std::get_if<Addition>(&old_lines[i]);
        const auto* to = std::get_if<Addition>(&new_lines[i]);
        if (from == nullptr || to == nullptr) continue;
        if (auto anew = difference(now, *from, *to)) all.push_back(std::move(*anew));
    }
}

}  // namespace

std::variant<std::vector<Rewriting>, Refusal> rewritten(const Model& model, const CardRequest& request) {
    std::vector<Rewriting> all;
    for (const Id section : model.recipes[model.sections[request.section].recipe].sections) {
        CardRequest for_it = request;
        for_it.section = section;
        const auto settled = settle(model, for_it);
        if (const auto* refusal = std::get_if<Refusal>(&settled)) return *refusal;
        const auto& changed = std::get<Settled>(settled).model;
        if (changed) add_differences(model, *changed, section, all);
    }
    return all;
}

}  // namespace scruple::plan
