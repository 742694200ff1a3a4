// SPDX-License-Identifier: MIT
// Cautions and hazard statements, as every document shows them that somebody works by.
#pragma once

#include "html.hpp"
#include "json.hpp"
#include "layout.hpp"
#include "scruple/plan/card.hpp"

namespace scruple::emit {

using Cautions = std::vector<plan::Caution>;
using Hazards = std::vector<plan::HazardRow>;

void add_cautions(Sheet& sheet, const Cautions& cautions, const Hazards& hazards);
[[nodiscard]] html::Markup cautions_html(const Cautions& cautions, const Hazards& hazards);
[[nodiscard]] json::Value cautions_json(const Cautions& cautions);
[[nodiscard]] json::Value hazards_json(const Hazards& hazards);

}  // namespace scruple::emit
