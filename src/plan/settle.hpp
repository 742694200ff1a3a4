// SPDX-License-Identifier: MIT
// Which way each chemical is come by that is not simply there: settled once, before a card is worked out, in a model of
// its own, so that work, contents and cautions all follow.
#pragma once

#include <optional>
#include <variant>
#include <vector>

#include "reach.hpp"
#include "refit.hpp"
#include "scruple/plan/card.hpp"

namespace scruple::plan {

/// One line that is met in another way, and which ways there were; amounts are those of the batch.
struct Choice {
    Asked asked{};
    bool as_written = false;  ///< the recipe itself says `by conversion`
    bool says_from = false;   ///< … and from what
    bool log_known = false;   ///< whether the log says what is on hand
    Way taken{};
    std::vector<Way> others{};        ///< `lacking` says why each was not taken
    std::vector<std::string> also{};  ///< what is only named, in words
};

struct Settled {
    std::optional<check::Model> model;  ///< nullopt: the one that was given, unchanged
    std::vector<Choice> choices;        ///< of the section that was asked about, in the order of its lines
};

/// A Refusal where something that is to be met in another way cannot be.
[[nodiscard]] std::variant<Settled, Refusal> settle(const check::Model& model, const CardRequest& request);
/// The same where it is known what the section is made of.
[[nodiscard]] std::variant<Settled, Refusal> settle(const check::Model& model, const CardRequest& request,
                                                    const Reach& reach);

/// What a card says of a choice.
[[nodiscard]] Substitution substitution_words(const check::Model& model, const Choice& choice);

/// The same of each way that was not taken, and why.
[[nodiscard]] std::string other_way_words(const check::Model& model, const Way& way);

}  // namespace scruple::plan
