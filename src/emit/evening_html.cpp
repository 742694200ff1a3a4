// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "accepted.hpp"
#include "cautions.hpp"
#include "html.hpp"
#include "scruple/emit/emit.hpp"
#include "scruple/emit/evening_words.hpp"
#include "scruple/emit/words.hpp"

namespace scruple::emit {
namespace {

using html::element;
using html::Markup;
using plan::Evening;

Markup step(const Evening& evening, const plan::EveningStep& step) {
    Markup head = html::box("");
    head += element("span", "class=\"amount\"", words::clock(evening, step.start));
    const std::string number = step.work.n > 0 ? fmt::format("{}. ", step.work.n) : "";
    head += element("span", "class=\"what\"",
                    fmt::format("{}{} ({}{}min)", number, words::step_words(step.work), step.hands, plan::unit_blank));
    Markup all = element("p", head);
    for (const std::string& remark : words::step_remarks(evening, step)) all += element("p", remark);
    return element("li", all);
}

Markup turn(const Evening& evening, const words::Turn& turn) {
    const auto& solution = evening.solutions[turn.solution];
    Markup steps;
    for (const auto* one : turn.steps) steps += step(evening, *one);
    Markup all = element("h3", fmt::format("{}, vessel {}", words::solution_head(solution), solution.vessel));
    all += element("ul", "class=\"errands\"", steps);
    return all;
}

Markup vessels(const Evening& evening) {
    html::Table table({"Vessel", "Solution", "From and to"}, 0);
    for (const auto& solution : evening.solutions)
        table.row(
            {std::to_string(solution.vessel), words::solution_head(solution), words::in_vessel(evening, solution)});
    return table.take();
}

}  // namespace

std::string evening_html(const Evening& evening) {
    const std::string title = words::evening_title(evening);
    Markup all = element("h1", title);
    for (const std::string& line : words::evening_sums(evening)) all += element("p", line);
    all += html::section(words::vessels_heading, vessels(evening));
    all += cautions_html(evening.cautions, evening.hazards);
    all += accepted_html(evening.accepted);
    Markup turns;
    for (const auto& one : words::turns_of(evening)) turns += turn(evening, one);
    all += html::section(words::clock_heading, turns);
    all += html::section(words::assumed_heading, html::list(evening.assumed));
    all += html::section(words::warnings_heading, html::list(evening.warnings));
    return html::page(title, element("main", element("article", all)));
}

}  // namespace scruple::emit
