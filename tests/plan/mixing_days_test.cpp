// SPDX-License-Identifier: MIT
// The fewest days of mixing, against going through every set of days and every way to mix on them.
#include "scruple/plan/mixing_days.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <bit>
#include <optional>
#include <random>
#include <set>
#include <tuple>

namespace scruple::test {
namespace {

using plan::MixingNeeds;
using Day = std::int32_t;
using Worth = std::tuple<std::size_t, std::int64_t, std::int64_t>;  // days, mixings, waiting

/// The fewest mixings of one solution on some days, then the least waiting: every choice of them is tried.
std::optional<std::pair<std::int64_t, std::int64_t>> best_on(const MixingNeeds& needs, const std::vector<Day>& days) {
    std::optional<std::pair<std::int64_t, std::int64_t>> best;
    for (unsigned set = 0; set < 1U << days.size(); ++set) {
        std::int64_t waiting = 0;
        bool met = true;
        for (const auto& window : needs.windows) {
            std::optional<Day> latest;
            for (std::size_t i = 0; i < days.size(); ++i)
                if ((set >> i & 1U) != 0 && days[i] >= window.earliest && days[i] <= window.needed) latest = days[i];
            met = met && latest;
            waiting += latest ? window.needed - *latest : 0;
        }
        const std::pair<std::int64_t, std::int64_t> worth(std::popcount(set), waiting);
        if (met && (!best || worth < *best)) best = worth;
    }
    return best;
}

std::optional<Worth> worth_of(const std::vector<MixingNeeds>& needs, const std::vector<Day>& days) {
    Worth worth(days.size(), 0, 0);
    for (const auto& need : needs) {
        const auto best = best_on(need, days);
        if (!best) return std::nullopt;
        std::get<1>(worth) += best->first;
        std::get<2>(worth) += best->second;
    }
    return worth;
}

Worth best_of_all(const std::vector<MixingNeeds>& needs, const std::vector<Day>& days) {
    std::optional<Worth> best;
    for (unsigned set = 0; set < 1U << days.size(); ++set) {
        std::vector<Day> some;
        for (std::size_t i = 0; i < days.size(); ++i)
            if ((set >> i & 1U) != 0) some.push_back(days[i]);
        const auto worth = worth_of(needs, some);
        if (worth && (!best || *worth < *best)) best = worth;
    }
    return best.value_or(Worth());
}

std::vector<MixingNeeds> invented(std::mt19937& random, std::size_t solutions, std::size_t days, Day month, Day keeps) {
    std::vector<MixingNeeds> needs(solutions);
    for (auto& need : needs) {
        std::set<Day> on;
        const std::size_t how_many = 1 + random() % days;
        while (on.size() < how_many) on.insert(static_cast<Day>(random() % static_cast<unsigned>(month)));
        const Day keeping = static_cast<Day>(random() % static_cast<unsigned>(keeps));
        for (const Day day : on) need.windows.push_back({day - keeping, day});
    }
    return needs;
}

std::vector<Day> days_of(const std::vector<MixingNeeds>& needs) {
    std::set<Day> days;
    for (const auto& need : needs)
        for (const auto& window : need.windows) days.insert(window.needed);
    return {days.begin(), days.end()};
}

TEST_CASE("days, mixings and waiting are the least there are, of all sets of days") {
    std::mt19937 random(20261201);
    for (int round = 0; round < 400; ++round) {
        const auto needs = invented(random, 1 + random() % 3, 4, 8, 6);
        const auto found = plan::fewest_mixing_days(needs);
        CAPTURE(round);
        const Worth best = best_of_all(needs, days_of(needs));
        CHECK(found.proven);
        CHECK(found.days.size() == std::get<0>(best));
        CHECK(found.mixings == std::get<1>(best));
        CHECK(found.waiting == std::get<2>(best));
        CHECK(worth_of(needs, found.days).has_value());
    }
}

TEST_CASE("nothing is mixed after it is needed, or so early that it does not last") {
    std::mt19937 random(7);
    for (int round = 0; round < 200; ++round) {
        const auto needs = invented(random, 4, 12, 40, 20);
        const auto found = plan::fewest_mixing_days(needs);
        for (const auto& need : needs) {
            const auto mixed = plan::mixed_for(need, found.days);
            for (std::size_t i = 0; i < mixed.size(); ++i) {
                CHECK(mixed[i] >= need.windows[i].earliest);
                CHECK(mixed[i] <= need.windows[i].needed);
            }
        }
    }
}

TEST_CASE("a year of daily work in twelve solutions comes to an end") {
    std::mt19937 random(500);
    const auto needs = invented(random, 12, 300, 366, 90);
    CHECK_FALSE(plan::fewest_mixing_days(needs).days.empty());
}

TEST_CASE("nothing needed is nothing mixed") {
    CHECK(plan::fewest_mixing_days({}).days.empty());
}

}  // namespace
}  // namespace scruple::test
