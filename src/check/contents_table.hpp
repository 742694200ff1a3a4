// SPDX-License-Identifier: MIT
// Contents of many solutions, each worked out once.
#pragma once

#include <unordered_map>
#include <utility>
#include <vector>

#include "scruple/check/contents.hpp"
#include "scruple/check/volumes.hpp"

namespace scruple::check {

/// The contents of solutions for one variant; what they are made of is worked out first, and kept.
class ContentsTable {
  public:
    ContentsTable(const Model& model, std::size_t variant) : model_(model), variant_(variant) {}

    struct Known {
        std::vector<Content> contents;
        bool whole = true;  ///< no line of anything in it was lost, and nothing in it goes round in a circle
    };
    const Known& of(Id section);
    /// The same where so much of it is made, as a share of what is written; that is not kept.
    Known of(Id section, const Exact& batch);

  private:
    Known work_out(const Section& section, const Exact& batch);
    [[nodiscard]] std::size_t variant_of(const Section& section) const;
    [[nodiscard]] Exact measure(const Section& section, std::size_t line, std::size_t variant) const;
    struct Portion {
        Exact measure, batch;
    };
    void add(Known& known, const Addition& addition, const Portion& portion, double per_ml);

    const Model& model_;
    std::size_t variant_;
    std::unordered_map<Id, Known> done_;
};

/// Calls `judge` for each variant of a section that is mixed line by line, until it returns true. `tables` has one a
/// variant, shared by all sections.
template <class Judge>
void for_each_variant(const Model& model, Id section, std::vector<ContentsTable>& tables, Judge judge) {
    const auto& solution = model.sections[section];
    if (solution.kind == SectionKind::conversion || solution.broken || solution.by_parts) return;
    for (std::size_t variant = 0; variant < variants_of(model, solution); ++variant) {
        if (variant == tables.size()) tables.emplace_back(model, variant);
        if (judge(variant)) return;
    }
}

}  // namespace scruple::check
