// SPDX-License-Identifier: MIT
#include "html.hpp"

#include <fmt/format.h>

#include "scruple/emit/words.hpp"
#include "scruple/text/printable.hpp"

namespace scruple::emit::html {
namespace {

std::string_view escape_of(char c) {
    switch (c) {
        case '&':
            return "&amp;";
        case '<':
            return "&lt;";
        case '>':
            return "&gt;";
        case '"':
            return "&quot;";
        case '\'':
            return "&#39;";
        default:
            return {};
    }
}

Markup escaped(std::string_view printable) {
    Markup result;
    for (const char c : printable) {
        const std::string_view escape = escape_of(c);
        if (escape.empty())
            result.text += c;
        else
            result.text += escape;
    }
    return result;
}

bool stands_in_a_line(std::string_view name) {
    return name == "b" || name == "span" || name == "small";
}

}  // namespace

Markup words(std::string_view text) {
    return escaped(words::with_units_kept(text::printable(text)));
}

Markup lines(std::string_view text) {
    return element("pre", R"(class="listing")", escaped(text::printable_lines(text)));
}

Markup element(std::string_view name, std::string_view attributes, const Markup& inside) {
    return {fmt::format("<{}{}{}>{}</{}>{}", name, attributes.empty() ? "" : " ", attributes, inside.text, name,
                        stands_in_a_line(name) ? "" : "\n")};
}

Markup element(std::string_view name, const Markup& inside) {
    return element(name, "", inside);
}

Markup element(std::string_view name, std::string_view attributes, std::string_view text) {
    return element(name, attributes, words(text));
}

Markup element(std::string_view name, std::string_view text) {
    return element(name, "", words(text));
}

Markup section(std::string_view heading, const Markup& inside) {
    if (inside.text.empty()) return {};
    Markup all = element("h2", heading);
    all += inside;
    return element("section", all);
}

Markup list(const std::vector<std::string>& lines, std::string_view attributes) {
    if (lines.empty()) return {};
    Markup items;
    for (const std::string& line : lines) items += element("li", line);
    return element("ul", attributes, items);
}

Table::Table(const std::vector<std::string_view>& columns, std::size_t figures)
    : columns_(columns.size()), figures_(figures) {
    for (std::size_t i = 0; i < columns.size(); ++i)
        head_ += element("th", attributes(i).empty() ? "scope=\"col\"" : "scope=\"col\" class=\"figure\"", columns[i]);
}

std::string_view Table::attributes(std::size_t column) const {
    return column + figures_ >= columns_ ? "class=\"figure\"" : "";
}

void Table::add(const Markup& head, const std::vector<std::string>& cells) {
    Markup all = element("th", "scope=\"row\"", head);
    for (std::size_t i = 1; i < cells.size(); ++i) all += element("td", attributes(i), cells[i]);
    body_ += element("tr", all);
}

void Table::row(const std::vector<std::string>& cells) {
    add(words(cells[0]), cells);
}

void Table::row_to_tick(const std::vector<std::string>& cells) {
    add(box(cells[0]), cells);
}

Markup Table::take() const {
    if (body_.text.empty()) return {};
    Markup all = element("thead", element("tr", head_));
    all += element("tbody", body_);
    return element("table", all);
}

Markup box(std::string_view label) {
    Markup all = element("span", "class=\"box\"", Markup{});
    all += words(label);
    return element("span", "class=\"tick\"", all);
}

Markup to_write(std::string_view label) {
    Markup all = words(label);
    all += element("span", "class=\"line\"", Markup{});
    return element("span", "class=\"write\"", all);
}

Markup link(std::string_view file_name, std::string_view text) {
    return element("a", fmt::format("href=\"{}\"", file_name), text);
}

std::string page(std::string_view title, const Markup& body, const Embedded& script) {
    constexpr std::string_view frame = R"(<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src '{}'{}; base-uri 'none'; form-action 'none'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>{}</title>
<style>{}</style>
</head>
<body>
{}{}</body>
</html>
)";
    const bool none = script.text.empty();
    const std::string allowed = none ? "" : fmt::format("; script-src '{}'", script.digest);
    const std::string tail = none ? "" : fmt::format("<script>{}</script>\n", script.text);
    return fmt::format(frame, style.digest, allowed, words(title).text, style.text, body.text, tail);
}

}  // namespace scruple::emit::html
