// SPDX-License-Identifier: MIT
// A block word with its name and nothing else.
#pragma once

#include "quantities.hpp"

namespace scruple::grammar {

struct title_word
    : any_of<"recipe", "chemical", "supplier", "process", "plan", "bench", "format", "meeting", "printed"> {};
struct titled : seq<title_word, gap, name, ends> {};
struct label_word : any_of<"part", "bath", "working", "replenisher", "log"> {};
struct labelled : seq<label_word, gap, label, ends> {};
struct untitled_word : any_of<"working", "replenisher", "log"> {};
struct untitled : seq<untitled_word, ends> {};
struct conversion_word : lit<"conversion of"> {};
struct conversion_of : seq<conversion_word, gap, substance, ends> {};
struct heading : choice<titled, labelled, untitled, conversion_of> {};

/// `recipe Lantern 500 ml`: a recipe is no ingredient, so the amount is too much.
struct sized_word : lit<"recipe"> {};
struct size : seq<at<choice<measured, seq<lit<"to make">, gap>>>, line_text> {};
struct sized_title : seq<sized_word, gap, name, gap, size> {};

struct odd_title : seq<line_text> {};
struct bad_title : seq<choice<conversion_word, title_word>, sor<ends, seq<gap, odd_title>>> {};
struct bad_label : seq<label_word, sor<ends, seq<gap, odd_title>>> {};

}  // namespace scruple::grammar
