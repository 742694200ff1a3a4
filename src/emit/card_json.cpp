// SPDX-License-Identifier: MIT
// Mixing cards as JSON: docs/schemas/card.json and cards.json say what is in it.
#include <fmt/format.h>

#include "accepted.hpp"
#include "cautions.hpp"
#include "held.hpp"
#include "json.hpp"
#include "scruple/emit/emit.hpp"
#include "scruple/emit/words.hpp"
#include "scruple/plan/calendar.hpp"

namespace scruple::emit {
namespace {

using json::Value;
using plan::Card;

Value gathered(const plan::Gathered& thing) {
    Value all;
    all["chemical"] = thing.chemical;
    all["form"] = json::text_or_null(thing.form);
    all["amount"] = json::figure(thing.amount);
    all["mol"] = thing.solution ? Value(nullptr) : json::number(thing.mol);
    all["solution"] = thing.solution;
    all["optional"] = thing.optional;
    all["note"] = json::text_or_null(thing.note);
    return all;
}

Value boxes(const plan::Work& work) {
    Value all = Value::array();
    if (work.weighed_box) all.push_back(words::box_of(work));
    if (work.clear_box) all.push_back("clear");
    return all;
}

Value how_measured(const plan::Work& work) {
    if (!work.amount || work.amount->instrument.empty()) return nullptr;
    Value all;
    all["with"] = work.amount->instrument;
    all["error_percent"] = json::number(quantity::significant_text(work.amount->error_percent, 3));
    return all;
}

Value work_line(const plan::Work& work) {
    Value all;
    all["n"] = work.n;
    all["do"] = words::name_of(work.what_to_do);
    all["what"] = work.what;
    all["amount"] = work.amount ? json::figure(*work.amount) : Value(nullptr);
    all["at"] = json::text_or_null(work.at);
    all["running"] = work.running ? json::figure(*work.running) : Value(nullptr);
    all["running_estimated"] = work.running_estimated;
    all["up_to"] = work.up_to;
    all["about"] = work.about;
    all["optional"] = work.optional;
    all["vessel"] = json::text_or_null(work.vessel);
    all["seconds"] = work.seconds ? json::number(*work.seconds) : Value(nullptr);
    all["details"] = work.details;
    all["advice"] = work.advice;
    all["measured"] = how_measured(work);
    all["boxes"] = boxes(work);
    return all;
}

Value warning(const plan::Warning& warning) {
    Value all;
    all["kind"] = diagnostics::info(warning.kind).name;
    all["message"] = warning.message;
    return all;
}

Value keeping(const plan::Life& life) {
    Value all;
    all["text"] = life.text;
    all["use_by"] = life.use_by ? Value(plan::day_text(*life.use_by)) : Value(nullptr);
    return all;
}

Value substitution(const plan::Substitution& it) {
    Value all;
    all["wanted"] = it.wanted;
    all["taken"] = it.taken;
    all["kind"] = it.kind;
    all["why"] = it.why;
    all["others"] = it.others;
    return all;
}

void add_the_rest(Value& all, const Card& card) {
    all["is_a"] = json::text_or_null(card.is_a);
    all["strength"] = json::text_or_null(card.strength);
    all["variant"] = json::text_or_null(card.variant);
    all["makes_for"] = json::text_or_null(card.makes_for);
    all["hazards"] = hazards_json(card.hazards);
    all["keeps"] = json::each(card.keeps, keeping);
    all["use_within"] = json::text_or_null(card.use_within);
    all["capacity"] = card.capacity;
    all["checks"] = card.checks;
    all["substituted"] = json::each(card.substituted, substitution);
    all["assumed"] = card.assumed;
    all["notes"] = card.notes;
    all["sources"] = card.sources;
    all["mixed_on"] = card.mixed_on ? Value(plan::day_text(*card.mixed_on)) : Value(nullptr);
    all["reminder"] = words::check_the_sheet;
}

Value one_card(const Card& card) {
    Value all;
    all["kind"] = "card";
    all["recipe"] = card.recipe;
    all["section"] = json::text_or_null(card.section);
    all["makes"] = json::figure(card.makes);
    all["gather"] = json::each(card.gather, gathered);
    all["work"] = json::each(card.work, work_line);
    all["contents"] = json::each(card.contents, content_json);
    all["ph"] = ph_json(card.ph);
    all["cautions"] = cautions_json(card.cautions);
    all["accepted"] = accepted_json(card.accepted);
    all["warnings"] = json::each(card.warnings, warning);
    add_the_rest(all, card);
    return all;
}

}  // namespace

std::string card_json(std::span<const plan::Card> cards) {
    if (cards.size() == 1) return json::document(one_card(cards[0]));
    Value all;
    all["kind"] = "cards";
    all["cards"] = json::each(cards, one_card);
    return json::document(all);
}

}  // namespace scruple::emit
