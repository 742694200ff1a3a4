// SPDX-License-Identifier: MIT
// An evening as JSON: docs/schemas/evening.json says what is in it.
#include "accepted.hpp"
#include "cautions.hpp"
#include "json.hpp"
#include "scruple/emit/emit.hpp"
#include "scruple/emit/evening_words.hpp"
#include "scruple/emit/words.hpp"
#include "scruple/plan/calendar.hpp"

namespace scruple::emit {
namespace {

using json::Value;
using plan::Evening;

Value evening_solution(const plan::EveningSolution& solution) {
    Value all;
    all["solution"] = solution.name;
    all["volume"] = json::figure(solution.volume);
    all["vessel"] = solution.vessel;
    all["begun"] = solution.begun;
    all["ready"] = solution.ready;
    all["bottles"] = json::each(solution.bottles, [](const plan::BottleRow& row) {
        Value one;
        one["count"] = row.count;
        one["size"] = json::figure(row.size);
        return one;
    });
    all["stays_in_vessel"] = solution.stays_in_vessel;
    all["use_within"] = json::text_or_null(solution.use_within);
    return all;
}

Value step(const Evening& evening, const plan::EveningStep& step) {
    Value all;
    all["start"] = step.start;
    all["clock"] = evening.from ? Value(words::clock(evening, step.start)) : Value(nullptr);
    all["hands"] = step.hands;
    all["alone"] = step.alone;
    all["solution"] = evening.solutions[step.solution].name;
    all["vessel"] = evening.solutions[step.solution].vessel;
    all["card_step"] = step.work.n > 0 ? Value(step.work.n) : Value(nullptr);
    all["what"] = step.work.what;
    all["amount"] = step.work.amount ? json::figure(*step.work.amount) : Value(nullptr);
    all["remarks"] = words::remarks(step.work);
    return all;
}

}  // namespace

std::string evening_json(const Evening& evening) {
    Value all;
    all["kind"] = "evening";
    all["plan"] = evening.plan;
    all["day"] = plan::day_text(evening.day);
    all["minutes"] = evening.minutes;
    all["hands"] = evening.hands;
    all["one_after_the_other"] = evening.one_after_the_other;
    all["vessels"] = evening.vessels;
    all["proven"] = evening.proven;
    all["cautions"] = cautions_json(evening.cautions);
    all["hazards"] = hazards_json(evening.hazards);
    all["accepted"] = accepted_json(evening.accepted);
    all["solutions"] = json::each(evening.solutions, evening_solution);
    all["steps"] = json::each(evening.steps, [&](const plan::EveningStep& one) { return step(evening, one); });
    all["assumed"] = evening.assumed;
    all["warnings"] = evening.warnings;
    return json::document(all);
}

}  // namespace scruple::emit
