// SPDX-License-Identifier: MIT
// Contents beside what is expected of them.
#pragma once

#include "reader.hpp"
#include "scruple/check/contents.hpp"

namespace scruple::check {

/// The content in the unit of an expectation; nullopt where it has no such measure.
[[nodiscard]] std::optional<double> in_unit(const Content& content, quantity::Unit unit);

/// Reports what cannot be read.
[[nodiscard]] std::optional<Expectation> read_expectation(Reader& reader, const syntax::Expect& line);

/// `sodium sulfite (anhydrous)`, `Na+`
[[nodiscard]] std::string expected_name(const Model& model, const Expectation& expectation);

/// All forms of the chemical together, by mole, in grams of the form that is expected; of an ion, all that
/// chemicals bring as they are written. nullopt where there is none.
[[nodiscard]] std::optional<Content> content_of(const Model& model, const std::vector<Content>& contents,
                                                const Expectation& expectation);

/// Whether a value lies in a range, ends included, to within half of the last of four printed digits.
[[nodiscard]] bool lies_within(double value, const Interval& range);

/// Whether an amount of it is still `?`, so that nothing can be said of what it holds.
[[nodiscard]] bool has_open_amount(const Section& section);
/// The same, from its lines alone, for when they have just been read.
[[nodiscard]] bool any_amount_is_open(const Section& section);

/// `49 to 51`, and the unit behind it where there is one.
[[nodiscard]] std::string range_text(const Interval& range, quantity::Unit unit);

}  // namespace scruple::check
