// SPDX-License-Identifier: MIT
// What a solution is made of, through its parts and conversions.
#pragma once

#include <unordered_map>
#include <vector>

#include "scruple/check/model.hpp"

namespace scruple::plan {

/// What is told of a solution for what it is made of: each once, its own lines first, then part by part.
struct Reach {
    check::Id section = check::none;
    std::vector<check::Id> telling;    ///< itself, then those that have a caution or an accepted meeting
    std::vector<check::Id> chemicals;  ///< water left out
    std::vector<const check::Conversion*> conversions;
    bool anything_converted = false;  ///< a line of it or of what it is made of is by conversion
};

/// The same of many solutions, while nothing in the model changes: what they share is worked out once.
class Reaches {
  public:
    explicit Reaches(const check::Model& model);
    [[nodiscard]] const Reach& of(check::Id section);
    /// What must not meet and is let meet: in what it is made of, and where a process carries it over. As the model has
    /// them.
    [[nodiscard]] std::vector<const check::Accepted*> accepted_in(const Reach& reach) const;

  private:
    using AcceptedBySection = std::unordered_map<check::Id, std::vector<const check::Accepted*>>;

    [[nodiscard]] Reach made_of(check::Id section) const;

    const check::Model& model_;
    AcceptedBySection mixed_, carried_;
    std::unordered_map<check::Id, Reach> known_;
};

[[nodiscard]] Reach reach_of(const check::Model& model, check::Id section);

/// Itself first, then all that it is made of.
[[nodiscard]] std::vector<check::Id> sections_within(const check::Model& model, check::Id section);

/// Whether the solution reached from takes silver out of films and papers: called a fixer, or made with a thiosulfate.
[[nodiscard]] bool fixes(const check::Model& model, const Reach& reach);

}  // namespace scruple::plan
