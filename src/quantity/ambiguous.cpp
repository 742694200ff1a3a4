// SPDX-License-Identifier: MIT
#include <array>

#include "scruple/quantity/unit.hpp"
#include "spelling.hpp"

namespace scruple::quantity {

namespace {

constexpr std::string_view ounces =
    "the avoirdupois ounce (28.35 g), the apothecaries' ounce (31.10 g), or a fluid ounce, US (29.57 ml) or UK "
    "(28.41 ml)";
constexpr std::string_view write_ounces = "`oz av`, `oz ap`, `fl oz us` or `fl oz uk`";
constexpr std::string_view pounds = "the avoirdupois pound (453.6 g) or the apothecaries' pound (373.2 g)";
constexpr std::string_view write_pounds = "`lb av` or `lb ap`";
constexpr std::string_view drams =
    "the avoirdupois dram (1.772 g), the apothecaries' drachm (3.888 g), or a fluid drachm, US (3.697 ml) or UK "
    "(3.552 ml)";
constexpr std::string_view write_drams = "`dr av`, `dr ap`, `fl dr us` or `fl dr uk`";
constexpr std::string_view fluid_ounces = "the US fluid ounce (29.57 ml) or the UK one (28.41 ml)";
constexpr std::string_view write_fluid_ounces = "`fl oz us` or `fl oz uk`";
constexpr std::string_view fluid_drachms = "the US fluid drachm (3.697 ml) or the UK one (3.552 ml)";
constexpr std::string_view write_fluid_drachms = "`fl dr us` or `fl dr uk`";
constexpr std::string_view minims = "the US minim (0.06161 ml) or the UK one (0.05919 ml)";
constexpr std::string_view write_minims = "`minims us` or `minims uk`";
constexpr std::string_view gills = "the US gill (118.3 ml) or the UK one (142.1 ml)";
constexpr std::string_view write_gills = "`gills us` or `gills uk`";
constexpr std::string_view pints = "the US pint (473.2 ml) or the UK one (568.3 ml)";
constexpr std::string_view write_pints = "`pt us` or `pt uk`";
constexpr std::string_view quarts = "the US quart (946.4 ml) or the UK one (1137 ml)";
constexpr std::string_view write_quarts = "`qt us` or `qt uk`";
constexpr std::string_view gallons = "the US gallon (3785 ml) or the UK one (4546 ml)";
constexpr std::string_view write_gallons = "`gal us` or `gal uk`";
constexpr std::string_view grains = "the grain (0.06480 g) or the gram (1 g), fifteen times as much";
constexpr std::string_view write_grains = "`grains` or `g`";
constexpr std::string_view m = "minims, US (0.06161 ml) or UK (0.05919 ml), or minutes (60 s)";
constexpr std::string_view write_m = "`minims us`, `minims uk` or `min`";
constexpr std::string_view percents =
    "grams in 100 ml (10 g/l), a share of the weight (0.01 g in 1 g), or a share of the volume (0.01 ml in 1 ml)";
constexpr std::string_view write_percents = "`% w/v`, `% w/w` or `% v/v`";
constexpr std::string_view degrees = "degrees Celsius (1 °C) or degrees Fahrenheit (0.5556 °C a step)";
constexpr std::string_view write_degrees = "`°C` or `°F`";

// `drachm` is not here: spelt so it is the apothecaries' 60 grains. Nor are `min`, the minute, and `C` and `F`.
constexpr std::array table = {
    AmbiguousUnit{"oz", ounces, write_ounces},
    AmbiguousUnit{"ounce", ounces, write_ounces},
    AmbiguousUnit{"ounces", ounces, write_ounces},
    AmbiguousUnit{"lb", pounds, write_pounds},
    AmbiguousUnit{"lbs", pounds, write_pounds},
    AmbiguousUnit{"pound", pounds, write_pounds},
    AmbiguousUnit{"pounds", pounds, write_pounds},
    AmbiguousUnit{"dr", drams, write_drams},
    AmbiguousUnit{"dram", drams, write_drams},
    AmbiguousUnit{"drams", drams, write_drams},
    AmbiguousUnit{"fl oz", fluid_ounces, write_fluid_ounces},
    AmbiguousUnit{"fluid ounce", fluid_ounces, write_fluid_ounces},
    AmbiguousUnit{"fluid ounces", fluid_ounces, write_fluid_ounces},
    AmbiguousUnit{"fl dr", fluid_drachms, write_fluid_drachms},
    AmbiguousUnit{"fluid drachm", fluid_drachms, write_fluid_drachms},
    AmbiguousUnit{"fluid drachms", fluid_drachms, write_fluid_drachms},
    AmbiguousUnit{"fluid dram", fluid_drachms, write_fluid_drachms},
    AmbiguousUnit{"fluid drams", fluid_drachms, write_fluid_drachms},
    AmbiguousUnit{"minim", minims, write_minims},
    AmbiguousUnit{"minims", minims, write_minims},
    AmbiguousUnit{"gill", gills, write_gills},
    AmbiguousUnit{"gills", gills, write_gills},
    AmbiguousUnit{"pt", pints, write_pints},
    AmbiguousUnit{"pint", pints, write_pints},
    AmbiguousUnit{"pints", pints, write_pints},
    AmbiguousUnit{"qt", quarts, write_quarts},
    AmbiguousUnit{"quart", quarts, write_quarts},
    AmbiguousUnit{"quarts", quarts, write_quarts},
    AmbiguousUnit{"gal", gallons, write_gallons},
    AmbiguousUnit{"gallon", gallons, write_gallons},
    AmbiguousUnit{"gallons", gallons, write_gallons},
    AmbiguousUnit{"gr", grains, write_grains},
    AmbiguousUnit{"grs", grains, write_grains},
    AmbiguousUnit{"grm", grains, write_grains},
    AmbiguousUnit{"grms", grains, write_grains},
    AmbiguousUnit{"m", m, write_m},
    AmbiguousUnit{"%", percents, write_percents},
    AmbiguousUnit{"°", degrees, write_degrees},
    AmbiguousUnit{"deg", degrees, write_degrees},
    AmbiguousUnit{"degree", degrees, write_degrees},
    AmbiguousUnit{"degrees", degrees, write_degrees},
};

}  // namespace

std::span<const AmbiguousUnit> all_ambiguous() {
    return table;
}

const AmbiguousUnit* find_ambiguous(std::string_view spelling) {
    if (spelling.ends_with('.')) spelling.remove_suffix(1);
    const auto key = folded(spelling);
    if (!key) return nullptr;
    for (const AmbiguousUnit& unit : table)
        if (folded(unit.spelling) == key) return &unit;
    return nullptr;
}

}  // namespace scruple::quantity
