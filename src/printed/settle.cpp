// SPDX-License-Identifier: MIT
#include "scruple/printed/settle.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "dangers.hpp"
#include "directions.hpp"
#include "lines_read.hpp"
#include "questions.hpp"
#include "wording.hpp"

namespace scruple::printed {
namespace {

constexpr double worth_a_word = 1.5;  ///< times as strong as in use

class Settler {
  public:
    Settler(const check::Model& model, const check::PrintedPage& typed)
        : model_(model),
          typed_(typed),
          page_(read_page(typed)),
          layout_(layout_of(model, page_)),
          judge_(model, layout_, role_of(model, typed, layout_)) {
        keep_to_hand(model, layout_, typed.readings);
    }

    Settlement run() {
        settled_.name = typed_.name;
        settled_.purpose = typed_.purpose;
        settled_.book = typed_.book;
        settled_.notes.assign(typed_.notes.begin(), typed_.notes.end());
        settled_.warnings = dangers_in(model_, typed_, layout_);
        for (const Solution& solution : page_.solutions) settled_.solutions.push_back({.label = solution.label});
        unread();
        hand_lines();
        if (!layout_.lines.empty()) search();
        return std::move(settled_);
    }

  private:
    void unread() {
        for (const Line& line : page_.lines) {
            if (is_first_aid(line.text)) continue;
            if (line.what == Line::What::words) settled_.not_read.push_back(line.text);
            if (line.what == Line::What::alternative)
                settled_.not_read.push_back("instead of the line before: " + line.text);
        }
    }

    void hand_lines() {
        for (const check::ReadingByHand& line : typed_.readings) {
            if (by_hand_of(line.said) == ByHand::nothing)
                settled_.faults.push_back(fmt::format(
                    "`reading {}` settles nothing: write `fl oz imperial` or `us`, `oz avoirdupois` or `apothecaries`, "
                    "`gr grain` or `gram`, `% v/v`, `% w/w` or `% w/v`, a dilution such as `1+9`, or a chemical with "
                    "its form in parentheses; behind it ` in column 2` for one column, ` of acetic acid` for one "
                    "chemical",
                    line.said));
            else if (!is_on_page(line))
                settled_.faults.push_back(fmt::format(
                    "`reading {}` settles nothing: the page has no such column, or no line of that chemical",
                    line.said));
        }
    }

    /// Whether there is what a `reading` line is narrowed to.
    [[nodiscard]] bool is_on_page(const check::ReadingByHand& line) const {
        const Narrowed to = narrowed(line.said);
        if (to.column && *to.column >= layout_.columns.size()) return false;
        return to.chemical.empty() || std::ranges::any_of(layout_.lines, [&](const Known& known) {
                   return is_about(model_, line, known.what.chemical);
               });
    }

    void search() {
        std::vector<Shared> shared = shared_readings(page_, layout_, typed_.readings);
        add_stronger(judge_, layout_, shared);
        judge_.set_strengths(strengths_of(judge_, page_, layout_, shared));
        const Search search(layout_.lines, shared, [this](std::size_t line, const Way& way, const Shared& one) {
            return judge_.weights(line, way, one).sum();
        });
        const Acidity acidity(model_, page_, layout_, judge_);
        const Found best = acidity.best(search);
        for (std::size_t i = 0; i < page_.solutions.size(); ++i) solution(i, best);
        settled_.lines = lines_read(model_, page_, layout_, judge_, best);
        for_use(best);
        page_evidence(best);
        acidity_evidence(acidity, best);
        Options options(layout_, judge_, acidity, best);
        settled_.questions = questions({model_, page_, layout_, search, options, typed_.readings});
    }

    void solution(std::size_t index, const Found& best) {
        SolutionRead& it = settled_.solutions[index];
        for (std::size_t column = 0; column < layout_.columns.size() && !it.makes_ml; ++column) {
            const double volume = volume_of(layout_, index, column, best.shared);
            if (volume <= 0) continue;
            const VolumeLines& volumes = layout_.volumes[index][column];
            it.makes_ml = volume;
            it.added_up = !volumes.made_up;
            it.makes = volumes.lines.size() > 1 ? figures(volume) + " ml"
                                                : words_of(volumes.lines.front()->columns[column], layout_.water,
                                                           best.shared, {}, column, layout_.columns[column]);
        }
        it.ph = ph_of(model_, held_by(model_, layout_, judge_, best, Mixture{{{index, 1}}, 0}));
        if (const double times = judge_.strength(index).times; times > worth_a_word)
            settled_.evidence.push_back(fmt::format("{} is taken as {} times as strong as in use",
                                                    it.label.empty() ? "the solution" : "solution " + it.label,
                                                    figures(times, 3)));
    }

    // ---- what is mixed for use ----

