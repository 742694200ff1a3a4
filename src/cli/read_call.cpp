// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <CLI/CLI.hpp>
#include <algorithm>
#include <memory>

#include "call.hpp"
#include "commands.hpp"
#include "scruple/diagnostics/diagnostic.hpp"
#include "scruple/text/printable.hpp"

namespace scruple::cli {
namespace {

// The screens are made from the table of commands, by the command `help`.
struct NoFormatter : CLI::FormatterBase {
    std::string make_help(const CLI::App*, std::string, CLI::AppFormatMode) const override { return {}; }
};

void add_option(CLI::App& command, const OptionInfo& info, Call& call) {
    const std::string name(info.name);
    if (info.count == 0) {
        command.add_flag_callback(name, [&call, &info] { call.given[info.name] = {"yes"}; });
        return;
    }
    std::vector<std::string>& values = call.given[info.name];
    CLI::Option* option = command.add_option(name, values)->type_size(info.count)->expected(1)->allow_extra_args(false);
    if (info.repeats) option->multi_option_policy(CLI::MultiOptionPolicy::TakeAll);
}

void add_command(CLI::App& app, const CommandInfo& info, Call& call) {
    CLI::App* command = app.add_subcommand(std::string(info.name));
    command->add_option("words", call.words);
    for (const std::string_view name : info.options) add_option(*command, option(name), call);
    command->set_help_flag("-h,--help");
    command->callback([&call, &info] { call.command = info.name; });
}

std::string ask_help(std::string_view command) {
    return fmt::format("`scruple help {}` shows how it is called", command);
}

Stop unknown_command(const std::string& word) {
    std::vector<std::string_view> names;
    for (const CommandInfo& command : all_commands()) names.push_back(command.name);
    const std::string near = diagnostics::nearest(word, names);
    const std::string rest = near.empty() ? "the commands are " + fmt::format("{}", fmt::join(names, ", "))
                                          : fmt::format("the nearest is `{}`", near);
    return {Exit::wrong_call, fmt::format("there is no command `{}`; {}", word, rest)};
}

Stop unknown_option(const CommandInfo& command, const std::string& word) {
    const std::string name = word.substr(0, word.find('='));
    const std::string near = diagnostics::nearest(name, {command.options.begin(), command.options.end()});
    const std::string rest = near.empty() ? ask_help(command.name) : fmt::format("the nearest is `{}`", near);
    return {Exit::wrong_call, fmt::format("`scruple {}` has no option `{}`; {}", command.name, name, rest)};
}

Stop wrong_values(const OptionInfo& info) {
    if (info.count == 0) return {Exit::wrong_call, fmt::format("`{}` takes no value", info.name)};
    const std::string_view times = info.repeats ? "once or several times" : "once";
    return {Exit::wrong_call, fmt::format("`{}` takes {}, {}: `{}`", info.name, info.takes, times, info.example)};
}

// CLI11 says in its message alone which option it is about.
Stop wrong_values(const CommandInfo& command, std::string_view message) {
    for (const std::string_view name : command.options) {
        if (message.starts_with(name) && message.substr(name.size()).find_first_of(": ") == 0)
            return wrong_values(option(name));
    }
    return {Exit::wrong_call, "this call cannot be read; " + ask_help(command.name)};
}

// `--make --in recipes`: the value was forgotten, and CLI11 took the next option for it.
void refuse_swallowed_options(const Call& call) {
    for (const auto& [name, values] : call.given)
        for (const std::string& value : values)
            if (value.starts_with("--")) throw wrong_values(option(name));
}

/// Of what is typed, these are names of files, which may hold anything.
bool names_files(std::string_view option) {
    return option == "--in" || option == "--out" || option == "--log";
}

/// Everything else becomes a line of a recipe, a word on a card or the name of something, and so is text that shows.
void refuse_what_does_not_show(std::string_view what, const std::string& typed) {
    const std::string shown = text::printable(typed);
    if (shown != typed)
        throw Stop{
            Exit::wrong_call,
            fmt::format("`{}` has a character in {} that does not show or is no text; write it without", shown, what)};
}

void refuse_what_does_not_show(const CommandInfo& command, const Call& call) {
    for (const auto& [name, values] : call.given)
        for (const std::string& value : values)
            if (!names_files(name)) refuse_what_does_not_show(name, value);
    if (command.name == "tidy" || command.name == "compare") return;
    for (const std::string& word : call.words) refuse_what_does_not_show(command.takes, word);
}

Call help_on(std::vector<std::string> topic) {
    return {"help", std::move(topic), {}};
}

Call read_with(CLI::App& app, Call& call, const CommandInfo& command, std::vector<std::string> arguments) {
    // CLI11 takes them from the back.
    std::reverse(arguments.begin(), arguments.end());
    try {
        app.parse(std::move(arguments));
    } catch (const CLI::CallForHelp&) {
        return help_on({std::string(command.name)});
    } catch (const CLI::ExtrasError&) {
        throw unknown_option(command, app.get_subcommand(std::string(command.name))->remaining().front());
    } catch (const CLI::ParseError& error) {
        throw wrong_values(command, error.what());
    }
    refuse_swallowed_options(call);
    refuse_what_does_not_show(command, call);
    return std::move(call);
}

}  // namespace

Call read_call(std::vector<std::string> arguments) {
    const CommandInfo* command = find_command(arguments.front());
    if (command == nullptr) throw unknown_command(arguments.front());

    Call call;
    CLI::App app;
    app.formatter(std::make_shared<NoFormatter>());
    add_command(app, *command, call);
    return read_with(app, call, *command, with_measures_joined(arguments));
}

}  // namespace scruple::cli
