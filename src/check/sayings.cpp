// SPDX-License-Identifier: MIT
#include "scruple/check/sayings.hpp"

#include <algorithm>
#include <string>
#include <vector>

#include "scruple/syntax/normal.hpp"

namespace scruple::check {
namespace {

struct Sample {
    std::string_view keyword;
    std::string_view how;  ///< how a line with this word is said
};

constexpr Sample samples[] = {
    {"is", "`is a   film developer`"},
    {"strength", "`strength   working`"},
    {"source", "`source   the darkroom notebook, page 12`"},
    {"caution", "`caution   \"Gloves and goggles.\"`"},
    {"note", "`note   start at 11 min`"},
    {"assumed", "`assumed   the carbonate is the dry one`"},
    {"book", "`book   The Tide Table of Photography, 1907, Great Britain, page 61`"},
    {"reading", "`reading oz avoirdupois because \"the metric column says so\"`"},
    {"keeps", "`keeps   6 months full, 2 months half full`"},
    {"use within", "`use within   2 h`"},
    {"capacity", "`capacity   one-shot, 250 ml working per film 135` or `capacity   12 films 135 per 1 l`"},
    {"variants", "`variants   soft, normal`"},
    {"dilute", "`dilute stock   1+3`"},
    {"mix", "`mix part A + part B + water   1+1+10`; or `stir until clear` where stirring is meant"},
    {"replenish", "`replenish   20 ml per film 135, at most 1 l per 1 l`"},
    {"expect", "`expect pH   11.2 to 11.6` or `expect sodium sulfite (anhydrous)   8.5 to 9.5 g/l`"},
    {"also", "`also   soda ash (anhydrous), washing soda`"},
    {"form", "`form   decahydrate   Na2CO3·10H2O`"},
    {"grade", "`grade   distilled, deionised`"},
    {"ions", "`ions   2 Na+ + CO3-2`"},
    {"acts as", "`acts as   alkali`"},
    {"dissolves", "`dissolves   21.5 g (anhydrous) in 100 g water at 20 C`"},
    {"density", "`density   1.05 g/ml (glacial) at 25 C from \"the label\"`"},
    {"takes up", "`takes up   0.28 ml per 1 g`"},
    {"hazard", "`hazard   H302, H317`"},
    {"cas", "`cas   497-19-8`"},
    {"in water", "`in water   HCO3- -> CO3-2 + H+   pK 10.33, 14.7 kJ/mol, give or take 0.02 from \"a handbook\"`"},
    {"escapes", "`escapes   CO2   pK 1.47, in air 0.0004 atm`"},
    {"pair", "`pair   Na+ with CO3-2   -0.08 kg/mol from \"a handbook\"`"},
    {"bystander", "`bystander   Na+, Cl-`"},
    {"salt of", "`salt of   citric acid`"},
    {"reaction", "`reaction   borax (decahydrate) + 2 sodium hydroxide -> 4 sodium metaborate (anhydrous) + 11 water`"},
    {"excess", "`excess   sodium hydroxide, 2 % more than it needs`"},
    {"vessel", "`vessel   2 times the volume`"},
    {"area", "`area   80 sq in`"},
    {"balance", "`balance   0.1 g up to 500 g`"},
    {"graduate", "`graduate   10 ml by 0.2 ml`"},
    {"syringe", "`syringe   1 ml by 0.01 ml`"},
    {"jug", "`jug   5 l by 100 ml`"},
    {"dropper", "`dropper   22 drops per 1 ml water`"},
    {"bottle", "`bottle   500 ml, 1 l`"},
    {"pace", "`pace   3 min to weigh`"},
    {"postage", "`postage   6.50 EUR, none over 75 EUR`"},
    {"one of", "`one of   S-2, HS-, at least 0.1 mmol/l` or `one of   ethanol, acts as solvent`"},
    {"in doubt", "`in doubt   acts as acid, Al+3`"},
    {"below pH", "`below pH   4.5`"},
    {"above pH", "`above pH   10`"},
    {"warmer than", "`warmer than   40 C`"},
    {"lethal", "`lethal   \"hydrogen sulfide, a gas\"`"},
    {"harmful", "`harmful   \"sulfur dioxide, a gas\"`"},
    {"accept", "`accept acid on sulfite because \"your own reason, and how it is done\"`"},
    {"stir", "`stir until clear` or `stir 2 min`"},
    {"wait", "`wait 15 min, stirring every 5 min`"},
    {"stand", "`stand 12 h`"},
    {"filter", "`filter`"},
    {"cool", "`cool to 20 C` or `cool below 27 C`"},
    {"warm", "`warm to 45 C`"},
    {"not above", "`not above 30 C`"},
    {"do", "`do \"tap out the air bells\"`"},
    {"apart", "`apart lye`, with one word as the vessel's name"},
    {"pour in", "`pour in lye, slowly, stirring` or `pour in half of lye`"},
    {"set aside", "`set aside lye`"},
};

/// What people call the same elsewhere.
constexpr Sample words_of_others[] = {
    {"heat", "`warm to 45 C`"},
    {"chill", "`cool to 20 C`"},
    {"agitate", "`stir 2 min`"},
    {"dissolve", "`stir until clear`, below the lines of what is to dissolve"},
    {"makes", "`water to make   1 l` as the last line of the solution"},
    {"store", "`keeps   6 months full` for the time, `note   in the dark` for the rest"},
    {"keep", "`keeps   6 months full` for the time, `note   in the dark` for the rest"},
};

std::string small(std::string_view text) {
    std::string result(text);
    std::ranges::transform(result, result.begin(),
                           [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c | 0x20) : c; });
    return result;
}

/// The first word in small letters, without the colon that other people put behind it.
std::string first_word(std::string_view line) {
    auto word = small(line.substr(0, line.find_first_of(" \t")));
    if (word.ends_with(':')) word.pop_back();
    return word;
}

/// A day at the beginning of a line: of a log, or of a plan.
bool is_date(std::string_view keyword) {
    return !keyword.empty() && keyword.front() >= '0' && keyword.front() <= '9';
}

}  // namespace

