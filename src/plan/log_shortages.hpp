// SPDX-License-Identifier: MIT
// Lines of the log that take more than there was.
#pragma once

#include <string>
#include <vector>

#include "ware.hpp"

namespace scruple::plan {

class Shortages {
  public:
    void note(const check::LogEntry& line, const Ware& ware, const check::Exact& wanting);
    void note(const check::LogEntry& line, check::Id solution, const check::Exact& ml);

    /// What is on the shelf has been looked up: whatever was wanting before no longer matters.
    void settle(const Ware& ware);
    void settle(check::Id solution);

    /// A sentence for each, with the line that it is about.
    [[nodiscard]] std::vector<std::string> in_words(const check::Model& model) const;

  private:
    struct Shortage {
        const check::LogEntry* line;
        check::Id solution = check::none;
        Ware ware;  ///< where solution is none
        check::Exact wanting;
    };
    void add(const Shortage& shortage);

    std::vector<Shortage> all_;
};

}  // namespace scruple::plan
