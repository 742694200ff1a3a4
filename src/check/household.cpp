// SPDX-License-Identifier: MIT
// `bench`, `supplier` and `process` blocks, and lines before any heading.
#include <algorithm>

#include "meetings.hpp"
#include "passes.hpp"
#include "uses.hpp"

namespace scruple::check {
namespace {

using diagnostics::Kind;
using quantity::Dimension;

bool is_remark(const syntax::Words& words) {
    return words.of == syntax::Words::Of::note || words.of == syntax::Words::Of::source ||
           words.of == syntax::Words::Of::caution;
}

Instrument::What kind_of(syntax::Instrument::What what) {
    switch (what) {
        case syntax::Instrument::What::balance:
            return Instrument::What::balance;
        case syntax::Instrument::What::graduate:
            return Instrument::What::graduate;
        case syntax::Instrument::What::syringe:
            return Instrument::What::syringe;
        case syntax::Instrument::What::jug:
            return Instrument::What::jug;
    }
    return Instrument::What::balance;
}

void read_instrument(Reader& reader, const syntax::Instrument& line, Bench& bench) {
    const auto what = kind_of(line.what);
    const auto dimension = what == Instrument::What::balance ? Dimension::mass : Dimension::volume;
    const auto division = read_positive(reader, reader.tree.quantities[line.division], dimension);
    const auto capacity = read_positive(reader, reader.tree.quantities[line.capacity], dimension);
    if (!division || !capacity) return;
    if (*division > *capacity) {
        const auto span = reader.statement_span();
        reader.report(Kind::range_backwards, span, {reader.text(span)});
        return;
    }
    bench.instruments.push_back({what, *division, *capacity});
}

std::size_t work_of(syntax::Pace::Of of) {
    using Of = syntax::Pace::Of;
    switch (of) {
        case Of::weigh:
            return static_cast<std::size_t>(BenchWork::weigh);
        case Of::measure:
            return static_cast<std::size_t>(BenchWork::measure);
        case Of::stir:
            return static_cast<std::size_t>(BenchWork::stir);
        case Of::filter:
            return static_cast<std::size_t>(BenchWork::filter);
        case Of::make_up:
            return static_cast<std::size_t>(BenchWork::make_up);
        case Of::bottle:
            return static_cast<std::size_t>(BenchWork::bottle);
    }
    return 0;
}

void read_pace(Reader& reader, const syntax::Pace& line, Bench& bench) {
    auto& pace = bench.pace[work_of(line.of)];
    const auto seconds = read_positive(reader, reader.tree.quantities[line.quantity], Dimension::time);
    if (pace) reader.report(Kind::said_twice, reader.statement_span(), {"pace"});
    if (seconds) pace = seconds;
}

void read_bottle(Reader& reader, const syntax::Bottle& bottle, Bench& bench) {
    const auto ml = read_positive(reader, bottle.size, Dimension::volume);
    std::optional<Exact> count;
    if (!bottle.count.span.empty()) {
        count = read_positive(reader, bottle.count);
        if (count && !count->is_whole())
            reader.report(Kind::part_of_a_bottle, bottle.count.span, {reader.text(bottle.count.span)});
        if (!count || !count->is_whole()) return;
    }
    if (!ml) return;
    if (std::ranges::count(bench.bottles, *ml, &Bottle::ml) > 0)
        reader.report(Kind::said_twice, bottle.size.span(), {reader.text(bottle.size.span())});
    else
        bench.bottles.push_back(
            {*ml, count ? std::optional(static_cast<std::int64_t>(count->to_double())) : std::nullopt});
}

}  // namespace

void read_bench(BlockContext context, Bench& bench) {
    auto& reader = context.reader;
    const auto& block = context.block;
    each_statement(
        reader, block,
        overloaded{[&](const syntax::Instrument& line) {
                       read_instrument(reader, line, bench);
                       return true;
                   },
                   [&](const syntax::Dropper& line) {
                       const auto drops = read_positive(reader, line.drops);
                       const auto ml = read_positive(reader, reader.tree.quantities[line.quantity], Dimension::volume);
                       if (bench.drops_per_ml) reader.report(Kind::said_twice, reader.statement_span(), {"dropper"});
                       if (drops && ml) bench.drops_per_ml = *drops / *ml;
                       return true;
                   },
                   [&](const syntax::Bottles& line) {
                       for (const auto& bottle : syntax::Tree::run(reader.tree.bottles, line.items))
                           read_bottle(reader, bottle, bench);
                       return true;
                   },
                   [&](const syntax::Pace& line) {
                       read_pace(reader, line, bench);
                       return true;
                   },
                   [](const syntax::Words& words) { return is_remark(words); }, [](const auto&) { return false; }});
}

namespace {

void read_price(Reader& reader, const syntax::PriceEntry& line, Supplier& supplier) {
    const auto of = resolve_chemical(reader, line.of);
    const auto& written = reader.tree.quantities[line.pack];
    const auto pack = read_any(reader, written);
    const auto money = read_money(reader, reader.tree.sums[line.price]);
    if (!of || !pack || !money) return;
    Price price{.chemical = of->chemical,
                .form = of->form,
                .strength = of->strength,
                .grams = {},
                .ml = {},
                .pack_text = reader.text(written.span()),
                .price = *money,
                .place = reader.place(reader.statement_span())};
    if (pack->value <= Exact(0)) {
        reader.report(Kind::not_above_nothing, written.span(), {reader.text(written.span())});
        return;
    }
    if (pack->dimension == Dimension::mass) {
        price.grams = pack->value;
    } else if (pack->dimension == Dimension::volume) {
        price.ml = pack->value;
    } else {
        static_cast<void>(read_as(reader, written, Dimension::mass));
        return;
    }
    supplier.prices.push_back(std::move(price));
}

}  // namespace

void read_supplier(BlockContext context, Supplier& supplier) {
    auto& reader = context.reader;
    const auto& block = context.block;
    each_statement(
        reader, block,
        overloaded{[&](const syntax::Postage& line) {
                       if (supplier.postage) reader.report(Kind::said_twice, reader.statement_span(), {"postage"});
                       supplier.postage = read_money(reader, reader.tree.sums[line.charge]);
                       if (line.free_over != syntax::nowhere)
                           supplier.free_over = read_money(reader, reader.tree.sums[line.free_over]);
                       return true;
                   },
                   [&](const syntax::PriceEntry& line) {
                       read_price(reader, line, supplier);
                       return true;
                   },
                   [](const syntax::Words& words) { return is_remark(words); }, [](const auto&) { return false; }});
}

namespace {

void read_stage(Reader& reader, const syntax::ProcessEntry& line, Process& process) {
    Stage stage{.text = reader.text(line.bath.name), .place = reader.place(reader.statement_span())};
    const auto& normal = reader.normal(stage.text);
    // A wash is water from the tap: the one stage that needs no recipe.
    if (normal != "wash" && normal != "rinse") stage.solution = resolve_solution(reader, line.bath.name, none);
    if (auto seconds = read_duration(reader, reader.tree.ranges[line.time])) stage.seconds = *seconds;
    if (line.at != syntax::nowhere) stage.celsius = read_celsius(reader, reader.tree.ranges[line.at]);
    for (const auto& remark : syntax::Tree::run(reader.tree.names, line.remarks))
        stage.remarks.push_back(reader.text(remark));
    process.stages.push_back(std::move(stage));
}

}  // namespace

void read_process(BlockContext context, Process& process) {
    auto& reader = context.reader;
    const auto& block = context.block;
    each_statement(
        reader, block,
        overloaded{[&](const syntax::ProcessEntry& line) {
                       read_stage(reader, line, process);
                       return true;
                   },
                   [&](const syntax::Accept& line) {
                       read_acceptance(reader, line, process.accepts);
                       return true;
                   },
                   [](const syntax::Words& words) { return is_remark(words); }, [](const auto&) { return false; }});
}

void read_nothing(BlockContext context) {
    auto& reader = context.reader;
    const auto& block = context.block;
    for (std::uint32_t i = block.begin; i < block.end; ++i) {
        const auto& statement = reader.tree.statements[i];
        if (std::holds_alternative<syntax::CommentOnly>(statement.node)) continue;
        reader.statement = i;
        reader.report(Kind::line_before_any_block, statement.span);
    }
}

}  // namespace scruple::check
