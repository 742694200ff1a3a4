// SPDX-License-Identifier: MIT
#include <algorithm>
#include <functional>
#include <tuple>

#include "scruple/plan/mixing_calendar.hpp"

namespace scruple::plan {

using check::Bottle;
using check::Exact;

namespace {

using Row = std::vector<std::int64_t>;

/// Air first, then the number of bottles.
class Filling {
  public:
    explicit Filling(std::vector<Bottle> kinds) : kinds_(std::move(kinds)), counts_(kinds_.size()) {}

    /// Empty where there are too few.
    const Row& run(const Exact& ml) {
        fill(0, ml, 0);
        return best_;
    }

  private:
    void fill(std::size_t at, const Exact& left, std::int64_t bottles) {
        if (left <= 0) {
            const std::pair<Exact, std::int64_t> worth(-left, bottles);
            if (best_.empty() || worth < worth_) {
                best_ = counts_;
                worth_ = worth;
            }
            return;
        }
        if (at == kinds_.size()) return;
        auto most = static_cast<std::int64_t>((left / kinds_[at].ml).ceil().to_double());
        if (kinds_[at].count) most = std::min(most, *kinds_[at].count);
        // A drum that is bottled by the spoonful is not worth every way to do it.
        for (std::int64_t count = most; count >= 0 && ++steps_ <= most_steps; --count) {
            counts_[at] = count;
            fill(at + 1, left - kinds_[at].ml * count, bottles + count);
        }
        counts_[at] = 0;
    }

    static constexpr std::int64_t most_steps = 50'000;

    std::vector<Bottle> kinds_;
    Row counts_, best_;
    std::pair<Exact, std::int64_t> worth_;
    std::int64_t steps_ = 0;
};

}  // namespace

std::vector<std::pair<std::int64_t, Exact>> bottles_for(const Exact& ml, const std::vector<Bottle>& bottles) {
    std::vector<Bottle> largest_first(bottles);
    std::ranges::sort(largest_first, std::greater{}, &Bottle::ml);
    if (largest_first.empty() || ml <= 0 || ml / largest_first.front().ml > 1000) return {};
    const Row counts = Filling(largest_first).run(ml);
    std::vector<std::pair<std::int64_t, Exact>> rows;
    for (std::size_t i = 0; i < counts.size(); ++i)
        if (counts[i] > 0) rows.emplace_back(counts[i], largest_first[i].ml);
    return rows;
}

}  // namespace scruple::plan
