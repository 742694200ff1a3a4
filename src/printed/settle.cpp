// SPDX-License-Identifier: MIT
#include "scruple/printed/settle.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "dangers.hpp"
#include "questions.hpp"
#include "slips.hpp"

namespace scruple::printed {
namespace {

std::string figures(double value, int digits = 4) {
    return quantity::significant_text(value, digits);
}

class Settler {
  public:
    Settler(const check::Model& model, const check::PrintedPage& typed)
        : model_(model),
          typed_(typed),
          page_(read_page(typed)),
          layout_(layout_of(model, page_)),
          judge_(model, layout_) {
        keep_to_hand(model, layout_, typed.readings);
    }

    Settlement run() {
        settled_.name = typed_.name;
        settled_.purpose = typed_.purpose;
        settled_.book = typed_.book;
        settled_.notes.assign(typed_.notes.begin(), typed_.notes.end());
        settled_.warnings = dangers_in(typed_);
        unread();
        hand_lines();
        if (!layout_.lines.empty()) search();
        return std::move(settled_);
    }

  private:
    void unread() {
        for (std::size_t i = 0; i < page_.lines.size(); ++i)
            if (page_.lines[i].what == Line::What::words && !is_first_aid(typed_.lines[i].text))
                settled_.not_read.emplace_back(typed_.lines[i].text);
    }

    void hand_lines() {
        for (const check::ReadingByHand& line : typed_.readings)
            if (by_hand_of(line.said) == ByHand::nothing)
                settled_.faults.push_back(fmt::format(
                    "`reading {}` settles nothing: write `fl oz imperial` or `us`, `oz avoirdupois` or `apothecaries`, "
                    "`gr grain` or `gram`, or a chemical with its form in parentheses",
                    line.said));
    }

    void search() {
        std::vector<Shared> shared = shared_readings(page_, layout_, typed_.readings);
        add_stronger(judge_, layout_, shared);
        const Search search(layout_.lines, shared, [this](std::size_t line, const Way& way, const Shared& one) {
            return judge_.cost(line, way, one);
        });
        makes(search.best());
        for (std::size_t i = 0; i < layout_.lines.size(); ++i) settled_.lines.push_back(line(i, search.best()));
        page_evidence(search.best());
        settled_.questions = questions(model_, page_, layout_, judge_, search, typed_.readings);
    }

    void makes(const Found& best) {
        for (std::size_t column = 0; column < layout_.columns.size(); ++column) {
            const double volume = volume_of(layout_, column, best.shared);
            if (volume <= 0) continue;
            const Column& it = layout_.columns[column];
            settled_.makes_ml = volume;
            settled_.added_up = !it.made_up;
            settled_.makes = it.volume_lines.size() > 1 ? figures(volume) + " ml"
                                                        : amount_of(it.volume_lines.front()->columns[column],
                                                                    layout_.water, best.shared, {}, column, it.metric)
                                                              .words;
            return;
        }
    }

    LineRead line(std::size_t i, const Found& best) {
        const Known& known = layout_.lines[i];
        const Way& way = known.ways[best.ways[i]];
        LineRead read;
        read.line = static_cast<std::size_t>(known.line - page_.lines.data());
        read.chemical = known.what.chemical;
        read.form_id = way.form;
        read.name = known.what.chemical == check::none ? known.line->name : std::string(known.what.as);
        if (known.line->percent)
            read.strength =
                fmt::format("{} {}", quantity::exact_text(*known.line->percent), percent_of(known, typed_.readings));
        else if (read.chemical != check::none && model_.chemicals[read.chemical].forms.size() > 1)
            read.form = model_.chemicals[read.chemical].forms[way.form].name;
        if (read.chemical == check::none) read.evidence.emplace_back("the library knows no chemical of that name");
        const PerLitre first = judge_.per_litre(i, 0, way, best.shared);
        if (first.amount.words.empty())
            read.evidence.push_back(fmt::format("`{}` is no weight and no volume, and is not worked out",
                                                known.line->columns.front().text));
        read.amount = first.amount.words;
        read.by_volume = first.amount.by_volume;
        if (first.per_litre > 0) read.per_litre = first.per_litre;
        for (const Compared& it : judge_.compared(i, way, best.shared)) compare(read, i, it, best, way);
        const double most = judge_.dissolves(read.chemical, way.form);
        if (most > 0 && !read.by_volume && first.per_litre > most)
            read.evidence.push_back(fmt::format("more than dissolves near 20 °C: about {} g/l", figures(most, 2)));
        return read;
    }

    void compare(LineRead& read, std::size_t i, const Compared& it, const Found& best, const Way& way) const {
        const std::string unit = read.by_volume ? "ml" : "g";
        const double off = (it.printed / it.exact - 1) * 100;
        const std::string percent = fmt::format("{}{} %", off < 0 ? "−" : "+", figures(std::abs(off), 2));
        const std::string there = fmt::format("column {} has {} {} where {} {} would be it, {}", it.column + 1,
                                              figures(it.printed), unit, figures(it.exact), unit, percent);
        if (!disagree(it)) {
            read.off.push_back(percent);
            read.evidence.push_back(there);
            return;
        }
        read.fault = "no reading brings the columns together: " + there;
        read.slip = likely_slip(model_, layout_, i, it, best.shared, way);
    }

    /// A column that is stronger than the first by the same in every line was made so, or scaled so.
    void strength_evidence(const Found& best) {
        for (std::size_t column = 1; column < layout_.columns.size(); ++column) {
            std::vector<double> off;
            for (std::size_t i = 0; i < layout_.lines.size(); ++i)
                for (const Compared& it : judge_.compared(i, layout_.lines[i].ways[best.ways[i]], best.shared))
                    if (it.column == column && it.same_kind) off.push_back(it.printed / it.exact);
            if (off.size() < 2) continue;
            const auto [least, most] = std::ranges::minmax(off);
            if (most / least > 1.015 || std::abs(least - 1) < 0.03) continue;
            settled_.evidence.push_back(fmt::format("column {} is {} % {} than column 1 in every line", column + 1,
                                                    figures(std::abs(least - 1) * 100, 2),
                                                    least > 1 ? "stronger" : "weaker"));
        }
    }

    void page_evidence(const Found& best) {
        strength_evidence(best);
        if (best.shared.stronger != 1)
            settled_.evidence.push_back(fmt::format("the metric column is {} % {} than the others throughout",
                                                    figures(std::abs(best.shared.stronger - 1) * 100, 2),
                                                    best.shared.stronger > 1 ? "stronger" : "weaker"));
        if (page_.country == Page::Country::britain) settled_.evidence.emplace_back("the book is British");
        if (page_.country == Page::Country::america) settled_.evidence.emplace_back("the book is American");
        if (page_.year) settled_.evidence.push_back(fmt::format("it is of {}", *page_.year));
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
