// SPDX-License-Identifier: MIT
// What is said of a recipe, a chemical, a bench, a conversion.
#pragma once

#include "quantities.hpp"

namespace scruple::grammar {

// ---- of a recipe and its solutions -----------------------------------------------------------

struct is_a : seq<lit<"is">, gap, any_of<"an", "a">, gap, words, ends> {};
struct strength_is : seq<lit<"strength">, gap, words, ends> {};
struct source : seq<lit<"source">, gap, free_text, ends> {};
struct caution : seq<lit<"caution">, gap, free_text, ends> {};
struct note : seq<lit<"note">, gap, free_text, ends> {};
struct assumed : seq<lit<"assumed">, gap, free_text, ends> {};

struct source_from : seq<from> {};
struct kept_how : seq<words> {};
struct keeping : seq<range, opt<gap, not_at<from>, kept_how>> {};
struct keeps : seq<lit<"keeps">, gap, keeping, star<sep, keeping>, opt<gap, source_from>, ends> {};
struct use_within : seq<lit<"use within">, gap, quantity_said, ends> {};

struct one_shot : seq<lit<"one-shot">, edge> {};
struct reused : seq<lit<"reused">, edge> {};
struct items_per : seq<item, gap, per> {};
struct at_least : seq<lit<"at least">, gap> {};
struct not_per : not_at<lit<"per">, gap> {};
struct volume_of : choice<quoted_name, seq<not_per, first_word, star<gap, not_per, name_word>>> {};
struct volume : seq<quantity_said> {};
struct volume_per : seq<opt<at_least>, volume, opt<gap, volume_of>, gap, per> {};
struct carried_per : seq<volume, gap, lit<"carried over">, gap, per> {};
struct longer_per : seq<volume, gap, lit<"longer">, gap, per> {};
struct capacity_from : seq<from> {};
struct capacity_item : choice<one_shot, reused, items_per, carried_per, longer_per, volume_per, capacity_from> {};
struct capacity : seq<lit<"capacity">, gap, capacity_item, star<sep, capacity_item>, ends> {};

struct variant : seq<label> {};
struct variants : seq<lit<"variants">, gap, variant, star<sep, variant>, ends> {};

struct ratio_number : plus<one_of<"0123456789.,">> {};
struct colon_ratio : seq<ratio_number, plus<blanks, one_of<":">, blanks, ratio_number>, edge> {};
struct part_count : seq<number_said> {};
struct parts : sor<colon_ratio, seq<part_count, plus<blanks, one_of<"+">, blanks, part_count>>> {};
struct diluted : choice<quoted_name, seq<first_word, star<not_at<gap, parts, ends>, gap, name_word>>> {};
struct dilute : seq<lit<"dilute">, gap, diluted, gap, parts, ends> {};
struct mix : seq<lit<"mix">, gap, diluted, star<plus_sign, diluted>, gap, parts, ends> {};

struct replenish_per : seq<per> {};
struct at_most_volume : seq<quantity_said> {};
struct at_most : seq<lit<"at most">, gap, at_most_volume, gap, per> {};
struct replenish : seq<lit<"replenish">, gap, volume, gap, replenish_per, opt<sep, at_most>, ends> {};

struct ph_bound : seq<number_said> {};
struct expect_ph : seq<lit<"expect pH">, gap, ph_bound, opt<to, ph_bound>, ends> {};
struct content_rest : seq<gap, opt<form_given, gap>, range, ends> {};
struct expect_content : seq<lit<"expect">, gap, name_up_to<content_rest>> {};

// ---- of a chemical ---------------------------------------------------------------------------

struct other_name : seq<substance> {};
struct also : seq<lit<"also">, gap, other_name, star<sep, other_name>, ends> {};
struct formula : scanned<scan::formula, "ABCDEFGHIJKLMNOPQRSTUVWXYZ(["> {};
struct form_formula : seq<formula> {};
struct form_name : choice<quoted_name, seq<first_word, star<not_at<gap, formula, item_end>, gap, name_word>>> {};
struct form_also : seq<lit<"also">, gap, words> {};
struct form_sold_at : seq<strength_said, item_end> {};
struct form_detail : choice<form_also, form_sold_at> {};
struct form : seq<lit<"form">, gap, form_name, gap, form_formula, star<sep, form_detail>, ends> {};
struct listed : seq<words> {};
struct grade : seq<lit<"grade">, gap, listed, star<sep, listed>, opt<gap, source_from>, ends> {};
struct acts_as : seq<lit<"acts as">, gap, listed, star<sep, listed>, opt<gap, source_from>, ends> {};

struct coefficient : seq<digits, gap> {};
struct ion : seq<opt<coefficient>, formula> {};
struct ions : seq<lit<"ions">, gap, ion, star<plus_sign, ion>, ends> {};

struct liquid_word : seq<not_at<any_of<"at", "from">, gap>, word> {};
struct liquid : seq<liquid_word, star<gap, liquid_word>> {};
struct dissolved_in : seq<quantity_said> {};
struct fact_at : seq<at_range> {};
struct dissolves : seq<lit<"dissolves">, gap, volume, opt<gap, form_given>, gap, lit<"in">, gap, dissolved_in, gap,
                       liquid, opt<gap, fact_at>, opt<gap, source_from>, ends> {};
struct property_value : seq<range> {};
struct density
    : seq<lit<"density">, gap, property_value, opt<gap, form_given>, opt<gap, fact_at>, opt<gap, source_from>, ends> {};
struct takes_up
    : seq<lit<"takes up">, gap, property_value, gap, per, opt<gap, form_given>, opt<gap, source_from>, ends> {};

struct hazard_code : seq<any_of<"EUH", "H">, scanned<scan::code>> {};
struct hazard : seq<lit<"hazard">, gap, hazard_code, star<sor<sep, gap>, hazard_code>, opt<gap, source_from>, ends> {};
struct cas_number : seq<digits, one_of<"-">, digits, one_of<"-">, digit> {};
struct cas : seq<lit<"cas">, gap, cas_number, ends> {};

// ---- of a chemical in water: what it falls into there, and how strongly -----------------------

struct ion_side : seq<ion, star<plus_sign, ion>> {};
struct reacts_to : seq<arrow> {};
struct item_or_from : sor<item_end, at<gap, from>> {};
struct pk_value : seq<number_said> {};
struct pk : seq<lit<"pK">, gap, pk_value> {};
struct enthalpy : seq<number_said, blanks, lit<"kJ/mol">, edge> {};
struct heat_capacity : seq<number_said, blanks, lit<"J/mol K">, edge> {};
struct give_or_take : seq<lit<"give or take">, gap, number_said, item_or_from> {};
struct in_air : seq<lit<"in air">, gap, number_said, blanks, lit<"atm">, edge> {};
struct pk_detail : choice<enthalpy, heat_capacity, give_or_take, in_air> {};
struct in_water : seq<lit<"in water">, gap, ion_side, gap, reacts_to, gap, ion_side, gap, pk, star<sep, pk_detail>,
                      opt<gap, source_from>, ends> {};
struct escapes : seq<lit<"escapes">, gap, formula, gap, pk, star<sep, pk_detail>, opt<gap, source_from>, ends> {};
struct first_ion : seq<formula> {};
struct epsilon : seq<number_said> {};
struct pair : seq<lit<"pair">, gap, first_ion, gap, lit<"with">, gap, formula, gap, epsilon, blanks, lit<"kg/mol">,
                  edge, opt<sep, give_or_take>, opt<gap, source_from>, ends> {};
struct bystander_one : seq<formula> {};
struct bystander : seq<lit<"bystander">, gap, bystander_one, star<sep, bystander_one>, opt<gap, source_from>, ends> {};
struct salt_of : seq<lit<"salt of">, gap, name, ends> {};

// ---- of a conversion, a bench, a supplier ----------------------------------------------------

struct term : seq<opt<coefficient>, substance> {};
struct side : seq<term, star<plus_sign, term>> {};
struct reaction : seq<lit<"reaction">, gap, side, gap, reacts_to, gap, side, ends> {};
struct excess
    : seq<lit<"excess">, gap, substance, sep, number_said, blanks, lit<"%">, gap, lit<"more than it needs">, ends> {};
struct vessel : seq<lit<"vessel">, gap, number_said, gap, lit<"times the volume">, ends> {};
struct area : seq<lit<"area">, gap, quantity_said, opt<gap, source_from>, ends> {};

struct first_mark : seq<quantity_said> {};
struct second_mark : seq<quantity_said> {};
struct balance : seq<lit<"balance">, gap, first_mark, gap, lit<"up to">, gap, second_mark, ends> {};
struct measure_word : any_of<"graduate", "syringe", "jug"> {};
struct measure : seq<measure_word, gap, first_mark, gap, lit<"by">, gap, second_mark, ends> {};
struct drops : seq<number_said> {};
struct dropper
    : seq<lit<"dropper">, gap, drops, gap, lit<"drops">, gap, lit<"per">, gap, quantity_said, gap, liquid, ends> {};
struct bottle_count : seq<number_said, gap, lit<"of">, gap> {};
struct bottle : seq<opt<bottle_count>, quantity_said> {};
struct bottles : seq<lit<"bottle">, gap, bottle, star<sep, bottle>, ends> {};
struct pace_word : any_of<"weigh", "measure", "stir", "filter", "make up", "bottle"> {};
struct pace : seq<lit<"pace">, gap, quantity_said, gap, lit<"to">, gap, pace_word, ends> {};
struct postage_charge : seq<money> {};
struct free_over : seq<lit<"none over">, gap, money> {};
struct postage : seq<lit<"postage">, gap, postage_charge, opt<sep, free_over>, ends> {};

// ---- of what must not meet ------------------------------------------------------------------------

struct met_role : seq<lit<"acts as">, gap, words> {};
struct met_substance : seq<substance> {};
struct met : seq<not_at<lit<"at least">, gap>, choice<met_role, met_substance>> {};
struct met_least : seq<lit<"at least">, gap, quantity_said, item_end> {};
struct one_of_these : seq<lit<"one of">, gap, met, star<sep, met>, opt<sep, met_least>, ends> {};
struct in_doubt : seq<lit<"in doubt">, gap, met, star<sep, met>, ends> {};
struct ph_limit_word : any_of<"below pH", "above pH"> {};
struct ph_limit : seq<ph_limit_word, gap, number_said, ends> {};
struct warmer_than : seq<lit<"warmer than">, gap, quantity_said, ends> {};
struct lethal : seq<lit<"lethal">, gap, free_text, ends> {};
struct harmful : seq<lit<"harmful">, gap, free_text, ends> {};

struct not_because : not_at<lit<"because">, edge> {};
struct accepted : choice<quoted_name, seq<not_because, first_word, star<gap, not_because, name_word>>> {};
struct because : seq<lit<"because">, gap, quoted> {};
struct accept : seq<lit<"accept">, gap, accepted, opt<gap, because>, ends> {};

/// Of a formula as it stands in a book.
struct book : seq<lit<"book">, gap, free_text, ends> {};
struct reading_said : seq<accepted, opt<gap, form_given>> {};
struct reading : seq<lit<"reading">, gap, reading_said, opt<gap, because>, ends> {};
struct printed_text : scanned<scan::printed_text, "", true> {};
struct printed_line : seq<one_of<"|">, blanks, printed_text> {};

struct fact : choice<is_a, strength_is, source, caution, note, keeps, use_within, capacity, variants, dilute, mix,
                     replenish, expect_ph, expect_content, also, form, grade, ions, acts_as, dissolves, density,
                     takes_up, hazard, cas, in_water, escapes, pair, bystander, salt_of, reaction, excess, vessel, area,
                     balance, measure, dropper, bottles, pace, postage, one_of_these, in_doubt, ph_limit, warmer_than,
                     lethal, harmful, accept, assumed, book, reading, printed_line> {};
struct fact_word : any_of<"is", "strength", "source", "caution", "note", "keeps", "use within", "capacity", "variants",
                          "dilute", "mix", "replenish", "expect", "also", "form", "grade", "ions", "acts as",
                          "dissolves", "density", "takes up", "hazard", "cas", "in water", "escapes", "pair",
                          "bystander", "salt of", "reaction", "excess", "vessel", "area", "balance", "graduate",
                          "syringe", "jug", "dropper", "bottle", "pace", "postage", "one of", "in doubt", "below pH",
                          "above pH", "warmer than", "lethal", "harmful", "accept", "assumed", "book", "reading"> {};

}  // namespace scruple::grammar
