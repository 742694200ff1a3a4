// SPDX-License-Identifier: MIT
// What a card had to take for granted: each sentence once, in the order it came up.
#pragma once

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

namespace scruple::plan {

class Assumptions {
  public:
    void add(std::string sentence) {
        if (std::ranges::find(sentences_, sentence) == sentences_.end()) sentences_.push_back(std::move(sentence));
    }
    [[nodiscard]] std::vector<std::string> take() { return std::move(sentences_); }

  private:
    std::vector<std::string> sentences_;
};

}  // namespace scruple::plan
