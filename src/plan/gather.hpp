// SPDX-License-Identifier: MIT
// The gather list: each thing once, as much as the work takes of it.
#pragma once

#include <string>
#include <vector>

#include "scruple/plan/card.hpp"

namespace scruple::plan {

/// Do two lines take of the same jar?
[[nodiscard]] bool same_thing(const check::Addition& a, const check::Addition& b);
/// The chemical's name, or the solution's.
[[nodiscard]] std::string gathered_name(const check::Model& model, const check::Addition& addition);

class GatherList {
  public:
    explicit GatherList(const check::Model& model) : model_(model) {}

    /// Adds what one line takes. Lines of the same thing are summed as printed, so that list and work agree.
    void add(const check::Addition& addition, const Figure& figure, double mol, const std::string& note = {});
    /// What only fills up, water as a rule: about so many ml of it, up to the next whole one.
    void add_about(const check::Addition& addition, const check::Exact& ml);

    [[nodiscard]] std::vector<Gathered> take();

  private:
    struct Entry {
        const check::Addition* addition;
        Gathered row;
        std::vector<std::string> notes;
    };
    Entry& entry_for(const check::Addition& addition, const Figure& figure);

    const check::Model& model_;
    std::vector<Entry> entries_;
};

}  // namespace scruple::plan
