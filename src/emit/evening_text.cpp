// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "accepted.hpp"
#include "cautions.hpp"
#include "layout.hpp"
#include "scruple/emit/emit.hpp"
#include "scruple/emit/evening_words.hpp"
#include "scruple/emit/words.hpp"

namespace scruple::emit {
namespace {

using plan::Evening;

void step(Sheet& sheet, const Evening& evening, const plan::EveningStep& step) {
    const std::string number = step.work.n > 0 ? std::to_string(step.work.n) : "";
    const std::string lead = fmt::format("{:>5}  □ {:>2}  ", words::clock(evening, step.start), number);
    sheet.item(lead, words::step_words(step.work), fmt::format("{}{}min", step.hands, plan::unit_blank));
    for (const std::string& remark : words::step_remarks(evening, step)) sheet.indented(13, remark);
}

void by_the_clock(Sheet& sheet, const Evening& evening) {
    sheet.heading(words::clock_heading);
    for (const auto& turn : words::turns_of(evening)) {
        const auto& solution = evening.solutions[turn.solution];
        sheet.blank();
        sheet.item("", words::solution_head(solution), fmt::format("vessel {}", solution.vessel));
        for (const auto* one : turn.steps) step(sheet, evening, *one);
    }
}

}  // namespace

std::string evening_text(const Evening& evening, const TextStyle& style) {
    Sheet sheet(style);
    sheet.blank();
    sheet.item("", words::evening_title(evening));
    for (const std::string& line : words::evening_sums(evening)) sheet.item("", line);
    sheet.heading(words::vessels_heading);
    for (const auto& solution : evening.solutions) {
        sheet.item(fmt::format("{:>3}   ", solution.vessel), words::solution_head(solution));
        sheet.indented(6, words::in_vessel(evening, solution));
    }
    add_cautions(sheet, evening.cautions, evening.hazards);
    add_accepted(sheet, evening.accepted);
    by_the_clock(sheet, evening);
    sheet.heading(words::assumed_heading);
    for (const std::string& line : evening.assumed) sheet.item("- ", line);
    if (!evening.warnings.empty()) sheet.heading(words::warnings_heading);
    for (const std::string& line : evening.warnings) sheet.item("! ", line);
    return sheet.take();
}

}  // namespace scruple::emit
