// SPDX-License-Identifier: MIT
#include "layout.hpp"
#include "scruple/emit/calendar_words.hpp"
#include "scruple/emit/emit.hpp"
#include "scruple/emit/words.hpp"

namespace scruple::emit {
namespace {

void mixing(Sheet& sheet, const plan::Mixing& mixing, check::Day day, const AmountColumn& column) {
    const std::string box = mixing.weighed ? "□  " : "   ";
    sheet.item(box + column.line(mixing.volume.text, mixing.volume.unit) + "   ", mixing.name,
               mixing.weighed ? "weigh" : "dilute");
    const std::size_t indent = column.width() + 6;
    for (const std::string& line : words::mixing_lines(mixing, day)) sheet.indented(indent, line);
}

}  // namespace

std::string calendar_text(const plan::MixingCalendar& calendar, const TextStyle& style) {
    Sheet sheet(style);
    sheet.blank();
    sheet.item("", words::calendar_title(calendar));
    sheet.item("", words::calendar_sum(calendar));
    AmountColumn column;
    for (const auto& day : calendar.days)
        for (const auto& one : day.mixings) column.make_room(one.volume.text, one.volume.unit);
    for (const auto& day : calendar.days) {
        sheet.heading(words::weekday(day.day));
        for (const auto& one : day.mixings) mixing(sheet, one, day.day, column);
    }
    if (!calendar.notes.empty()) sheet.heading(words::warnings_heading);
    for (const std::string& note : calendar.notes) sheet.item("! ", note);
    return sheet.take();
}

}  // namespace scruple::emit
