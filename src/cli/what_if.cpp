// SPDX-License-Identifier: MIT
#include "what_if.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>

#include "scruple/emit/shopping_words.hpp"
#include "scruple/plan/calendar.hpp"
#include "scruple/syntax/normal.hpp"

namespace scruple::cli {

using check::Day;
using check::Model;
using check::PlanEntry;
using plan::Figure;
using plan::ShoppingList;
using quantity::Exact;

namespace {

constexpr Day no_day = 0;  // 1970-01-01, as Asked::work writes it

Day last_day_of(const check::Plan& plan) {
    Day last = no_day;
    for (const auto& entry : plan.entries)
        for (const Day day : entry.days) last = std::max(last, day);
    return last;
}

/// Days that are left out, or whole entries of a process.
std::size_t leave_out(const Model& model, check::Plan& plan, const std::string& what) {
    const std::string name = syntax::normal_name(what);
    std::size_t left_out = 0;
    for (auto& entry : plan.entries) {
        const bool whole =
            entry.process != check::none && syntax::normal_name(model.processes[entry.process].name) == name;
        left_out += std::erase_if(entry.days, [&](Day day) { return whole || plan::day_text(day) == what; });
    }
    std::erase_if(plan.entries, [](const PlanEntry& entry) { return entry.days.empty(); });
    return left_out;
}

using Sums = std::map<std::string, Exact>;

std::vector<std::string> money_lines(const ShoppingList& list, const ShoppingList& other, const std::string& name) {
    Sums here, there;
    for (const auto& [currency, cost] : list.totals) here[currency] = cost;
    for (const auto& [currency, cost] : other.totals) {
        there[currency] = cost;
        here.try_emplace(currency);
    }
    std::vector<std::string> lines;
    for (const auto& [currency, cost] : here) {
        const Exact more = cost - there[currency];
        const std::string all = emit::words::money(cost, currency), was = emit::words::money(there[currency], currency);
        const std::string by = more.is_zero()
                                   ? "as much"
                                   : fmt::format("{} {}", emit::words::money(quantity::magnitude(more), currency),
                                                 more > 0 ? "more" : "less");
        lines.push_back(fmt::format("this list costs {}, {} costs {}: {}", all, name, was, by));
    }
    return lines;
}

struct Amounts {
    Figure here, there;
};

std::vector<std::string> amount_lines(const std::map<std::string, Amounts>& all, std::string_view verb) {
    const auto text = [](const Figure& figure) { return figure.value.is_zero() ? "nothing" : figure.with_unit(); };
    std::vector<std::string> lines;
    for (const auto& [name, amounts] : all)
        if (text(amounts.here) != text(amounts.there))
            lines.push_back(
                fmt::format("{} of {} to {}, and not {}", text(amounts.here), name, verb, text(amounts.there)));
    return lines;
}

std::string full_name(const plan::ChemicalNeed& need) {
    return need.form_name.empty() ? need.name : fmt::format("{} ({})", need.name, need.form_name);
}

}  // namespace

Asked asked_work(const Call& call) {
    Asked asked;
    if (const auto work = call.value("--with")) asked.work("--with", *work);
    return asked;
}

std::vector<PlanEntry> take_asked_work(driver::Loaded& loaded) {
    auto& plans = loaded.checked.model.plans;
    std::vector<PlanEntry> work;
    while (!plans.empty() && plans.back().place.file >= loaded.asked) {
        work = std::move(plans.back().entries);
        plans.pop_back();
    }
    std::erase_if(loaded.checked.model.plan_names, [&](const auto& name) { return name.second >= plans.size(); });
    return work;
}

void change_plan(const Call& call, Model& model, check::Id plan, std::vector<PlanEntry> work) {
    check::Plan& month = model.plans[plan];
    const Day last = last_day_of(month);
    for (const std::string& what : call.values("--without"))
        if (leave_out(model, month, what) == 0)
            throw Stop{Exit::wrong_call, fmt::format("`--without {}`: {} has no such day, and nothing goes through a "
                                                     "process of that name",
                                                     what, month.name)};
    for (auto& entry : work) {
        std::ranges::replace(entry.days, no_day, last);
        month.entries.push_back(std::move(entry));
    }
}

void say_what_differs(ShoppingList& list, const ShoppingList& other, const std::string& other_name) {
    std::map<std::string, Amounts> mixed, bought;
    for (const auto& need : list.solutions) mixed[need.name].here = need.to_mix;
    for (const auto& need : other.solutions) mixed[need.name].there = need.to_mix;
    for (const auto& need : list.chemicals) bought[full_name(need)].here = need.to_buy;
    for (const auto& need : other.chemicals) bought[full_name(need)].there = need.to_buy;
    auto lines = money_lines(list, other, other_name);
    for (const auto& line : amount_lines(mixed, "mix")) lines.push_back(line);
    for (const auto& line : amount_lines(bought, "buy")) lines.push_back(line);
    list.compared.push_back({other_name, std::move(lines)});
}

}  // namespace scruple::cli
