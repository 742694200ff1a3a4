// SPDX-License-Identifier: MIT
// Judges solutions whose lines have been read.
#pragma once

#include <span>

#include "passes.hpp"

namespace scruple::check {

class Judging {
  public:
    /// All meetings have been read.
    Judging(Model& model, const Workspace& workspace) : model_(model), workspace_(workspace), encounters_(model) {}

    /// Finds the amounts that are open and puts them into the model; reports what is wrong into `out`, and gives what
    /// was let happen, by solution, then by process. On as many threads as there are `tables`: what solutions hold, by
    /// variant, kept for the next group.
    std::vector<Accepted> judge(const Group& group, std::span<std::vector<ContentsTable>> tables,
                                std::vector<diagnostics::Diagnostic>& out);

  private:
    [[nodiscard]] Reader reader(text::FileId file, std::vector<diagnostics::Diagnostic>& out) const;
    void find_open_amounts(const Recipe& recipe, std::vector<diagnostics::Diagnostic>& out);
    void judge_section(Id id, std::vector<ContentsTable>& tables, std::vector<diagnostics::Diagnostic>& out) const;

    Model& model_;
    const Workspace& workspace_;
    Encounters encounters_;
};

}  // namespace scruple::check
