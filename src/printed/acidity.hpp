// SPDX-License-Identifier: MIT
// The pH that a reading of the whole page makes, and whether it is one for what the page is for.
#pragma once

#include <optional>
#include <vector>

#include "judge.hpp"
#include "scruple/check/contents.hpp"
#include "search.hpp"

namespace scruple::printed {

/// What a mixture of the page's solutions holds, each line for itself. Lines whose chemical or amount is not known are
/// left out, and `all_known` is then false.
struct Held {
    std::vector<check::Content> contents{};
    bool all_known = true;
};
[[nodiscard]] Held held_by(const check::Model& model, const Layout& layout, const Judge& judge, const Found& found,
                           const Mixture& mixture);

/// pH at 20 °C; nothing where something in it is not known in water.
[[nodiscard]] std::optional<double> ph_of(const check::Model& model, const Held& held);

class Acidity {
  public:
    Acidity(const check::Model& model, const Page& page, const Layout& layout, const Judge& judge);

    /// Of the solution in use: the page's mixture, or its only solution.
    [[nodiscard]] std::optional<double> ph(const Found& found) const;
    /// 1.2 a unit outside the usual range, and never above 3; 0 where nothing is known.
    [[nodiscard]] double cost(const Found& found) const;
    /// The same where `found` may differ by it from `best`, whose pH is known; else that of the best.
    [[nodiscard]] double cost_beside(const Found& found, const Found& best) const;
    /// The best of those that a question about a form or a unit leads to, once the pH counts: `search`'s own best where
    /// its pH is usual.
    [[nodiscard]] Found best(const Search& search) const;

  private:
    const check::Model& model_;
    const Layout& layout_;
    const Judge& judge_;
    std::optional<Range> usual_{};
    std::optional<Mixture> in_use_{};
};

}  // namespace scruple::printed
