// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>

#include "scruple/check/making.hpp"
#include "scruple/plan/figure.hpp"
#include "settle.hpp"
#include "words.hpp"

namespace scruple::plan {

namespace {

using check::Model;
using Kind = Way::Kind;

constexpr std::string_view same_species = "same species, exact";

std::string beside_words(const Model& model, const Choice& choice) {
    const auto grams = grams_held(model, choice.asked.wanted.ware);
    if (!grams) return {};
    const check::Share product{choice.asked.wanted.ware.chemical, choice.asked.wanted.ware.form,
                               choice.asked.wanted.measure * *grams};
    std::vector<std::string> beside;
    for (const check::Share& share :
         check::making_of(model, model.conversions[choice.taken.conversion], product).besides)
        beside.push_back(plain_grams(share.grams).with_unit() + " " +
                         check::shown_name(model.chemicals[share.chemical], share.form));
    return beside.empty() ? "" : fmt::format("; it leaves {}, counted in the contents", joined(beside, " and "));
}

/// What a ready solution brings along beside the chemical: its solvents.
std::string solvent_words(const Model& model, check::Id solution, check::Id asked) {
    std::vector<std::string> solvents;
    for (const check::Line& line : model.sections[solution].lines) {
        const auto* addition = std::get_if<check::Addition>(&line);
        if (addition == nullptr || addition->chemical == asked || addition->chemical == model.water) continue;
        const std::string name(model.chemicals[addition->chemical].name);
        if (std::find(solvents.begin(), solvents.end(), name) == solvents.end()) solvents.push_back(name);
    }
    return solvents.empty() ? "; its water counts" : "; it brings " + joined(solvents, " and ");
}

std::string kind_words(const Model& model, const Choice& choice) {
    std::string words(same_species);
    switch (choice.taken.kind) {
        case Kind::form:
            return words + " by mole; the water of its crystals counts";
        case Kind::percent:
            return words + "; its water counts";
        case Kind::solution:
            return words + solvent_words(model, choice.taken.solution, choice.asked.wanted.ware.chemical);
        case Kind::liquid:
            return words + " by what the bottle holds";
        case Kind::conversion:
            return words + beside_words(model, choice);
        case Kind::advice:
            break;
    }
    return words;
}

bool is_open(const Way& way) {
    return way.supply <= Way::Supply::unknown && way.lacking.empty() && way.kind != Kind::advice;
}

std::string supply_words(const Choice& choice) {
    if (!choice.log_known) return "the log does not say what is on hand: see that it is there";
    if (!choice.taken.lacking.empty()) return choice.taken.lacking;
    if (choice.taken.kind == Kind::conversion) return "all that it takes is on hand";
    return "there is enough of it on hand";
}

/// Why it comes before the others of which as much can be said.
std::string rank_words(const Model& model, const Choice& choice) {
    if (!std::ranges::any_of(choice.others, is_open))
        return choice.others.empty() ? "" : "; that holds for no other way";
    if (choice.taken.kind != Kind::conversion) return "; it is the way with the least to do";
    const bool own = !model.conversions[choice.taken.conversion].built_in;
    return own ? "; the conversion is your own, and comes first" : "; it is the first of the library";
}

std::string why_words(const Model& model, const Choice& choice) {
    if (choice.says_from) return "the recipe says from what; " + supply_words(choice);
    const bool lacking = choice.log_known && !choice.taken.lacking.empty();
    return supply_words(choice) +
           (lacking ? ", and there is no way for which there is enough" : rank_words(model, choice));
}

}  // namespace

std::string other_way_words(const Model& model, const Way& way) {
    std::string words = way_words(model, way);
    if (way.kind == Kind::advice) {
        const auto& notes = model.conversions[way.conversion].notes;
        return fmt::format("{}: advice only{}{}", words, notes.empty() ? "" : ", ", notes.empty() ? "" : notes.front());
    }
    words += fmt::format(": {}", same_species);
    return way.lacking.empty() ? words : words + "; " + way.lacking;
}

Substitution substitution_words(const Model& model, const Choice& choice) {
    const Amount& wanted = choice.asked.wanted;
    Substitution words;
    words.wanted = fmt::format("{} {}{}", ware_words(model, wanted.ware), measure_words(wanted),
                               choice.as_written ? ", by conversion" : "");
    words.taken = way_words(model, choice.taken);
    words.kind = kind_words(model, choice);
    words.why = why_words(model, choice);
    for (const Way& way : choice.others) words.others.push_back(other_way_words(model, way));
    words.others.insert(words.others.end(), choice.also.begin(), choice.also.end());
    return words;
}

}  // namespace scruple::plan
