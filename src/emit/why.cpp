// SPDX-License-Identifier: MIT
// The derivation of figures, in all three ways.
#include <fmt/format.h>

#include "html.hpp"
#include "json.hpp"
#include "layout.hpp"
#include "scruple/emit/words.hpp"

namespace scruple::emit {
namespace {

using html::element;
using html::Markup;
using plan::Why;
using plan::WhyLine;

constexpr std::string_view exactness = "Reckoned exactly; results on the way are printed to five digits.";

std::string title(const Why& why) {
    return words::listed({why.chemical + " in " + why.solution, why.amid.empty() ? "" : "for " + why.amid});
}

std::string said(const WhyLine& line) {
    return line.result.empty() ? line.sum : fmt::format("{} = {}", line.sum, line.result);
}

void add_why(Sheet& sheet, const Why& why) {
    sheet.blank();
    sheet.item("", title(why), why.figure.with_unit());
    sheet.blank();
    int n = 0;
    for (const WhyLine& line : why.lines) {
        sheet.item(fmt::format("{:>3}  ", ++n), said(line));
        sheet.indented(5, fmt::format("[{}]", line.source));
    }
}

Markup article(const Why& why) {
    Markup all = element("h1", title(why));
    all += element("p", "class=\"makes\"", why.figure.with_unit());
    html::Table table({"sum", "who says so"}, 0);
    for (const WhyLine& line : why.lines) table.row({said(line), line.source});
    all += table.take();
    all += element("p", exactness);
    return element("article", all);
}

json::Value why_json(const Why& why) {
    json::Value all;
    all["solution"] = why.solution;
    all["chemical"] = why.chemical;
    all["amid"] = json::text_or_null(why.amid);
    all["amount"] = json::figure(why.figure);
    all["lines"] = json::each(why.lines, [](const WhyLine& line) {
        json::Value one;
        one["sum"] = line.sum;
        one["result"] = json::text_or_null(line.result);
        one["source"] = line.source;
        return one;
    });
    return all;
}

}  // namespace

std::string why_text(std::span<const Why> whys, const TextStyle& style) {
    Sheet sheet(style);
    for (const Why& why : whys) add_why(sheet, why);
    sheet.blank();
    sheet.item("", exactness);
    return sheet.take();
}

std::string why_html(std::span<const Why> whys) {
    Markup all;
    for (const Why& why : whys) all += article(why);
    return html::page(whys.size() == 1 ? title(whys[0]) : "Where the figures come from", element("main", all));
}

std::string why_json(std::span<const Why> whys) {
    json::Value all;
    all["kind"] = "why";
    all["figures"] = json::each(whys, [](const Why& why) { return why_json(why); });
    return json::document(all);
}

}  // namespace scruple::emit
