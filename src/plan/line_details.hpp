// SPDX-License-Identifier: MIT
// What stands below a line of the work, with the figures in it that grow with the batch.
#pragma once

#include <string>
#include <vector>

#include "script.hpp"
#include "scruple/plan/rescaling.hpp"

namespace scruple::plan {

/// Of a line that puts something in.
[[nodiscard]] std::vector<GrowingText> put_details(const check::Model& model, const Step& step);
/// Of a line that makes up to a mark.
[[nodiscard]] std::vector<GrowingText> mark_details(const Step& step);
/// Of a line that pours one vessel into another.
[[nodiscard]] std::vector<GrowingText> pour_details(const Step& step);

/// Those that stand there in a batch so many times as large.
void append_details(std::vector<std::string>& to, const std::vector<GrowingText>& details, const check::Exact& scale);

}  // namespace scruple::plan
