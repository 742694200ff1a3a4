// SPDX-License-Identifier: MIT
// Names, labels, remarks, forms in parentheses.
#pragma once

#include "scan.hpp"

namespace scruple::grammar {

struct measured;
struct at_range;
struct strength_said;
struct loose_strength;

// ---- blanks and ends -------------------------------------------------------------------------

struct gap : scanned<scan::gap, " \t\xC2"> {};
struct blanks : scanned<skip_gap, " \t\xC2", true> {};
struct edge : scanned<scan::edge, " ", true> {};
struct ends : scanned<scan::ends, " ", true> {};
struct item_end : scanned<scan::item_end, " ", true> {};
struct list_comma : scanned<scan::list_comma, ","> {};
struct line_text : scanned<scan::line_text> {};
struct sep : seq<one_of<",">, gap> {};
struct plus_sign : seq<gap, one_of<"+">, gap> {};
struct arrow : any_of<"->", "→"> {};

// ---- names -----------------------------------------------------------------------------------

struct inside_quotes : scanned<scan::inside_quotes, "", true> {};
struct quoted : seq<one_of<"\"">, inside_quotes, one_of<"\"">> {};
struct quoted_name : seq<quoted> {};
struct word : scanned<scan::word> {};
struct name_word : seq<not_at<choice<measured>>, not_at<lit<"to make">, not_at<ends>, gap>, word> {};
struct first_word : seq<name_word> {};
struct name : choice<quoted_name, seq<first_word, star<gap, name_word>>> {};

/// A name that ends at the first place where the whole rest fits.
template <class Rest>
struct name_up_to : choice<seq<quoted_name, Rest>, seq<first_word, until<Rest, gap, name_word>>> {};

struct lone_word : seq<word> {};
struct label : choice<quoted, lone_word> {};
struct words : scanned<scan::words> {};
struct free_text : sor<seq<quoted, ends>, line_text> {};
struct from : seq<lit<"from">, gap, quoted> {};

// ---- forms -----------------------------------------------------------------------------------

struct form_edge : sor<at<blanks, one_of<")">>, at<list_comma>> {};
struct form_word : scanned<scan::form_word> {};
struct form_words : seq<form_word, star<gap, form_word>> {};
struct form_named : seq<not_at<one_of<"0123456789">>, form_words, form_edge> {};
struct saturated_word : lit<"saturated"> {};
struct saturated_at : seq<at_range> {};
struct saturated : seq<saturated_word, opt<gap, saturated_at>, form_edge> {};
struct form_strength : seq<strength_said, form_edge> {};
struct form_loose : seq<loose_strength, form_edge> {};
struct form_item : sor<saturated, form_strength, form_named, form_loose> {};
struct form_open : one_of<"("> {};
struct form_given : seq<form_open, blanks, form_item, star<sep, form_item>, blanks, one_of<")">> {};
struct substance : seq<name, opt<gap, form_given>> {};

}  // namespace scruple::grammar
