// SPDX-License-Identifier: MIT
#include "directions.hpp"

#include <algorithm>
#include <array>

#include "headings.hpp"
#include "notation.hpp"
#include "reading.hpp"
#include "wording.hpp"

namespace scruple::printed {
namespace {

constexpr std::array introductions{"working solution",
                                   "working strength",
                                   "for working solution",
                                   "for use",
                                   "to use",
                                   "for development",
                                   "to develop",
                                   "to make developer",
                                   "developer",
                                   "at time of using",
                                   "when required",
                                   "immediately before use",
                                   "use",
                                   "take",
                                   "mix",
                                   "dilute",
                                   "add",
                                   "together",
                                   "by volume",
                                   "the",
                                   "stock with",
                                   "it with",
                                   "with",
                                   "pour",
                                   "to",
                                   "of"};

void drop_introductions(std::string& text) {
    for (bool dropped = true; dropped;) {
        dropped = false;
        text = tidied(text);
        for (const std::string_view word : introductions)
            if (lower(text).starts_with(word) && (text.size() == word.size() || !is_letter(text[word.size()]))) {
                text.erase(0, word.size());
                dropped = true;
                break;
            }
    }
}

std::vector<std::string> pieces_of(const std::string& text) {
    constexpr std::array partings{",", ";", "+", "&", " and ", " to ", " into ", " with ", " add ", " plus "};
    std::vector<std::string> all(1);
    for (std::size_t at = 0; at < text.size();) {
        const auto parting = std::ranges::find_if(
            partings, [&](const char* word) { return std::string_view(text).substr(at).starts_with(word); });
        if (parting == partings.end()) {
            all.back() += text[at++];
            continue;
        }
        at += std::string_view(*parting).size();
        // The last piece may begin with the second word of `, and `: what parts twice parts once.
        if (all.back().find_first_not_of(' ') == std::string::npos)
            all.back().clear();
        else
            all.emplace_back(" ");
        if (at > 0) --at;  // the blank behind a word is the blank before the next
        if (text[at] != ' ') ++at;
    }
    std::erase_if(all, [](const std::string& piece) { return tidied(piece).empty(); });
    return all;
}

/// `1 part A`, `A 1 part`, `water 2 oz`: its figure, its unit, and what is left.
struct Pour {
    Exact parts = 0;
    UnitWord unit = UnitWord::none;
    std::string name;
};

std::optional<Pour> piece_of(const std::string& text) {
    Pour piece;
    const std::string words = tidied(text);
    bool found = false;
    for (std::size_t at = 0; at < words.size();) {
        const bool begins = at == 0 || words[at - 1] == ' ';
        const auto figure = begins && !found ? figure_at(std::string_view(words).substr(at)) : std::nullopt;
        if (!figure) {
            piece.name += words[at++];
            continue;
        }
        at += figure->length;
        if (at < words.size() && words[at] == ' ') ++at;
        const UnitFound unit = unit_at(std::string_view(words).substr(at));
        at += unit.length;
        piece.parts = figure->value;
        piece.unit = unit.unit;
        found = true;
    }
    piece.name = tidied(piece.name);
    while (lower(piece.name).starts_with("of ")) piece.name = tidied(std::string_view(piece.name).substr(3));
    if (!found) return std::nullopt;
    return piece;
}

bool names_water(std::string_view name) {
    return has_word(lower(name), "water");
}

/// `1 part A to 2 parts B, never the reverse`
bool is_remark(const std::string& words) {
    const std::string said = lower(tidied(words));
    return std::ranges::any_of(
        std::array{"never", "not", "always", "when", "immediately", "just", "at", "as", "in this order", "use"},
        [&](std::string_view word) { return said == word || said.starts_with(std::string(word) + " "); });
}

/// What stands before `water to make 20 oz`, with that volume; nothing where it is not said so.
struct MadeUp {
    std::string before;
    Pour to;
};
std::optional<MadeUp> made_up(const std::string& text) {
    for (const std::string_view words : {" water to make ", " water to ", " make up to ", " made up to "}) {
        const std::size_t at = lower(text).find(words);
        if (at == std::string::npos) continue;
        auto to = piece_of(text.substr(at + words.size()));
        if (!to || (!to->name.empty() && !names_water(to->name))) continue;
        std::string before = text.substr(0, at);
        for (const std::string_view end : {" and", " with"})
            if (before.ends_with(end)) before.resize(before.size() - end.size());
        return MadeUp{std::move(before), std::move(*to)};
    }
    return std::nullopt;
}

/// A volume, whoever's it is.
bool is_fluid(UnitWord unit) {
    return ml_of(unit, Fluid::imperial) > 0;
}

/// Adds so many parts of what is named, of water or a solution; says false where that is neither, or is in it already.
bool pour(const Pour& piece, const std::vector<Solution>& solutions, const Mixture& unnamed, Mixture& mixture) {
    if (names_water(piece.name)) {
        if (mixture.water > 0 && mixture.water_unit != piece.unit) return false;
        mixture.water += piece.parts;
        mixture.water_unit = piece.unit;
        return true;
    }
    if (piece.name.empty()) {
        // `1+4` is a dilution, which others read.
        if (piece.unit == UnitWord::none || !mixture.shares.empty()) return false;
        if (unnamed.shares.empty() || unnamed.water > 0) return false;
        Exact sum = 0;
        for (const Mixture::Share& share : unnamed.shares) {
            if (share.unit != unnamed.shares.front().unit) return false;
            sum += share.parts;
        }
        for (const Mixture::Share& share : unnamed.shares)
            mixture.shares.push_back({share.solution, piece.parts * share.parts / sum, piece.unit});
        return true;
    }
    if (piece.name == "each" && solutions.size() > 1 && mixture.shares.empty()) {
        for (std::size_t one = 0; one < solutions.size(); ++one)
            mixture.shares.push_back({one, piece.parts, piece.unit});
        return true;
    }
    const auto solution = solution_called(piece.name, solutions);
    if (!solution || std::ranges::find(mixture.shares, *solution, &Mixture::Share::solution) != mixture.shares.end())
        return false;
    mixture.shares.push_back({*solution, piece.parts, piece.unit});
    return true;
}

/// `1 part A, 1 B`: a figure without a unit counts what the others count.
void count_alike(Mixture& mixture, UnitWord unit) {
    if (mixture.water_unit == UnitWord::none) mixture.water_unit = unit;
    for (Mixture::Share& share : mixture.shares)
        if (share.unit == UnitWord::none) share.unit = unit;
}

/// Water up to so much in all; says false where that is less than what is there, or in another unit.
bool fill_up(const Pour& to, Mixture& mixture) {
    Exact rest = to.parts - mixture.water;
    for (const Mixture::Share& share : mixture.shares) {
        if (share.unit != to.unit) return false;
        rest -= share.parts;
    }
    if (mixture.water > 0 || mixture.shares.empty() || rest <= 0) return false;
    mixture.water = rest;
    mixture.water_unit = to.unit;
    return true;
}

/// `equal parts of A and B`, `an equal volume of water`
std::optional<Mixture> equal_parts(const std::string& text, const std::vector<Solution>& solutions) {
    std::string rest;
    for (const std::string_view word : {"an equal volume", "an equal part", "an equal quantity", "an equal bulk",
                                        "equal parts", "equal volumes", "equal quantities"})
        if (rest.empty() && lower(text).starts_with(word)) rest = text.substr(word.size());
    if (rest.empty()) return std::nullopt;
    Mixture mixture;
    for (const std::string& piece : pieces_of(rest)) {
        std::string name = tidied(piece);
        if (lower(name).starts_with("of ")) name = tidied(std::string_view(name).substr(3));
        if (names_water(name))
            mixture.water = 1;
        else if (const auto solution = solution_called(name, solutions))
            mixture.shares.push_back({*solution, 1});
        else
            return std::nullopt;
    }
    if (mixture.shares.empty() && solutions.size() == 1) mixture.shares.push_back({0, 1});
    return mixture;
}

bool adds_up(const Mixture& mixture) {
    return !mixture.shares.empty() && (mixture.shares.size() > 1 || mixture.water > 0) &&
           std::ranges::all_of(mixture.shares, [](const auto& share) { return share.parts > 0; });
}

}  // namespace

std::optional<std::size_t> solution_called(std::string_view words, const std::vector<Solution>& solutions) {
    const auto label = solution_named(words);
    if (!label) return std::nullopt;
    const auto found = std::ranges::find_if(solutions, [&](const Solution& it) { return lower(it.label) == *label; });
    if (found != solutions.end()) return static_cast<std::size_t>(found - solutions.begin());
    // `stock solution`, where there is one
    return label->empty() && solutions.size() == 1 ? std::optional<std::size_t>(0) : std::nullopt;
}

std::optional<Mixture> mixture_in(std::string_view line, const std::vector<Solution>& solutions,
                                  const Mixture& unnamed) {
    std::string text = tidied(line);
    drop_introductions(text);
    if (auto equal = equal_parts(text, solutions)) return adds_up(*equal) ? equal : std::nullopt;
    Mixture mixture;
    std::optional<UnitWord> unit;
    const auto whole = made_up(text);
    for (const std::string& words : pieces_of(whole ? whole->before : text)) {
        auto piece = piece_of(words);
        if (!piece && !mixture.shares.empty() && is_remark(words)) continue;
        if (!piece || piece->parts <= 0) return std::nullopt;
        if (unit && piece->unit != UnitWord::none && *unit != piece->unit &&
            !(is_fluid(*unit) && is_fluid(piece->unit)))
            return std::nullopt;
        if (piece->unit != UnitWord::none) unit = piece->unit;
        if (!pour(*piece, solutions, unnamed, mixture)) return std::nullopt;
    }
    count_alike(mixture, unit.value_or(UnitWord::none));
    if (whole && !fill_up(whole->to, mixture)) return std::nullopt;
    // `Dilute with 3 parts of water`; `add water 10 oz` is a line of the formula.
    const bool told = has_word(lower(line), "dilute") || (unit == UnitWord::part && has_word(lower(line), "add"));
    if (mixture.shares.empty() && mixture.water > 0 && told)
        pour({1, mixture.water_unit, ""}, solutions, unnamed, mixture);
    if (!adds_up(mixture)) return std::nullopt;
    return mixture;
}

Mixture in_one_unit(const Mixture& mixture, Fluid fluid) {
    if (!mixes_measures(mixture)) return mixture;
    const auto ml = [fluid](const Exact& parts, UnitWord unit) { return parts * ml_of(unit, fluid); };
    Exact least = ml(mixture.shares.front().parts, mixture.shares.front().unit);
    for (const Mixture::Share& share : mixture.shares) least = std::min(least, ml(share.parts, share.unit));
    Mixture all{{}, ml(mixture.water, mixture.water_unit) / least};
    for (const Mixture::Share& share : mixture.shares)
        all.shares.push_back({share.solution, ml(share.parts, share.unit) / least});
    return all;
}

bool mixes_measures(const Mixture& mixture) {
    if (mixture.shares.empty()) return false;
    const UnitWord first = mixture.shares.front().unit;
    return (mixture.water > 0 && mixture.water_unit != first) ||
           std::ranges::any_of(mixture.shares, [&](const auto& share) { return share.unit != first; });
}

}  // namespace scruple::printed
