// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <charconv>
#include <chrono>

#include "batch.hpp"
#include "jobs.hpp"
#include "scruple/emit/emit.hpp"
#include "terminal.hpp"
#include "workspace.hpp"

namespace scruple::cli {
namespace {

using driver::Loaded;

// Digits alone; nothing but those gives nothing.
std::optional<int> number(std::string_view digits) {
    int value = 0;
    const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), value);
    const bool all = error == std::errc() && end == digits.data() + digits.size() && digits[0] != '-';
    return all ? std::optional(value) : std::nullopt;
}

std::optional<check::Day> day(std::string_view text) {
    if (text.size() != 10 || text[4] != '-' || text[7] != '-') return std::nullopt;
    const auto year = number(text.substr(0, 4)), month = number(text.substr(5, 2)), day = number(text.substr(8, 2));
    if (!year || !month || !day) return std::nullopt;
    const auto date = std::chrono::year(*year) / *month / *day;
    if (!date.ok()) return std::nullopt;
    return static_cast<check::Day>(std::chrono::sys_days(date).time_since_epoch().count());
}

std::optional<check::Day> mixed_on(const Call& call) {
    const auto text = call.value("--mixed");
    if (!text) return std::nullopt;
    if (const auto mixed = day(*text)) return mixed;
    throw Stop{Exit::wrong_call, fmt::format("there is no day `{}`; a day is such as `--mixed 2026-12-03`", *text)};
}

plan::Card card(const Loaded& loaded, const plan::CardRequest& request) {
    auto made = plan::make_card(loaded.checked.model, request);
    if (const auto* refusal = std::get_if<plan::Refusal>(&made)) throw Stop{Exit::wrong_call, refusal->message};
    return std::move(std::get<plan::Card>(made));
}

std::string rendered(As as, const std::vector<plan::Card>& cards, std::size_t width) {
    if (as == As::html) return emit::card_html(cards);
    if (as == As::json) return emit::card_json(cards);
    std::string text;
    for (const plan::Card& card : cards) text += (text.empty() ? "" : "\n") + emit::card_text(card, {width});
    return text;
}

}  // namespace

Outcome card_job(const Call& call) {
    const As as = call.as();
    const auto day = mixed_on(call);
    const Asked asked = asked_amounts(call);
    Loaded loaded = open_for_the_bench(call, asked);
    check::Model& model = loaded.checked.model;
    model.dropper = asked_bench(call, loaded);
    Meant meant = find_solution(loaded, call.name());
    if (says_how_much(call)) meant = one_solution(loaded, meant);

    plan::CardRequest request{check::none, asked_variant(call, model.recipes[meant.recipe]), how_much(call, loaded),
                              model.dropper, day};
    request.at_celsius = at_celsius(call, loaded);
    add_substitutions(call, loaded, meant, request);
    std::vector<plan::Card> cards;
    for (const check::Id section : meant.sections) {
        request.section = section;
        cards.push_back(card(loaded, request));
        cards.back().warnings = driver::warnings_for(loaded, section);
    }
    return {Exit::fine, rendered(as, cards, width_of(Stream::out)), {}};
}

}  // namespace scruple::cli
