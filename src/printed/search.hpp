// SPDX-License-Identifier: MIT
// The best reading of a page, exactly: all combinations of what is shared, and each line by itself under each.
#pragma once

#include <functional>
#include <optional>
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
    /// The best among shared readings for which `allowed` holds; none where it holds for none. With `of_the_page`, no
    /// line departs from what the page's ounce is.
    [[nodiscard]] std::optional<Found> best_of(const std::function<bool(const Shared&)>& allowed,
                                               bool of_the_page = false) const;
    /// The least cost with that line read in one of the ways for which `allowed` holds.
    [[nodiscard]] double least_of_line(std::size_t line, const std::function<bool(const Way&)>& allowed) const;

  private:
    [[nodiscard]] Found under(std::size_t shared, bool of_the_page) const;

    const std::vector<Known>& lines_;
    const std::vector<Shared>& shared_;
    std::vector<std::vector<std::vector<double>>> costs_;
    std::vector<double> totals_;  ///< of each shared reading, lines at their best
    Found best_;
};

}  // namespace scruple::printed
