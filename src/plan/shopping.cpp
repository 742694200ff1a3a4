// SPDX-License-Identifier: MIT
#include "scruple/plan/shopping.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "ingredients.hpp"
#include "log.hpp"
#include "scruple/plan/calendar.hpp"
#include "shopping_steps.hpp"

namespace scruple::plan {

using check::Day;
using check::Exact;
using check::Model;

namespace {

/// Nobody buys or mixes to a tenth of a ml in a litre: tenths below 100, then whole ones, then tens.
Exact step_for(const Exact& measure) {
    const Exact size = quantity::magnitude(measure);
    return size < 100 ? Exact(1, 10) : size < 1000 ? Exact(1) : Exact(10);
}

Figure in_steps(const Exact& measure, const Exact& printed, bool by_volume) {
    return by_volume ? ml_as_read(printed, measure) : grams_as_read(printed, measure);
}

std::vector<Day> days_of(const check::Plan& plan) {
    std::vector<Day> days;
    for (const auto& entry : plan.entries) days.insert(days.end(), entry.days.begin(), entry.days.end());
    std::ranges::sort(days);
    return days;
}

void say_what_the_log_adds(const Model& model, Day first, ShoppingList& list) {
    const bool later = std::ranges::any_of(model.log, [first](const auto& entry) { return entry.day > first; });
    if (later)
        list.warnings.push_back(
            fmt::format("lines of the log after {}, the first day of the plan, are not counted", day_text(first)));
}

}  // namespace

Figure rounded_up(const Exact& measure, bool by_volume) {
    const Exact step = step_for(measure);
    return in_steps(measure, (measure / step).ceil() * step, by_volume);
}

std::string volume_words(const Exact& ml) {
    return rounded_up(ml, true).with_unit();
}

Figure rounded_down(const Exact& measure, bool by_volume) {
    const Exact step = step_for(measure);
    return in_steps(measure, (measure / step).floor() * step, by_volume);
}

ShoppingList shopping_list(const Model& model, check::Id plan) {
    const check::Plan& month = model.plans[plan];
    ShoppingList list;
    list.plan = month.name;
    const auto days = days_of(month);
    if (days.empty()) {
        list.warnings.push_back(fmt::format("{} has no days", month.name));
        return list;
    }
    list.first_day = day_text(days.front());
    list.last_day = day_text(days.back());
    say_what_the_log_adds(model, days.front(), list);
    Stock stock = stock_on(model, days.front(), list.warnings);
    const auto offers = all_offers(model);
    const auto wanted = wanted_by(model, month, list.warnings);
    const MixPlan mixing = plan_mixing(model, wanted, days.front(), check::none);
    for (const auto& note : mixing.notes) list.warnings.push_back(note);
    list.waste = waste_of(model, wanted, mixing);
    buy(model, mix_down(model, wanted, mixing, stock, offers, list), stock, offers, list);
    if (!offers.empty()) list.use_costs = use_costs(model, month, offers, offers.front().price->price.currency);
    return list;
}

}  // namespace scruple::plan
