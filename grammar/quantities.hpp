// SPDX-License-Identifier: MIT
// Numbers, quantities, ranges, strengths, films and sheets, money, dates.
#pragma once

#include "units.hpp"

namespace scruple::grammar {

// ---- numbers ---------------------------------------------------------------------------------

struct digits : scanned<scan::digits, "0123456789"> {};
struct number : scanned<scan::number, "0123456789+-\xC2\xE2"> {};
struct loose_number : scanned<scan::loose_number, "0123456789.,+-\xC2\xE2"> {};
struct number_said : choice<number, loose_number> {};
struct number_ahead : scanned<scan::number_ahead, "0123456789+-\xC2\xE2"> {};

// ---- quantities and ranges -------------------------------------------------------------------

struct quantity_said : seq<number_said, opt<blanks, choice<unit, loose_unit>>> {};
struct to : choice<seq<gap, lit<"to">, gap>, seq<blanks, one_of<"-–">, blanks>> {};
struct low : seq<quantity_said> {};
struct high : seq<quantity_said> {};
struct range : seq<low, opt<choice<seq<to, high>>>> {};
struct at_range : seq<lit<"at">, gap, range> {};

struct strength : seq<number, blanks, strength_unit> {};
struct percent_sign : one_of<"%"> {};
struct loose_percent : seq<number_said, blanks, percent_sign, edge> {};
struct solvent : seq<form_words> {};
struct strength_said : seq<choice<strength, loose_percent>, opt<gap, lit<"in">, gap, solvent>> {};
struct odd_strength : seq<form_words> {};
struct loose_strength : seq<number_said, blanks, odd_strength> {};

struct currency : scanned<scan::currency, "ABCDEFGHIJKLMNOPQRSTUVWXYZ"> {};
struct money : seq<number_said, blanks, currency> {};
struct measured : seq<number_said, blanks, choice<unit, currency>> {};

// ---- films and sheets ------------------------------------------------------------------------

struct inches
    : seq<lit<"in">, sor<item_end, at<gap, choice<seq<any_of<"in", "through", "per", "from">, edge>, lit<"(">>>>> {};
struct length_unit : choice<seq<any_of<"cm", "mm">, edge>, inches> {};
struct width : seq<number> {};
struct height : seq<number> {};
struct sheet_size : seq<width, blanks, one_of<"x×">, blanks, height, gap, length_unit> {};
struct format_word : seq<word> {};
struct film_format : sor<sheet_size, format_word> {};
struct medium : any_of<"films", "film", "sheets", "sheet"> {};
struct item_count : seq<number_said> {};
struct item_films : seq<item_count, gap, medium, gap, film_format> {};
struct item_area : seq<number, blanks, area_unit> {};
struct item : sor<item_films, item_area> {};
struct listed_item : seq<item> {};
struct items : seq<listed_item, star<sep, listed_item>> {};

struct per_film : seq<medium, gap, film_format> {};
struct per_quantity : seq<quantity_said> {};
struct per : seq<lit<"per">, gap, choice<per_film, per_quantity>> {};

// ---- dates -----------------------------------------------------------------------------------

struct digit : one_of<"0123456789"> {};
struct date : seq<tao::pegtl::rep<4, digit>, one_of<"-">, tao::pegtl::rep<2, digit>, one_of<"-">,
                  tao::pegtl::rep<2, digit>, edge> {};

}  // namespace scruple::grammar
