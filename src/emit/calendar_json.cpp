// SPDX-License-Identifier: MIT
// A mixing calendar as JSON: docs/schemas/calendar.json says what is in it.
#include "json.hpp"
#include "scruple/emit/emit.hpp"
#include "scruple/plan/calendar.hpp"

namespace scruple::emit {
namespace {

using json::Value;

Value bottles(const plan::BottleRow& row) {
    Value all;
    all["count"] = row.count;
    all["size"] = json::figure(row.size);
    return all;
}

Value mixing(const plan::Mixing& mixing) {
    Value all;
    all["solution"] = mixing.name;
    all["volume"] = json::figure(mixing.volume);
    all["weighed"] = mixing.weighed;
    all["bottles"] = json::each(mixing.bottles, bottles);
    all["used_on"] = json::each(mixing.used_on, [](check::Day day) { return Value(plan::day_text(day)); });
    all["use_by"] = mixing.use_by ? Value(plan::day_text(*mixing.use_by)) : Value(nullptr);
    all["keeps"] = json::text_or_null(mixing.keeps);
    all["raised"] = json::text_or_null(mixing.raised);
    all["longer"] = mixing.longer;
    return all;
}

Value day(const plan::MixingDay& day) {
    Value all;
    all["day"] = plan::day_text(day.day);
    all["mixings"] = json::each(day.mixings, mixing);
    return all;
}

}  // namespace

std::string calendar_json(const plan::MixingCalendar& calendar) {
    Value all;
    all["kind"] = "calendar";
    all["plan"] = calendar.plan;
    all["weighing_days"] = calendar.weighing_days;
    all["mixings"] = calendar.mixings;
    all["proven"] = calendar.proven;
    all["days"] = json::each(calendar.days, day);
    all["notes"] = calendar.notes;
    return json::document(all);
}

}  // namespace scruple::emit