std::string_view how_to_say(std::string_view keyword) {
    if (is_date(keyword))
        return "in a log `2026-11-05 mixed Lantern part A 1 l` (or `received`, `on shelf`, `processed`, `used`, "
               "`replenished`, `discarded`), in a plan `2026-12-03 6 films 135 through roll film`";
    if (keyword.starts_with("each"))
        return "`each Thursday from 2026-12-10 to 2026-12-31 4 films 120 through roll film`";
    for (const auto& sample : samples) {
        if (sample.keyword == keyword) return sample.how;
    }
    return "the line as `scruple help` shows it";
}

std::string how_to_dilute(std::string_view line) {
    static constexpr std::string_view digits = "0123456789";
    std::vector<std::string> numbers;
    for (auto begin = line.find_first_of(digits); begin != std::string_view::npos;) {
        const auto end = std::min(line.find_first_not_of(digits, begin), line.size());
        numbers.emplace_back(line.substr(begin, end - begin));
        begin = line.find_first_of(digits, end);
    }
    const bool plain = line.find_first_not_of("0123456789 :+", std::string_view("dilute").size()) == line.npos;
    const bool small = std::ranges::all_of(numbers, [](const auto& it) { return it.size() < 6; });
    if (numbers.size() != 2 || !plain || !small) return std::string(how_to_say("dilute"));
    const auto& [one, other] = std::pair(numbers[0], numbers[1]);
    std::string how = "`dilute stock   " + one + "+" + other + "`";
    const int rest = std::stoi(other) - std::stoi(one);
    if (line.find(':') != line.npos && rest > 0)
        how += ", or `" + one + "+" + std::to_string(rest) + "` if " + other + " parts are the whole";
    return how + ", with the solution's own name for `stock`";
}

Saying saying_at(std::string_view line) {
    const auto first = first_word(line);
    const std::string normal = syntax::normal_name(line);  // blanks between two words may be several
    for (const auto& sample : samples) {
        const auto& word = sample.keyword;
        const bool begins = first == word || (word.find(' ') != std::string_view::npos && normal.starts_with(word));
        if (begins) return {word, sample.how};
    }
    for (const auto& [word, how] : words_of_others) {
        if (first == word) return {word, how};
    }
    return {};
}

}  // namespace scruple::check
