// SPDX-License-Identifier: MIT
// What is counted: films, sheets, areas.
#pragma once

#include "reader.hpp"

namespace scruple::check {

/// `6 films 135`, `24 sheets 8x10 in`, `0.5 m2`; nullopt where it was reported.
[[nodiscard]] std::optional<Use> read_use(Reader& reader, const syntax::Item& item);
[[nodiscard]] std::vector<Use> read_uses(Reader& reader, syntax::Slice items);

/// `per film 135`, `per 1 l`
[[nodiscard]] std::optional<PerUse> read_per(Reader& reader, const syntax::Per& per);

}  // namespace scruple::check
