// SPDX-License-Identifier: MIT
// The plan of work for one batch of one solution: the one thing that cards, labels and JSON print.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "scruple/check/contents.hpp"
#include "scruple/check/model.hpp"
#include "scruple/plan/figure.hpp"
#include "scruple/plan/rescaling.hpp"

namespace scruple::plan {

/// How much to make.
struct MakeVolume {
    check::Exact ml;
};
struct MakeForUses {
    std::vector<check::Use> uses;  ///< films, sheets or an area; the section's capacity says how much that takes
};
struct MakeWith {  ///< as much as this much of that allows
    check::Id chemical = check::none, form = check::none;
    check::Exact grams;
};
using HowMuch = std::variant<std::monostate, MakeVolume, MakeForUses, MakeWith>;  ///< monostate: as written

/// A chemical that is not there, in the form that a recipe asks for where none is said.
struct Missing {
    check::Id chemical = check::none, form = check::none;
};

struct CardRequest {
    check::Id section = check::none;
    std::size_t variant = 0;
    HowMuch how_much;
    check::Id bench = check::none;             ///< none: nothing is rounded to an instrument
    std::optional<check::Day> mixed_on;        ///< fills the mixed-on and use-by lines
    std::vector<Missing> instead{};            ///< to be met in other ways
    std::optional<check::Exact> at_celsius{};  ///< for the pH; else check::usual_celsius
    bool from_shelf = false;                   ///< and so all that the log does not have enough of
};

/// One line of the gather list.
struct Gathered {
    std::string chemical;  ///< or the solution's name
    std::string form;      ///< `anhydrous`, `10 % w/v`; empty where there is but one
    Figure amount;
    double mol = 0;  ///< 0 for a solution
    bool solution = false;
    bool optional = false;
    std::string note;  ///< `in two pieces`, `distilled`
};

/// One numbered thing to do.
struct Work {
    enum class Do : std::uint8_t {
        water,
        add,
        make_up,
        stir,
        wait,
        stand,
        filter,
        cool,
        warm,
        watch,
        act,
        open_vessel,
        pour_in,
        set_aside
    };
    int n = 0;  ///< from 1
    Do what_to_do = Do::add;
    std::string what;  ///< the line in words, amounts left out: `metol`, `stir until clear`
    std::optional<Figure> amount;
    bool up_to = false;  ///< make up: the amount is the final volume
    bool about = false;
    bool optional = false;
    std::string at;                 ///< `45 to 50 °C`
    std::optional<Figure> running;  ///< ml in this vessel after the line; about, where solids are estimated
    bool running_estimated = false;
    std::string vessel;                   ///< empty for the main one
    std::optional<double> seconds;        ///< of a wait, for a clock: the longer end of a range
    std::optional<double> celsius;        ///< of `at`, or to which it is cooled or warmed: the middle of a range
    bool slowly = false;                  ///< it takes its time
    bool stays = false;                   ///< a wait that nobody leaves, since it is stirred …
    std::optional<double> stirred_every;  ///< … or only so many seconds apart
    std::vector<std::string>
        details;  ///< `(= 0.8 g)`, `slowly, stirring`, `as written: 90 grains`, `half of the weighing`
    std::vector<std::string>
        advice;                ///< what the balance cannot weigh: how to go through a percent solution, with its ml
    bool weighed_box = false;  ///< a box to tick for "weighed"
    bool clear_box = false;    ///< a box to tick for "clear"
};

/// The pH that the contents come to.
struct PhRow {
    std::optional<double> value;  ///< none where something in the solution is not known in water
    double low = 0, high = 0;
    double celsius = 0;
    std::string text;                     ///< `11.6 (11.4 to 11.8)`, or why there is none
    std::vector<std::string> widened_by;  ///< what makes the range wide
};

struct ContentRow {
    std::string chemical, form;
    double g_per_l = 0, mol_per_l = 0;
    double give_or_take = 0;  ///< how far it may be off by weighing, measuring and the jar, as a share
};

/// A line that is met in another way than by a jar of what it names.
struct Substitution {
    std::string wanted;               ///< `sodium ascorbate 9.43 g`
    std::string taken;                ///< `made from 8.384 g ascorbic acid and 4.159 g sodium bicarbonate`
    std::string kind;                 ///< `same species, exact`, and what else it brings
    std::string why;                  ///< why this way and no other
    std::vector<std::string> others;  ///< `sodium bromide: like function, test it first`
};

struct Caution {
    std::string text;
    std::string source;  ///< `the recipe`, or where the library has it from
};

/// Something that must not meet, and that the recipe or a process lets meet.
struct AcceptedMeeting {
    std::string meeting;  ///< `acid on sulfide`
    bool lethal = false;
    std::string where;   ///< `Lantern part A`, `from Slipway into Lantern, in roll film`
    std::string what;    ///< what meets and how
    std::string comes;   ///< what comes of it
    std::string reason;  ///< why it is accepted
    std::vector<std::string> cautions;
    std::vector<std::string> sources;
};

struct HazardRow {
    std::string chemical;
    std::vector<std::string> codes;  ///< GHS statements; empty prints as "no caution recorded" …
    std::string source;
    bool cautioned = false;  ///< … unless a caution in words stands among the card's cautions
};

struct Warning {
    diagnostics::Kind kind;
    std::string message;
};

struct Life {
    std::string text;                  ///< `6 months full`
    std::optional<check::Day> use_by;  ///< where the mixing day is known
};

struct Card {
    std::string recipe, section;  ///< `Lantern`, `part A`; section is empty for a whole recipe
    std::string is_a, strength, variant;
    Figure makes;
    std::string makes_for;  ///< `6 films 135`, `as much as 43 g metol allows`; empty for a volume
    std::vector<Gathered> gather;
    std::vector<Work> work;
    std::vector<ContentRow> contents;
    std::optional<PhRow> ph;          ///< of what is not water alone
    std::vector<std::string> checks;  ///< `pH 11.2 to 11.6`
    std::vector<Life> keeps;
    std::string use_within;  ///< `2 h`
    std::vector<std::string> capacity;
    std::vector<Caution> cautions;
    std::vector<AcceptedMeeting> accepted;
    std::vector<HazardRow> hazards;
    std::vector<Substitution> substituted;
    std::vector<std::string> assumed;  ///< whose bench, water as 1 g/ml, how room of solids was estimated …
    std::vector<std::string> sources, notes;
    std::vector<Warning> warnings;
    std::optional<check::Day> mixed_on;
    std::optional<Rescaling> rescaling;  ///< none where the volume decides more than the figures
};

/// Why a card cannot be made: in words for the person at the command line.
struct Refusal {
    std::string message;
};

/// The batch as a share of the batch as written, what is missing met in other ways; a Refusal where the section cannot
/// be sized that way.
[[nodiscard]] std::variant<check::Exact, Refusal> scale_of(const check::Model& model, const CardRequest& request);

[[nodiscard]] std::variant<Card, Refusal> make_card(const check::Model& model, const CardRequest& request);

struct SharedByCards;

/// The same for many cards, while nothing in the model changes: what they share is worked out once.
class CardMaker {
  public:
    explicit CardMaker(const check::Model& model);
    ~CardMaker();
    CardMaker(const CardMaker&) = delete;
    CardMaker& operator=(const CardMaker&) = delete;

    [[nodiscard]] std::variant<Card, Refusal> make(const CardRequest& request);
    [[nodiscard]] const check::Model& model() const;
    [[nodiscard]] check::KnownContents& contents();

  private:
    std::unique_ptr<SharedByCards> shared_;
};

}  // namespace scruple::plan
