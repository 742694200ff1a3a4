// SPDX-License-Identifier: MIT
// The amount of a line: what to weigh or measure, in how many goes, and what to do where that cannot be done well.
#pragma once

#include <map>
#include <utility>

#include "assumptions.hpp"
#include "gather.hpp"
#include "scruple/check/contents.hpp"
#include "work.hpp"

namespace scruple::plan {

class Amounts {
  public:
    Amounts(const Batch& batch, GatherList& gather, Assumptions& assumptions)
        : batch_(batch), gather_(gather), assumptions_(assumptions) {}

    /// Fills the amount, the advice and the details about it of a line that puts something in; `dose` is the
    /// scaled one of what goes in now. Adds to the gather list.
    void fill(const Step& step, const check::Dose& dose, Work& work);

  private:
    [[nodiscard]] Reading read(const check::Addition& addition, const check::Exact& measure,
                               const check::Exact& grams) const;
    [[nodiscard]] std::vector<std::string> advice(const check::Addition& addition, const Reading& reading,
                                                  const check::Exact& exact) const;
    void fill_whole(const Step& step, const check::Dose& dose, Work& work);
    void fill_first(const Step& step, const check::Dose& piece, Work& work);
    void fill_rest(const Step& step, Work& work) const;
    Reading read_and_gather(const check::Addition& addition, const check::Exact& measure, const check::Dose& dose,
                            const std::string& note, Work& work);

    struct Divided {
        Figure whole;
        check::Exact taken, taken_exact;  ///< g or ml of the first piece, where it was stated
    };
    const Batch& batch_;
    GatherList& gather_;
    Assumptions& assumptions_;
    std::map<std::pair<check::Id, check::Id>, Divided> divided_;  ///< by chemical and solution
};

}  // namespace scruple::plan
