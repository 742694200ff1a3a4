// SPDX-License-Identifier: MIT
// What must not meet and is let meet, as every card shows it.
#pragma once

#include "html.hpp"
#include "json.hpp"
#include "layout.hpp"
#include "scruple/plan/card.hpp"

namespace scruple::emit {

using AcceptedMeetings = std::vector<plan::AcceptedMeeting>;

/// Nothing where nothing is accepted.
void add_accepted(Sheet& sheet, const AcceptedMeetings& accepted);
[[nodiscard]] html::Markup accepted_html(const AcceptedMeetings& accepted);
[[nodiscard]] json::Value accepted_json(const AcceptedMeetings& accepted);

}  // namespace scruple::emit
