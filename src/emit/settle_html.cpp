// SPDX-License-Identifier: MIT
#include "html.hpp"
#include "scruple/emit/emit.hpp"
#include "settle_words.hpp"

namespace scruple::emit {
namespace {

html::Markup solution_markup(const printed::Settlement& settled, std::size_t index) {
    html::Table table({"what", "amount", "by the litre"}, 2);
    for (const printed::LineRead& line : settled.lines)
        if (line.solution == index)
            table.row({settled_words::name_of(line), line.amount, settled_words::per_litre(line)});
    html::Markup all = html::element("p", settled_words::makes(settled.solutions[index]));
    all += table.take();
    return all;
}

html::Markup told_markup(const settled_words::Told& told) {
    html::Markup inside = html::words(told.line);
    inside += html::list(told.under);
    return html::element("li", inside);
}

}  // namespace

std::string settle_html(const printed::Settlement& settled) {
    html::Markup all = html::element("h1", settled.name);
    for (const std::string& line : {settled.purpose, settled.book})
        if (!line.empty()) all += html::element("p", line);
    html::Markup read;
    for (std::size_t i = 0; i < settled.solutions.size(); ++i) read += solution_markup(settled, i);
    for (const printed::ForUse& use : settled.for_use)
        for (const std::string& line : settled_words::for_use(use)) read += html::element("p", line);
    all += html::section(settled_words::read_heading, read);
    for (const settled_words::Group& group : settled_words::groups(settled)) {
        html::Markup lines;
        for (const settled_words::Told& told : group.lines) lines += told_markup(told);
        all += html::section(group.heading, html::element("ul", lines));
    }
    return html::page(settled.name, html::element("main", html::element("article", all)));
}

}  // namespace scruple::emit
