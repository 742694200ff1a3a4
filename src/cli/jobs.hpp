// SPDX-License-Identifier: MIT
// What each command does: from a call to what it prints. Each may throw Stop.
#pragma once

#include <string>
#include <vector>

#include "call.hpp"
#include "scruple/driver/driver.hpp"

namespace scruple::cli {

struct Outcome {
    Exit status = Exit::fine;
    std::string text;   ///< for standard output, or the file of --out
    std::string aside;  ///< for the standard error stream
    /// For the folder of --out, in the order in which they are written; `text` then tells of them.
    std::vector<driver::NamedText> files{};
    /// What was changed on the disk already; told where the rest cannot be.
    std::string done{};
};

[[nodiscard]] Outcome check_job(const Call& call);
[[nodiscard]] Outcome card_job(const Call& call);
[[nodiscard]] Outcome binder_job(const Call& call);
[[nodiscard]] Outcome labels_job(const Call& call);
[[nodiscard]] Outcome scaled_job(const Call& call);
[[nodiscard]] Outcome shopping_job(const Call& call);
[[nodiscard]] Outcome calendar_job(const Call& call);
[[nodiscard]] Outcome evening_job(const Call& call);
[[nodiscard]] Outcome shelf_job(const Call& call);
[[nodiscard]] Outcome log_line_job(const Call& call);
[[nodiscard]] Outcome tidy_job(const Call& call);
[[nodiscard]] Outcome chemical_job(const Call& call);
[[nodiscard]] Outcome weigh_job(const Call& call);
[[nodiscard]] Outcome react_job(const Call& call);
[[nodiscard]] Outcome settle_job(const Call& call);
[[nodiscard]] Outcome contents_job(const Call& call);
[[nodiscard]] Outcome compare_job(const Call& call);
[[nodiscard]] Outcome why_job(const Call& call);
[[nodiscard]] Outcome language_server_job(const Call& call);
[[nodiscard]] Outcome help_job(const Call& call);

}  // namespace scruple::cli
