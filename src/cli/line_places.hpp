// SPDX-License-Identifier: MIT
// Where lines stand, for people.
#pragma once

#include <map>
#include <string>

#include "scruple/driver/driver.hpp"
#include "scruple/text/lines.hpp"

namespace scruple::cli {

/// Looks each file through once. What was loaded must outlive this.
class LinePlaces {
  public:
    explicit LinePlaces(const driver::Loaded& loaded) : loaded_(loaded) {}

    [[nodiscard]] std::size_t line(const check::Place& place);
    /// `log.scruple:12`
    [[nodiscard]] std::string where(const check::Place& place);

  private:
    const driver::Loaded& loaded_;
    std::map<text::FileId, text::Lines> lines_;
};

}  // namespace scruple::cli
