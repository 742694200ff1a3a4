// SPDX-License-Identifier: MIT
#include "call.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "commands.hpp"

namespace scruple::cli {
namespace {

/// What else a command can write: what is laid out on sheets can be drawn.
std::string other_formats(std::string_view command) {
    const CommandInfo* info = find_command(command);
    const bool drawn = info != nullptr && std::ranges::find(info->options, "--paper") != info->options.end();
    std::string all = drawn ? ", and pdf, svg and png" : "";
    if (command == "shopping") all += ", and csv";
    if (command == "calendar") all += ", and ics";
    if (command == "settle") all += ", and recipe";
    if (command == "check") all += ", and sarif and junit";
    return all;
}

}  // namespace

const std::vector<std::string>& Call::values(std::string_view option) const {
    static const std::vector<std::string> nothing;
    const auto found = given.find(option);
    return found == given.end() ? nothing : found->second;
}

std::optional<std::string> Call::value(std::string_view option) const {
    return has(option) ? std::optional(values(option).front()) : std::nullopt;
}

std::string Call::name() const {
    return fmt::format("{}", fmt::join(words, " "));
}

As Call::as() const {
    const std::string format = value("--as").value_or("text");
    if (format == "text") return As::text;
    if (format == "html") return As::html;
    if (format == "json") return As::json;
    throw Stop{Exit::wrong_call, fmt::format("`--as {}` is no format of `{}`; there are text, html and json{}", format,
                                             command, other_formats(command))};
}

}  // namespace scruple::cli
