// SPDX-License-Identifier: MIT
// `log` and `plan` blocks: what was done, and what will be.
#include <algorithm>

#include "passes.hpp"
#include "uses.hpp"

namespace scruple::check {
namespace {

using diagnostics::Kind;
using quantity::Dimension;
using What = syntax::LogEntry::What;

LogEntry::What kind_of(What what) {
    switch (what) {
        case What::received:
            return LogEntry::What::received;
        case What::mixed:
            return LogEntry::What::mixed;
        case What::processed:
            return LogEntry::What::processed;
        case What::used:
            return LogEntry::What::used;
        case What::replenished:
            return LogEntry::What::replenished;
        case What::on_shelf:
            return LogEntry::What::on_shelf;
        case What::discarded:
            return LogEntry::What::discarded;
    }
    return LogEntry::What::received;
}

/// The substance a line of the log speaks of; what is mixed or replenished is a solution, what is received a chemical.
bool read_substance(Reader& reader, const syntax::LogEntry& line, LogEntry& entry) {
    if (line.what == What::mixed || line.what == What::replenished) {
        entry.solution = resolve_solution(reader, line.of.name, none);
        return entry.solution != none;
    }
    const auto resolved =
        line.what == What::received ? resolve_chemical(reader, line.of) : resolve(reader, line.of, none);
    if (!resolved) return false;
    entry.chemical = resolved->chemical;
    entry.form = resolved->form;
    entry.solution = resolved->solution;
    entry.strength = resolved->strength;
    return true;
}

bool read_amount(Reader& reader, const syntax::LogEntry& line, LogEntry& entry) {
    if (line.quantity == syntax::nowhere) return true;
    const auto& written = reader.tree.quantities[line.quantity];
    const bool chemical = entry.chemical != none;
    const auto measured = read_any(reader, written);
    if (!measured) return false;
    // Nothing left on the shelf is something to log; nothing received or used is a slip.
    const bool some = measured->value > Exact(0) || (line.what == What::on_shelf && measured->value.is_zero());
    if (!some) {
        reader.report(Kind::not_above_nothing, written.span(), {reader.text(written.span())});
        return false;
    }
    if (chemical && measured->dimension == Dimension::mass) {
        entry.grams = measured->value;
        return true;
    }
    entry.ml = read_as(reader, written, Dimension::volume);
    return entry.ml.has_value();
}

void read_supplier_name(Reader& reader, const syntax::LogEntry& line, LogEntry& entry) {
    if (line.in_or_from.span.empty()) return;
    const auto written = reader.text(line.in_or_from);
    if (line.what == What::used) {
        entry.purpose = written;
        return;
    }
    const auto found = reader.model.supplier_names.find(reader.normal(written));
    if (found != reader.model.supplier_names.end()) {
        entry.supplier = found->second;
        return;
    }
    reader.report(Kind::unknown_supplier, line.in_or_from.span,
                  {written, suggestion(reader, written, reader.model.suppliers, "a `supplier` block with this name")});
}

void read_batch(Reader& reader, const syntax::LogEntry& line, LogEntry& entry) {
    if (line.batch == syntax::nowhere) return;
    entry.batch = read_day(reader, reader.tree.dates[line.batch]);
}

bool read_subject(Reader& reader, const syntax::LogEntry& line, LogEntry& entry) {
    if (line.what == What::processed) {
        entry.uses = read_uses(reader, line.items);
        entry.solution = resolve_solution(reader, line.in_or_from, none);
        return entry.solution != none;
    }
    const bool fine = read_substance(reader, line, entry) && read_amount(reader, line, entry);
    read_supplier_name(reader, line, entry);
    read_batch(reader, line, entry);
    if (line.price != syntax::nowhere) entry.price = read_money(reader, reader.tree.sums[line.price]);
    return fine;
}

/// Every day of `weekday` (0 Monday) from `first` to `last`. Day 0, 1970-01-01, was a Thursday.
std::vector<Day> weekdays(Day first, Day last, int weekday) {
    std::vector<Day> days;
    const int of_first = ((first + 3) % 7 + 7) % 7;
    for (Day day = first + (weekday - of_first + 7) % 7; day <= last; day += 7) days.push_back(day);
    return days;
}

// Ten years of Thursdays are a slip of the pen, not a plan.
constexpr Day longest_plan = 3653;

std::vector<Day> read_days(Reader& reader, const syntax::PlanEntry& line) {
    const auto from = read_day(reader, line.from);
    if (line.weekday < 0) return from ? std::vector<Day>{*from} : std::vector<Day>{};
    const auto to = read_day(reader, line.to);
    if (!from || !to) return {};
    if (*to - *from > longest_plan) {
        reader.report(Kind::plan_too_long, {line.from.span.begin, line.to.span.end},
                      {reader.text(line.from.span), reader.text(line.to.span)});
        return {};
    }
    auto days = weekdays(*from, *to, line.weekday);
    if (days.empty()) {
        reader.report(Kind::no_day_between, {line.from.span.begin, line.to.span.end},
                      {reader.text(line.from.span), reader.text(line.to.span)});
    }
    return days;
}

void read_entry(Reader& reader, const syntax::PlanEntry& line, Plan& plan) {
    PlanEntry entry{.days = read_days(reader, line),
                    .uses = read_uses(reader, line.items),
                    .place = reader.place(reader.statement_span())};
    const auto written = reader.text(line.process);
    const auto found = reader.model.process_names.find(reader.normal(written));
    if (found == reader.model.process_names.end()) {
        reader.report(
            Kind::unknown_process, line.process.span,
            {written, suggestion(reader, written, reader.model.processes, "a `process` block with this name")});
        return;
    }
    entry.process = found->second;
    plan.entries.push_back(std::move(entry));
}

}  // namespace

void read_log(BlockContext context, std::vector<LogEntry>& log) {
    auto& reader = context.reader;
    const auto& block = context.block;
    each_statement(reader, block,
                   overloaded{[&](const syntax::LogEntry& line) {
                                  LogEntry entry{.what = kind_of(line.what),
                                                 .place = reader.place(reader.statement_span())};
                                  const auto day = read_day(reader, line.date);
                                  const bool fine = read_subject(reader, line, entry);
                                  if (day && fine) {
                                      entry.day = *day;
                                      log.push_back(std::move(entry));
                                  }
                                  return true;
                              },
                              [](const syntax::Words& words) { return words.of == syntax::Words::Of::note; },
                              [](const auto&) { return false; }});
}

namespace {

bool puts_on_the_shelf(const LogEntry& line, const LogEntry& discarded) {
    using On = LogEntry::What;
    if (line.what != On::received && line.what != On::mixed && line.what != On::on_shelf) return false;
    return line.solution == discarded.solution && line.chemical == discarded.chemical && line.form == discarded.form &&
           line.strength == discarded.strength;
}

}  // namespace

void judge_batch(Reader& reader, const LogEntry& discarded) {
    const auto& log = reader.model.log;
    const auto first = std::ranges::lower_bound(log, *discarded.batch, {}, &LogEntry::day);
    const auto end = std::ranges::upper_bound(log, *discarded.batch, {}, &LogEntry::day);
    if (std::any_of(first, end, [&](const LogEntry& line) { return puts_on_the_shelf(line, discarded); })) return;
    const auto& line = std::get<syntax::LogEntry>(reader.tree.statements[discarded.place.statement].node);
    const auto date = reader.tree.dates[line.batch].span;
    reader.report(Kind::no_such_batch, date, {reader.text(date), reader.text(line.of.name)});
}

void read_plan(BlockContext context, Plan& plan) {
    auto& reader = context.reader;
    const auto& block = context.block;
    each_statement(reader, block,
                   overloaded{[&](const syntax::PlanEntry& line) {
                                  read_entry(reader, line, plan);
                                  return true;
                              },
                              [](const syntax::Words& words) { return words.of == syntax::Words::Of::note; },
                              [](const auto&) { return false; }});
}

}  // namespace scruple::check
