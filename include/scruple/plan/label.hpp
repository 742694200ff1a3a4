// SPDX-License-Identifier: MIT
// What stands on a bottle.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "scruple/plan/card.hpp"

namespace scruple::plan {

/// The statements of one chemical in the bottle; never those of the mixture, which nobody has classified.
struct LabelHazard {
    std::string chemical;
    std::string signal;                   ///< `Danger` or `Warning`, where its codes alone decide it
    std::vector<std::string> statements;  ///< `H318 causes serious eye damage`; empty: no caution recorded …
    bool cautioned = false;               ///< … unless there is one in words, on the card
};

struct Label {
    std::string recipe, section, variant, is_a;
    std::string strength;           ///< `STOCK`, `WORKING`, `REPLENISHER`
    std::vector<std::string> uses;  ///< `1+3`, `100 ml part A to 1 l working`
    std::optional<check::Day> mixed_on;
    std::vector<Life> keeps;
    std::string use_within;
    std::optional<Figure> volume;  ///< nullopt: to be written
    std::string batch;             ///< empty: to be written
    bool tally = false;            ///< films and sheets are counted for it
    std::vector<LabelHazard> hazards;
    std::vector<AcceptedMeeting> accepted;  ///< in it, or where a process takes it: the card has the whole of it
    std::string digest;                     ///< of the recipe's text, in hex: which version of it is in the bottle
};

struct LabelRequest {
    check::Id section = check::none;
    std::size_t variant = 0;
    std::optional<check::Exact> ml;
    std::optional<check::Day> mixed_on;
    std::string batch{}, digest{};
};

[[nodiscard]] Label label_of(const check::Model& model, const LabelRequest& request);

/// What a camera reads off a label: one thing a line, the name first.
[[nodiscard]] std::string label_code(const Label& label);

}  // namespace scruple::plan
