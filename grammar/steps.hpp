// SPDX-License-Identifier: MIT
// What is done at the bench, and what is said of it after a comma.
#pragma once

#include "facts.hpp"

namespace scruple::grammar {

// ---- details ---------------------------------------------------------------------------------

struct stirring_every : seq<lit<"stirring every">, gap, quantity_said> {};
struct stirring : lit<"stirring"> {};
struct slowly : lit<"slowly"> {};
struct not_above : seq<lit<"not above">, gap, quantity_said> {};
struct until_ph : seq<lit<"pH">, gap, number_said, item_end> {};
struct until_words : seq<words> {};
struct until_said : seq<lit<"until">, gap, sor<until_ph, until_words>> {};
struct remark : seq<quoted> {};
struct step_remark : choice<stirring_every, stirring, slowly, not_above, until_said, remark> {};
struct unknown_detail : seq<words> {};
struct step_detail : sor<seq<step_remark, item_end>, unknown_detail> {};
struct listed_detail : seq<step_detail> {};
struct step_details : star<sep, listed_detail> {};

// ---- steps -----------------------------------------------------------------------------------

struct pause_verb : any_of<"stir", "wait", "stand", "filter"> {};
struct step_range : seq<range> {};
struct first_detail : seq<until_said> {};
struct pause : seq<pause_verb, opt<gap, step_range>, opt<gap, first_detail>, step_details, ends> {};
struct temper_verb : any_of<"cool", "warm"> {};
struct toward : any_of<"to", "below", "above"> {};
struct temper : seq<temper_verb, gap, toward, gap, step_range, step_details, ends> {};
struct limit_word : lit<"not above"> {};
struct limit : seq<limit_word, gap, step_range, ends> {};
struct do_this : seq<lit<"do">, gap, quoted, ends> {};
struct apart : seq<lit<"apart">, gap, label, ends> {};
struct share_word : any_of<"half", "a third", "a quarter", "the rest"> {};
struct share_volume : seq<quantity_said> {};
struct share : seq<choice<share_word, share_volume>, gap, lit<"of">, gap> {};
struct vessel_label : seq<label> {};
struct pour_in : seq<lit<"pour in">, gap, opt<share>, vessel_label, step_details, ends> {};
struct set_aside : seq<lit<"set aside">, gap, label, ends> {};
struct step : choice<pause, temper, limit, do_this, apart, pour_in, set_aside> {};
struct vessel_word : any_of<"do", "apart", "pour in", "set aside"> {};

}  // namespace scruple::grammar
