// SPDX-License-Identifier: MIT
// What the drawing module offers. Loading Cairo, Pango and fonts takes longer than most commands do, so that they are
// in a module of their own, which is loaded when something is drawn.
#pragma once

#include "scruple/paper/paper.hpp"

namespace scruple::paper {

/// The functions of paper.hpp.
struct Module {
    decltype(&cards) cards_to_paper;
    decltype(&labels) labels_to_paper;
    decltype(&shopping) shopping_to_paper;
    decltype(&calendar) calendar_to_paper;
    decltype(&shelf) shelf_to_paper;
    decltype(&evening) evening_to_paper;
    decltype(&binder) binder_to_paper;
};

/// The module's file, and the one function in it: extern "C" const Module* ().
inline constexpr const char* module_file = "scruple-drawing.so";
inline constexpr const char* module_entry = "scruple_drawing";

}  // namespace scruple::paper
