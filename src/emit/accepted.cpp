// SPDX-License-Identifier: MIT
#include "accepted.hpp"

#include <fmt/format.h>

#include "scruple/emit/words.hpp"

namespace scruple::emit {
namespace {

constexpr std::string_view heading = "Accepted by the recipe";

std::string head(const plan::AcceptedMeeting& it) {
    return fmt::format("accepted: {}, because {}", it.meeting, it.reason);
}

std::vector<std::string> lines(const plan::AcceptedMeeting& it) {
    std::vector<std::string> all{fmt::format("{}: {}", it.lethal ? "LETHAL" : "harmful", it.comes),
                                 fmt::format("{}: {}", it.where, it.what)};
    all.insert(all.end(), it.cautions.begin(), it.cautions.end());
    all.push_back(fmt::format("{}, and local rules", words::check_the_sheet));
    for (const std::string& source : it.sources) all.push_back("from: " + source);
    return all;
}

}  // namespace

void add_accepted(Sheet& sheet, const AcceptedMeetings& accepted) {
    if (accepted.empty()) return;
    sheet.heading(heading);
    for (const plan::AcceptedMeeting& it : accepted) {
        sheet.item("! ", head(it));
        for (const std::string& line : lines(it)) sheet.indented(2, line);
        sheet.blank();
    }
}

html::Markup accepted_html(const AcceptedMeetings& accepted) {
    if (accepted.empty()) return {};
    html::Markup all = html::element("h2", heading);
    for (const plan::AcceptedMeeting& it : accepted) {
        all += html::element("p", html::element("b", head(it)));
        all += html::list(lines(it));
    }
    return html::element("section", "class=\"cautions\"", all);
}

json::Value accepted_json(const AcceptedMeetings& accepted) {
    return json::each(accepted, [](const plan::AcceptedMeeting& it) {
        json::Value all;
        all["meeting"] = it.meeting;
        all["lethal"] = it.lethal;
        all["where"] = it.where;
        all["what"] = it.what;
        all["comes"] = it.comes;
        all["reason"] = it.reason;
        all["cautions"] = it.cautions;
        all["sources"] = it.sources;
        return all;
    });
}

}  // namespace scruple::emit
