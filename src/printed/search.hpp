// SPDX-License-Identifier: MIT
// The best reading of a page, exactly: all combinations of what is shared, and each line by itself under each.
#pragma once

#include <functional>
#include <vector>

#include "reading.hpp"

namespace scruple::printed {

struct Found {
    Shared shared;
    std::vector<std::size_t> ways;  ///< of each line
    double cost = 0;
};

/// What a line costs, read so.
using CostOfLine = std::function<double(std::size_t line, const Way& way, const Shared& shared)>;

class Search {
  public:
    /// `lines` and `shared` must outlive it and not be empty; costs are asked for once each.
    Search(const std::vector<Known>& lines, const std::vector<Shared>& shared, const CostOfLine& cost);

    [[nodiscard]] const Found& best() const { return best_; }
    /// The least cost among shared readings for which `allowed` holds.
    [[nodiscard]] double least(const std::function<bool(const Shared&)>& allowed) const;
    /// The least cost with that line read in one of the ways for which `allowed` holds.
    [[nodiscard]] double least_of_line(std::size_t line, const std::function<bool(const Way&)>& allowed) const;
    /// The best under one shared reading.
    [[nodiscard]] Found under(std::size_t shared) const;
    [[nodiscard]] std::size_t best_shared() const { return best_shared_; }

  private:
    const std::vector<Known>& lines_;
    const std::vector<Shared>& shared_;
    std::vector<std::vector<std::vector<double>>> costs_;
    std::vector<double> totals_;  ///< of each shared reading, lines at their best
    Found best_;
    std::size_t best_shared_ = 0;
};

}  // namespace scruple::printed
