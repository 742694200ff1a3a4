// SPDX-License-Identifier: MIT
// A line of a solution written anew, with the same moles come by in another way, and its water balanced.
#pragma once

#include <string>

#include "ways.hpp"

namespace scruple::plan {

/// Which line of which section is to be met, and the amount for which its ways were found.
struct Asked {
    check::Id section = check::none;
    std::size_t line = 0;
    std::size_t variant = 0;  ///< the one that the batch is of
    Amount wanted;
};

/// Puts a way into the place of the line. Amounts are rounded to the five digits of molar masses, so that they can be
/// written down. Of what another form or solution brings, the mark takes what it has room for; the rest, or all that
/// is more or less than before where there is no mark, is balanced by the section's water, of which half stays.
/// Gives why it does not fit, and the section is then as it was; nothing where it does. Whether a conversion has room
/// shows when the lines are written out.
[[nodiscard]] std::string refit(check::Model& model, const Asked& asked, const Way& way);

}  // namespace scruple::plan
