// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "jobs.hpp"
#include "names.hpp"
#include "present.hpp"
#include "screens.hpp"
#include "scruple/check/sayings.hpp"
#include "scruple/text/printable.hpp"
#include "terminal.hpp"
#include "workspace.hpp"

namespace scruple::cli {
namespace {

using Names = std::vector<std::string>;

struct Group {
    std::string_view name;
    Names (*names)(const driver::Loaded&);
};
constexpr Group groups[] = {{"recipes", solution_names},
                            {"plans", plan_names},
                            {"pages", printed_names},
                            {"benches", bench_names},
                            {"chemicals", chemical_names}};

// One a line, for people and for the completion of the shells.
std::string names_text(const Call& call) {
    const std::string wanted = call.words.size() > 1 ? call.words[1] : "";
    const driver::Loaded& loaded = open_workspace(call);
    std::string result;
    bool known = wanted.empty();
    for (const Group& group : groups) {
        if (!wanted.empty() && wanted != group.name) continue;
        known = true;
        for (const std::string& name : group.names(loaded)) result += text::printable(name) + "\n";
    }
    if (!known) throw Stop{Exit::wrong_call, "`scruple help names` takes recipes, plans, pages, benches or chemicals"};
    return result;
}

Stop no_such_topic(const std::string& topic) {
    std::vector<std::string_view> known;
    for (const CommandInfo& command : all_commands()) known.push_back(command.name);
    for (const BlockInfo& block : all_blocks()) known.push_back(block.name);
    for (const diagnostics::KindInfo& kind : diagnostics::all_kinds()) known.push_back(kind.name);
    const std::string near = diagnostics::nearest(topic, known);
    const std::string rest =
        near.empty() ? "`scruple help` lists what there is" : fmt::format("the nearest is `{}`", near);
    return {Exit::wrong_call, fmt::format("there is no help on `{}`; {}", topic, rest)};
}

// A word such as `chemical` may be a command and a block.
std::string topic_text(const std::string& topic, std::size_t width) {
    std::vector<std::string> screens;
    if (const CommandInfo* command = find_command(topic)) screens.push_back(command_screen(*command, width));
    for (const BlockInfo& block : all_blocks())
        if (block.name == topic) screens.push_back(block_screen(block, width));
    if (const auto* kind = diagnostics::find_kind(topic)) screens.push_back(kind_screen(*kind, width));
    if (const check::Saying saying = check::saying_at(topic); screens.empty() && !saying.keyword.empty())
        screens.push_back(line_screen(saying, width));
    if (screens.empty()) throw no_such_topic(topic);
    return fmt::format("{}", fmt::join(screens, "\n"));
}

std::string text_of(const Call& call, std::size_t width) {
    if (call.words.empty()) return topics_screen(width);
    if (call.words.front() == "names") return names_text(call);
    return topic_text(call.name(), width);
}

}  // namespace

Outcome help_job(const Call& call) {
    const As as = call.as();
    return {Exit::fine, presented(as, "help", call.name(), text_of(call, width_of(Stream::out))), {}};
}

}  // namespace scruple::cli
