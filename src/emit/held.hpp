// SPDX-License-Identifier: MIT
// What a solution holds and the pH it comes to, as cards and contents print it.
#pragma once

#include <optional>
#include <vector>

#include "html.hpp"
#include "json.hpp"
#include "layout.hpp"
#include "scruple/plan/card.hpp"

namespace scruple::emit {

/// Grams and moles a litre, how far they may be off, and the pH below them; without a heading.
void add_held(Sheet& sheet, const std::vector<plan::ContentRow>& rows, const std::optional<plan::PhRow>& ph);
[[nodiscard]] html::Markup held_html(const std::vector<plan::ContentRow>& rows, const std::optional<plan::PhRow>& ph);

[[nodiscard]] json::Value content_json(const plan::ContentRow& row);
[[nodiscard]] json::Value ph_json(const std::optional<plan::PhRow>& row);

}  // namespace scruple::emit
