// SPDX-License-Identifier: MIT
// Mixing cards on paper, in the order in which hands need it.
#include "card.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>

#include "column.hpp"
#include "scruple/emit/words.hpp"
#include "scruple/plan/calendar.hpp"

namespace scruple::paper {
namespace {

namespace words = emit::words;
using plan::Card;
using plan::Work;

constexpr Style makes_style{20, true};
constexpr Style amount_style{22, true};
constexpr Style what_style{16, false};
constexpr double number_width = 30;
constexpr double clock_points = 60;

std::string kept(std::string_view text) {
    return words::with_units_kept(text);
}

class CardComposer {
  public:
    CardComposer(const Type& type, const SheetSize& sheet) : column_(type, area_of(sheet).width) {}

    Blocks card(const Card& card) {
        head(card);
        cautions(card);
        accepted(card);
        gather(card);
        work(card);
        end_checks(card);
        life(card);
        held(card);
        substituted(card);
        list(words::assumed_heading, card.assumed);
        warnings(card);
        list(words::notes_heading, card.notes);
        list(words::sources_heading, card.sources);
        return std::move(blocks_);
    }

  private:
    void add(Block block) { blocks_.push_back(std::move(block)); }
    void add(Block block, double before) {
        block.before = before;
        add(std::move(block));
    }
    void heading(std::string_view text) { add(column_.heading(text)); }
    void lines(const std::vector<std::string>& all) {
        for (const std::string& line : all) add(column_.words(kept(line)), gap / 2);
    }

    void head(const Card& card) {
        add(column_.words(words::title(card), title_style));
        if (const auto subtitle = words::subtitle(card); !subtitle.empty()) add(column_.words(subtitle), 2);
        const std::string for_what = card.makes_for.empty() ? "" : " for " + card.makes_for;
        add(column_.words({{"makes " + card.makes.with_unit(), makes_style}, {kept(for_what)}}), gap);
        const Field mixed = card.mixed_on ? Field{Field::What::words, "Mixed on " + plan::day_text(*card.mixed_on)}
                                          : Field{Field::What::line, "Mixed on", 90};
        add(column_.fields({mixed, {Field::What::line, "by", 70}, {Field::What::line, "batch", 70}}), wide_gap);
        if (!card.warnings.empty()) add(column_.words(words::warnings_below(card), strong), gap);
    }

    void barred_line(Block block, double before) {
        block.before = before;
        add(barred(std::move(block)));
    }
    void barred_heading(const Column& inner, std::string_view text) {
        Block head = inner.words(text, {17, true});
        head.stays_with_next = true;
        head.before = gap;
        head = barred(std::move(head));
        head.before += wide_gap;  // white that the bar does not reach
        add(std::move(head));
    }

    void cautions(const Card& card) {
        const Column inner = column_.narrower(bar_indent);
        barred_heading(inner, words::cautions_heading);
        for (const plan::Caution& caution : card.cautions)
            barred_line(inner.marked("!", {{kept(words::with_source(caution.text, caution.source))}}), gap);
        for (const plan::HazardRow& row : card.hazards) barred_line(inner.words(words::hazard_line(row)), gap);
        barred_line(inner.words(words::check_the_sheet), gap);
    }

    void accepted(const Card& card) {
        if (card.accepted.empty()) return;
        const Column inner = column_.narrower(bar_indent);
        barred_heading(inner, words::accepted_heading);
        for (const plan::AcceptedMeeting& it : card.accepted) {
            barred_line(inner.marked("!", {{kept(words::accepted_head(it)), strong}}), gap);
            for (const std::string& line : words::accepted_lines(it)) barred_line(inner.words(kept(line)), gap / 2);
        }
    }

    void gather(const Card& card) {
        if (card.gather.empty()) return;
        heading(words::gather_heading);
        for (const plan::Gathered& thing : card.gather) {
            const bool last = &thing == &card.gather.back();
            const std::string name = words::chemical(thing.chemical, thing.form);
            const std::string wanted = thing.optional ? "only if you want it" : "";
            Block row = column_.row(
                {{{{words::listed({name, thing.note, wanted})}}, {{thing.amount.with_unit(), amount_style}}},
                 {120},
                 true,
                 true});
            row.stays_with_next = !last;
            add(std::move(row));
        }
    }

    void work(const Card& card) {
        if (card.work.empty()) return;
        heading(words::work_heading);
        for (const Work& line : card.work) add(step(line));
    }

    Block step(const Work& work) {
        const Column inner = column_.narrower(number_width);
        Words first;
        if (const auto before = words::before_amount(work); work.amount && !before.empty())
            first.push_back({std::string(before) + " "});
        if (work.amount) first.push_back({work.amount->with_unit() + "   ", amount_style});
        first.push_back({kept(work.what), what_style});

        Blocks all{numbered(work.n, inner.words(first))};
        const auto below = [&](Block block) {
            block.before = 2;
            all.push_back(indented(std::move(block), number_width));
        };
        for (const std::string& remark : words::remarks(work)) below(inner.words(kept(remark)));
        if (work.seconds)
            below(inner.fields(
                {{Field::What::line, "started", clock_points}, {Field::What::line, "ended", clock_points}}));
        if (auto fields = boxes(work); !fields.empty()) below(inner.fields(fields));
        Block rule = column_.rule(0.8);
        rule.before = 4;
        rule.stays_with_next = false;
        all.push_back(std::move(rule));
        Block whole = stacked(std::move(all));
        whole.before = gap;
        return whole;
    }

