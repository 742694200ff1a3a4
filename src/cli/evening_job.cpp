// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <charconv>

#include "batch.hpp"
#include "drawing.hpp"
#include "jobs.hpp"
#include "names.hpp"
#include "printing.hpp"
#include "scruple/emit/emit.hpp"
#include "terminal.hpp"
#include "workspace.hpp"

namespace scruple::cli {
namespace {

std::optional<int> whole_number(std::string_view text, int most) {
    int value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc() || end != text.data() + text.size() || value < 0 || value > most) return std::nullopt;
    return value;
}

/// Minutes after midnight.
std::optional<plan::Minutes> begun_at(const Call& call) {
    const auto typed = call.value("--from");
    if (!typed) return std::nullopt;
    const auto colon = typed->find(':');
    if (colon != std::string::npos && typed->size() == colon + 3) {
        const auto hours = whole_number(std::string_view(*typed).substr(0, colon), 23);
        const auto minutes = whole_number(std::string_view(*typed).substr(colon + 1), 59);
        if (hours && minutes) return *hours * 60 + *minutes;
    }
    throw Stop{Exit::wrong_call, fmt::format("`--from {}` is no time of day; write `--from 18:00`", *typed)};
}

std::optional<std::size_t> vessels(const Call& call) {
    const auto typed = call.value("--vessels");
    if (!typed) return std::nullopt;
    const auto count = whole_number(*typed, 1000);
    if (!count || *count == 0)
        throw Stop{Exit::wrong_call,
                   fmt::format("`--vessels {}` is no number of vessels; write `--vessels 3`", *typed)};
    return static_cast<std::size_t>(*count);
}

/// The last word; the words before it name the plan, which need not be named where it is the only one.
check::Day take_day(Call& call) {
    if (call.words.empty()) throw Stop{Exit::wrong_call, "say which day: `scruple evening December 2026-12-01`"};
    const std::string typed = call.words.back();
    call.words.pop_back();
    if (const auto day = typed_day(typed)) return *day;
    throw Stop{Exit::wrong_call, fmt::format("there is no day `{}`; the day comes last, such as 2026-12-01", typed)};
}

plan::Evening asked_evening(Call call) {
    plan::EveningRequest request;
    request.from = begun_at(call);
    request.vessels = vessels(call);
    request.day = take_day(call);
    const driver::Loaded& loaded = open_for_the_bench(call);
    request.plan = asked_plan(call, loaded);
    request.bench = asked_bench(call, loaded);
    auto evening = plan::evening(loaded.checked.model, request);
    if (const auto* refusal = std::get_if<plan::Refusal>(&evening)) throw Stop{Exit::wrong_call, refusal->message};
    return std::get<plan::Evening>(std::move(evening));
}

}  // namespace

Outcome evening_job(const Call& call) {
    const auto printing = asked_printing(call);
    const As as = printing ? As::text : call.as();
    const plan::Evening evening = asked_evening(call);
    if (printing) return {Exit::fine, drawing().evening_to_paper(evening, *printing), {}};
    switch (as) {
        case As::text:
            return {Exit::fine, emit::evening_text(evening, {width_of(Stream::out)}), {}};
        case As::html:
            return {Exit::fine, emit::evening_html(evening), {}};
        case As::json:
            return {Exit::fine, emit::evening_json(evening), {}};
    }
    return {};
}

}  // namespace scruple::cli
