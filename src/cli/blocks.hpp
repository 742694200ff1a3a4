// SPDX-License-Identifier: MIT
// The blocks of the language, each in a few words and with a sample to copy.
#pragma once

#include <span>
#include <string_view>

namespace scruple::cli {

struct BlockInfo {
    std::string_view name;
    std::string_view says;    ///< one line, without a full stop
    std::string_view sample;  ///< recipe text
};

[[nodiscard]] std::span<const BlockInfo> all_blocks();

}  // namespace scruple::cli
