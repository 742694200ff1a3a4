// SPDX-License-Identifier: MIT
// What a statement is called when it stands where it does not belong, or cannot be read.
#include <algorithm>

#include "blocks.hpp"
#include "listed.hpp"
#include "loose_date.hpp"
#include "scruple/check/sayings.hpp"
#include "scruple/syntax/parse.hpp"
#include "slips.hpp"

namespace scruple::check {
namespace {

using diagnostics::Kind;

std::string_view words_list(syntax::WordList::Of of) {
    switch (of) {
        case syntax::WordList::Of::grade:
            return "a `grade` line";
        case syntax::WordList::Of::acts_as:
            return "an `acts as` line";
        case syntax::WordList::Of::hazard:
            return "a `hazard` line";
    }
    return "";
}

std::string_view text_fact(syntax::Words::Of of) {
    switch (of) {
        case syntax::Words::Of::is_a:
            return "an `is a` line";
        case syntax::Words::Of::strength:
            return "a `strength` line";
        case syntax::Words::Of::source:
            return "a `source` line";
        case syntax::Words::Of::caution:
            return "a `caution` line";
        case syntax::Words::Of::note:
            return "a `note` line";
        case syntax::Words::Of::lethal:
            return "a `lethal` line";
        case syntax::Words::Of::harmful:
            return "a `harmful` line";
        case syntax::Words::Of::assumed:
            return "an `assumed` line";
        case syntax::Words::Of::book:
            return "a `book` line";
        case syntax::Words::Of::printed_line:
            return "a line of a printed page";
    }
    return "";
}

/// The first characters of a line that is too long to be marked whole.
text::Span beginning_of(const Reader& reader, text::Span span) {
    auto end = span.begin + std::min<std::uint32_t>(40, span.end - span.begin);
    while (end > span.begin && (static_cast<unsigned char>(reader.source.bytes[end]) & 0xC0) == 0x80) --end;
    return {span.begin, end};
}

/// A name alone: an amount was forgotten, or a step is said in words of its own (`wait a moment`).
void report_bare(Reader& reader, const syntax::Bare& bare, text::Span span) {
    const auto name = reader.text(bare.what.name);
    const auto saying = bare.what.name.quoted ? Saying{} : saying_at(name);
    const auto better = mended(name);
    if (!better.empty()) {
        reader.report(Kind::unread_line, span, {name, "`" + better + "`"});
    } else if (saying.keyword.empty()) {
        reader.report(Kind::forgotten_amount, span, {name});
    } else {
        reader.report(Kind::unread_fact, span, {saying.keyword, saying.how});
    }
}

constexpr std::string_view of_bench = "it under a `bench` heading";
constexpr std::string_view of_supplier = "it under a `supplier` heading";
constexpr std::string_view of_log = "it under a `log` heading";
constexpr std::string_view of_plan = "it under a `plan` heading";
constexpr std::string_view of_process = "it under a `process` heading";
constexpr std::string_view of_chemical = "it under a `chemical` heading";
constexpr std::string_view of_conversion = "it under a `conversion of` heading";
constexpr std::string_view of_format = "it under a `format` heading";
constexpr std::string_view of_meeting = "it under a `meeting` heading";
constexpr std::string_view of_printed = "it under a `printed` heading";
constexpr std::string_view of_what_meets = "it in a recipe, in one of its parts or in a process";
constexpr std::string_view of_recipe = "it right under a `recipe` heading";
constexpr std::string_view of_solution = "it in a recipe or in one of its parts";

std::string_view home_of_words(syntax::Words::Of of) {
    using Of = syntax::Words::Of;
    if (of == Of::lethal || of == Of::harmful) return of_meeting;
    return of == Of::book || of == Of::printed_line ? of_printed : of_recipe;
}

/// The block that takes such a line.
std::string_view home_of(const syntax::Node& node) {
    return std::visit(overloaded{[](const syntax::Instrument&) { return of_bench; },
                                 [](const syntax::Dropper&) { return of_bench; },
                                 [](const syntax::Bottles&) { return of_bench; },
                                 [](const syntax::Pace&) { return of_bench; },
                                 [](const syntax::Postage&) { return of_supplier; },
                                 [](const syntax::PriceEntry&) { return of_supplier; },
                                 [](const syntax::LogEntry&) { return of_log; },
                                 [](const syntax::PlanEntry&) { return of_plan; },
                                 [](const syntax::ProcessEntry&) { return of_process; },
                                 [](const syntax::Form&) { return of_chemical; },
                                 [](const syntax::Also&) { return of_chemical; },
                                 [](const syntax::WordList&) { return of_chemical; },
                                 [](const syntax::Ions&) { return of_chemical; },
                                 [](const syntax::Dissolves&) { return of_chemical; },
                                 [](const syntax::Property&) { return of_chemical; },
                                 [](const syntax::Cas&) { return of_chemical; },
                                 [](const syntax::Equilibrium&) { return of_chemical; },
                                 [](const syntax::Interaction&) { return of_chemical; },
                                 [](const syntax::Bystanders&) { return of_chemical; },
                                 [](const syntax::SaltOf&) { return of_chemical; },
                                 [](const syntax::Reaction&) { return of_conversion; },
                                 [](const syntax::Excess&) { return of_conversion; },
                                 [](const syntax::Vessel&) { return of_conversion; },
                                 [](const syntax::Area&) { return of_format; },
                                 [](const syntax::Meets&) { return of_meeting; },
                                 [](const syntax::PhLimit&) { return of_meeting; },
                                 [](const syntax::WarmerThan&) { return of_meeting; },
                                 [](const syntax::Accept&) { return of_what_meets; },
                                 [](const syntax::Reading&) { return of_printed; },
                                 [](const syntax::Variants&) { return of_recipe; },
                                 [](const syntax::Words& n) { return home_of_words(n.of); },
                                 [](const auto&) { return of_solution; }},
                      node);
}

bool is_all_parts(const Reader& reader, const Block& block) {
    return block.kind == syntax::Block::recipe && block.id != none &&
           !reader.model.recipes[block.id].sections.empty() &&
           reader.model.sections[reader.model.recipes[block.id].sections.front()].kind != SectionKind::whole;
}

void report_out_of_place(Reader& reader, const syntax::Statement& statement, const Block& block) {
    const auto home = home_of(statement.node);
    const bool wants_part = home == of_solution && is_all_parts(reader, block);
    reader.report(Kind::line_out_of_place, statement.span,
                  {words_for(statement.node), wants_part ? "a recipe that is all parts" : words_for(block.kind),
                   wants_part ? "it in one of the parts" : home});
}

/// The quote that is opened and not closed, with what follows it; the mark of inches behind a figure is none.
text::Span open_quote(const Reader& reader, text::Span span) {
    const auto written = reader.text(span);
    if (std::ranges::count(written, '"') % 2 == 0) return {};
    const auto at = written.rfind('"');
    const bool opens = at == 0 || written[at - 1] == ' ' || written[at - 1] == '\t';
    return opens ? text::Span{span.begin + static_cast<std::uint32_t>(at), span.end} : text::Span{};
}

constexpr std::string_view any_line =
    "a name and an amount (`metol   5 g`), a step (`stir until clear`), or a fact (`keeps   6 months full`)";

void report_unread(Reader& reader, text::Span span, std::string_view keyword) {
    if (keyword.empty()) {
        const auto line = reader.text(span);
        const auto better = mended(line);
        reader.report(Kind::unread_line, span, {line, better.empty() ? std::string(any_line) : "`" + better + "`"});
    } else {
        const bool dilutes = keyword == "dilute";
        reader.report(Kind::unread_fact, span,
                      {keyword, dilutes ? how_to_dilute(reader.text(span)) : std::string(how_to_say(keyword))});
    }
}

/// A line of a log or a plan begins with a day, and this one may be written in another way.
bool report_date(Reader& reader, const syntax::Statement& statement, const Block& block) {
    if (block.kind != syntax::Block::log && block.kind != syntax::Block::plan) return false;
    const auto date = read_loose_date(reader.text(statement.span));
    if (date.length == 0) return false;
    const text::Span span{statement.span.begin, statement.span.begin + static_cast<std::uint32_t>(date.length)};
    const auto write = date.days.empty() ? std::string("year-month-day, such as `2026-11-05`") : listed(date.days);
    reader.report(Kind::date_unread, span, {reader.text(span), write});
    return true;
}

}  // namespace

std::string_view words_for(syntax::Block kind) {
    switch (kind) {
        case syntax::Block::recipe:
            return "a recipe";
        case syntax::Block::part:
            return "a part";
        case syntax::Block::bath:
            return "a bath";
        case syntax::Block::working:
            return "a working solution";
        case syntax::Block::replenisher:
            return "a replenisher";
        case syntax::Block::chemical:
            return "a `chemical` block";
        case syntax::Block::conversion:
            return "a conversion";
        case syntax::Block::bench:
            return "a bench";
        case syntax::Block::supplier:
            return "a supplier's list";
        case syntax::Block::log:
            return "a log";
        case syntax::Block::process:
            return "a process";
        case syntax::Block::plan:
            return "a plan";
        case syntax::Block::format:
            return "a `format` block";
        case syntax::Block::meeting:
            return "a `meeting` block";
        case syntax::Block::printed:
            return "a printed page";
    }
    return "";
}

std::string words_for(const syntax::Node& node) {
    const auto words = [](std::string_view text) { return std::string(text); };
    return std::visit(
        overloaded{[&](const syntax::Words& n) { return words(text_fact(n.of)); },
                   [&](const syntax::WordList& n) { return words(words_list(n.of)); },
                   [&](const syntax::Keeps&) { return words("a `keeps` line"); },
                   [&](const syntax::UseWithin&) { return words("a `use within` line"); },
                   [&](const syntax::Capacity&) { return words("a `capacity` line"); },
                   [&](const syntax::Variants&) { return words("a `variants` line"); },
                   [&](const syntax::Mix& n) { return words(n.dilute ? "a `dilute` line" : "a `mix` line"); },
                   [&](const syntax::Replenish&) { return words("a `replenish` line"); },
                   [&](const syntax::Expect&) { return words("an `expect` line"); },
                   [&](const syntax::Also&) { return words("an `also` line"); },
                   [&](const syntax::Form&) { return words("a `form` line"); },
                   [&](const syntax::Ions&) { return words("an `ions` line"); },
                   [&](const syntax::Dissolves&) { return words("a `dissolves` line"); },
                   [&](const syntax::Property& n) {
                       return words(n.of == syntax::Property::Of::density ? "a `density` line" : "a `takes up` line");
                   },
                   [&](const syntax::Cas&) { return words("a `cas` line"); },
                   [&](const syntax::Equilibrium& n) {
                       return words(n.of == syntax::Equilibrium::Of::gas ? "an `escapes` line" : "an `in water` line");
                   },
                   [&](const syntax::Interaction&) { return words("a `pair` line"); },
                   [&](const syntax::Bystanders&) { return words("a `bystander` line"); },
                   [&](const syntax::SaltOf&) { return words("a `salt of` line"); },
                   [&](const syntax::Reaction&) { return words("a `reaction` line"); },
                   [&](const syntax::Excess&) { return words("an `excess` line"); },
                   [&](const syntax::Vessel&) { return words("a `vessel` line"); },
                   [&](const syntax::Area&) { return words("an `area` line"); },
                   [&](const syntax::Meets& n) {
                       return words(n.of == syntax::Meets::Of::one_of ? "a `one of` line" : "an `in doubt` line");
                   },
                   [&](const syntax::PhLimit&) { return words("a limit of pH"); },
                   [&](const syntax::WarmerThan&) { return words("a `warmer than` line"); },
                   [&](const syntax::Accept&) { return words("an `accept` line"); },
                   [&](const syntax::Reading&) { return words("a `reading` line"); },
                   [&](const syntax::Instrument&) { return words("a line about an instrument"); },
                   [&](const syntax::Dropper&) { return words("a `dropper` line"); },
                   [&](const syntax::Bottles&) { return words("a `bottle` line"); },
                   [&](const syntax::Pace&) { return words("a `pace` line"); },
                   [&](const syntax::Postage&) { return words("a `postage` line"); },
                   [&](const syntax::Step&) { return words("a step"); },
                   [&](const syntax::VesselStep&) { return words("a step with a vessel"); },
                   [&](const syntax::Ingredient&) { return words("an ingredient"); },
                   [&](const syntax::Bare&) { return words("a name alone"); },
                   [&](const syntax::LogEntry&) { return words("a line of a log"); },
                   [&](const syntax::PlanEntry&) { return words("a line of a plan"); },
                   [&](const syntax::PriceEntry&) { return words("a price"); },
                   [&](const syntax::ProcessEntry&) { return words("a stage of a process"); },
                   [&](const auto&) { return words("this line"); }},
        node);
}

void report_stray(Reader& reader, const syntax::Statement& statement, const Block& block) {
    const auto written = reader.text(statement.span);
    if (std::holds_alternative<syntax::Unread>(statement.node) && written.size() > syntax::longest_line) {
        reader.report(Kind::line_too_long, beginning_of(reader, statement.span),
                      {std::to_string(syntax::longest_line)});
    } else if (report_open_quote(reader, statement) || report_date(reader, statement, block)) {
        return;
    } else if (const auto* unread = std::get_if<syntax::Unread>(&statement.node)) {
        report_unread(reader, statement.span, reader.text(unread->keyword));
    } else if (const auto* bare = std::get_if<syntax::Bare>(&statement.node)) {
        report_bare(reader, *bare, statement.span);
    } else {
        report_out_of_place(reader, statement, block);
    }
}

bool report_open_quote(Reader& reader, const syntax::Statement& statement) {
    const auto quote = open_quote(reader, statement.span);
    if (quote.empty()) return false;
    reader.report(Kind::quote_left_open, quote);
    return true;
}

}  // namespace scruple::check
