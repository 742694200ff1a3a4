// SPDX-License-Identifier: MIT
// One form weighed for another, in all three ways: there is little to say.
#include <fmt/format.h>

#include "html.hpp"
#include "json.hpp"
#include "layout.hpp"
#include "scruple/emit/words.hpp"

namespace scruple::emit {
namespace {

using html::element;
using html::Markup;
using plan::Kinship;
using plan::Weighing;

std::string heading(const Weighing& weighing) {
    return fmt::format("In place of {} {} take", weighing.called.with_unit(),
                       words::chemical(weighing.chemical, weighing.from));
}

std::string_view name_of(Kinship kinship) {
    switch (kinship) {
        case Kinship::same_species:
            return "same species";
        case Kinship::same_solution:
            return "same solution";
        case Kinship::like_function:
            return "like function";
    }
    return "";
}

std::string_view said(Kinship kinship) {
    switch (kinship) {
        case Kinship::same_species:
            return "same species, exact";
        case Kinship::same_solution:
            return "another chemical, and the same solution of it: exact";
        case Kinship::like_function:
            return "like function, test it first";
    }
    return "";
}

std::vector<std::string> about(const Weighing& weighing) {
    std::vector<std::string> all{std::string(said(weighing.kinship))};
    if (weighing.as_measured) all.push_back("or measure " + weighing.as_measured->with_unit());
    all.insert(all.end(), weighing.lines.begin(), weighing.lines.end());
    return all;
}

Markup weighed_as(const Weighing& weighing) {
    Markup line = element("span", "class=\"amount\"", weighing.as.with_unit());
    line += element("span", "class=\"what\"", words::chemical(weighing.other, weighing.to));
    Markup all = element("p", line);
    all += html::list(about(weighing));
    return all;
}

}  // namespace

std::string weigh_text(std::span<const plan::Weighing> weighings, const TextStyle& style) {
    Sheet sheet(style);
    AmountColumn amounts;
    for (const Weighing& one : weighings) amounts.make_room(one.as.text, one.as.unit);
    sheet.blank();
    if (!weighings.empty()) sheet.item("", heading(weighings.front()));
    for (const Weighing& one : weighings) {
        sheet.blank();
        sheet.item(amounts.line(one.as.text, one.as.unit) + "   ", words::chemical(one.other, one.to));
        for (const std::string& line : about(one)) sheet.indented(amounts.width() + 3, line);
    }
    return sheet.take();
}

std::string weigh_html(std::span<const plan::Weighing> weighings) {
    const std::string title = weighings.empty() ? "" : heading(weighings.front());
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
    all["amount"] = json::figure(first.called);
    all["mol"] = json::number(first.mol);
    all["as"] = json::each(weighings, [](const Weighing& one) {
        json::Value as;
        as["chemical"] = one.other;
        as["form"] = one.to;
        as["kinship"] = name_of(one.kinship);
        as["amount"] = json::figure(one.as);
        as["measured"] = one.as_measured ? json::figure(*one.as_measured) : json::Value(nullptr);
        as["factor"] = json::number(one.factor.to_double());
        as["lines"] = one.lines;
        return as;
    });
    return json::document(all);
}

}  // namespace scruple::emit
