// SPDX-License-Identifier: MIT
// What the text and the page of a card both say, in the words in which they say it.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "scruple/plan/card.hpp"
#include "scruple/plan/label.hpp"

namespace scruple::emit::words {

inline constexpr std::string_view no_caution = "no caution recorded";
inline constexpr std::string_view check_the_sheet = "check the safety data sheet";

// ---- the headings of a card, in their order ----

inline constexpr std::string_view cautions_heading = "Before you open anything";
inline constexpr std::string_view accepted_heading = "Accepted although it must not meet";
inline constexpr std::string_view gather_heading = "Put out on the bench";
inline constexpr std::string_view work_heading = "Mix, in this order";
inline constexpr std::string_view checks_heading = "When it is mixed";
inline constexpr std::string_view life_heading = "How long and how much";
inline constexpr std::string_view held_heading = "What is in it";
inline constexpr std::string_view substituted_heading = "What was substituted";
inline constexpr std::string_view assumed_heading = "What was assumed";
inline constexpr std::string_view warnings_heading = "Warnings";
inline constexpr std::string_view notes_heading = "Notes";
inline constexpr std::string_view sources_heading = "From";

inline constexpr std::string_view check_clear = "clear, and nothing left at the bottom";
inline constexpr std::string_view tally_label = "One box for each film or sheet that has gone through:";

/// `, ` between the parts that say something.
[[nodiscard]] std::string listed(const std::vector<std::string>& parts, std::string_view between = ", ");

/// The same text with a no-break blank after each number, so that no line ends between it and its unit.
[[nodiscard]] std::string with_units_kept(std::string_view text);

/// `Lantern, part A`
[[nodiscard]] std::string title(const plan::Card& card);
/// `Medlar, part B – 1000 ml`, at the head of each further sheet
[[nodiscard]] std::string running_head(const plan::Card& card);
/// `film developer, stock, variant soft`
[[nodiscard]] std::string subtitle(const plan::Card& card);

/// `sodium sulfite (anhydrous)`
[[nodiscard]] std::string chemical(std::string_view name, std::string_view form);

/// `about`, `up to` or nothing, to stand before the figure.
[[nodiscard]] std::string_view before_amount(const plan::Work& work);
/// `in the other vessel: lye`; empty where it is the main one or is named already.
[[nodiscard]] std::string elsewhere(const plan::Work& work);
/// What stands under the line of a step: how warm and with what on one line, then one thing a line.
[[nodiscard]] std::vector<std::string> remarks(const plan::Work& work);
/// `now in the vessel: about 352 ml`; empty where it is not known.
[[nodiscard]] std::string running(const plan::Work& work);
/// What to tick when the amount is in: `weighed` or `measured`; empty where there is nothing to tick.
[[nodiscard]] std::string_view box_of(const plan::Work& work);
/// `rounded by 1.7 %`; empty up to 1 %.
[[nodiscard]] std::string rounding(const plan::Figure& figure);

/// `text (source)`
[[nodiscard]] std::string with_source(std::string_view text, std::string_view source);
/// What stands under the head of a substitution: what it is, why, and each way that was not taken.
[[nodiscard]] std::vector<std::string> substitution(const plan::Substitution& it);
/// `for sodium carbonate (anhydrous) 40 g: sodium carbonate (monohydrate) 46.8 g`
[[nodiscard]] std::string substitution_head(const plan::Substitution& it);

/// `H302, H317`, or that no caution is recorded.
[[nodiscard]] std::string hazards(const std::vector<std::string>& codes);
/// The same for a card, where a caution in words may stand above instead.
[[nodiscard]] std::string hazards(const plan::HazardRow& row);

/// `sodium carbonate: H319 (EU CLP Annex VI)`
[[nodiscard]] std::string hazard_line(const plan::HazardRow& row);
/// `accepted: acid on sulfide, because it is mixed outdoors`, and what belongs below it.
[[nodiscard]] std::string accepted_head(const plan::AcceptedMeeting& accepted);
[[nodiscard]] std::vector<std::string> accepted_lines(const plan::AcceptedMeeting& accepted);
/// `it would boil (too-hot)`
[[nodiscard]] std::string warning_line(const plan::Warning& warning);

/// `pH at 20 °C`, or that none is given and why.
[[nodiscard]] std::string ph_head(const plan::PhRow& row);
/// What makes its range wide, one thing a line.
[[nodiscard]] std::vector<std::string> ph_remarks(const plan::PhRow& row);
/// `± 1.1 %`: how far a content may be off.
[[nodiscard]] std::string give_or_take(const plan::ContentRow& row);

/// What a label says before its hazard statements, and after them.
inline constexpr std::string_view label_hazards =
    "Not for drinking; out of reach of children. Of the chemicals in it, not of the mixture:";
inline constexpr std::string_view label_see_sheets = "Read the data sheets.";  // where there is room for no more
inline constexpr std::string_view label_reminder = "Recorded, not proved: check the safety data sheets.";
/// `STOCK: 1+3`
[[nodiscard]] std::string label_strength(const plan::Label& label);
/// `hydroquinone: Danger: ` and `H302 harmful if swallowed; …`
[[nodiscard]] std::string label_chemical(const plan::LabelHazard& hazard);
[[nodiscard]] std::string label_statements(const plan::LabelHazard& hazard);
/// `LETHAL where it meets: acid on sulfide. Read the card.`; empty where nothing is accepted
[[nodiscard]] std::string label_accepted(const plan::Label& label);
/// What is known, or is to be written: `mixed on` and `2026-12-03`.
struct LabelFact {
    std::string what, value;
};
[[nodiscard]] std::vector<LabelFact> label_facts(const plan::Label& label);

/// Whether the card has a use for boxes to tick, one a film or sheet that has gone through.
[[nodiscard]] bool wants_tally(const plan::Card& card);
inline constexpr int tally_groups = 4;
inline constexpr int tally_of_group = 5;

/// `3 warnings` in words for the head of the card; empty where there is none.
[[nodiscard]] std::string warnings_below(const plan::Card& card);

inline constexpr std::string_view binder_title = "Mixing cards";
/// `Lantern, part A, soft`
[[nodiscard]] std::string binder_entry(const plan::Card& card);

/// Four significant figures: what a table of contents shows.
[[nodiscard]] std::string table_figure(double value);

/// `make up`, `pour in`
[[nodiscard]] std::string_view name_of(plan::Work::Do what);

}  // namespace scruple::emit::words
