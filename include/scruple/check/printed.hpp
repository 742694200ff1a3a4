// SPDX-License-Identifier: MIT
// A formula as it stands in a book, typed line by line and not yet read.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "scruple/check/base.hpp"

namespace scruple::check {

struct PrintedLine {
    std::string_view text;  ///< `Metol   200 grs   6 g`
    Place place;
};

/// `reading oz apothecaries because "the metric column says so"`
struct ReadingByHand {
    std::string_view said;
    std::string_view reason;
    Place place;
};

struct PrintedPage {
    std::string_view name{};
    Place place{};
    std::string_view purpose{};  ///< `film developer`; empty where none is given
    std::string_view book{};     ///< title, year, country and page as they were typed
    std::vector<PrintedLine> lines{};
    std::vector<ReadingByHand> readings{};
    std::vector<std::string_view> notes{};
};

}  // namespace scruple::check
