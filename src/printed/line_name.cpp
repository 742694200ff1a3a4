// SPDX-License-Identifier: MIT
#include "line_name.hpp"

#include <algorithm>
#include <array>

#include "wording.hpp"

namespace scruple::printed {
namespace {

using What = Line::What;

void take_out(std::string& name, std::string_view word) {
    for (std::size_t at = lower(name).find(word); at != std::string::npos; at = lower(name).find(word, at + 1)) {
        const std::size_t end = at + word.size();
        if ((at > 0 && is_letter(name[at - 1])) || (end < name.size() && is_letter(name[end]))) continue;
        name.replace(at, word.size(), " ");
        name = tidied(name);
        return;
    }
}

bool begins_with_one_of(std::string_view said, std::initializer_list<std::string_view> words) {
    return std::ranges::any_of(words, [&](std::string_view word) {
        return said.starts_with(word) && (said.size() == word.size() || !is_letter(said[word.size()]));
    });
}

/// What is done with the solution, and no part of it: `Develop for 5 min.`
bool is_direction(std::string_view said) {
    return begins_with_one_of(
        said, {"develop", "fix",       "wash",       "rinse",  "immerse", "soak",       "leave",    "stir",
               "shake",   "boil",      "filter",     "let",    "allow",   "allowing",   "keep",     "keeps",
               "time",    "the",       "this",       "these",  "when",    "if",         "then",     "temperature",
               "dilute",  "use",       "for",        "to use", "take",    "mix",        "capacity", "prints",
               "plates",  "negatives", "films",      "normal", "pour",    "bleach for", "tone for", "blacken",
               "darken",  "redevelop", "re-develop", "clear",  "apply",   "should",     "it",       "after",
               "before",  "in",        "at",         "do",     "never",   "always",     "not"});
}

bool is_water(std::string_view said) {
    return has_word(said, "water") || has_word(said, "aqua") || has_word(said, "aq. dest") || said.empty();
}

bool makes_up(std::string_view said) {
    constexpr std::array anywhere{"to make",  "make up",    "made up",     "makes up",   "up to",
                                  "q.s",      "q. s",       "quant. suff", "total",      "to bring",
                                  "bring up", "to measure", "fill up",     "sufficient", "enough"};
    return said.starts_with("ad ") || said == "ad" || said.ends_with(" ad") || said.ends_with(" to") ||
           said.starts_with("to make") || said == "make" || said.starts_with("make ") || said == "makes" ||
           said.ends_with(" make") || said == "to" ||
           std::ranges::any_of(anywhere, [&](std::string_view word) { return said.find(word) != said.npos; });
}

void take_percent(Line& line, std::string& name) {
    if (!line.percent) return;
    struct Said {
        std::string_view words;
        Percent means;
    };
    constexpr std::array all{Said{"v/v", Percent::by_volume},        Said{"by volume", Percent::by_volume},
                             Said{"w/w", Percent::by_weight},        Said{"by weight", Percent::by_weight},
                             Said{"w/v", Percent::weight_in_volume}, Said{"p/v", Percent::weight_in_volume}};
    for (const Said& one : all)
        if (lower(name).find(one.words) != std::string::npos) {
            line.percent_said = one.means;
            take_out(name, one.words);
        }
}

void take_solution(Line& line, std::string& name) {
    for (const std::string_view words : {"saturated solution of", "sat. solution of", "sat. sol. of", "sat. sol",
                                         "saturated solution", "saturated", "satd"}) {
        const std::string said = lower(name);
        if (said.find(words) == std::string::npos) continue;
        line.saturated = true;
        take_out(name, words);
    }
    if (!line.percent && !line.saturated) return;
    for (const std::string_view words :
         {"solution of", "solution in water", "aqueous solution", "solution", "soln", "sol"})
        take_out(name, words);
    // `Bromide of potassium, 10 drops of a 10 per cent solution`
    for (const std::string_view words : {" of a", " of the", " of"})
        if (name.ends_with(words)) name = tidied(std::string_view(name).substr(0, name.size() - words.size()));
}

/// Strengths that the trade named without a percent sign; common practice, no source.
void take_trade_strength(Line& line, std::string& name) {
    struct Trade {
        std::string_view chemical, words;
        int percent;
        std::string_view assumed;
    };
    constexpr std::array all{
        Trade{"ammon", ".880", 35, "ammonia of a density of 0.880 is taken as 35 % by weight (common practice)"},
        Trade{"acetic", "no. 8", 28,
              "acetic acid No. 8, of a density of about 1.04, is taken as 28 % by weight (common practice)"},
        Trade{"acetic", "no 8", 28,
              "acetic acid No. 8, of a density of about 1.04, is taken as 28 % by weight (common practice)"}};
    for (const Trade& one : all) {
        const std::string said = lower(name);
        if (line.percent || said.find(one.chemical) == std::string::npos || said.find(one.words) == std::string::npos)
            continue;
        line.percent = one.percent;
        line.percent_said = Percent::by_weight;
        line.assumed = one.assumed;
        name.erase(said.find(one.words), one.words.size());
        for (const std::string_view words : {"sp. gr", "s.g", "strong", "fort", "commercial", "0"})
            take_out(name, words);
        name = tidied(name);
    }
}

/// Words for a form stand behind the name in formularies, those for its quality too.
void take_form(Line& line, std::string& name) {
    constexpr std::array forms{
        "recryst",     "crystallised",  "crystallized", "crystalline",  "crystals",     "crystal",      "cryst",
        "crys",        "anhydrous",     "anhydr",       "anh",          "mono",         "anhyd",        "desiccated",
        "exsiccated",  "dry",           "dried",        "monohydrate",  "monohydrated", "pentahydrate", "heptahydrate",
        "decahydrate", "dodecahydrate", "glacial",      "concentrated", "conc"};
    constexpr std::array qualities{"chemically pure",
                                   "re-crystallised",
                                   "recrystallised",
                                   "recrystallized",
                                   "pure",
                                   "commercial",
                                   "powdered",
                                   "photographic",
                                   "c.p",
                                   "best",
                                   "fused",
                                   "extra",
                                   "granulated"};
    for (const std::string_view word : qualities) {
        const std::size_t at = lower(name).find(word);
        if (at != std::string::npos && at > 0) take_out(name, word);
    }
    for (const std::string_view word : forms) {
        const std::size_t at = lower(name).rfind(word);
        if (at == std::string::npos || !has_word(std::string_view(lower(name)).substr(at > 0 ? at - 1 : 0), word))
            continue;
        std::string without = name;
        take_out(without, word);
        if (without.empty()) {
            if (line.what != What::alternative) continue;
        }
        line.form = word;
        name = std::move(without);
        return;
    }
}

/// A sentence is no name: `Blacken with ammonia, a drachm to five ounces of water, and wash.`
bool is_sentence(std::string_view name) {
    constexpr std::size_t longest_name = 7;  // words
    return words_of(name).size() > longest_name;
}

What what_of(const Line& line, std::string_view said) {
    if (line.ratio && line.columns.empty()) return What::dilution;
    if (line.columns.empty()) return What::words;
    const bool of_water = is_water(said);
    // `To make 28 % acid, dilute three parts with eight of water` is a note.
    const bool is_note = line.percent || has_word(said, "dilute");
    if (makes_up(said) && !is_note &&
        (of_water || begins_with_one_of(said, {"to make", "make", "makes", "to", "made", "total"})))
        return What::water_to_make;
    if (is_sentence(said)) return What::words;
    if (of_water) return said.empty() || is_direction(said) ? What::words : What::water;
    if (begins_with_one_of(said, {"or"})) return What::alternative;
    return is_direction(said) ? What::words : What::ingredient;
}

}  // namespace

void name_line(Line& line, std::string name) {
    for (const std::string_view word : {"of ", "Of ", "Add ", "add ", "Dissolve ", "then add ", "Then add ", "and "})
        if (name.starts_with(word)) name.erase(0, word.size());
    line.what = what_of(line, lower(name));
    if (line.what == What::alternative) name = tidied(std::string_view(name).substr(2));
    if (line.what == What::ingredient || line.what == What::alternative) {
        take_percent(line, name);
        take_trade_strength(line, name);
        take_solution(line, name);
        take_form(line, name);
    }
    line.name = std::move(name);
}

}  // namespace scruple::printed
