// SPDX-License-Identifier: MIT
#include "notation.hpp"

#include <algorithm>
#include <array>
#include <cctype>
#include <string>

namespace scruple::printed {
namespace {

struct Vulgar {
    std::string_view sign;
    int over, under;
};
constexpr std::array vulgar_fractions{Vulgar{"½", 1, 2}, Vulgar{"¼", 1, 4}, Vulgar{"¾", 3, 4},
                                      Vulgar{"⅓", 1, 3}, Vulgar{"⅔", 2, 3}, Vulgar{"⅛", 1, 8},
                                      Vulgar{"⅜", 3, 8}, Vulgar{"⅝", 5, 8}, Vulgar{"⅞", 7, 8}};

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

std::size_t digits_in(std::string_view text) {
    return static_cast<std::size_t>(std::ranges::find_if_not(text, is_digit) - text.begin());
}

constexpr std::size_t most_digits = 12;  // more are no figure of a formula

Exact whole(std::string_view digits) {
    std::int64_t value = 0;
    for (const char c : digits) value = value * 10 + (c - '0');
    return value;
}

/// `½`, `1/4`
std::optional<Figure> fraction_at(std::string_view text) {
    for (const Vulgar& one : vulgar_fractions)
        if (text.starts_with(one.sign)) return Figure{Exact(one.over, one.under), Exact(1, one.under), one.sign.size()};
    const std::size_t over = digits_in(text);
    if (over == 0 || over > 3 || over >= text.size() || text[over] != '/') return std::nullopt;
    const std::size_t under = digits_in(text.substr(over + 1));
    if (under == 0 || under > 3) return std::nullopt;
    const Exact divisor = whole(text.substr(over + 1, under));
    if (divisor == 0) return std::nullopt;
    return Figure{whole(text.substr(0, over)) / divisor, Exact(1) / divisor, over + 1 + under};
}

/// `5.7`, `0,5`, `.5`, `75`
std::optional<Figure> decimal_at(std::string_view text) {
    const std::size_t before = digits_in(text);
    if (before > most_digits) return std::nullopt;
    Figure figure{whole(text.substr(0, before)), 1, before};
    const bool point = before < text.size() && (text[before] == '.' || text[before] == ',');
    const std::size_t after = point ? digits_in(text.substr(before + 1)) : 0;
    if (after > most_digits || before + after == 0) return std::nullopt;
    for (std::size_t i = 0; i < after; ++i) figure.step /= 10;
    if (after > 0) {
        figure.value += whole(text.substr(before + 1, after)) * figure.step;
        figure.length += 1 + after;
    }
    return figure;
}

std::size_t joint_at(std::string_view text) {
    return text.starts_with(' ') || text.starts_with('-') ? 1 : 0;
}

/// `1½`, `1 1/2`, `1-1/2`, or one of the two alone.
std::optional<Figure> mixed_at(std::string_view text) {
    if (auto fraction = fraction_at(text)) return fraction;
    auto figure = decimal_at(text);
    if (!figure || figure->step != 1) return figure;
    const std::string_view rest = text.substr(figure->length);
    const std::size_t joint = joint_at(rest);
    const auto fraction = fraction_at(rest.substr(joint));
    if (!fraction || fraction->value >= 1) return figure;
    return Figure{figure->value + fraction->value, fraction->step, figure->length + joint + fraction->length};
}

std::size_t range_word_at(std::string_view text) {
    for (const std::string_view word : {" to ", " - ", "-", "–"})
        if (text.starts_with(word)) return word.size();
    return 0;
}

struct Spelling {
    std::string_view word;  ///< lower case, without points
    UnitWord unit;
};
// The spellings that formularies use; common practice, no source.
constexpr std::array spellings{Spelling{"fluid ounces", UnitWord::fluid_ounce},
                               Spelling{"fluid ounce", UnitWord::fluid_ounce},
                               Spelling{"fluid oz", UnitWord::fluid_ounce},
                               Spelling{"fl ozs", UnitWord::fluid_ounce},
                               Spelling{"fl oz", UnitWord::fluid_ounce},
                               Spelling{"fluid drachms", UnitWord::fluid_drachm},
                               Spelling{"fluid drachm", UnitWord::fluid_drachm},
                               Spelling{"fluid drams", UnitWord::fluid_drachm},
                               Spelling{"fluid dram", UnitWord::fluid_drachm},
                               Spelling{"fl drs", UnitWord::fluid_drachm},
                               Spelling{"fl dr", UnitWord::fluid_drachm},
                               Spelling{"ounces", UnitWord::ounce},
                               Spelling{"ounce", UnitWord::ounce},
                               Spelling{"ozs", UnitWord::ounce},
                               Spelling{"oz", UnitWord::ounce},
                               Spelling{"℥", UnitWord::ounce},
                               Spelling{"pounds", UnitWord::pound},
                               Spelling{"pound", UnitWord::pound},
                               Spelling{"lbs", UnitWord::pound},
                               Spelling{"lb", UnitWord::pound},
                               Spelling{"drachms", UnitWord::drachm},
                               Spelling{"drachm", UnitWord::drachm},
                               Spelling{"drams", UnitWord::drachm},
                               Spelling{"dram", UnitWord::drachm},
                               Spelling{"drs", UnitWord::drachm},
                               Spelling{"dr", UnitWord::drachm},
                               Spelling{"ʒ", UnitWord::drachm},
                               Spelling{"scruples", UnitWord::scruple},
                               Spelling{"scruple", UnitWord::scruple},
                               Spelling{"℈", UnitWord::scruple},
                               Spelling{"grains", UnitWord::grain},
                               Spelling{"grain", UnitWord::grain},
                               Spelling{"grammes", UnitWord::gram},
                               Spelling{"gramme", UnitWord::gram},
                               Spelling{"grams", UnitWord::gram},
                               Spelling{"gram", UnitWord::gram},
                               Spelling{"grms", UnitWord::gram},
                               Spelling{"grm", UnitWord::gram},
                               Spelling{"gms", UnitWord::gram},
                               Spelling{"gm", UnitWord::gram},
                               Spelling{"grs", UnitWord::grain_or_gram},
                               Spelling{"gr", UnitWord::grain_or_gram},
                               Spelling{"gallons", UnitWord::gallon},
                               Spelling{"gallon", UnitWord::gallon},
                               Spelling{"gals", UnitWord::gallon},
                               Spelling{"gal", UnitWord::gallon},
                               Spelling{"kilograms", UnitWord::kilogram},
                               Spelling{"kilogram", UnitWord::kilogram},
                               Spelling{"kilos", UnitWord::kilogram},
                               Spelling{"kg", UnitWord::kilogram},
                               Spelling{"mg", UnitWord::milligram},
                               Spelling{"g", UnitWord::gram},
                               Spelling{"minims", UnitWord::minim},
                               Spelling{"minim", UnitWord::minim},
                               Spelling{"min", UnitWord::minim},
                               Spelling{"pints", UnitWord::pint},
                               Spelling{"pint", UnitWord::pint},
                               Spelling{"pts", UnitWord::pint},
                               Spelling{"pt", UnitWord::pint},
                               Spelling{"quarts", UnitWord::quart},
                               Spelling{"quart", UnitWord::quart},
                               Spelling{"qts", UnitWord::quart},
                               Spelling{"qt", UnitWord::quart},
                               Spelling{"ccs", UnitWord::millilitre},
                               Spelling{"ccm", UnitWord::millilitre},
                               Spelling{"cc", UnitWord::millilitre},
                               Spelling{"ml", UnitWord::millilitre},
                               Spelling{"millilitres", UnitWord::millilitre},
                               Spelling{"milliliters", UnitWord::millilitre},
                               Spelling{"litres", UnitWord::litre},
                               Spelling{"litre", UnitWord::litre},
                               Spelling{"liters", UnitWord::litre},
                               Spelling{"liter", UnitWord::litre},
                               Spelling{"l", UnitWord::litre},
                               Spelling{"parts", UnitWord::part},
                               Spelling{"part", UnitWord::part},
                               Spelling{"drops", UnitWord::drop},
                               Spelling{"drop", UnitWord::drop}};

/// How much of `text` is `word`, whatever its letter case and with points between; 0 where it is another word.
std::size_t spelled(std::string_view text, std::string_view word) {
    std::size_t at = 0;
    for (const char c : word) {
        while (at < text.size() && text[at] == '.' && at > 0) ++at;
        if (at >= text.size() || std::tolower(static_cast<unsigned char>(text[at])) != c) return 0;
        ++at;
    }
    if (at < text.size() && text[at] == '.') ++at;
    const bool goes_on = at < text.size() && std::isalnum(static_cast<unsigned char>(text[at])) != 0;
    return goes_on ? 0 : at;
}

}  // namespace

bool is_metric(UnitWord unit) {
    return unit == UnitWord::milligram || unit == UnitWord::gram || unit == UnitWord::kilogram ||
           unit == UnitWord::millilitre || unit == UnitWord::litre;
}

std::optional<Figure> figure_at(std::string_view text) {
    auto low = mixed_at(text);
    if (!low) return std::nullopt;
    const std::size_t word = range_word_at(text.substr(low->length));
    const auto high = word == 0 ? std::nullopt : mixed_at(text.substr(low->length + word));
    if (!high || high->value <= low->value) return low;
    return Figure{(low->value + high->value) / 2, high->value - low->value, low->length + word + high->length};
}

UnitFound unit_at(std::string_view text) {
    UnitFound found;
    for (const Spelling& one : spellings)
        if (const std::size_t length = spelled(text, one.word); length > found.length) found = {one.unit, length};
    return found;
}

}  // namespace scruple::printed
