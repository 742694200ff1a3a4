// SPDX-License-Identifier: MIT
// Shopping lists, mixing calendars and evenings of whatever plans a text has.
#include <algorithm>
#include <cstdint>

#include "demand.hpp"
#include "scruple/emit/emit.hpp"
#include "workspace.hpp"

using namespace scruple;

namespace {

constexpr check::Id most_plans = 2;
constexpr std::size_t most_evenings = 2;

/// RFC 5545: lines end with CR LF and have at most 75 octets.
void demand_calendar_file(std::string_view text) {
    fuzz::demand(text::first_invalid_byte(text) == std::string_view::npos, "a calendar file is text", text);
    while (!text.empty()) {
        const std::size_t end = text.find("\r\n");
        fuzz::demand(end <= 75, "a line of a calendar file has at most 75 octets", text.substr(0, 100));
        fuzz::demand(text.substr(0, end).find_first_of("\r\n") == std::string_view::npos, "a line end is CR LF", text);
        text.remove_prefix(end + 2);
    }
}

void print_shopping(const check::Model& model, check::Id plan) {
    const plan::ShoppingList list = plan::shopping_list(model, plan);
    fuzz::demand_text("a shopping list is text", emit::shopping_text(list, {80}));
    fuzz::demand_page("a shopping list is a page", emit::shopping_html(list));
    fuzz::demand_json("a shopping list is JSON", emit::shopping_json(list));
    const std::string rows = emit::shopping_csv(list);
    fuzz::demand(rows.ends_with("\r\n") && std::ranges::count(rows, '"') % 2 == 0, "rows are whole", rows);
}

void print_evening(const check::Model& model, const plan::EveningRequest& request) {
    const auto made = plan::evening(model, request);
    const auto* evening = std::get_if<plan::Evening>(&made);
    if (evening == nullptr) return;
    fuzz::demand_text("an evening is text", emit::evening_text(*evening, {80}));
    fuzz::demand_page("an evening is a page", emit::evening_html(*evening));
    fuzz::demand_json("an evening is JSON", emit::evening_json(*evening));
}

void print_calendar(const check::Model& model, check::Id plan, check::Id bench) {
    const plan::MixingCalendar calendar = plan::mixing_calendar(model, plan, bench);
    fuzz::demand_text("a calendar is text", emit::calendar_text(calendar, {80}));
    fuzz::demand_page("a calendar is a page", emit::calendar_html(calendar));
    fuzz::demand_json("a calendar is JSON", emit::calendar_json(calendar));
    demand_calendar_file(emit::calendar_ics(calendar));
    for (std::size_t i = 0; i < std::min(calendar.days.size(), most_evenings); ++i) {
        plan::EveningRequest request{plan, calendar.days[i].day, bench};
        print_evening(model, request);
        request.from = 18 * 60;
        request.vessels = 2;
        print_evening(model, request);
    }
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    fuzz::Workspace& workspace = fuzz::workspace();
    if (!workspace.take_what_is_right({data, data + size})) return 0;
    check::Model& model = workspace.model();
    const check::Id bench = model.benches.empty() ? check::none : 0;
    model.dropper = bench;
    for (check::Id plan = 0; plan < std::min<std::size_t>(model.plans.size(), most_plans); ++plan) {
        print_shopping(model, plan);
        print_calendar(model, plan, bench);
    }
    return 0;
}
