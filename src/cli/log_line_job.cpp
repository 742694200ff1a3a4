// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <ctime>
#include <sstream>

#include "batch.hpp"
#include "commands.hpp"
#include "jobs.hpp"
#include "line_places.hpp"
#include "log_block.hpp"
#include "scruple/emit/emit.hpp"
#include "scruple/plan/calendar.hpp"
#include "scruple/quantity/unit.hpp"
#include "terminal.hpp"
#include "workspace.hpp"

namespace scruple::cli {
namespace {

using driver::Loaded;

/// By the calendar on the wall, which is the one that whoever mixes goes by.
check::Day today() {
    const std::time_t now = std::time(nullptr);
    std::tm local{};
    ::localtime_r(&now, &local);
    const auto date = std::chrono::year(local.tm_year + 1900) / (local.tm_mon + 1) / local.tm_mday;
    return static_cast<check::Day>(std::chrono::sys_days(date).time_since_epoch().count());
}

/// `1l` as `1 l`, as the lines of a file have it.
std::string with_blank_before_unit(const std::string& word) {
    const std::size_t unit = word.find_first_not_of("0123456789.,/");
    if (unit == 0 || unit == std::string::npos) return word;
    const bool is_one = quantity::find_unit(word.substr(unit)) != quantity::Unit::none;
    return is_one ? word.substr(0, unit) + " " + word.substr(unit) : word;
}

/// Words that were quoted together are taken apart.
std::vector<std::string> single_words(const Call& call) {
    std::vector<std::string> words;
    std::istringstream all(call.name());
    for (std::string word; all >> word;) words.push_back(with_blank_before_unit(word));
    return words;
}

std::string joined(const std::vector<std::string>& words, std::size_t first) {
    const auto begin = words.begin() + static_cast<std::ptrdiff_t>(std::min(first, words.size()));
    return fmt::format("{}", fmt::join(begin, words.end(), " "));
}

NewLine line_of(const Call& call) {
    const auto day = asked_day(call, "--on");
    const auto words = single_words(call);
    NewLine line{plan::day_text(day ? *day : today()), call.command, joined(words, 0),
                 call.value("--note").value_or("")};
    if (call.command == "mixed") return line;
    const std::size_t verb_words = !words.empty() && words.front() == "on" ? 2 : 1;
    line.verb =
        joined({words.begin(), words.begin() + static_cast<std::ptrdiff_t>(std::min(verb_words, words.size()))}, 0);
    line.rest = joined(words, verb_words);
    if (line.verb == "mixed")
        throw Stop{Exit::wrong_call, fmt::format("`scruple mixed {}` writes that line", line.rest)};
    return line;
}

std::string as_recipe_text(const NewLine& line) {
    return fmt::format("    {} {} {}{}", line.date, line.verb, line.rest,
                       line.comment.empty() ? "" : " # " + line.comment);
}

/// The line stands in the model though it is in no file yet.
std::size_t line_in_model(const Call& call, const Loaded& loaded) {
    const auto& log = loaded.checked.model.log;
    for (std::size_t i = log.size(); i-- > 0;) {
        const check::LogEntry& line = log[i];
        const bool complete =
            line.grams || line.ml || !line.uses.empty() || line.what == check::LogEntry::What::discarded;
        if (line.place.file >= loaded.asked && complete) return i;
    }
    const CommandInfo& command = *find_command(call.command);
    throw Stop{Exit::wrong_call, fmt::format("how much? `scruple {}` takes {}: `{}`", command.name, command.takes,
                                             command.examples.front().call)};
}

template <class Result>
Result or_stop(std::variant<Result, driver::Trouble> tried) {
    if (const auto* trouble = std::get_if<driver::Trouble>(&tried)) throw Stop{Exit::trouble, trouble->message};
    return std::move(std::get<Result>(tried));
}

/// As the lines stand now that there is one more in the file.
void name_places(const Loaded& loaded, text::FileId file, std::size_t added, plan::StockEntry& entry) {
    LinePlaces places(loaded);
    for (auto& it : entry.shares) {
        const std::size_t line = places.line(it.line.place);
        const bool moved = it.line.place.file == file && line >= added;
        it.line.where = fmt::format("{}:{}", loaded.sources[it.line.place.file].path, moved ? line + 1 : line);
    }
    for (auto& it : entry.corrections) it.line.where = entry.line.where;
    for (auto& it : entry.faults) it.line.where = entry.line.where;
}

/// A machine whose clock was set back dates its lines wrongly, and the next ones in the log show it.
void doubt_the_clock(const Loaded& loaded, std::size_t added, plan::StockEntry& entry) {
    const auto& log = loaded.checked.model.log;
    const auto latest = std::ranges::max_element(log, {}, &check::LogEntry::day);
    if (latest->day <= log[added].day) return;
    entry.warnings.push_back(
        fmt::format("the log has a line of {}, and by this machine's clock today is {}; where the clock is wrong, mend "
                    "the line, and say the day with `--on`",
                    plan::day_text(latest->day), plan::day_text(log[added].day)));
}

/// Read while the file is held, so that what is written has in it what others have just written.
plan::StockEntry write_down(const Call& call, const NewLine& line, const Asked& asked) {
    std::string path;
    while (true) {
        std::optional<driver::Hold> held;
        if (!path.empty()) held = or_stop(driver::hold(path));
        const Loaded& loaded = open_for_the_bench(call, asked);
        const LogBlock block = find_log_block(loaded, call.value("--log"));
        const std::size_t at = line_in_model(call, loaded);
        if (std::exchange(path, loaded.sources[block.file].path) != loaded.sources[block.file].path) continue;
        plan::StockEntry entry = plan::stock_entry(loaded.checked.model, at);
        entry.text = laid_out(loaded, block, line);
        const WithLine written = with_line(loaded, block, entry.text);
        if (const auto trouble = driver::write_whole(path, written.text)) throw Stop{Exit::trouble, trouble->message};
        entry.line.where = fmt::format("{}:{}", path, written.line_number);
        name_places(loaded, block.file, written.line_number, entry);
        if (!call.has("--on")) doubt_the_clock(loaded, at, entry);
        return entry;
    }
}

std::string shown(const plan::StockEntry& entry, As as) {
    switch (as) {
        case As::text:
            return emit::entry_text(entry, {width_of(Stream::out)});
        case As::html:
            return emit::entry_html(entry);
        case As::json:
            return emit::entry_json(entry);
    }
    return {};
}

}  // namespace

Outcome log_line_job(const Call& call) {
    const As as = call.as();
    const NewLine line = line_of(call);
    Asked asked;
    asked.log_line(call.command, as_recipe_text(line));
    const plan::StockEntry entry = write_down(call, line, asked);
    return {.text = shown(entry, as), .aside = {}, .done = "the line is written: " + entry.line.where};
}

}  // namespace scruple::cli
