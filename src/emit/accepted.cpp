// SPDX-License-Identifier: MIT
#include "accepted.hpp"

#include "scruple/emit/words.hpp"

namespace scruple::emit {

void add_accepted(Sheet& sheet, const AcceptedMeetings& accepted) {
    if (accepted.empty()) return;
    sheet.heading(words::accepted_heading);
    for (const plan::AcceptedMeeting& it : accepted) {
        sheet.item("! ", words::accepted_head(it));
        for (const std::string& line : words::accepted_lines(it)) sheet.indented(2, line);
        sheet.blank();
    }
}

html::Markup accepted_html(const AcceptedMeetings& accepted) {
    if (accepted.empty()) return {};
    html::Markup all = html::element("h2", words::accepted_heading);
    for (const plan::AcceptedMeeting& it : accepted) {
        all += html::element("p", html::element("b", words::accepted_head(it)));
        all += html::list(words::accepted_lines(it));
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
