// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "card_facts.hpp"

namespace scruple::plan {

namespace {

using check::Accepted;
using check::Id;
using check::Model;

std::string where(const Model& model, const Accepted& accepted) {
    if (accepted.process == check::none) return check::shown_name(model, accepted.section);
    return fmt::format("from {} into {}, in {}", check::shown_name(model, accepted.bath),
                       check::shown_name(model, accepted.next), model.processes[accepted.process].name);
}

/// Names on a card stand without the marks that they have in a message.
std::string unmarked(std::string text) {
    std::erase(text, '`');
    return text;
}

AcceptedMeeting words(const Model& model, const Accepted& accepted) {
    const check::Meeting& meeting = model.meetings[accepted.meeting];
    return {.meeting = std::string(meeting.name),
            .lethal = meeting.danger == check::Danger::lethal,
            .where = where(model, accepted),
            .what = unmarked(accepted.what),
            .comes = std::string(meeting.comes),
            .reason = std::string(accepted.reason),
            .cautions = {meeting.cautions.begin(), meeting.cautions.end()},
            .sources = {meeting.sources.begin(), meeting.sources.end()}};
}

}  // namespace

std::vector<AcceptedMeeting> accepted_of(const Model& model, const std::vector<const Accepted*>& accepted) {
    std::vector<AcceptedMeeting> all;
    all.reserve(accepted.size());
    for (const Accepted* it : accepted) all.push_back(words(model, *it));
    return all;
}

}  // namespace scruple::plan
