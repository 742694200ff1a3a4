// SPDX-License-Identifier: MIT
#include "html.hpp"
#include "scruple/emit/calendar_words.hpp"
#include "scruple/emit/emit.hpp"
#include "scruple/emit/words.hpp"

namespace scruple::emit {
namespace {

using html::element;
using html::Markup;

Markup mixing(const plan::Mixing& mixing, check::Day day) {
    Markup head = mixing.weighed ? html::box("") : Markup();
    head += element("span", "class=\"amount\"", mixing.volume.with_unit());
    head += element("span", "class=\"what\"", mixing.name);
    Markup all = element("p", head);
    for (const std::string& line : words::mixing_lines(mixing, day)) all += element("p", line);
    return element("li", all);
}

}  // namespace

std::string calendar_html(const plan::MixingCalendar& calendar) {
    const std::string title = words::calendar_title(calendar);
    Markup all = element("h1", title);
    all += element("p", words::calendar_sum(calendar));
    for (const auto& day : calendar.days) {
        Markup items;
        for (const auto& one : day.mixings) items += mixing(one, day.day);
        all += html::section(words::weekday(day.day), element("ul", "class=\"errands\"", items));
    }
    all += html::section(words::warnings_heading, html::list(calendar.notes));
    return html::page(title, element("main", element("article", all)));
}

}  // namespace scruple::emit
