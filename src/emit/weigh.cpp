// SPDX-License-Identifier: MIT
// One form weighed for another, in all three ways: there is little to say.
#include <fmt/format.h>

#include "html.hpp"
#include "json.hpp"
#include "layout.hpp"
#include "words.hpp"

namespace scruple::emit {
namespace {

using html::element;
using html::Markup;
using plan::Weighing;

std::string asked(const Weighing& weighing) {
    return fmt::format("{} {}", weighing.grams.with_unit(), words::chemical(weighing.chemical, weighing.from));
}

Markup weighed_as(const Weighing& weighing) {
    Markup line = element("span", "class=\"amount\"", weighing.as.with_unit());
    line += element("span", "class=\"what\"", words::chemical(weighing.chemical, weighing.to));
    Markup all = element("p", line);
    all += html::list(weighing.lines);
    return all;
}

}  // namespace

std::string weigh_text(std::span<const plan::Weighing> weighings, const TextStyle& style) {
    Sheet sheet(style);
    AmountColumn amounts;
    for (const Weighing& one : weighings) amounts.make_room(one.as.text, one.as.unit);
    sheet.blank();
    if (!weighings.empty()) sheet.item("", fmt::format("In place of {} weigh", asked(weighings.front())));
    for (const Weighing& one : weighings) {
        sheet.blank();
        sheet.item(amounts.line(one.as.text, one.as.unit) + "   ", words::chemical(one.chemical, one.to));
        for (const std::string& line : one.lines) sheet.indented(amounts.width() + 3, line);
    }
    return sheet.take();
}

std::string weigh_html(std::span<const plan::Weighing> weighings) {
    const std::string title = weighings.empty() ? "" : fmt::format("In place of {} weigh", asked(weighings.front()));
    Markup all = element("h1", title);
    for (const Weighing& one : weighings) all += weighed_as(one);
    return html::page(title, element("main", element("article", all)));
}

std::string weigh_json(std::span<const plan::Weighing> weighings) {
    json::Value all;
    all["kind"] = "weigh";
    if (weighings.empty()) return json::document(all);
    const Weighing& first = weighings.front();
    all["chemical"] = first.chemical;
    all["form"] = json::text_or_null(first.from);
    all["amount"] = json::figure(first.grams);
    all["mol"] = json::number(first.mol);
    all["as"] = json::each(weighings, [](const Weighing& one) {
        json::Value as;
        as["form"] = one.to;
        as["amount"] = json::figure(one.as);
        as["factor"] = json::number(one.factor.to_double());
        as["lines"] = one.lines;
        return as;
    });
    return json::document(all);
}

}  // namespace scruple::emit
