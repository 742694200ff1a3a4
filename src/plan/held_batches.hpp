// SPDX-License-Identifier: MIT
// Batches of solutions that are on hand, and how long each may be used.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "scruple/check/model.hpp"

namespace scruple::plan {

/// Taken from by day, the oldest batch first, and none past its time.
class HeldBatches {
  public:
    /// By the log up to a day and with it. A bottle is half empty for longer than it is full, so that the time for half
    /// full holds from the day of mixing on; what the log does not say when it was mixed has no last day.
    HeldBatches(const check::Model& model, check::Day on);

    /// As much of the ml as may be used on that day; gives what was taken.
    check::Exact take(check::Id solution, check::Day day, const check::Exact& ml);

    /// A batch that stands there: how much there was of it at first, and the day on which the last of it was taken;
    /// none where some is left.
    struct Standing {
        check::Exact ml;
        std::optional<check::Day> emptied;
    };
    [[nodiscard]] std::vector<Standing> standing() const;

    /// Which batches were passed over since they would have been too old.
    [[nodiscard]] std::vector<std::string> passed_over() const;

  private:
    struct Batch {
        std::optional<check::Day> last;
        check::Exact ml, at_first;
        std::optional<check::Day> emptied{};
        bool too_old = false;  ///< for a day on which it was wanted
    };

    const check::Model& model_;
    std::map<check::Id, std::vector<Batch>> batches_;
};

}  // namespace scruple::plan
