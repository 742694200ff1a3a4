// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <iterator>

#include "batch.hpp"
#include "drawing.hpp"
#include "jobs.hpp"
#include "printing.hpp"
#include "scruple/emit/emit.hpp"
#include "terminal.hpp"
#include "workspace.hpp"

namespace scruple::cli {
namespace {

using driver::Loaded;

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
    const auto printing = asked_printing(call);
    const As as = printing ? As::text : call.as();
    const auto day = mixed_on(call);
    const Asked asked = asked_amounts(call);
    Loaded& loaded = open_for_the_bench(call, asked);
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
        std::ranges::move(driver::notes_for(loaded, section), std::back_inserter(cards.back().notes));
    }
    if (printing) return {Exit::fine, drawing().cards_to_paper(cards, *printing), {}};
    return {Exit::fine, rendered(as, cards, width_of(Stream::out)), {}};
}

}  // namespace scruple::cli
