// SPDX-License-Identifier: MIT
#include "lines_read.hpp"

#include <fmt/format.h>

#include <cmath>

#include "slips.hpp"
#include "usual_slips.hpp"
#include "wording.hpp"

namespace scruple::printed {
namespace {

std::string in_figures(const Amount& amount) {
    return amount.base > 0 ? fmt::format("{} {}", figures(amount.base), amount.by_volume ? "ml" : "g") : "";
}

class Reporter {
  public:
    Reporter(const check::Model& model, const Page& page, const Layout& layout, const Judge& judge, const Found& best)
        : model_(model), page_(page), layout_(layout), judge_(judge), best_(best) {}

    LineRead line(std::size_t i) {
        const Known& known = layout_.lines[i];
        const Way& way = known.ways[best_.ways[i]];
        LineRead read;
        read.line = static_cast<std::size_t>(known.line - page_.lines.data());
        read.solution = known.line->solution;
        read.chemical = known.what.chemical;
        read.form_id = way.form;
        read.name = known.what.chemical == check::none ? known.line->name : std::string(known.what.as);
        name(read, known, way);
        amount(read, i, known, way);
        for (const Compared& it : judge_.compared(i, way, best_.shared)) compare(read, i, it, way);
        const double most = judge_.dissolves(read.chemical, way.form);
        if (most > 0 && !read.by_volume && read.per_litre.value_or(0) > most)
            read.evidence.push_back(fmt::format("more than dissolves near 20 °C: about {} g/l", figures(most, 2)));
        tell_unusual(judge_, known, i, way, best_.shared, read);
        return read;
    }

  private:
    void name(LineRead& read, const Known& known, const Way& way) const {
        if (read.chemical == check::none) {
            read.evidence.emplace_back("the library knows no chemical of that name");
        } else {
            const check::Chemical& chemical = model_.chemicals[read.chemical];
            const check::Form& form = chemical.forms[way.form];
            const bool as_sold = form.sold_as && !known.line->percent;
            if (as_sold || (chemical.forms.size() > 1 && !(known.line->percent && known.pure_liquid)))
                read.form = form.name;
            if (as_sold && known.line->form.empty() && known.what.form == check::none)
                read.evidence.push_back(fmt::format("no strength is printed; it is taken for {} ({}, {})",
                                                    chemical.name, form.name, check::shown_strength(*form.sold_as)));
            if (!known.what.misprint.empty())
                read.evidence.push_back(fmt::format("`{}` is taken for {}", known.what.misprint, chemical.name));
        }
        if (known.line->percent)
            read.strength = fmt::format("{} {}", quantity::exact_text(*known.line->percent), words_of(way.percent));
        if (known.line->saturated) read.strength = "saturated at 20 C";
        if (!known.line->assumed.empty()) read.evidence.push_back(known.line->assumed);
    }

    void amount(LineRead& read, std::size_t i, const Known& known, const Way& way) const {
        const std::size_t column = known.line->stated;
        const Measure& measure = known.line->columns[column];
        const PerLitre first = judge_.per_litre(i, way, best_.shared);
        read.amount = words_of(measure, known, best_.shared, way, column, layout_.columns[column]);
        if (measure.per) {
            read.evidence.push_back(
                fmt::format("it is so much in each of what is made, in the words of `{}`", known.line->text));
            read.amount = in_figures(first.amount);
        } else if (const double volume = volume_of(layout_, read.solution, 0, best_.shared); column > 0 && volume > 0) {
            read.evidence.push_back(
                fmt::format("column 1 has none; it is what column {} comes to in the volume of column 1", column + 1));
            read.amount = in_figures({first.per_litre * volume / 1000, first.amount.by_volume});
        }
        if (read.amount.empty())
            read.evidence.push_back(
                fmt::format("`{}` is no weight and no volume, and is not worked out", measure.text));
        if (is_in(measure, UnitWord::drop))
            read.evidence.push_back(fmt::format("drops are taken as {} to the ml (common practice)", drops_in_ml));
        read.by_volume = first.amount.by_volume;
        if (first.per_litre > 0) read.per_litre = first.per_litre;
        const double grams = judge_.substance(i, way, best_.shared);
        if (read.by_volume && grams > 0) read.holds = grams;
        if (known.line->saturated && grams > 0 && read.per_litre)
            read.evidence.push_back(fmt::format("a litre of the saturated solution holds about {} g at 20 °C",
                                                figures(grams / *read.per_litre * 1000, 3)));
    }

    void compare(LineRead& read, std::size_t i, const Compared& it, const Way& way) const {
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
        read.slip = likely_slip(model_, layout_, i, it, best_.shared, way);
        if (std::string which = unusual_column(judge_, i, it, way, best_.shared); !which.empty())
            read.evidence.push_back(std::move(which));
    }

    const check::Model& model_;
    const Page& page_;
    const Layout& layout_;
    const Judge& judge_;
    const Found& best_;
};

}  // namespace

std::vector<LineRead> lines_read(const check::Model& model, const Page& page, const Layout& layout, const Judge& judge,
                                 const Found& best) {
    Reporter reporter(model, page, layout, judge, best);
    std::vector<LineRead> all;
    for (std::size_t i = 0; i < layout.lines.size(); ++i) all.push_back(reporter.line(i));
    return all;
}

}  // namespace scruple::printed
