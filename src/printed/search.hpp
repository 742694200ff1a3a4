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
    std::size_t index = 0;          ///< of the shared reading
    std::vector<std::size_t> ways;  ///< of each line
    double cost = 0;
};

/// What a line costs, read so, beside the weights of the way itself.
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
    /// The best with that line read in one of the ways for which `allowed` holds; none where it holds for none.
    [[nodiscard]] std::optional<Found> best_with(std::size_t line,
                                                 const std::function<bool(const Way&)>& allowed) const;

  private:
    /// Each line's best way under one shared reading.
    struct Under {
        std::vector<std::vector<double>> costs;  ///< of each line's ways
        std::vector<std::size_t> ways;           ///< the best of each line
        double total = 0;
        double total_of_page = 0;  ///< no line departing from the page's ounce
    };

    [[nodiscard]] Found found(std::size_t shared, bool of_the_page) const;
    /// The best way of a line that keeps to the page's ounce.
    [[nodiscard]] std::size_t of_page(const Under& under, std::size_t line) const;

    const std::vector<Known>& lines_;
    const std::vector<Shared>& shared_;
    std::vector<Under> under_;  ///< of each shared reading
    Found best_;
};

}  // namespace scruple::printed
