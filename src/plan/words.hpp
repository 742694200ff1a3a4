// SPDX-License-Identifier: MIT
// The words of a card's lines: temperatures, times, what a thing is called, what is done.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "scruple/check/model.hpp"

namespace scruple::plan {

/// `45 to 50 °C`
[[nodiscard]] std::string celsius_text(const check::Interval& celsius);
/// `1 min`, `8 to 12 min`, in the largest unit that both ends read well in
[[nodiscard]] std::string time_text(const check::Interval& seconds);
/// `10 % w/v`
[[nodiscard]] std::string strength_text(const check::Strength& strength);

/// `anhydrous, 20 % w/v in propylene glycol`; empty where the chemical has but one form and no strength is meant.
[[nodiscard]] std::string form_words(const check::Model& model, const check::Addition& addition);
/// `decahydrate`; empty where the chemical has but one form.
[[nodiscard]] std::string form_name(const check::Chemical& chemical, check::Id form);
/// `sodium carbonate (monohydrate)`, `water (distilled)`, `Lantern part A`
[[nodiscard]] std::string substance_words(const check::Model& model, const check::Addition& addition);

/// `slowly`, `stirring every 5 min`, `until clear`, as they stand after a comma
[[nodiscard]] std::vector<std::string> detail_words(std::span<const check::Detail> details);
/// `stir until clear`, `cool below 27 °C`
[[nodiscard]] std::string action_words(const check::Action& action);
[[nodiscard]] bool until_clear(const check::Action& action);

/// Five significant figures, as a line of working shows them.
[[nodiscard]] std::string working_text(const check::Exact& value);

/// `as written: 90 grains` for an amount in a unit that no metric instrument shows; empty otherwise
[[nodiscard]] std::string as_written(const check::Addition& addition);

[[nodiscard]] bool is_water(const check::Model& model, const check::Addition& addition);
[[nodiscard]] std::string joined(const std::vector<std::string>& pieces, std::string_view between);

}  // namespace scruple::plan
