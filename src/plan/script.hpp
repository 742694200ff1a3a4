// SPDX-License-Identifier: MIT
// The lines of a section in the order of the work, for the batch as written: shares of a variant picked, divided
// weighings paired, conversions written out, every line in its vessel.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "scruple/check/making.hpp"
#include "scruple/plan/card.hpp"

namespace scruple::plan {

struct Step {
    enum class What : std::uint8_t { put, act, open, pour, aside } what;
    std::string vessel;  ///< where it happens, or which one is opened, poured, set aside

    const check::Addition* addition = nullptr;  ///< put
    check::Exact measure;  ///< put: g, ml, mol or drops as addition->by says; the final ml of `to make`
    enum class Piece : std::uint8_t { whole, first, rest } piece = Piece::whole;
    check::Exact divided;  ///< put: what was weighed out, where it is divided

    const check::Action* action = nullptr;    ///< act
    const check::VesselMove* move = nullptr;  ///< open, pour, aside; nullptr where a conversion brings its vessel
    std::string into;                         ///< pour
    std::optional<std::size_t> making;        ///< open, pour: of the script's makings
};

struct Script {
    std::vector<Step> steps;
    std::vector<check::Making> makings;
};

/// A Refusal where an amount is still `?`, where no conversion gives what is to be made by one, or where neither the
/// recipe's own water nor the room under its mark is enough for its conversion.
[[nodiscard]] std::variant<Script, Refusal> script_of(const check::Model& model, check::Id section,
                                                      std::size_t variant);

/// The amount of an addition for a variant; 0 where none is stated.
[[nodiscard]] check::Exact share_for(const check::Addition& addition, std::size_t variant);

/// The same in the batch as written; of a `dilute` or `mix` by its parts.
[[nodiscard]] check::Exact amount_in(const check::Section& section, const check::Addition& addition,
                                     std::size_t variant);
[[nodiscard]] check::Exact parts_in_all(const check::Section& section);

/// A pinch of a divided weighing: a fiftieth of it, common practice, no source. It only moves the running volume.
inline constexpr int pinches_in_a_weighing = 50;

}  // namespace scruple::plan
