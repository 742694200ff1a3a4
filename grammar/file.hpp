// SPDX-License-Identifier: MIT
// A file is lines; a line is one statement at most.
#pragma once

#include "headings.hpp"
#include "ingredients.hpp"

namespace scruple::grammar {

struct bare : seq<substance, ends> {};
struct unread : seq<line_text> {};
struct overlong : seq<scanned<scan::more_than_longest, "", true>, line_text> {};

/// A fact word or a step verb with a figure after it is that fact or step and nothing else.
struct step_word : choice<pause_verb, temper_verb, limit_word> {};
struct bad_figure : choice<seq<fact_word, gap, number_ahead, line_text>, seq<step_word, gap, number_ahead, line_text>,
                           seq<step_word, gap, choice<toward, lit<"until">>, gap, line_text>, seq<temper_verb, ends>,
                           seq<choice<date, each_day>, sor<ends, seq<gap, line_text>>>> {};
struct bad_keyword : seq<choice<fact_word, limit_word, vessel_word>, sor<ends, seq<gap, line_text>>> {};

struct statement
    : seq<not_at<one_of<"#">>, sor<overlong, choice<heading, fact, step, entry, bad_figure, sized_title, named,
                                                    bad_title, loosely_named, bad_label, bad_keyword, bare, unread>>> {
};

struct bom : lit<"\uFEFF"> {};
struct eol : any_of<"\r\n", "\n", "\r"> {};
struct comment : seq<one_of<"#">, scanned<scan::rest_of_line, "", true>> {};
struct line : seq<blanks, opt<statement, blanks>, opt<choice<comment>>> {};
struct file : seq<opt<bom>, line, star<eol, line>, eof> {};

}  // namespace scruple::grammar
