// SPDX-License-Identifier: MIT
// Who looks at the lines of a section as they go in. One walk does for all of them.
#pragma once

#include <memory>

#include "reader.hpp"
#include "walk.hpp"

namespace scruple::check {

class StepJudge {
  public:
    StepJudge() = default;
    StepJudge(const StepJudge&) = delete;
    StepJudge& operator=(const StepJudge&) = delete;
    virtual ~StepJudge() = default;
    virtual void look_at(const Step& step) = 0;
    /// Whether something was reported.
    virtual bool at_the_end(const Walk& walk) = 0;
};

/// Whether what goes in dissolves: in the water that is there when it comes, at the final volume, and in the cold.
[[nodiscard]] std::unique_ptr<StepJudge> dissolving_judge(Reader& reader, Id section);
/// Whether what goes in goes in where the one does not spoil the other, and hurts nobody.
[[nodiscard]] std::unique_ptr<StepJudge> order_judge(Reader& reader, Id section);

}  // namespace scruple::check
