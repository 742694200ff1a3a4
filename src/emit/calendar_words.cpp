// SPDX-License-Identifier: MIT
#include "scruple/emit/calendar_words.hpp"

#include <fmt/format.h>

#include <chrono>

#include "scruple/plan/calendar.hpp"

namespace scruple::emit::words {

namespace {

std::string counted(std::size_t number, std::string_view one, std::string_view more) {
    return fmt::format("{} {}", number, number == 1 ? one : more);
}

}  // namespace

std::string calendar_title(const plan::MixingCalendar& calendar) {
    return "Mixing for " + calendar.plan;
}

std::string calendar_sum(const plan::MixingCalendar& calendar) {
    if (calendar.days.empty()) return "nothing has to be mixed";
    return fmt::format("{} on {}", counted(calendar.mixings, "mixing", "mixings"),
                       counted(calendar.weighing_days, "day of weighing", "days of weighing"));
}

std::string weekday(check::Day day) {
    constexpr const char* names[] = {"Sunday", "Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday"};
    const std::chrono::weekday of{std::chrono::sys_days(std::chrono::days(day))};
    return fmt::format("{} {}", names[of.c_encoding()], plan::day_text(day));
}

std::string into_bottles(const plan::Mixing& mixing) {
    std::string all;
    for (const auto& row : mixing.bottles)
        all += fmt::format("{}{}{}×{}{}", all.empty() ? "into " : " and ", row.count, plan::unit_blank,
                           plan::unit_blank, row.size.with_unit());
    return all;
}

std::string used_on(const plan::Mixing& mixing, check::Day mixed) {
    if (mixing.last_use == mixed) return "for this day";
    if (mixing.used_on.size() == 1) return "for " + plan::day_text(mixing.last_use);
    return fmt::format("for {}, the last on {}", counted(mixing.used_on.size(), "day", "days"),
                       plan::day_text(mixing.last_use));
}

std::string use_by(const plan::Mixing& mixing) {
    if (!mixing.use_by) return {};
    return fmt::format("use by {}, {}", plan::day_text(*mixing.use_by), mixing.keeps);
}

std::vector<std::string> mixing_lines(const plan::Mixing& mixing, check::Day mixed) {
    std::vector<std::string> lines;
    for (std::string& line : std::vector{into_bottles(mixing), used_on(mixing, mixed), use_by(mixing), mixing.raised})
        if (!line.empty()) lines.push_back(std::move(line));
    for (const std::string& day : mixing.longer) lines.push_back("the times on " + day);
    return lines;
}

}  // namespace scruple::emit::words
