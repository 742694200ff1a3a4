// SPDX-License-Identifier: MIT
// The bench, the shop and the month: what there is to work with, what it costs, what was done and what will be.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

#include "scruple/check/base.hpp"
#include "scruple/check/meeting.hpp"
#include "scruple/check/seldom.hpp"

namespace scruple::check {

struct Instrument {
    enum class What : std::uint8_t { balance, graduate, syringe, jug } what;
    Exact division{}, capacity{};  ///< g for a balance, ml otherwise
};

/// Of a finer vessel, rather than one reading of a coarse one.
inline constexpr int most_fills = 4;

/// What a bench may have its own time for.
enum class BenchWork : std::uint8_t { weigh, measure, stir, filter, make_up, bottle };
inline constexpr std::size_t kinds_of_work = 6;

struct Bottle {
    Exact ml{};
    std::optional<std::int64_t> count{};  ///< none: as many as are wanted
};

struct Bench {
    std::string_view name{};
    std::vector<Instrument> instruments{};
    std::optional<Exact> drops_per_ml{};
    std::vector<Bottle> bottles{};
    std::array<std::optional<Exact>, kinds_of_work> pace{};  ///< s that each kind of BenchWork takes here
    Place place{};
};

struct Money {
    Exact value{};
    std::string_view currency{};
};

struct Price {
    Id chemical = none, form = none;
    std::optional<Strength> strength{};
    std::optional<Exact> grams{}, ml{};  ///< the pack
    std::string_view pack_text{};
    Money price{};
    Place place{};
};

struct Supplier {
    std::string_view name{};
    std::optional<Money> postage{}, free_over{};
    std::vector<Price> prices{};
    Place place{};
};

/// A day, counted from 1970-01-01; no time zone anywhere.
using Day = std::int32_t;

struct Use {        ///< `6 films 135`, `0.5 m2`
    Exact count{};  ///< films or sheets; 0 for an area alone
    Id format = none;
    bool sheets = false;
    std::string_view text{};          ///< `6 films 135`
    std::optional<Exact> area_cm2{};  ///< of all of them together, where known
};

struct LogEntry {
    enum class What : std::uint8_t { received, mixed, processed, used, replenished, on_shelf, discarded } what;
    Day day = 0;
    Id chemical = none, form = none;
    std::optional<Strength> strength{};
    Id solution = none;
    std::optional<Exact> grams{}, ml{};
    std::vector<Use> uses{};
    std::optional<Day> batch{};  ///< discarded: what came or was mixed on this day, and nothing else
    Id supplier = none;
    std::string_view purpose{};
    std::optional<Money> price{};
    Place place{};
};

struct Stage {
    Id solution = none;       ///< none for a plain wash
    std::string_view text{};  ///< the name as written
    Interval seconds{};
    std::optional<Interval> celsius{};
    std::vector<std::string_view> remarks{};
    Place place{};
};

struct Process {
    std::string_view name{};
    std::vector<Stage> stages{};
    SeldomMany<Acceptance> accepts{};
    Place place{};
};

struct PlanEntry {
    std::vector<Day> days{};  ///< one, or every such weekday between the dates
    std::vector<Use> uses{};
    Id process = none;
    Place place{};
};

struct Plan {
    std::string_view name{};
    std::vector<PlanEntry> entries{};
    Place place{};
};

struct FilmFormat {
    std::string_view name{};
    Exact area_cm2{};
    std::string_view source{};
    Place place{};
    bool built_in = false;
};

}  // namespace scruple::check
