// SPDX-License-Identifier: MIT
#include "edits.hpp"

#include <algorithm>

namespace scruple::emit {

std::string edited(const text::Source& source, text::Span whole, std::vector<Edit> edits) {
    std::ranges::stable_sort(edits, {}, [](const Edit& edit) { return edit.span.begin; });
    std::string text;
    std::uint32_t at = whole.begin;
    for (const Edit& edit : edits) {
        if (edit.span.begin < at) continue;
        text += source.at({at, edit.span.begin});
        text += edit.text;
        at = edit.span.end;
    }
    return text.append(source.at({at, whole.end}));
}

}  // namespace scruple::emit
