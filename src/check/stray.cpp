// SPDX-License-Identifier: MIT
// What a statement is called when it stands where it does not belong, or cannot be read.
#include <algorithm>

#include "blocks.hpp"
#include "listed.hpp"
#include "loose_date.hpp"
#include "scruple/syntax/parse.hpp"

namespace scruple::check {
namespace {

using diagnostics::Kind;

struct Sample {
    std::string_view keyword;
    std::string_view how;  ///< how a line with this word is said
};

constexpr Sample samples[] = {
    {"is", "`is a   film developer`"},
    {"strength", "`strength   working`"},
    {"source", "`source   the darkroom notebook, page 12`"},
    {"caution", "`caution   \"Gloves and goggles.\"`"},
    {"note", "`note   start at 11 min`"},
    {"keeps", "`keeps   6 months full, 2 months half full`"},
    {"use within", "`use within   2 h`"},
    {"capacity", "`capacity   one-shot, 250 ml working per film 135` or `capacity   12 films 135 per 1 l`"},
    {"variants", "`variants   soft, normal`"},
    {"dilute", "`dilute stock   1+3`"},
    {"mix", "`mix part A + part B + water   1+1+10`"},
    {"replenish", "`replenish   20 ml per film 135, at most 1 l per 1 l`"},
    {"expect", "`expect pH   11.2 to 11.6` or `expect sodium sulfite (anhydrous)   8.5 to 9.5 g/l`"},
    {"also", "`also   soda ash (anhydrous), washing soda`"},
    {"form", "`form   decahydrate   Na2CO3·10H2O`"},
    {"grade", "`grade   distilled, deionised`"},
    {"ions", "`ions   2 Na+ + CO3-2`"},
    {"acts as", "`acts as   alkali`"},
    {"dissolves", "`dissolves   21.5 g (anhydrous) in 100 g water at 20 C`"},
    {"density", "`density   1.05 g/ml (glacial) at 25 C from \"the label\"`"},
    {"takes up", "`takes up   0.28 ml per 1 g`"},
    {"hazard", "`hazard   H302, H317`"},
    {"cas", "`cas   497-19-8`"},
    {"in water", "`in water   HCO3- -> CO3-2 + H+   pK 10.33, 14.7 kJ/mol, give or take 0.02 from \"a handbook\"`"},
    {"escapes", "`escapes   CO2   pK 1.47, in air 0.0004 atm`"},
    {"pair", "`pair   Na+ with CO3-2   -0.08 kg/mol from \"a handbook\"`"},
    {"bystander", "`bystander   Na+, Cl-`"},
    {"salt of", "`salt of   citric acid`"},
    {"reaction", "`reaction   borax (decahydrate) + 2 sodium hydroxide -> 4 sodium metaborate (anhydrous) + 11 water`"},
    {"excess", "`excess   sodium hydroxide, 2 % more than it needs`"},
    {"vessel", "`vessel   2 times the volume`"},
    {"area", "`area   80 sq in`"},
    {"balance", "`balance   0.1 g up to 500 g`"},
    {"graduate", "`graduate   10 ml by 0.2 ml`"},
    {"syringe", "`syringe   1 ml by 0.01 ml`"},
    {"jug", "`jug   5 l by 100 ml`"},
    {"dropper", "`dropper   22 drops per 1 ml water`"},
    {"bottle", "`bottle   500 ml, 1 l`"},
    {"postage", "`postage   6.50 EUR, none over 75 EUR`"},
    {"stir", "`stir until clear` or `stir 2 min`"},
    {"wait", "`wait 15 min, stirring every 5 min`"},
    {"stand", "`stand 12 h`"},
    {"filter", "`filter`"},
    {"cool", "`cool to 20 C` or `cool below 27 C`"},
    {"warm", "`warm to 45 C`"},
    {"not above", "`not above 30 C`"},
    {"do", "`do \"tap out the air bells\"`"},
    {"apart", "`apart lye`, with one word as the vessel's name"},
    {"pour in", "`pour in lye, slowly, stirring` or `pour in half of lye`"},
    {"set aside", "`set aside lye`"},
};

/// A day at the beginning of a line: of a log, or of a plan.
bool is_date(std::string_view keyword) {
    return !keyword.empty() && keyword.front() >= '0' && keyword.front() <= '9';
}

std::string_view how_to_say(std::string_view keyword) {
    if (is_date(keyword))
        return "in a log `2026-11-05 mixed Lantern part A 1 l` (or `received`, `on shelf`, `processed`, `used`, "
               "`replenished`, `discarded`), in a plan `2026-12-03 6 films 135 through roll film`";
    if (keyword.starts_with("each"))
        return "`each Thursday from 2026-12-10 to 2026-12-31 4 films 120 through roll film`";
    for (const auto& sample : samples) {
        if (sample.keyword == keyword) return sample.how;
    }
    return "the line as `scruple help` shows it";
}

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
    if (saying.keyword.empty()) {
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
constexpr std::string_view of_recipe = "it right under a `recipe` heading";
constexpr std::string_view of_solution = "it in a recipe or in one of its parts";

/// The block that takes such a line.
std::string_view home_of(const syntax::Node& node) {
    return std::visit(overloaded{[](const syntax::Instrument&) { return of_bench; },
                                 [](const syntax::Dropper&) { return of_bench; },
                                 [](const syntax::Bottles&) { return of_bench; },
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
                                 [](const syntax::Reaction&) { return of_conversion; },
                                 [](const syntax::Excess&) { return of_conversion; },
                                 [](const syntax::Vessel&) { return of_conversion; },
                                 [](const syntax::Area&) { return of_format; },
                                 [](const syntax::Variants&) { return of_recipe; },
                                 [](const syntax::Words&) { return of_recipe; },
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

void report_unread(Reader& reader, text::Span span, std::string_view keyword) {
    if (keyword.empty()) {
        reader.report(Kind::unread_line, span, {reader.text(span)});
    } else {
        reader.report(Kind::unread_fact, span, {keyword, how_to_say(keyword)});
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

Saying saying_at(std::string_view line) {
    for (const auto& sample : samples) {
        const bool begins = line.starts_with(sample.keyword) && line.size() > sample.keyword.size();
        if (begins && (line[sample.keyword.size()] == ' ' || line[sample.keyword.size()] == '\t'))
            return {sample.keyword, sample.how};
    }
    return {};
}

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
                   [&](const syntax::Instrument&) { return words("a line about an instrument"); },
                   [&](const syntax::Dropper&) { return words("a `dropper` line"); },
                   [&](const syntax::Bottles&) { return words("a `bottle` line"); },
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
