// SPDX-License-Identifier: MIT
#include "batch.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <chrono>

#include "scruple/check/contents.hpp"
#include "scruple/plan/swap.hpp"

namespace scruple::cli {
namespace {

bool for_uses(const Call& call) {
    return call.has("--films") || call.has("--sheets") || call.has("--area");
}

void add_counted(Asked& asked, const Call& call, std::string_view option) {
    const std::vector<std::string>& values = call.values(option);
    for (std::size_t i = 0; i + 1 < values.size(); i += 2)
        asked.uses(option, fmt::format("{} {} {}", values[i], option.substr(2), values[i + 1]));
}

plan::MakeVolume volume(const driver::Loaded& loaded) {
    const check::Addition& asked = asked_addition(loaded, "--make");
    if (asked.by != check::Addition::By::volume)
        throw Stop{Exit::wrong_call, fmt::format("`--make` takes a volume, and `{}` is none", asked.written)};
    return {asked.shares.front()};
}

plan::MakeWith with(const driver::Loaded& loaded) {
    const check::Addition& asked = asked_addition(loaded, "--with");
    if (asked.chemical == check::none)
        throw Stop{Exit::wrong_call, "`--with` takes an amount of a chemical, and this is a solution"};
    return {asked.chemical, asked.form, check::dose(loaded.checked.model, asked, 0).grams};
}

/// `sodium carbonate`, `sodium carbonate (anhydrous)`, `washing soda`
plan::Missing missing_chemical(const driver::Loaded& loaded, const std::string& name) {
    const std::size_t open = name.find(" (");
    if (open == std::string::npos || name.back() != ')') {
        const auto [chemical, form] = find_chemical_in_form(loaded, name);
        return {chemical, form};
    }
    const check::Id chemical = find_chemical(loaded, name.substr(0, open));
    const std::string form = name.substr(open + 2, name.size() - open - 3);
    return {chemical, find_form(loaded.checked.model.chemicals[chemical], form)};
}

void require_a_use(const driver::Loaded& loaded, const Meant& meant, const plan::Missing& missing,
                   const std::string& name) {
    const check::Model& model = loaded.checked.model;
    const auto asks = [&](check::Id section) { return plan::asks_for(model, section, missing); };
    if (std::ranges::any_of(meant.sections, asks)) return;
    std::vector<std::string> others;
    for (const check::Id section : model.recipes[meant.recipe].sections)
        if (asks(section)) others.push_back(check::shown_name(model, section));
    throw Stop{Exit::wrong_call,
               fmt::format("no line asks for an amount of `{}` that could be come by in another way{}", name,
                           others.empty() ? "" : "; one of " + alternatives(others) + " does")};
}

// Digits alone; nothing but those gives nothing.
std::optional<int> number(std::string_view digits) {
    int value = 0;
    const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), value);
    const bool all = error == std::errc() && end == digits.data() + digits.size() && digits[0] != '-';
    return all ? std::optional(value) : std::nullopt;
}

}  // namespace

std::optional<check::Day> typed_day(std::string_view text) {
    if (text.size() != 10 || text[4] != '-' || text[7] != '-') return std::nullopt;
    const auto year = number(text.substr(0, 4)), month = number(text.substr(5, 2)), day = number(text.substr(8, 2));
    if (!year || !month || !day) return std::nullopt;
    const auto date = std::chrono::year(*year) / *month / *day;
    if (!date.ok()) return std::nullopt;
    return static_cast<check::Day>(std::chrono::sys_days(date).time_since_epoch().count());
}

std::optional<check::Day> asked_day(const Call& call, std::string_view option) {
    const auto text = call.value(option);
    if (!text) return std::nullopt;
    if (const auto asked = typed_day(*text)) return asked;
    throw Stop{Exit::wrong_call, fmt::format("there is no day `{}`; a day is such as `{} 2026-12-03`", *text, option)};
}

std::optional<check::Day> mixed_on(const Call& call) {
    return asked_day(call, "--mixed");
}

bool says_how_much(const Call& call) {
    return call.has("--make") || call.has("--with") || for_uses(call);
}

Asked asked_amounts(const Call& call) {
    if (int(call.has("--make")) + int(call.has("--with")) + int(for_uses(call)) > 1)
        throw Stop{Exit::wrong_call, "how much to make is said in more than one way"};
    Asked asked;
    if (const auto amount = call.value("--make")) asked.measure("--make", *amount);
    if (const auto amount = call.value("--with")) asked.ingredient("--with", *amount);
    if (const auto warmth = call.value("--at")) asked.temperature("--at", *warmth);
    if (const auto amount = call.value("--area")) asked.uses("--area", *amount);
    add_counted(asked, call, "--films");
    add_counted(asked, call, "--sheets");
    return asked;
}

std::optional<check::Exact> at_celsius(const Call& call, const driver::Loaded& loaded) {
    if (!call.has("--at")) return std::nullopt;
    const auto& at = asked_addition(loaded, "--at").at;
    if (!at || at->low != at->high || at->low < 0 || at->high > 60)
        throw Stop{Exit::wrong_call, "`--at` takes one temperature from 0 to 60 °C: `--at 24C`"};
    return at->low;
}

std::size_t asked_variant(const Call& call, const check::Recipe& recipe) {
    if (const auto name = call.value("--variant")) return find_variant(recipe, *name);
    if (recipe.variants.empty()) return 0;
    const std::vector<std::string> names{recipe.variants.begin(), recipe.variants.end()};
    throw Stop{Exit::wrong_call, fmt::format("which {}? `--variant` with {}", recipe.name, alternatives(names))};
}

// The only bench there is need not be named.
check::Id asked_bench(const Call& call, const driver::Loaded& loaded) {
    if (const auto name = call.value("--bench")) return find_bench(loaded, *name);
    const auto& benches = loaded.checked.model.benches;
    if (benches.size() > 1)
        throw Stop{Exit::wrong_call, fmt::format("whose bench? `--bench` with {}", alternatives(bench_names(loaded)))};
    return benches.empty() ? check::none : 0;
}

plan::HowMuch how_much(const Call& call, const driver::Loaded& loaded) {
    if (call.has("--make")) return volume(loaded);
    if (call.has("--with")) return with(loaded);
    if (for_uses(call)) return plan::MakeForUses{asked_uses(loaded)};
    return std::monostate{};
}

void add_substitutions(const Call& call, const driver::Loaded& loaded, const Meant& meant, plan::CardRequest& request) {
    request.from_shelf = call.has("--from-shelf");
    for (const std::string& name : call.values("--instead")) {
        const plan::Missing missing = missing_chemical(loaded, name);
        require_a_use(loaded, meant, missing, name);
        request.instead.push_back(missing);
    }
}

Meant whole(const driver::Loaded& loaded, const Meant& meant) {
    return {meant.recipe, loaded.checked.model.recipes[meant.recipe].sections};
}

Meant one_solution(const driver::Loaded& loaded, const Meant& meant) {
    if (meant.sections.size() == 1) return meant;
    for (const check::Id section : meant.sections)
        if (loaded.checked.model.sections[section].kind == check::SectionKind::whole) return {meant.recipe, {section}};
    std::vector<std::string> names;
    for (const check::Id section : meant.sections) names.push_back(check::shown_name(loaded.checked.model, section));
    throw Stop{Exit::wrong_call, fmt::format("how much of which? Name one of {}", alternatives(names))};
}

}  // namespace scruple::cli
