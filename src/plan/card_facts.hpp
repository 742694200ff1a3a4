// SPDX-License-Identifier: MIT
// The parts of a card that are not work: what is in it, what to mind, how long and for how much it lasts.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "reach.hpp"
#include "scruple/check/contents.hpp"
#include "scruple/plan/card.hpp"

namespace scruple::plan {

[[nodiscard]] std::vector<ContentRow> content_rows(const check::Model& model,
                                                   const std::vector<check::Content>& contents);
/// How warm the solution is for its pH.
[[nodiscard]] double celsius_of(const CardRequest& request);
/// None for water alone.
[[nodiscard]] std::optional<PhRow> ph_row(const check::Model& model, const std::vector<check::Content>& contents,
                                          double celsius);

/// First what every card says, then recipe, parts, conversions and chemicals, each caution once.
[[nodiscard]] std::vector<Caution> cautions_of(const check::Model& model, const Reach& reach);
/// What must not meet and is let meet (Reaches::accepted_in).
[[nodiscard]] std::vector<AcceptedMeeting> accepted_of(const check::Model& model,
                                                       const std::vector<const check::Accepted*>& accepted);
[[nodiscard]] std::vector<HazardRow> hazards_of(const check::Model& model, const Reach& reach);

[[nodiscard]] std::vector<Life> lives_of(const check::Section& section, std::optional<check::Day> mixed_on);
/// The capacity lines, with what they come to for this batch.
[[nodiscard]] std::vector<std::string> capacity_words(const check::Model& model, check::Id section,
                                                      const check::Exact& makes_ml);

}  // namespace scruple::plan
