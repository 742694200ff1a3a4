// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <chrono>
#include <ctime>

#include "batch.hpp"
#include "jobs.hpp"
#include "log_block.hpp"
#include "scruple/emit/emit.hpp"
#include "scruple/plan/calendar.hpp"
#include "terminal.hpp"
#include "workspace.hpp"

namespace scruple::cli {
namespace {

using driver::Loaded;

constexpr std::string_view verb = "mixed";

/// By the calendar on the wall, which is the one that whoever mixes goes by.
check::Day today() {
    const std::time_t now = std::time(nullptr);
    std::tm local{};
    ::localtime_r(&now, &local);
    const auto date = std::chrono::year(local.tm_year + 1900) / (local.tm_mon + 1) / local.tm_mday;
    return static_cast<check::Day>(std::chrono::sys_days(date).time_since_epoch().count());
}

/// `1l` as `1 l`, as the lines of a file have it.
std::string with_blank_before_unit(std::string words) {
    const std::size_t last = words.rfind(' ') == std::string::npos ? 0 : words.rfind(' ') + 1;
    const std::size_t unit = words.find_first_not_of("0123456789.,/", last);
    if (unit != std::string::npos && unit > last) words.insert(unit, " ");
    return words;
}

NewLine line_of(const Call& call) {
    const auto day = asked_day(call, "--on");
    return {plan::day_text(day ? *day : today()), std::string(verb), with_blank_before_unit(call.name()),
            call.value("--note").value_or("")};
}

std::string as_recipe_text(const NewLine& line) {
    return fmt::format("    {} {} {}{}", line.date, line.verb, line.rest,
                       line.comment.empty() ? "" : " # " + line.comment);
}

/// The line stands in the model though it is in no file yet.
std::size_t line_in_model(const Loaded& loaded) {
    const auto& log = loaded.checked.model.log;
    for (std::size_t i = log.size(); i-- > 0;)
        if (log[i].place.file >= loaded.asked && log[i].ml) return i;
    throw Stop{Exit::wrong_call, fmt::format("how much? `scruple {0}` takes a solution and a volume: `scruple {0} "
                                             "Heron part A 1l`",
                                             verb)};
}

template <class Result>
Result or_stop(std::variant<Result, driver::Trouble> tried) {
    if (const auto* trouble = std::get_if<driver::Trouble>(&tried)) throw Stop{Exit::trouble, trouble->message};
    return std::move(std::get<Result>(tried));
}

/// Read while the file is held, so that what is written has in it what others have just written.
plan::StockEntry write_down(const Call& call, const NewLine& line, const Asked& asked) {
    std::string path;
    while (true) {
        std::optional<driver::Hold> held;
        if (!path.empty()) held = or_stop(driver::hold(path));
        const Loaded loaded = open_for_the_bench(call, asked);
        const LogBlock block = find_log_block(loaded, call.value("--log"));
        const std::size_t at = line_in_model(loaded);
        if (std::exchange(path, loaded.sources[block.file].path) != loaded.sources[block.file].path) continue;
        plan::StockEntry entry = plan::stock_entry(loaded.checked.model, at);
        entry.text = laid_out(loaded, block, line);
        const WithLine written = with_line(loaded, block, entry.text);
        if (const auto trouble = driver::write_whole(path, written.text)) throw Stop{Exit::trouble, trouble->message};
        entry.line.where = fmt::format("{}:{}", path, written.line_number);
        return entry;
    }
}

}  // namespace

Outcome mixed_job(const Call& call) {
    const As as = call.as();
    const NewLine line = line_of(call);
    Asked asked;
    asked.log_line(verb, as_recipe_text(line));
    const plan::StockEntry entry = write_down(call, line, asked);
    switch (as) {
        case As::text:
            return {Exit::fine, emit::entry_text(entry, {width_of(Stream::out)}), {}};
        case As::html:
            return {Exit::fine, emit::entry_html(entry), {}};
        case As::json:
            return {Exit::fine, emit::entry_json(entry), {}};
    }
    return {};
}

}  // namespace scruple::cli
