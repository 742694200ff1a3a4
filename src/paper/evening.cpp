// SPDX-License-Identifier: MIT
// An evening on paper.
#include <fmt/format.h>

#include "chart.hpp"
#include "list.hpp"
#include "pages.hpp"
#include "scruple/emit/evening_words.hpp"
#include "scruple/emit/words.hpp"

namespace scruple::paper {
namespace {

namespace words = emit::words;
using plan::Evening;

constexpr double clock_width = 50;
constexpr double hands_width = 60;

std::string caution_line(const plan::Caution& caution) {
    return words::with_source(caution.text, caution.source);
}

class EveningComposer {
  public:
    EveningComposer(const Type& type, const SheetSize& sheet) : list_(type, area_of(sheet).width) {}

    Blocks evening(const Evening& evening) {
        list_.title(words::evening_title(evening), words::evening_sums(evening));
        list_.heading(words::chart_heading);
        picture(evening);
        cautions(evening);
        accepted(evening);
        list_.heading(words::clock_heading);
        for (const auto& turn : words::turns_of(evening)) add_turn(evening, turn);
        list_.heading(words::assumed_heading);
        for (const std::string& line : evening.assumed) list_.add(list_.column().marked("–", {{line}}), gap / 2);
        list_.warnings(words::warnings_heading, evening.warnings);
        return list_.take();
    }

  private:
    void cautions(const Evening& evening) {
        list_.heading(words::cautions_heading);
        for (const auto& caution : evening.cautions)
            list_.add(list_.column().marked("!", {{caution_line(caution), strong}}), 2);
        std::vector<std::string> unknown;
        for (const auto& row : evening.hazards)
            if (row.codes.empty() && !row.cautioned)
                unknown.push_back(row.chemical);
            else
                list_.add(list_.column().marked("–", {{words::hazard_line(row)}}), 2);
        if (!unknown.empty())
            list_.add(list_.column().marked("–", {{fmt::format("{}: {}", words::no_caution, words::listed(unknown))}}),
                      2);
        list_.add(list_.column().words(words::check_the_sheet), gap / 2);
    }

    void accepted(const Evening& evening) {
        if (!evening.accepted.empty()) list_.heading(words::accepted_heading);
        for (const auto& it : evening.accepted)
            list_.item(list_.column().marked("!", {{words::accepted_head(it), strong}}), 0, words::accepted_lines(it),
                       {});
    }

    void picture(const Evening& evening) {
        std::vector<Bar> bars;
        for (const auto& solution : evening.solutions)
            bars.push_back({fmt::format("{}, vessel {}", words::solution_head(solution), solution.vessel),
                            solution.begun,
                            solution.stays_in_vessel ? evening.minutes : solution.ready,
                            {}});
        for (const auto& step : evening.steps) {
            auto& stretches = bars[step.solution].stretches;
            const int by_itself = step.start + step.hands;
            stretches.push_back({step.start, by_itself, true});
            if (step.alone > 0) stretches.push_back({by_itself, by_itself + step.alone, false});
        }
        list_.add(chart(list_.column(), bars, ticks(evening), evening.minutes), gap);
        list_.add(list_.column().words(words::chart_key), gap);
    }

    /// At whole quarters of an hour, or at halves and hours where there are too many.
    static std::vector<Tick> ticks(const Evening& evening) {
        const int each = evening.minutes <= 120 ? 15 : evening.minutes <= 300 ? 30 : 60;
        const int first = evening.from ? (each - *evening.from % each) % each : 0;
        std::vector<Tick> all;
        for (int at = first; at <= evening.minutes; at += each) all.push_back({at, words::clock(evening, at)});
        return all;
    }

    void add_turn(const Evening& evening, const words::Turn& turn) {
        const auto& solution = evening.solutions[turn.solution];
        Block head = list_.column().words(
            {{words::solution_head(solution), strong}, {fmt::format("   vessel {}", solution.vessel)}});
        head.stays_with_next = true;
        list_.add(std::move(head), wide_gap);
        for (const auto* step : turn.steps) add_step(evening, *step);
    }

    void add_step(const Evening& evening, const plan::EveningStep& step) {
        const Column inner = list_.column().narrower(clock_width);
        const std::string number = step.work.n > 0 ? fmt::format("{}. ", step.work.n) : "";
        Words what{{number}};
        if (step.work.amount)
            what.push_back(
                {fmt::format("{}{}{}   ", words::before_amount(step.work),
                             words::before_amount(step.work).empty() ? "" : " ", step.work.amount->with_unit()),
                 {18, true}});
        what.push_back({step.work.what});
        Blocks all{inner.row({{what, {{fmt::format("{} min", step.hands)}}}, {hands_width}, false, true})};
        for (const std::string& remark : words::step_remarks(evening, step)) {
            Block line = indented(inner.narrower(box_side + gap).words(words::with_units_kept(remark)), box_side + gap);
            line.before = 1;
            all.push_back(std::move(line));
        }
        list_.add(at_clock(indented(stacked(std::move(all)), clock_width), words::clock(evening, step.start)), gap);
    }

    /// The time of day in the margin, on the first line of the block.
    [[nodiscard]] Block at_clock(Block block, const std::string& time) const {
        const Setting clock = list_.column().set({{time, strong}});
        block.draw = [clock, rest = std::move(block.draw)](cairo_t* ink, double x, double y) {
            clock.draw(ink, x, y);
            rest(ink, x, y);
        };
        return block;
    }

    ListColumn list_;
};

}  // namespace

std::string evening(const Evening& evening, const Printing& printing) {
    const Type type;
    return drawn({words::evening_title(evening), EveningComposer(type, printing.sheet).evening(evening)}, type,
                 printing);
}

}  // namespace scruple::paper
