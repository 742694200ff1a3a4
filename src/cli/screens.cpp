// SPDX-License-Identifier: MIT
#include "screens.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "kind_samples.hpp"
#include "scruple/text/wrap.hpp"

namespace scruple::cli {
namespace {

constexpr std::size_t label_width = 26;

// Behind the label and hanging below its own beginning; the label gets a line of its own where it is long.
std::string labelled(std::string_view label, std::string_view words, std::size_t width) {
    const std::string hanging = paragraph(words, label_width, width);
    if (label.size() + 4 > label_width) return fmt::format("  {}\n{}", label, hanging);
    return fmt::format("  {:<{}}{}", label, label_width - 2, hanging.substr(label_width));
}

std::string option_lines(const CommandInfo& command, std::size_t width) {
    std::string result;
    for (const std::string_view name : command.options) {
        const OptionInfo& info = option(name);
        const std::string label = info.takes.empty() ? std::string(name) : fmt::format("{} {}", name, info.takes);
        const std::string example = info.takes.empty() ? "" : fmt::format(", as in `{}`", info.example);
        result += labelled(label, fmt::format("{}{}", info.says, example), width);
    }
    return result + labelled("--help", "show this", width);
}

std::string command_lines(std::size_t width) {
    std::string result;
    for (const CommandInfo& command : all_commands()) result += labelled(command.name, command.says, width);
    return result;
}

std::string kind_names() {
    std::vector<std::string_view> names;
    for (const diagnostics::KindInfo& kind : diagnostics::all_kinds()) names.push_back(kind.name);
    std::sort(names.begin(), names.end());
    return fmt::format("{}", fmt::join(names, ", "));
}

// `{0}` stands for what the message names.
std::string with_gaps(std::string_view wording) {
    std::string result;
    for (std::size_t i = 0; i < wording.size(); ++i) {
        const bool gap = wording[i] == '{' && i + 2 < wording.size() && wording[i + 2] == '}';
        result += gap ? "…" : std::string(1, wording[i]);
        if (gap) i += 2;
    }
    return result;
}

bool is_letter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

void capitalise(std::string& sentence) {
    if (is_letter(sentence[0])) sentence[0] = static_cast<char>(sentence[0] & ~0x20);
}

}  // namespace

std::string paragraph(std::string_view words, std::size_t indent, std::size_t width) {
    std::string result;
    while (true) {
        const auto end = std::min(words.find('\n'), words.size());
        for (const std::string& line : text::wrapped(words.substr(0, end), width - std::min(indent, width)))
            result += (line.empty() ? "" : std::string(indent, ' ')) + line + '\n';
        if (end == words.size()) return result;
        words.remove_prefix(end + 1);
    }
}

std::string overview_screen(std::size_t width) {
    return paragraph(
               "Scruple reads recipes for black-and-white photographic solutions, written down in plain text, checks "
               "them, and works out the card to mix from.",
               0, width) +
           "\n  scruple COMMAND ...\n\n" + command_lines(width) + "\n" +
           paragraph(
               "`scruple help COMMAND` shows how a command is called, with examples; `scruple help` lists everything "
               "there is help for. `scruple --version` says which version this is.",
               0, width);
}

std::string topics_screen(std::size_t width) {
    std::string blocks;
    for (const BlockInfo& block : all_blocks()) blocks += labelled(block.name, block.says, width);
    return overview_screen(width) + "\nThe blocks of the language: `scruple help recipe` shows one\n\n" + blocks +
           "\nThe kinds of faults: `scruple help form-not-stated` explains one\n\n" + paragraph(kind_names(), 2, width);
}

std::string command_screen(const CommandInfo& command, std::size_t width) {
    std::string what(command.says);
    capitalise(what);
    std::string result = paragraph(what + ".", 0, width);
    result +=
        fmt::format("\n  scruple {}{}{} [options]\n\n", command.name, command.takes.empty() ? "" : " ", command.takes);
    result += paragraph(command.more, 0, width) + "\nWith these options:\n\n" + option_lines(command, width);
    result += "\nFor example:\n\n";
    for (const Example& example : command.examples) {
        result += fmt::format("  {}\n{}", example.call, paragraph(example.does, 6, width));
    }
    return result;
}

std::string block_screen(const BlockInfo& block, std::size_t width) {
    return paragraph(fmt::format("{}: {}.", block.name, block.says), 0, width) + "\n" + std::string(block.sample);
}

std::string line_screen(const check::Saying& saying, std::size_t width) {
    return fmt::format("{}\n\nWrite:\n\n{}\nThe language has the details: docs/language.md.\n", saying.keyword,
                       paragraph(saying.how, 2, width));
}

std::string kind_screen(const diagnostics::KindInfo& kind, std::size_t width) {
    const KindSample* sample = sample_of(kind.name);
    const std::string message = sample != nullptr ? std::string(sample->message) : with_gaps(kind.wording);
    const std::string write = sample != nullptr ? std::string(sample->write) : with_gaps(kind.write);
    std::string result = fmt::format("{} ({})\n\n", kind.name, diagnostics::name_of(kind.severity));
    result += (sample != nullptr ? "For example:\n\n" : "") + paragraph(message, 2, width) + "\n" +
              paragraph(kind.explanation, 0, width);
    // What is a gap alone says nothing without a message.
    if (std::any_of(write.begin(), write.end(), is_letter))
        result += "\nWrite instead:\n\n" + paragraph(write, 2, width);
    return result;
}

}  // namespace scruple::cli
