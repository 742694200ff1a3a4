// SPDX-License-Identifier: MIT
// Dated lines of logs and plans.
#pragma once

#include "facts.hpp"

namespace scruple::grammar {

struct stock_more
    : sor<ends, at<gap, choice<seq<any_of<"from", "for">, gap>, seq<lit<"of">, gap, date, ends>, money>>> {};
struct stock_rest : seq<gap, opt<form_given, gap>, quantity_said, stock_more> {};
struct stock : seq<name_up_to<stock_rest>> {};
struct received_from : seq<lit<"from">, gap, name> {};
struct price : seq<money> {};
struct received : seq<lit<"received">, gap, stock, opt<gap, received_from>, opt<gap, price>> {};
struct moved_how : any_of<"mixed", "replenished", "on shelf"> {};
struct moved : seq<moved_how, gap, stock> {};
struct processed_in : seq<lit<"in">, gap, name> {};
struct processed : seq<lit<"processed">, gap, items, gap, processed_in> {};
struct used_for : seq<lit<"for">, gap, words> {};
struct used : seq<lit<"used">, gap, stock, opt<gap, used_for>> {};
struct batch_of : seq<lit<"of">, gap, date> {};
struct discarded_all : seq<choice<quoted_name, seq<first_word, star<not_at<gap, batch_of, ends>, gap, name_word>>>,
                           opt<gap, form_given>, opt<gap, batch_of>> {};
struct discarded_some : seq<stock, opt<gap, batch_of>, ends> {};
struct discarded : seq<lit<"discarded">, gap, sor<discarded_some, discarded_all>> {};
struct first_date : seq<date> {};
struct log_entry : seq<first_date, gap, choice<received, moved, processed, used, discarded>, ends> {};

struct weekday : any_of<"Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"> {};
struct each_day : seq<lit<"each">, gap, weekday> {};
struct each : seq<each_day, gap, lit<"from">, gap, first_date, gap, lit<"to">, gap, date> {};
struct plan_entry : seq<choice<date, each>, gap, items, gap, lit<"through">, gap, name, ends> {};

struct entry : choice<log_entry, plan_entry> {};

}  // namespace scruple::grammar
