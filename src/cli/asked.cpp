// SPDX-License-Identifier: MIT
#include "asked.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "call.hpp"
#include "commands.hpp"

namespace scruple::cli {
namespace {

// No name that anybody gives holds these signs; the number keeps `--films` and another `--films` apart.
std::string name_for(std::string_view option, std::size_t n) {
    return fmt::format("\"‹{} {}›\"", option, n);
}

bool is_asked(const driver::Loaded& loaded, text::FileId file) {
    return file >= loaded.asked;
}

Stop wrong_amount(std::string_view name) {
    if (const CommandInfo* command = find_command(name))
        return {Exit::wrong_call,
                fmt::format("`scruple {}` takes {}: `{}`", name, command->takes, command->examples.front().call)};
    const OptionInfo* info = nullptr;
    for (const OptionInfo& one : all_options())
        if (one.name == name) info = &one;
    return {Exit::wrong_call,
            info == nullptr
                ? "that is no amount of one chemical; an amount is such as `30 g sodium carbonate (anhydrous)`"
                : fmt::format("`{}` takes {}: `{}`", name, info->takes, info->example)};
}

void refuse_what_is_too_long(std::string_view option, const std::string& typed) {
    constexpr std::size_t longest = 1000;
    if (typed.size() > longest) throw wrong_amount(option);
}

// A message about the line that was put around the typed words says nothing to who typed them.
bool speaks_of_the_line(diagnostics::Kind kind, std::string_view option) {
    using enum diagnostics::Kind;
    if (kind == forgotten_amount) return option != "--with" && option.starts_with("--");
    return kind == unread_fact || kind == unread_line || kind == line_out_of_place;
}

}  // namespace

void Asked::add(std::string_view option, const std::string& typed, std::string_view before, std::string_view after) {
    refuse_what_is_too_long(option, typed);
    sources_.push_back({std::string(option),
                        fmt::format("recipe {}\n{}{}{}\n", name_for(option, sources_.size()), before, typed, after)});
}

void Asked::measure(std::string_view option, const std::string& amount) {
    add(option, amount, "water ", "");
}

void Asked::temperature(std::string_view option, const std::string& warmth) {
    add(option, warmth, "water 1 ml at ", "");
}

void Asked::formula(std::string_view option, const std::string& formula) {
    add(option, formula, "water 1 l\nchemical " + name_for("formula", sources_.size()) + "\nform asked ", "");
}

void Asked::ingredient(std::string_view option, const std::string& line) {
    add(option, line, "", "");
}

void Asked::uses(std::string_view option, const std::string& item) {
    add(option, item, "water 1 l\nlog\n1970-01-01 processed ", " in " + name_for(option, sources_.size()));
}

void Asked::work(std::string_view option, const std::string& line) {
    refuse_what_is_too_long(option, line);
    const bool has_day = line.starts_with("each ") || (line.size() > 10 && line[4] == '-' && line[7] == '-');
    sources_.push_back({std::string(option), fmt::format("plan {}\n    {}{}\n", name_for(option, sources_.size()),
                                                         has_day ? "" : "1970-01-01 ", line)});
}

void Asked::log_line(std::string_view command, const std::string& line) {
    refuse_what_is_too_long(command, line);
    sources_.push_back({std::string(command), "log\n" + line + "\n"});
}

void settle_asked(driver::Loaded& loaded) {
    auto& all = loaded.checked.diagnostics;
    const auto asked =
        std::stable_partition(all.begin(), all.end(), [&](const auto& d) { return !is_asked(loaded, d.file); });
    std::string message;
    for (auto d = asked; d != all.end(); ++d) {
        if (diagnostics::info(d->kind).severity != diagnostics::Severity::error) continue;
        if (speaks_of_the_line(d->kind, loaded.sources[d->file].path)) throw wrong_amount(loaded.sources[d->file].path);
        if (!message.empty()) message += '\n';
        message +=
            fmt::format("{}: {} [{}]", loaded.sources[d->file].path, d->message, diagnostics::info(d->kind).name);
        if (!d->write.empty()) message += fmt::format("\n    write  {}", d->write);
    }
    all.erase(asked, all.end());
    if (!message.empty()) throw Stop{Exit::wrong_call, message};
}

std::vector<const check::Addition*> asked_additions(const driver::Loaded& loaded, std::string_view option) {
    std::vector<const check::Addition*> all;
    for (const check::Section& section : loaded.checked.model.sections) {
        if (!is_asked(loaded, section.place.file) || loaded.sources[section.place.file].path != option) continue;
        const auto* addition =
            section.lines.size() == 1 ? std::get_if<check::Addition>(&section.lines.front()) : nullptr;
        if (addition == nullptr || addition->how != check::Addition::How::exactly || addition->shares.size() != 1)
            throw wrong_amount(option);
        all.push_back(addition);
    }
    if (all.empty()) throw wrong_amount(option);
    return all;
}

const check::Addition& asked_addition(const driver::Loaded& loaded, std::string_view option) {
    return *asked_additions(loaded, option).front();
}

std::vector<check::Use> asked_uses(const driver::Loaded& loaded) {
    std::vector<check::Use> uses;
    for (const check::LogEntry& entry : loaded.checked.model.log)
        if (is_asked(loaded, entry.place.file)) uses.insert(uses.end(), entry.uses.begin(), entry.uses.end());
    return uses;
}

}  // namespace scruple::cli
