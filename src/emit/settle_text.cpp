// SPDX-License-Identifier: MIT
#include "layout.hpp"
#include "scruple/emit/emit.hpp"
#include "settle_words.hpp"

namespace scruple::emit {

std::string settle_text(const printed::Settlement& settled, const TextStyle& style) {
    constexpr std::size_t amount_width = 16;
    Sheet sheet(style);
    for (const std::string& line : {settled.name, settled.purpose, settled.book})
        if (!line.empty()) sheet.item("", line);
    sheet.heading(settled_words::read_heading);
    for (std::size_t i = 0; i < settled.solutions.size(); ++i) {
        if (i > 0) sheet.blank();
        sheet.item("", settled_words::makes(settled.solutions[i]));
        sheet.blank();
        for (const printed::LineRead& line : settled.lines)
            if (line.solution == i)
                sheet.item(padded_left(line.amount, amount_width) + "  ", settled_words::name_of(line),
                           settled_words::per_litre(line));
    }
    for (const printed::ForUse& use : settled.for_use) {
        sheet.blank();
        for (const std::string& line : settled_words::for_use(use)) sheet.item("", line);
    }
    for (const settled_words::Group& group : settled_words::groups(settled)) {
        sheet.heading(group.heading);
        for (const settled_words::Told& told : group.lines) {
            sheet.item("- ", told.line);
            for (const std::string& line : told.under) sheet.item("    - ", line);
        }
    }
    return sheet.take();
}

}  // namespace scruple::emit
