// SPDX-License-Identifier: MIT
// A mixing card for a terminal or a plain printer, in the order in which hands need it.
#include <fmt/format.h>

#include "accepted.hpp"
#include "cautions.hpp"
#include "held.hpp"
#include "layout.hpp"
#include "scruple/emit/words.hpp"
#include "scruple/plan/calendar.hpp"
#include "scruple/text/printable.hpp"

namespace scruple::emit {
namespace {

using plan::Card;
using plan::Work;

constexpr std::string_view box = "□";
constexpr std::string_view blank_date = "______________";
constexpr std::string_view blank_time = "\u00A0____:____";

void head(Sheet& sheet, const Card& card) {
    sheet.blank();
    sheet.item("", words::title(card), "makes " + card.makes.with_unit());
    const std::string for_what = card.makes_for.empty() ? "" : "for " + card.makes_for;
    sheet.item("", words::subtitle(card), text::printable(for_what));
    sheet.blank();
    const std::string day = card.mixed_on ? plan::day_text(*card.mixed_on) : std::string(blank_date);
    sheet.item("", fmt::format("Mixed on {0}{2}by{3}{1}{2}batch{3}{1}", day, blank_date, wide_gap, plan::unit_blank));
    if (!card.warnings.empty()) {
        sheet.blank();
        sheet.item("", words::warnings_below(card));
    }
}

void gather(Sheet& sheet, const Card& card) {
    if (card.gather.empty()) return;
    sheet.heading(words::gather_heading);
    AmountColumn amounts;
    for (const plan::Gathered& thing : card.gather) amounts.make_room(thing.amount.text, thing.amount.unit);
    for (const plan::Gathered& thing : card.gather) {
        const std::string name = words::chemical(thing.chemical, thing.form);
        const std::string wanted = thing.optional ? "only if you want it" : "";
        sheet.item(fmt::format("{}  {}   ", box, amounts.line(thing.amount.text, thing.amount.unit)),
                   words::listed({name, thing.note, wanted}));
    }
}

/// Each box has a column of its own, whether the line has the other one or not.
std::string boxes(const Work& work) {
    const std::string_view in = words::box_of(work);
    if (in.empty() && !work.clear_box) return {};
    return fmt::format("{:10}   {:7}", in.empty() ? "" : fmt::format("{} {}", box, in),
                       work.clear_box ? "□ clear" : "");
}

std::string number_before_unit(const Work& work) {
    const std::string_view before = words::before_amount(work);
    return before.empty() ? work.amount->text : fmt::format("{} {}", before, work.amount->text);
}

AmountColumn amounts_of(const Card& card) {
    AmountColumn amounts;
    for (const Work& work : card.work)
        if (work.amount) amounts.make_room(number_before_unit(work), work.amount->unit);
    return amounts;
}

void step(Sheet& sheet, const Work& work, const AmountColumn& amounts) {
    const std::string amount =
        work.amount ? amounts.line(number_before_unit(work), work.amount->unit) : std::string(amounts.width(), ' ');
    const std::string lead = fmt::format("{:>3}   {}   ", work.n, amount);
    const std::size_t indent = 3 + 3 + amounts.width() + 3;
    sheet.item(lead, work.what, boxes(work));
    for (const std::string& remark : words::remarks(work)) sheet.indented(indent, remark);
    if (work.seconds) sheet.indented(indent, fmt::format("started{0}{1}ended{0}", blank_time, wide_gap));
    if (work.running) sheet.indented(indent, words::running(work));
    sheet.blank();
}

void work(Sheet& sheet, const Card& card) {
    sheet.heading(words::work_heading);
    const AmountColumn amounts = amounts_of(card);
    for (const Work& line : card.work) step(sheet, line, amounts);
}

void end_checks(Sheet& sheet, const Card& card) {
    sheet.heading(words::checks_heading);
    sheet.item("", words::check_clear, box);
    sheet.item("", "colour", "______________");
    for (const std::string& check : card.checks) sheet.item("", check, "found ______________");
}

void tally(Sheet& sheet) {
    std::vector<std::string> group(words::tally_of_group, std::string(box));
    const std::vector<std::string> row(words::tally_groups, words::listed(group, plan::unit_blank));
    sheet.blank();
    sheet.item("", words::tally_label);
    sheet.blank();
    sheet.item("", words::listed(row, wide_gap));
}

void life(Sheet& sheet, const Card& card) {
    if (card.keeps.empty() && card.use_within.empty() && card.capacity.empty()) return;
    sheet.heading(words::life_heading);
    for (const plan::Life& life : card.keeps)
        sheet.item("", "keeps " + life.text,
                   fmt::format("use by {}", life.use_by ? plan::day_text(*life.use_by) : std::string(blank_date)));
    if (!card.use_within.empty()) sheet.item("", "use within " + card.use_within);
    for (const std::string& rule : card.capacity) sheet.item("", rule);
    if (words::wants_tally(card)) tally(sheet);
}

void contents(Sheet& sheet, const Card& card) {
    if (card.contents.empty()) return;
    sheet.heading(words::held_heading);
    add_held(sheet, card.contents, card.ph);
}

void list(Sheet& sheet, std::string_view heading, const std::vector<std::string>& lines) {
    if (lines.empty()) return;
    sheet.heading(heading);
    for (const std::string& line : lines) sheet.item("- ", line);
}

void substituted(Sheet& sheet, const Card& card) {
    if (card.substituted.empty()) return;
    sheet.heading(words::substituted_heading);
    for (const plan::Substitution& it : card.substituted) {
        sheet.item("- ", words::substitution_head(it));
        for (const std::string& line : words::substitution(it)) sheet.indented(2, line);
        sheet.blank();
    }
}

void warnings(Sheet& sheet, const Card& card) {
    if (card.warnings.empty()) return;
    sheet.heading(words::warnings_heading);
    for (const plan::Warning& warning : card.warnings) sheet.item("! ", words::warning_line(warning));
}

}  // namespace

std::string card_text(const plan::Card& card, const TextStyle& style) {
    Sheet sheet(style);
    head(sheet, card);
    add_cautions(sheet, card.cautions, card.hazards);
    add_accepted(sheet, card.accepted);
    gather(sheet, card);
    work(sheet, card);
    end_checks(sheet, card);
    life(sheet, card);
    contents(sheet, card);
    substituted(sheet, card);
    list(sheet, words::assumed_heading, card.assumed);
    warnings(sheet, card);
    list(sheet, words::notes_heading, card.notes);
    list(sheet, words::sources_heading, card.sources);
    return sheet.take();
}

}  // namespace scruple::emit
