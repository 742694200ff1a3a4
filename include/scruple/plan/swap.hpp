// SPDX-License-Identifier: MIT
// A recipe as it reads when what is missing is met in other ways.
#pragma once

#include <string>
#include <variant>
#include <vector>

#include "scruple/plan/card.hpp"

namespace scruple::plan {

/// One line of the recipe's text, written anew for the batch as written.
struct Rewriting {
    std::uint32_t statement = check::none;  ///< of the file in which the recipe stands
    std::string substance{};                ///< `sodium carbonate (monohydrate)`; empty: as it stands
    std::vector<check::Exact> amounts{};    ///< in `unit`, one or one a variant; empty: as they stand
    std::string unit{};                     ///< `g`, `ml`
    std::optional<check::Exact> now{};      ///< of a divided weighing, in `unit`
    std::string made{};                     ///< `by conversion from boric acid`; empty: not made
    std::string in_place_of{};              ///< `sodium carbonate (anhydrous)`, for a comment; empty: none
};

/// What changes in the text of a recipe for a request; `request.section` is any section of it. The card of the new
/// text is the card of the request. A Refusal as for the card.
[[nodiscard]] std::variant<std::vector<Rewriting>, Refusal> rewritten(const check::Model& model,
                                                                      const CardRequest& request);

/// Whether a line of the section itself asks for it, so that it can be met in another way.
[[nodiscard]] bool asks_for(const check::Model& model, check::Id section, const Missing& missing);

}  // namespace scruple::plan
