// SPDX-License-Identifier: MIT
#include "batch.hpp"

#include <fmt/format.h>

#include "scruple/check/contents.hpp"

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

}  // namespace

Asked asked_amounts(const Call& call) {
    if (int(call.has("--make")) + int(call.has("--with")) + int(for_uses(call)) > 1)
        throw Stop{Exit::wrong_call, "how much to make is said in more than one way"};
    Asked asked;
    if (const auto amount = call.value("--make")) asked.volume("--make", *amount);
    if (const auto amount = call.value("--with")) asked.ingredient("--with", *amount);
    if (const auto amount = call.value("--area")) asked.uses("--area", *amount);
    add_counted(asked, call, "--films");
    add_counted(asked, call, "--sheets");
    return asked;
}

plan::HowMuch how_much(const Call& call, const driver::Loaded& loaded) {
    if (call.has("--make")) return volume(loaded);
    if (call.has("--with")) return with(loaded);
    if (for_uses(call)) return plan::MakeForUses{asked_uses(loaded)};
    return std::monostate{};
}

void require_one_solution(const driver::Loaded& loaded, const Meant& meant) {
    if (meant.sections.size() == 1) return;
    std::vector<std::string> names;
    for (const check::Id section : meant.sections) names.push_back(check::shown_name(loaded.checked.model, section));
    throw Stop{Exit::wrong_call, fmt::format("how much of which? Name one of {}", alternatives(names))};
}

}  // namespace scruple::cli
