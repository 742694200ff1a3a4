// SPDX-License-Identifier: MIT
#include "scruple/emit/evening_words.hpp"

#include <fmt/format.h>

#include "scruple/emit/calendar_words.hpp"
#include "scruple/emit/words.hpp"

namespace scruple::emit::words {

using plan::Evening;
using plan::Minutes;

namespace {

std::string hours_and_minutes(Minutes minutes) {
    if (minutes < 60) return fmt::format("{}{}min", minutes, plan::unit_blank);
    if (minutes % 60 == 0) return fmt::format("{}{}h", minutes / 60, plan::unit_blank);
    return fmt::format("{0}{2}h {1}{2}min", minutes / 60, minutes % 60, plan::unit_blank);
}

}  // namespace

std::string evening_title(const Evening& evening) {
    return fmt::format("Mixing for {} on {}", evening.plan, weekday(evening.day));
}

std::vector<std::string> evening_sums(const Evening& evening) {
    const std::string all = hours_and_minutes(evening.minutes);
    std::vector<std::string> lines;
    lines.push_back(evening.from
                        ? fmt::format("from {} to {}: {}", clock(evening, 0), clock(evening, evening.minutes), all)
                        : fmt::format("{} in all; times are counted from the start", all));
    lines.push_back(fmt::format("hands are at it for {}; one after the other it would take {}",
                                hours_and_minutes(evening.hands), hours_and_minutes(evening.one_after_the_other)));
    return lines;
}

std::string clock(const Evening& evening, Minutes at) {
    constexpr Minutes day = 24 * 60;
    const Minutes shown = evening.from ? (*evening.from + at) % day : at;
    return fmt::format("{}:{:02}", shown / 60, shown % 60);
}

std::string in_vessel(const Evening& evening, const plan::EveningSolution& solution) {
    const std::string times = fmt::format("{} to {}", clock(evening, solution.begun), clock(evening, solution.ready));
    if (solution.stays_in_vessel) {
        if (solution.use_within.empty()) return times + ", and is used today";
        return fmt::format("{}, and is used within {}", times, solution.use_within);
    }
    plan::Mixing mixing;
    mixing.bottles = solution.bottles;
    const std::string bottles = into_bottles(mixing);
    return fmt::format("{}, then {}", times, bottles.empty() ? "into its bottle" : bottles);
}

std::string solution_head(const plan::EveningSolution& solution) {
    return solution.volume.with_unit() + " " + solution.name;
}

std::string step_words(const plan::Work& work) {
    std::string all;
    if (work.amount) {
        const std::string_view before = before_amount(work);
        all = fmt::format("{}{}{} ", before, before.empty() ? "" : " ", work.amount->with_unit());
    }
    return all + work.what;
}

std::vector<std::string> step_remarks(const Evening& evening, const plan::EveningStep& step) {
    std::vector<std::string> all;
    if (std::string how = listed(remarks(step.work)); !how.empty()) all.push_back(std::move(how));
    if (step.alone > 0)
        all.push_back(fmt::format("then by itself for {}, until {}", hours_and_minutes(step.alone),
                                  clock(evening, step.start + step.hands + step.alone)));
    return all;
}

std::vector<Turn> turns_of(const Evening& evening) {
    std::vector<Turn> turns;
    for (const auto& step : evening.steps) {
        if (turns.empty() || turns.back().solution != step.solution) turns.push_back({step.solution, {}});
        turns.back().steps.push_back(&step);
    }
    return turns;
}

}  // namespace scruple::emit::words
