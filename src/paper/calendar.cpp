// SPDX-License-Identifier: MIT
// A mixing calendar on paper.
#include "list.hpp"
#include "pages.hpp"
#include "scruple/emit/calendar_words.hpp"
#include "scruple/emit/words.hpp"

namespace scruple::paper {
namespace {

namespace words = emit::words;
using plan::MixingCalendar;

class CalendarComposer {
  public:
    CalendarComposer(const Type& type, const SheetSize& sheet) : list_(type, area_of(sheet).width) {}

    Blocks calendar(const MixingCalendar& calendar) {
        list_.title(words::calendar_title(calendar), {words::calendar_sum(calendar)});
        for (const auto& day : calendar.days) {
            list_.heading(words::weekday(day.day));
            for (const auto& one : day.mixings) mixing(one, day.day);
        }
        list_.warnings(words::warnings_heading, calendar.notes);
        return list_.take();
    }

  private:
    void mixing(const plan::Mixing& one, check::Day day) {
        const Words what{{one.volume.with_unit() + "   ", list_amount}, {one.name, list_what}};
        std::vector<std::string> remarks;
        for (std::string& line : words::mixing_lines(one, day)) remarks.push_back(std::move(line));
        list_.item(list_.column().row({{what, {{one.weighed ? "weigh" : "dilute"}}}, {0}, false, one.weighed}),
                   one.weighed ? box_side + gap : 0, remarks, {});
    }

    ListColumn list_;
};

}  // namespace

std::string calendar(const MixingCalendar& calendar, const Printing& printing) {
    const Type type;
    return drawn({words::calendar_title(calendar), CalendarComposer(type, printing.sheet).calendar(calendar)}, type,
                 printing);
}

}  // namespace scruple::paper
