// SPDX-License-Identifier: MIT
// The PEGTL rules run without actions, and what each of them took; a list of the rules there are.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace scruple::syntax {

struct Taken {
    std::string_view rule;
    std::size_t begin, end;
};

/// The rules that took part in reading a whole file, each after the rules within it.
[[nodiscard]] std::vector<Taken> trace(std::string_view text);

struct RuleName {
    std::string_view name;
    bool leaf;  ///< scanned by a function, not made of rules
};
[[nodiscard]] std::vector<RuleName> rule_names();

/// What PEGTL's own analysis finds wrong with the rules: loops that take nothing.
[[nodiscard]] std::size_t analysis_problems();

}  // namespace scruple::syntax
