// SPDX-License-Identifier: MIT
// Another program, run to its end.
#pragma once

#include <string>
#include <variant>
#include <vector>

#include "scruple/driver/driver.hpp"

namespace scruple::driver {

struct Finished {
    int status = 0;  ///< its exit status; 128 and the signal where one ended it
    std::string out, aside;
};

/// `words`: the program, looked for in PATH, and its arguments; no shell reads them. `in` is what it reads. A Trouble
/// where it cannot be started.
[[nodiscard]] std::variant<Finished, Trouble> run_program(const std::vector<std::string>& words, std::string_view in);

}  // namespace scruple::driver