    Block numbered(int number, const Block& line) {
        const Setting sign = column_.set({{fmt::format("{}", number), strong}});
        Block block = indented(line, number_width);
        block.draw = [sign, rest = block.draw, height = block.height](cairo_t* ink, double x, double y) {
            sign.draw(ink, x, y + std::min(height, amount_style.points * 1.16) - sign.height());
            rest(ink, x, y);
        };
        block.pieces.clear();
        return block;
    }

    static std::vector<Field> boxes(const Work& work) {
        std::vector<Field> fields;
        if (const auto in = words::box_of(work); !in.empty()) fields.push_back({Field::What::box, std::string(in)});
        if (work.clear_box) fields.push_back({Field::What::box, "clear"});
        if (work.running) fields.push_back({Field::What::words, words::running(work)});
        return fields;
    }

    void end_checks(const Card& card) {
        heading(words::checks_heading);
        add(column_.fields({{Field::What::box, std::string(words::check_clear)}}));
        add(column_.fields({{Field::What::line, "colour", 120}}), gap);
        for (const std::string& check : card.checks)
            add(column_.fields({{Field::What::line, check + ", found", 80}}), gap);
    }

    void life(const Card& card) {
        if (card.keeps.empty() && card.use_within.empty() && card.capacity.empty()) return;
        heading(words::life_heading);
        for (const plan::Life& life : card.keeps) {
            const std::string text = kept("keeps " + life.text) + ", use by";
            if (life.use_by)
                add(column_.words(text + " " + plan::day_text(*life.use_by)), gap / 2);
            else
                add(column_.fields({{Field::What::line, text, 90}}), gap);
        }
        if (!card.use_within.empty()) lines({"use within " + card.use_within});
        lines(card.capacity);
        if (words::wants_tally(card)) tally();
    }

    void tally() {
        std::vector<Field> boxes(words::tally_groups * words::tally_of_group, {Field::What::box, ""});
        Block label = column_.words(words::tally_label);
        label.before = gap;
        Block row = column_.fields(boxes);
        row.before = gap;
        add(stacked({std::move(label), std::move(row)}));
    }

    void held(const Card& card) {
        if (card.contents.empty()) return;
        heading(words::held_heading);
        const std::vector<double> widths{62, 76, 76};
        add(column_.row({{{{""}}, {{"g/l"}}, {{"mol/l"}}, {{"or so"}}}, widths}));
        for (const plan::ContentRow& row : card.contents)
            add(column_.row({{{{words::chemical(row.chemical, row.form)}},
                              {{words::table_figure(row.g_per_l)}},
                              {{words::table_figure(row.mol_per_l)}},
                              {{words::give_or_take(row)}}},
                             widths}));
        if (!card.ph) return;
        lines({words::ph_head(*card.ph) + (card.ph->value ? " " + card.ph->text : "")});
        lines(words::ph_remarks(*card.ph));
    }

    void list(std::string_view title, const std::vector<std::string>& all) {
        if (all.empty()) return;
        heading(title);
        for (const std::string& line : all) add(column_.marked("–", {{kept(line)}}), gap / 2);
    }

    void substituted(const Card& card) {
        if (card.substituted.empty()) return;
        heading(words::substituted_heading);
        for (const plan::Substitution& it : card.substituted) {
            add(column_.words(kept(words::substitution_head(it)), strong), gap / 2);
            for (const std::string& line : words::substitution(it)) add(column_.marked("–", {{kept(line)}}), gap / 2);
        }
    }

    void warnings(const Card& card) {
        if (card.warnings.empty()) return;
        heading(words::warnings_heading);
        for (const plan::Warning& warning : card.warnings)
            add(column_.marked("!", {{words::warning_line(warning)}}), gap / 2);
    }

    Column column_;
    Blocks blocks_;
};

}  // namespace

std::vector<Page> card_pages(const Card& card, const Type& type, const SheetSize& sheet) {
    const std::string title = words::running_head(card);
    return laid_out({title, CardComposer(type, sheet).card(card)}, type, sheet);
}

std::string cards(std::span<const plan::Card> cards, const Printing& printing) {
    const Type type;
    std::vector<Page> pages;
    for (const Card& card : cards) {
        auto more = card_pages(card, type, printing.sheet);
        pages.insert(pages.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
    }
    add_feet(pages, type, printing.sheet);
    return drawn(pages, cards.size() == 1 ? words::title(cards[0]) : "Mixing cards", printing);
}

}  // namespace scruple::paper
