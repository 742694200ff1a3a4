// SPDX-License-Identifier: MIT
// A web page, put together from pieces that are escaped as they go in.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "web/web.hpp"

namespace scruple::emit::html {

/// A finished piece of a page.
struct Markup {
    std::string text;
    Markup& operator+=(const Markup& more) {
        text += more.text;
        return *this;
    }
};

/// Words made printable, with nothing in them that a browser would act on.
[[nodiscard]] Markup words(std::string_view text);
/// The same of several lines, each on its own and with its blanks.
[[nodiscard]] Markup lines(std::string_view text);

/// `<name attributes>inside</name>` on a line of its own where `name` is a block. Name and attributes are the
/// program's own, never from a file.
[[nodiscard]] Markup element(std::string_view name, std::string_view attributes, const Markup& inside);
[[nodiscard]] Markup element(std::string_view name, const Markup& inside);
[[nodiscard]] Markup element(std::string_view name, std::string_view attributes, std::string_view text);
[[nodiscard]] Markup element(std::string_view name, std::string_view text);

/// A heading of the second rank and what belongs to it; nothing where there is nothing.
[[nodiscard]] Markup section(std::string_view heading, const Markup& inside);
/// `ul` or `ol` of lines; nothing where there is none.
[[nodiscard]] Markup list(const std::vector<std::string>& lines, std::string_view attributes = "");

/// A table whose first column heads its rows; `figures` columns at the right hold numbers.
class Table {
  public:
    Table(const std::vector<std::string_view>& columns, std::size_t figures);
    void row(const std::vector<std::string>& cells);
    /// With a box before the first cell.
    void row_to_tick(const std::vector<std::string>& cells);
    [[nodiscard]] Markup take() const;

  private:
    [[nodiscard]] std::string_view attributes(std::size_t column) const;
    void add(const Markup& head, const std::vector<std::string>& cells);

    std::size_t columns_, figures_;
    Markup head_, body_;
};

/// A box to tick, a line to write on.
[[nodiscard]] Markup box(std::string_view label);
[[nodiscard]] Markup to_write(std::string_view label);

/// One whole page: its own style within it, no script but this one, and nothing that it would fetch.
[[nodiscard]] std::string page(std::string_view title, const Markup& body, const Embedded& script = {});

/// To another page of the same folder, whose name is the program's own.
[[nodiscard]] Markup link(std::string_view file_name, std::string_view text);

}  // namespace scruple::emit::html