    void for_use(const Found& best) {
        for (const Line& line : page_.lines) {
            if (line.mixture)
                settled_.for_use.push_back(use(*line.mixture, line.text, best));
            else if (line.what == Line::What::dilution)
                settled_.for_use.push_back(use(dilution_taken(line, typed_.readings), line.text, best));
        }
    }

    ForUse use(const Mixture& mixture, const std::string& text, const Found& best) const {
        ForUse use{.text = text};
        const Mixture mixed = in_one_unit(mixture, best.shared.fluid[0]);
        for (const Mixture::Share& share : mixed.shares)
            use.shares.push_back({share.solution, quantity::exact_text(share.parts)});
        if (mixed.water > 0) use.water = quantity::exact_text(mixed.water);
        const Held held = held_by(model_, layout_, judge_, best, mixture);
        for (const check::Content& content : held.contents) {
            const std::string name = check::shown_name(model_.chemicals[content.chemical], content.form);
            const auto there = std::ranges::find(use.holds, name, &ForUse::Holds::name);
            if (there == use.holds.end())
                use.holds.push_back({name, content.g_per_l});
            else
                there->per_litre += content.g_per_l;
        }
        use.ph = ph_of(model_, held);
        return use;
    }

    // ---- evidence of the page ----

    void acidity_evidence(const Acidity& acidity, const Found& best) {
        const auto ph = acidity.ph(best);
        const auto usual = usual_ph(judge_.role());
        if (!ph || !usual) return;
        const bool within = *ph >= usual->least && *ph <= usual->most;
        settled_.evidence.push_back(
            fmt::format("the pH comes to about {:.1f}{}; {} are mostly between {} and {} (common practice)", *ph,
                        within ? "" : ", and so something on the page may not be what was meant",
                        in_plural(judge_.role()), figures(usual->least, 2), figures(usual->most, 3)));
    }

    /// A column that is stronger than the first by the same in every line was made so, or scaled so.
    void strength_evidence(const Found& best) {
        for (std::size_t column = 1; column < layout_.columns.size(); ++column) {
            std::vector<double> off;
            for (std::size_t i = 0; i < layout_.lines.size(); ++i)
                for (const Compared& it : judge_.compared(i, layout_.lines[i].ways[best.ways[i]], best.shared))
                    if (it.column == column && it.against == 0 && it.same_kind) off.push_back(it.printed / it.exact);
            if (off.size() < 2) continue;
            const auto [least, most] = std::ranges::minmax(off);
            if (most / least > 1.015 || std::abs(least - 1) < 0.03) continue;
            settled_.evidence.push_back(fmt::format("column {} is {} % {} than column 1 in every line", column + 1,
                                                    figures(std::abs(least - 1) * 100, 2),
                                                    least > 1 ? "stronger" : "weaker"));
        }
    }

    /// A wrong volume looks like that too.
    void stronger_throughout(const Found& best) {
        std::string as_if;
        for (std::size_t column = 0; column < layout_.columns.size(); ++column) {
            const double volume = volume_of(layout_, 0, column, best.shared);
            if (!layout_.columns[column].metric || volume <= 0 || !as_if.empty()) continue;
            as_if = fmt::format(", as if it made {} ml and not {} ml", figures(volume * best.shared.stronger, 3),
                                figures(volume));
        }
        settled_.evidence.push_back(fmt::format("the metric column is {} % {} than the others throughout{}",
                                                figures(std::abs(best.shared.stronger - 1) * 100, 2),
                                                best.shared.stronger > 1 ? "stronger" : "weaker", as_if));
    }

    void page_evidence(const Found& best) {
        strength_evidence(best);
        if (best.shared.stronger != 1) stronger_throughout(best);
        if (page_.year) settled_.evidence.push_back(fmt::format("it is of {}", *page_.year));
        if (page_.country == Page::Country::britain) settled_.evidence.emplace_back("the book is British");
        if (page_.country == Page::Country::america) settled_.evidence.emplace_back("the book is American");
        const auto in_parts = [](const Column& column) { return column.parts; };
        if (std::ranges::any_of(layout_.columns, in_parts))
            settled_.evidence.emplace_back("a part is a gram of what is weighed and a ml of what is measured");
        if (std::ranges::all_of(layout_.columns, &Column::metric)) return;
        if (page_.spelling == Page::Country::britain) settled_.evidence.emplace_back("it is spelled as in Britain");
        if (page_.spelling == Page::Country::america) settled_.evidence.emplace_back("it is spelled as in America");
    }

    const check::Model& model_;
    const check::PrintedPage& typed_;
    Page page_;
    Layout layout_;
    Judge judge_;
    Settlement settled_;
};

}  // namespace

Settlement settle(const check::Model& model, const check::PrintedPage& typed) {
    return Settler(model, typed).run();
}

}  // namespace scruple::printed
