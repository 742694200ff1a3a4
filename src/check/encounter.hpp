// SPDX-License-Identifier: MIT
// Whether what must not meet does meet in a mixture.
#pragma once

#include <mutex>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "scruple/check/contents.hpp"

namespace scruple::check {

/// How sure it must be that a pH is past a limit: by its value, or by either end of its range.
enum class Certainty : std::uint8_t { by_value, by_range };

/// What is in a vessel at one moment.
struct Moment {
    std::vector<Content> contents{};       ///< water left out
    double ml = 0;                         ///< where it is known
    std::optional<double> celsius{};       ///< where it is known
    Id put_in = none, put_in_form = none;  ///< the chemical that goes in as such just now, and not as a solution
};

/// A meeting that comes about in a solution, whatever is accepted.
struct Encounter {
    Id meeting;
    std::string what;          ///< as Encounters::find says it
    Place place{};             ///< of the line that brings it about
    double litres_of_gas = 0;  ///< at most, of what is known to leave the water
};

/// Knows, for each meeting, which chemicals are on which side; and for one with a limit of pH how much charge each
/// chemical has to offer near that limit: so most mixtures are seen to be far from it without working out their pH.
class Encounters {
  public:
    explicit Encounters(const Model& model);

    /// Whether chemicals for every side are there at all, and some that could take the pH past a limit, in whatever
    /// amounts.
    [[nodiscard]] bool possible(const Meeting& meeting, std::span<const Content> contents) const;
    /// All that are possible, in order.
    [[nodiscard]] std::vector<Id> possible(std::span<const Content> contents) const;

    /// What meets and how: "`sodium sulfide` and `citric acid` meet at pH 3.1"; nullopt where the meeting does not come
    /// about. Of what is lethal the end of the pH's range that is nearer to the limit counts, of the rest its value.
    /// Where the pH is not known, what is known of the mixture is taken by itself, and the meeting's `in doubt` line
    /// stands for the rest.
    [[nodiscard]] std::optional<std::string> find(const Meeting& meeting, const Moment& mix,
                                                  Certainty certainty = Certainty::by_value) const;

    /// The litres of a gas that a side of the meeting has become at that moment; 0 where no such gas is known.
    [[nodiscard]] double litres_of_gas(const Meeting& meeting, const Moment& mix) const;

  private:
    /// Equivalents of charge that a mole of each chemical has, were its acids and bases at rest at a pH. In an ideal
    /// solution the sum over all, with H+ and OH-, is nothing at the pH of the solution, and more than that below it.
    struct Charges {
        std::vector<double> at_limit, short_of_it;
        double of_water = 0;  ///< mol/l, of H+ and OH- short of it
    };
    /// Sides of meetings as bits. Of a meeting with more than there is room for, the last bit is all the others.
    using Sides = std::uint64_t;
    struct Takes {
        Id meeting;
        Sides sides;
    };
    /// A limit of pH: below it or above it the meeting comes about.
    struct Limit {
        double ph;
        bool below;
    };

    [[nodiscard]] static std::optional<Limit> limit_of(const Meeting& meeting);
    [[nodiscard]] std::size_t number_of(const Meeting& meeting) const;
    [[nodiscard]] const Charges& charges_of(const Meeting& meeting, const Limit& limit) const;
    [[nodiscard]] bool may_pass_limit(const Meeting& meeting, std::span<const Content> contents) const;
    void enter_sides(Id meeting);
    [[nodiscard]] bool surely_far(const Meeting& meeting, const Limit& limit, const Moment& mix) const;
    [[nodiscard]] std::optional<std::string> how(const Meeting& meeting, const Limit& limit, const Moment& mix,
                                                 Certainty certainty) const;
    [[nodiscard]] std::optional<std::string> how_in_doubt(const Meeting& meeting, const Limit& limit, const Moment& mix,
                                                          const std::string& why) const;
    [[nodiscard]] std::vector<Id> who(const Meeting& meeting, const Moment& mix) const;

    const Model& model_;
    /// Worked out when they are first asked for, by any worker: most meetings never come into question.
    struct KnownCharges {
        std::once_flag once;
        Charges charges;
    };
    mutable std::vector<KnownCharges> charges_;  ///< by meeting
    std::vector<Sides> all_sides_;               ///< by meeting; none of one of which nothing is said to come
    std::vector<std::vector<Takes>> takes_;      ///< by chemical: where it brings something of a side, by meeting
};

}  // namespace scruple::check
