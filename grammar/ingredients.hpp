// SPDX-License-Identifier: MIT
// Named lines: ingredients, baths of a process, prices; and amounts that only the checker can explain.
#pragma once

#include "entries.hpp"
#include "steps.hpp"

namespace scruple::grammar {

// ---- amounts ---------------------------------------------------------------------------------

struct dose : seq<number, blanks, dose_unit> {};
struct dose_low : seq<dose> {};
struct dose_high : seq<dose> {};
struct bare_low : seq<number> {};
struct share_label : seq<not_at<joining_word, edge>, label> {};
struct divided : seq<dose_low, gap, share_label> {};
struct divided_first : seq<gap, share_label> {};
struct counted : sor<seq<dose_low, opt<choice<seq<to, dose_high>, seq<divided_first, star<sep, divided>>>>>,
                     seq<bare_low, to, dose_high>> {};
struct to_make : seq<lit<"to make">, gap, dose_low> {};
struct the_rest : seq<lit<"the rest">, edge> {};
struct question : one_of<"?"> {};
struct unknown_amount : seq<question, blanks, dose_unit> {};
struct about : seq<lit<"about">, gap, dose_low> {};
struct amount : choice<to_make, the_rest, unknown_amount, about, counted> {};

struct time : seq<number, blanks, time_unit> {};
struct time_low : seq<time> {};
struct time_high : seq<time> {};
struct time_range : sor<seq<time_low, opt<to, time_high>>, seq<bare_low, to, time_high>> {};

// ---- details ---------------------------------------------------------------------------------

struct warmth_end : sor<item_end, at<gap, lit<"per">, gap>> {};
struct warmth : seq<at_range, warmth_end> {};
struct odd_warmth : seq<lit<"at">, gap, words> {};
struct amount_at : sor<warmth, odd_warmth> {};
struct reagent_quantity : seq<quantity_said> {};
struct per_reagent : seq<lit<"per">, gap, reagent_quantity, gap, substance> {};
struct pinch_now : lit<"a pinch now"> {};
struct some_now : seq<quantity_said, gap, lit<"now">> {};
struct made_word : lit<"by conversion"> {};
struct made_from : choice<quoted, words> {};
struct by_conversion : seq<made_word, opt<gap, lit<"from">, gap, made_from>> {};
struct optional_word : lit<"optional"> {};
struct reason : seq<quoted> {};
struct optional : seq<optional_word, opt<gap, reason>> {};
struct later_at : seq<at_range> {};
struct detail
    : sor<seq<choice<pinch_now, some_now, by_conversion, optional, later_at, step_remark>, item_end>, unknown_detail> {
};
struct added_detail : seq<detail> {};
struct details
    : seq<opt<choice<seq<gap, amount_at>>>, opt<choice<seq<gap, per_reagent>>>, star<choice<seq<sep, added_detail>>>> {
};

// ---- named lines -----------------------------------------------------------------------------

struct ingredient : seq<amount, details, ends> {};
struct process_at : seq<at_range> {};
struct process_entry : seq<time_range, opt<gap, process_at>, star<sep, listed>, ends> {};
struct pack : seq<quantity_said> {};
struct price_entry : seq<pack, gap, money, ends> {};
struct named_kind : choice<ingredient, process_entry, price_entry> {};
struct named_rest : seq<gap, choice<seq<form_given, gap, named_kind>, named_kind>> {};
struct named : name_up_to<named_rest> {};

struct loose_to_make : seq<lit<"to make">, gap, low> {};
struct loose_about : seq<lit<"about">, gap, low> {};
struct loose_unknown : seq<question, opt<blanks, loose_unit>> {};
struct loose_divided : seq<low, gap, share_label> {};
struct loose_shares : seq<loose_divided, plus<sep, loose_divided>> {};
struct loose_range : seq<range> {};
struct loose_amount : choice<loose_to_make, loose_about, loose_unknown, loose_shares, loose_range> {};
struct loose_ingredient : seq<loose_amount, details, ends> {};
struct loose_rest : seq<gap, choice<seq<form_given, gap, loose_ingredient>, loose_ingredient>> {};
struct loosely_named : name_up_to<loose_rest> {};

}  // namespace scruple::grammar
