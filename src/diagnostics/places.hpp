// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <span>
#include <string>

#include "scruple/text/lines.hpp"

namespace scruple::diagnostics {

/// Places in several files; the lines of a file are found when it is first asked about.
class Places {
  public:
    explicit Places(std::span<const text::Source> sources) : sources_(sources) {}

    [[nodiscard]] bool has(text::FileId file) const { return file < sources_.size(); }
    [[nodiscard]] const text::Source& source(text::FileId file) const { return sources_[file]; }
    [[nodiscard]] text::Lines& lines(text::FileId file) {
        return lines_.try_emplace(file, sources_[file].bytes).first->second;
    }

  private:
    std::span<const text::Source> sources_;
    std::map<text::FileId, text::Lines> lines_;
};

}  // namespace scruple::diagnostics
