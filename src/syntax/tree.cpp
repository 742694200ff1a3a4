// SPDX-License-Identifier: MIT
#include "scruple/syntax/tree.hpp"

namespace scruple::syntax {

void Tree::clear() {
    // Named one by one, so that one more does not compile until it is named here.
    auto& [of_statements, of_headings, of_names, of_numbers, of_quantities, of_ranges, of_sums, of_forms, of_substances,
           of_formats, of_items, of_bottles, of_dates, of_keepings, of_capacity_items, of_ions, of_terms, of_met,
           of_details] = *this;
    const auto empty = [](auto&... arrays) { (arrays.clear(), ...); };
    empty(of_statements, of_headings, of_names, of_numbers, of_quantities, of_ranges, of_sums, of_forms, of_substances,
          of_formats, of_items, of_bottles, of_dates, of_keepings, of_capacity_items, of_ions, of_terms, of_met,
          of_details);
}

}  // namespace scruple::syntax
