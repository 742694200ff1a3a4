// SPDX-License-Identifier: MIT
// Which chemical an old name stands for.
#pragma once

#include <string>
#include <string_view>

#include "scruple/check/model.hpp"

namespace scruple::printed {

struct Named {
    check::Id chemical = check::none;
    check::Id form = check::none;  ///< what the name itself implies: `sal soda` is the decahydrate
    std::string_view as{};         ///< the chemical's name in the library
    std::string misprint{};        ///< what stands there, where it is a letter or two off every name there is
};

/// By the library's names, and by the older order of words: `sulphite of soda`, `potass. carb.`; where none fits, by
/// the one name that is a letter off (two in a long one).
[[nodiscard]] Named chemical_named(const check::Model& model, std::string_view printed);

}  // namespace scruple::printed
