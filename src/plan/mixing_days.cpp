// SPDX-License-Identifier: MIT
#include "scruple/plan/mixing_days.hpp"

#include <algorithm>
#include <tuple>

namespace scruple::plan {

namespace {

using Day = std::int32_t;

// A month's plan has a handful of sets; past this the best so far is taken.
constexpr std::int64_t most_sets = 2'000;

bool better(const MixingDays& a, const MixingDays& b) {
    const auto earlier = [](const MixingDays& days) {
        return std::tuple(days.days.size(), days.mixings, days.waiting);
    };
    if (earlier(a) != earlier(b)) return earlier(a) < earlier(b);
    return a.days > b.days;
}

/// Where none of the days will do, the day itself.
Day latest_of(const std::vector<Day>& days, const MixingWindow& window) {
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

    void judge() {
        MixingDays found{chosen_, 0, 0, true};
        for (const auto& need : needs_) {
            const auto mixed = mixed_for(need, chosen_);
            for (std::size_t i = 0; i < mixed.size(); ++i) {
                if (i == 0 || mixed[i] != mixed[i - 1]) ++found.mixings;
                found.waiting += need.windows[i].needed - mixed[i];
            }
        }
        if (best_.days.empty() || better(found, best_)) best_ = std::move(found);
    }

    const std::vector<MixingNeeds>& needs_;
    std::vector<Day> days_, chosen_;
    std::vector<MixingWindow> windows_;
    std::vector<std::size_t> due_;
    std::vector<std::int64_t> fewest_;
    MixingDays best_;
    std::int64_t sets_ = 0;
};

}  // namespace

std::vector<Day> mixed_for(const MixingNeeds& needs, const std::vector<Day>& days) {
    std::vector<Day> chosen;
    for (const auto& window : needs.windows) {
        if (!chosen.empty() && chosen.back() >= window.earliest) continue;
        chosen.push_back(latest_of(days, window));
    }
    std::vector<Day> mixed;
    for (const auto& window : needs.windows) mixed.push_back(latest_of(chosen, window));
    return mixed;
}

MixingDays fewest_mixing_days(const std::vector<MixingNeeds>& needs) {
    return DaySearch(needs).run();
}

}  // namespace scruple::plan
