// SPDX-License-Identifier: MIT
// Units as they are spelt; letter case matters. Longer spellings stand before their own beginnings.
#pragma once

#include "words.hpp"

namespace scruple::grammar {

struct mass_unit : sor<seq<any_of<"kg", "mg", "grains", "grain", "g", "scruples", "scruple">, edge>,
                       seq<any_of<"drachms", "drachm", "dr">, gap, lit<"ap">, edge>,
                       seq<any_of<"drachms", "drachm">, edge>, seq<any_of<"drams", "dram", "dr">, gap, lit<"av">, edge>,
                       seq<any_of<"ounces", "ounce", "oz", "pounds", "pound", "lb">, gap, any_of<"av", "ap">, edge>> {};
struct volume_name : any_of<"minims", "minim", "gills", "gill", "pints", "pint", "pt", "quarts", "quart", "qt",
                            "gallons", "gallon", "gal"> {};
struct volume_unit : sor<seq<any_of<"ml", "mL", "l", "L", "cc">, edge>,
                         seq<choice<lit<"fl oz">, lit<"fl dr">, volume_name>, gap, any_of<"us", "uk">, edge>> {};
struct strength_unit
    : sor<seq<lit<"%">, blanks, any_of<"w/v", "w/w", "v/v">, edge>,
          seq<any_of<"g/l", "g/L", "mg/l", "mg/L", "mol/l", "mol/L", "mmol/l", "mmol/L", "ppm">, edge>> {};
struct temperature_unit : seq<any_of<"°C", "C", "°F", "F">, edge> {};
struct amount_unit : seq<any_of<"mol", "mmol">, edge> {};
struct area_unit : seq<any_of<"cm²", "cm2", "m²", "m2", "sq in">, edge> {};
struct density_unit : seq<any_of<"g/ml", "g/mL", "kg/l", "kg/L">, edge> {};
struct count_unit : seq<any_of<"drops", "drop">, edge> {};
struct time_unit
    : seq<any_of<"s", "min", "h", "days", "day", "weeks", "week", "months", "month", "years", "year">, edge> {};
struct dose_unit : choice<mass_unit, volume_unit, strength_unit, amount_unit, area_unit, density_unit, count_unit> {};
struct unit : choice<dose_unit, temperature_unit, time_unit> {};

// ---- what stands where a unit belongs --------------------------------------------------------

struct joining_word : any_of<"at", "per", "to", "now", "up", "by", "in", "from", "for", "of", "through"> {};
struct unit_word : scanned<scan::unit_word> {};
struct unit_tail : any_of<"oz", "dr", "av", "ap", "us", "uk", "US", "UK", "imp", "troy", "w/v", "w/w", "v/v"> {};
struct loose_unit : seq<not_at<joining_word, edge>, unit_word, star<gap, unit_tail, edge>> {};

}  // namespace scruple::grammar
