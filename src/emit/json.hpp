// SPDX-License-Identifier: MIT
// JSON values whose numbers read as the figures that are printed elsewhere.
#pragma once

#include <nlohmann/json.hpp>
#include <string>
#include <string_view>
#include <vector>

#include "scruple/plan/figure.hpp"

namespace scruple::emit::json {

using Value = nlohmann::ordered_json;

/// The number that a printed figure is: `12.5` is 12.5, and not what a sum of doubles makes of it.
[[nodiscard]] Value number(std::string_view printed);
/// Rounded to six significant figures.
[[nodiscard]] Value number(double value);
[[nodiscard]] Value number(const quantity::Exact& value, int places);

/// {"value":…,"unit":…}
[[nodiscard]] Value figure(const plan::Figure& figure);

/// null where nothing is said.
[[nodiscard]] Value text_or_null(std::string_view text);

/// An array of what `make` makes of each row.
template <class Rows, class Make>
[[nodiscard]] Value each(const Rows& rows, Make make) {
    Value all = Value::array();
    for (const auto& row : rows) all.push_back(make(row));
    return all;
}

/// With two blanks of indentation and a line end.
[[nodiscard]] std::string document(const Value& value);

}  // namespace scruple::emit::json
