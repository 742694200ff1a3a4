// SPDX-License-Identifier: MIT
// Names as they are compared.
#pragma once

#include <string>
#include <string_view>

namespace scruple::syntax {

/// Folds what makes no difference between two names: letter case, runs of blanks (tabs and no-break blanks too),
/// the kind of hyphen, and British against American spelling (`sulphite`, `aluminium`). Valid UTF-8 in and out.
[[nodiscard]] std::string normal_name(std::string_view written);

/// The same without an allocation of its own, for look-ups: `scratch` is overwritten with the normal name.
void normal_name(std::string_view written, std::string& scratch);

}  // namespace scruple::syntax
