// SPDX-License-Identifier: MIT
#include <array>
#include <cctype>
#include <string>

#include "notation.hpp"

namespace scruple::printed {
namespace {

struct Spelling {
    std::string_view word;  ///< lower case, without points
    UnitWord unit;
};
// The spellings that formularies use; common practice, no source.
constexpr std::array spellings{Spelling{"fluid ounces", UnitWord::fluid_ounce},
                               Spelling{"fluid ozs", UnitWord::fluid_ounce},
                               Spelling{"liquid ounces", UnitWord::fluid_ounce},
                               Spelling{"liquid ounce", UnitWord::fluid_ounce},
                               Spelling{"liq oz", UnitWord::fluid_ounce},
                               Spelling{"fluidounces", UnitWord::fluid_ounce},
                               Spelling{"fluidounce", UnitWord::fluid_ounce},
                               Spelling{"floz", UnitWord::fluid_ounce},
                               Spelling{"fl drms", UnitWord::fluid_drachm},
                               Spelling{"fl drachms", UnitWord::fluid_drachm},
                               Spelling{"fl drachm", UnitWord::fluid_drachm},
                               Spelling{"fl drams", UnitWord::fluid_drachm},
                               Spelling{"fl dram", UnitWord::fluid_drachm},
                               Spelling{"drms", UnitWord::drachm},
                               Spelling{"drm", UnitWord::drachm},
                               Spelling{"scrup", UnitWord::scruple},
                               Spelling{"mins", UnitWord::minim},
                               Spelling{"♏", UnitWord::minim},
                               Spelling{"mls", UnitWord::millilitre},
                               Spelling{"millilitre", UnitWord::millilitre},
                               Spelling{"milliliter", UnitWord::millilitre},
                               Spelling{"cm3", UnitWord::millilitre},
                               Spelling{"cm³", UnitWord::millilitre},
                               Spelling{"cubic centimetres", UnitWord::millilitre},
                               Spelling{"cubic centimeters", UnitWord::millilitre},
                               Spelling{"milligrams", UnitWord::milligram},
                               Spelling{"milligrammes", UnitWord::milligram},
                               Spelling{"ltr", UnitWord::litre},
                               Spelling{"lit", UnitWord::litre},
                               Spelling{"gtt", UnitWord::drop},
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
                               Spelling{"m", UnitWord::minim},
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
        // Points between the letters, and what a scan makes of them: `c. c.`
        while (at > 0 && at < text.size() && text[at] == '.')
            at += text.substr(at).starts_with(". ") && c != ' ' ? 2 : 1;
        if (at >= text.size() || std::tolower(static_cast<unsigned char>(text[at])) != c) return 0;
        ++at;
    }
    if (at < text.size() && text[at] == '.') ++at;
    const bool goes_on = at < text.size() && std::isalnum(static_cast<unsigned char>(text[at])) != 0;
    return goes_on ? 0 : at;
}

/// Words that say whose measure it is, before the unit or behind it; in lower case, without points.
struct WhoseWord {
    std::string_view word;
    Whose whose;
};
constexpr std::array whose_words{WhoseWord{"imperial", {Fluid::imperial, {}}},
                                 WhoseWord{"imp", {Fluid::imperial, {}}},
                                 WhoseWord{"british", {Fluid::imperial, {}}},
                                 WhoseWord{"brit", {Fluid::imperial, {}}},
                                 WhoseWord{"english", {Fluid::imperial, {}}},
                                 WhoseWord{"uk", {Fluid::imperial, {}}},
                                 WhoseWord{"us", {Fluid::us, {}}},
                                 WhoseWord{"usa", {Fluid::us, {}}},
                                 WhoseWord{"american", {Fluid::us, {}}},
                                 WhoseWord{"amer", {Fluid::us, {}}},
                                 WhoseWord{"avoirdupois", {{}, Ounce::avoirdupois}},
                                 WhoseWord{"avoir", {{}, Ounce::avoirdupois}},
                                 WhoseWord{"avdp", {{}, Ounce::avoirdupois}},
                                 WhoseWord{"av", {{}, Ounce::avoirdupois}},
                                 WhoseWord{"apothecaries", {{}, Ounce::apothecaries}},
                                 WhoseWord{"apothecary", {{}, Ounce::apothecaries}},
                                 WhoseWord{"apoth", {{}, Ounce::apothecaries}},
                                 WhoseWord{"ap", {{}, Ounce::apothecaries}},
                                 WhoseWord{"troy", {{}, Ounce::apothecaries}}};

UnitFound bare_unit_at(std::string_view text) {
    UnitFound found;
    for (const Spelling& one : spellings)
        if (const std::size_t length = spelled(text, one.word); length > found.length) found = {one.unit, length, {}};
    return found;
}

bool is_old(UnitWord unit) {
    return unit != UnitWord::none && !is_metric(unit) && unit != UnitWord::part && unit != UnitWord::drop;
}

}  // namespace

bool is_metric(UnitWord unit) {
    return unit == UnitWord::milligram || unit == UnitWord::gram || unit == UnitWord::kilogram ||
           unit == UnitWord::millilitre || unit == UnitWord::litre;
}

WhoseFound whose_at(std::string_view text) {
    WhoseFound found;
    const std::size_t open = text.starts_with('(') ? 1 : 0;
    for (const WhoseWord& one : whose_words)
        if (const std::size_t length = spelled(text.substr(open), one.word); length + open > found.length && length > 0)
            found = {one.whose, length + open};
    if (found.length > 0 && open > 0) {
        if (!text.substr(found.length).starts_with(')')) return {};
        ++found.length;
    }
    return found;
}

UnitFound unit_at(std::string_view text) {
    const WhoseFound before = whose_at(text);
    std::size_t skipped = before.length;
    if (skipped > 0 && text.substr(skipped).starts_with(' ')) ++skipped;
    UnitFound found = bare_unit_at(text.substr(skipped));
    if (found.length == 0) return {};
    found.length += skipped;
    found.whose = before.whose;
    if (!is_old(found.unit)) return found;
    const std::size_t blank = text.substr(found.length).starts_with(' ') ? 1 : 0;
    if (const WhoseFound behind = whose_at(text.substr(found.length + blank)); behind.length > 0) {
        found.whose = behind.whose;
        found.length += blank + behind.length;
    }
    return found;
}

}  // namespace scruple::printed
