// SPDX-License-Identifier: MIT
#include "scruple/plan/mixing_days.hpp"

#include <algorithm>
#include <cstdint>
#include <iterator>
#include <tuple>

namespace scruple::plan {

namespace {

using DayNumber = std::int32_t;

// A month's plan has a handful of sets; past this the best so far is taken.
constexpr std::int64_t most_sets = 2'000;

bool better(const MixingDays& a, const MixingDays& b) {
    const auto earlier = [](const MixingDays& days) {
        return std::tuple(days.days.size(), days.mixings, days.waiting);
    };
    if (earlier(a) != earlier(b)) return earlier(a) < earlier(b);
    return a.days > b.days;
}

/// The latest that is not too late; where there is none, the day itself.
DayNumber latest_of(const std::vector<DayNumber>& days, const MixingWindow& window) {
    const auto after = std::ranges::upper_bound(days, window.needed);
    return after == days.begin() ? window.needed : *std::prev(after);
}

class DaySearch {
  public:
    explicit DaySearch(const std::vector<MixingNeeds>& needs) : needs_(needs) {
        for (const auto& need : needs)
            for (const auto& window : need.windows) {
                days_.push_back(window.needed);
                windows_.push_back(window);
            }
        std::ranges::sort(days_);
        days_.erase(std::unique(days_.begin(), days_.end()), days_.end());
        std::ranges::sort(windows_, {}, &MixingWindow::earliest);
        fill_next();
    }

    MixingDays run() {
        if (days_.empty()) return {};
        count_from_the_end();
        choose(0, fewest_.front());
        best_.proven = sets_ <= most_sets;
        return best_;
    }

  private:
    /// After mixing on day i: the last day by which to mix anew, and none where nothing is left. Index 0 is before all.
    void fill_next() {
        due_.assign(days_.size() + 1, days_.size());
        std::size_t due = days_.size();
        auto window = windows_.rbegin();
        for (std::size_t i = days_.size(); i > 0; --i) {
            for (; window != windows_.rend() && window->earliest > days_[i - 1]; ++window)
                due = std::min(due, index(*window));
            due_[i] = due;
        }
        for (; window != windows_.rend(); ++window) due = std::min(due, index(*window));
        due_[0] = due;
    }

    [[nodiscard]] std::size_t index(const MixingWindow& window) const {
        return static_cast<std::size_t>(std::ranges::lower_bound(days_, window.needed) - days_.begin());
    }

    /// How many more days of mixing there must be, once one was on day i.
    void count_from_the_end() {
        fewest_.assign(days_.size() + 1, 0);
        for (std::size_t after = days_.size() + 1; after-- > 0;)
            if (due_[after] < days_.size()) fewest_[after] = 1 + fewest_[due_[after] + 1];
    }

    /// Every set of so many more days, the latest first.
    void choose(std::size_t after, std::int64_t left) {
        if (sets_ > most_sets) return;
        if (left == 0) {
            ++sets_;
            judge();
            return;
        }
        for (std::size_t day = due_[after] + 1; day-- > after;) {
            if (fewest_[day + 1] > left - 1) break;  // An earlier day is never followed by fewer.
            chosen_.push_back(days_[day]);
            choose(day + 1, left - 1);
            chosen_.pop_back();
        }
    }

    /// On the chosen days: anew as late as may be, whenever what was mixed last is too old.
    [[nodiscard]] std::int64_t fewest_mixings(const MixingNeeds& need) const {
        std::int64_t mixings = 0;
        DayNumber last = 0;
        for (const auto& window : need.windows) {
            if (mixings > 0 && last >= window.earliest) continue;
            last = latest_of(chosen_, window);
            ++mixings;
        }
        return mixings;
    }

    void judge() {
        MixingDays found{chosen_, 0, 0, true};
        for (const auto& need : needs_) found.mixings += fewest_mixings(need);
        if (!best_.days.empty() && found.mixings > best_.mixings) return;
        for (const auto& need : needs_) {
            const auto mixed = mixed_for(need, chosen_);
            for (std::size_t i = 0; i < mixed.size(); ++i) found.waiting += need.windows[i].needed - mixed[i];
        }
        if (best_.days.empty() || better(found, best_)) best_ = std::move(found);
    }

    const std::vector<MixingNeeds>& needs_;
    std::vector<DayNumber> days_, chosen_;
    std::vector<MixingWindow> windows_;
    std::vector<std::size_t> due_;
    std::vector<std::int64_t> fewest_;
    MixingDays best_;
    std::int64_t sets_ = 0;
};

/// Of the days those on which to mix each window, by what all windows up to it cost.
class LeastWaiting {
  public:
    LeastWaiting(const MixingNeeds& needs, std::vector<DayNumber> days)
        : windows_(needs.windows), days_(std::move(days)) {
        for (const auto& window : windows_)
            if (latest_of(days_, window) < window.earliest) days_.push_back(window.needed);
        std::ranges::sort(days_);
        days_.erase(std::unique(days_.begin(), days_.end()), days_.end());
    }

    std::vector<DayNumber> run() {
        Row before;
        for (std::size_t i = 0; i < windows_.size(); ++i) before = step(i, before);
        std::vector<DayNumber> mixed(windows_.size());
        if (mixed.empty()) return mixed;
        std::size_t at = 0;
        for (std::size_t day = 1; day < days_.size(); ++day)
            if (no_worse(before[day], before[at])) at = day;
        for (std::size_t i = windows_.size(); i-- > 0;) {
            mixed[i] = days_[at];
            at = came_from_[i * days_.size() + at];
        }
        return mixed;
    }

  private:
    using Cost = std::pair<std::int64_t, std::int64_t>;  ///< mixings, days of waiting
    using Row = std::vector<Cost>;
    static constexpr Cost impossible{INT64_MAX, 0};

    static bool no_worse(const Cost& a, const Cost& b) { return a <= b && a != impossible; }

    Row step(std::size_t i, const Row& before) {
        Row costs(days_.size(), impossible);
        came_from_.resize((i + 1) * days_.size());
        Cost earlier = impossible;
        std::size_t cheapest = 0;
        for (std::size_t day = 0; day < days_.size(); ++day) {
            const bool will_do = windows_[i].earliest <= days_[day] && days_[day] <= windows_[i].needed;
            Cost cost = i == 0                  ? Cost{1, 0}
                        : earlier == impossible ? impossible
                                                : Cost{earlier.first + 1, earlier.second};
            std::size_t from = cheapest;
            if (i > 0 && no_worse(before[day], cost)) {
                cost = before[day];
                from = day;
            }
            if (will_do && cost != impossible) {
                costs[day] = {cost.first, cost.second + windows_[i].needed - days_[day]};
                came_from_[i * days_.size() + day] = from;
            }
            if (i > 0 && no_worse(before[day], earlier)) {
                earlier = before[day];
                cheapest = day;
            }
        }
        return costs;
    }

    const std::vector<MixingWindow>& windows_;
    std::vector<DayNumber> days_;
    std::vector<std::size_t> came_from_;
};

}  // namespace

std::vector<DayNumber> mixed_for(const MixingNeeds& needs, const std::vector<DayNumber>& days) {
    return LeastWaiting(needs, days).run();
}

MixingDays fewest_mixing_days(const std::vector<MixingNeeds>& needs) {
    return DaySearch(needs).run();
}

}  // namespace scruple::plan
