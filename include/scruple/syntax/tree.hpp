// SPDX-License-Identifier: MIT
// The syntax tree of one file: one statement a line, in flat arrays.
//
// The tree says what is written, not what it means: names are places in the text,
// units are units, and a line that cannot be read is a statement too. It never owns text.
#pragma once

#include <cstdint>
#include <memory>
#include <span>
#include <variant>
#include <vector>

#include "scruple/syntax/pieces.hpp"

namespace scruple::syntax {

// ---- headings -------------------------------------------------------------------------------

enum class Block : std::uint8_t {
    recipe,
    part,
    bath,
    working,
    replenisher,
    chemical,
    conversion,
    bench,
    supplier,
    log,
    process,
    plan,
    format,
    meeting,
    printed
};

/// `recipe Lantern`, `part A`, `working`, `conversion of sodium metaborate (anhydrous)`
struct Heading {
    Block block;
    bool bad = false;  ///< the name is missing or cannot be one; the block opens all the same
    Substance title;   ///< name empty where none is given; of a bad one, all that stands there
    Span size;         ///< of a bad one: the amount behind a good name, `500 ml` of `recipe Lantern 500 ml`
};

// ---- facts ----------------------------------------------------------------------------------

/// `is a film developer` · `strength working` · `source a notebook` · `caution "…"` · `note …` · `lethal "…"` ·
/// `harmful "…"` · `assumed …` · `book …` · `| Metol   200 grs   6 g`, a line of a printed page as it stands
struct Words {
    enum class Of : std::uint8_t {
        is_a,
        strength,
        source,
        caution,
        note,
        lethal,
        harmful,
        assumed,
        book,
        printed_line
    } of;
    Name text;
};

/// `keeps 6 months full, 2 months half full`; of a chemical `keeps 2 years from "…"`
struct Keeps {
    Slice items;  ///< of keepings
    Name source;
};
struct Keeping {
    Range time;
    Span when;  ///< `full`, `half full`; may be empty
};

/// `use within 2 h`
struct UseWithin {
    Index quantity;
};

/// `capacity one-shot, 250 ml working per film 135, at least 12 ml part A per film 135`
struct Capacity {
    Slice items;  ///< of capacity_items
};
struct CapacityItem {
    enum class What : std::uint8_t { one_shot, reused, volume_per, items_per, carried, longer, from } what;
    bool at_least = false;     ///< a floor of stock
    Index quantity = nowhere;  ///< volume_per, carried; longer, a time or a loose `10 %`
    Name of;                   ///< `working`, `part A`; empty: the bath itself
    Item item;                 ///< items_per
    Per per;
    Name source;  ///< from
};

/// `variants soft, normal`
struct Variants {
    Slice names;
};

/// `dilute stock 1+3` · `mix part A + part B + water  1+1+10`
struct Mix {
    bool dilute = false;
    Slice what;        ///< of names
    Slice parts;       ///< of numbers
    Span colon_ratio;  ///< `1:9`, to be refused; empty otherwise
};

/// `replenish 20 ml per film 135, at most 1 l per 1 l`
struct Replenish {
    Index quantity;
    Per per;
    Index at_most = nowhere;  ///< of quantities
    Per at_most_per;
};

/// `expect pH 11.2 to 11.6` · `expect sodium sulfite (anhydrous) 8.5 to 9.5 g/l`
struct Expect {
    bool ph = false;
    Slice ph_bounds;  ///< of numbers: one, or a low and a high one
    Substance of;
    Index range = nowhere;
};

/// `also soda ash (anhydrous), washing soda`
struct Also {
    Slice names;  ///< of substances
};

/// `form decahydrate Na2CO3·10H2O, also crystals` · `form glacial CH3COOH, 99.5 % w/w`
struct Form {
    Name name;
    Span formula;
    Slice also;                ///< of names
    Index strength = nowhere;  ///< of quantities
};

/// `grade distilled, deionised` · `acts as alkali` · `hazard H302, H317`
struct WordList {
    enum class Of : std::uint8_t { grade, acts_as, hazard } of;
    Slice words;  ///< of names
    Name source;
};

/// `ions 2 Na+ + CO3-2`
struct Ions {
    Slice ions;  ///< of ions
};
struct Ion {
    std::int32_t coefficient = 1;
    Span formula;
};

/// `dissolves 21.5 g (anhydrous) in 100 g water at 20 C`
struct Dissolves {
    Index quantity;
    Index form = nowhere;
    Index in;  ///< of quantities
    Span solvent;
    Index at = nowhere;  ///< of ranges
    Name source;
};

/// `density 1.05 g/ml (glacial) at 25 C from "…"` · `takes up 0.28 ml per 1 g (anhydrous)`
struct Property {
    enum class Of : std::uint8_t { density, takes_up } of;
    Index value;  ///< of ranges
    Per per;      ///< takes_up
    Index form = nowhere;
    Index at = nowhere;  ///< of ranges
    Name source;
};

/// `cas 497-19-8`
struct Cas {
    Span number;
};

/// `in water HCO3- -> CO3-2 + H+ pK 10.33, 14.7 kJ/mol, -249 J/mol K, give or take 0.02 from "…"`
/// `escapes CO2 pK 1.47, -19.7 kJ/mol, in air 0.0004 atm`
struct Equilibrium {
    enum class Of : std::uint8_t { equilibrium, gas } of;
    Slice left, right;                                                                            ///< of ions
    Span formula;                                                                                 ///< gas
    Index pk = nowhere;                                                                           ///< of numbers
    Index enthalpy = nowhere, heat_capacity = nowhere, give_or_take = nowhere, in_air = nowhere;  ///< of numbers
    Name source;
};

/// `pair Na+ with CO3-2 -0.08 kg/mol, give or take 0.03 from "…"`
struct Interaction {
    Span one, other;
    Number value;
    Index give_or_take = nowhere;  ///< of numbers
    Name source;
};

/// `bystander Na+, Cl-`
struct Bystanders {
    Slice formulas;  ///< of names
    Name source;
};

/// `salt of isoascorbic acid`
struct SaltOf {
    Name acid;
};

/// `reaction borax (decahydrate) + 2 sodium hydroxide -> 4 sodium metaborate (anhydrous) + 11 water`
struct Reaction {
    Slice left;  ///< of terms
    Slice right;
};
struct Term {
    std::int32_t coefficient = 1;
    Substance substance;
};

/// `excess sodium hydroxide, 2 % more than it needs`
struct Excess {
    Substance of;
    Number percent;
};

/// `vessel 2 times the volume`
struct Vessel {
    Number times;
};

/// `area 80 sq in from "…"`
struct Area {
    Index quantity;
    Name source;
};

/// `one of S-2, at least 0.1 mmol/l` · `in doubt acts as acid, Al+3`
struct Meets {
    enum class Of : std::uint8_t { one_of, in_doubt } of;
    Slice any;                 ///< of met
    Index at_least = nowhere;  ///< of quantities
};
/// `acts as acid` · `ethanol` · `sodium hydroxide (pellets)` · `S-2`
struct Met {
    bool role = false;
    Substance what;  ///< of a role the name alone: what follows `acts as`
};

/// `below pH 4.5` · `above pH 10`
struct PhLimit {
    bool above = false;
    Number ph;
};

/// `warmer than 40 C`
struct WarmerThan {
    Index quantity;
};

/// `accept acid on sulfide because "it is done outdoors"`
struct Accept {
    Name meeting;
    Name reason;  ///< its span empty where none is given
};

/// `reading oz apothecaries because "the metric column says so"`
struct Reading {
    Name said;
    Name reason;  ///< its span empty where none is given
};

/// `balance 0.1 g up to 500 g` · `graduate 10 ml by 0.2 ml` · `syringe …` · `jug 5 l by 100 ml`
struct Instrument {
    enum class What : std::uint8_t { balance, graduate, syringe, jug } what;
    Index division;  ///< of quantities
    Index capacity;
};

/// `dropper 22 drops per 1 ml water`
struct Dropper {
    Number drops;
    Index quantity;
    Span liquid;
};

/// `bottle 4 of 250 ml, 1 l`
struct Bottles {
    Slice items;  ///< of bottles
};
struct Bottle {
    Number count;  ///< loose and without a span where none is said
    Quantity size;
};

/// `pace 3 min to weigh`
struct Pace {
    enum class Of : std::uint8_t { weigh, measure, stir, filter, make_up, bottle } of;
    Index quantity;
};

/// `postage 6.50 EUR, none over 75 EUR`
struct Postage {
    Index charge;               ///< of sums
    Index free_over = nowhere;  ///< of sums
};

// ---- steps ------------------------------------------------------------------------------------

/// What may follow a step or an ingredient after a comma.
struct Detail {
    enum class What : std::uint8_t {
        pinch_now,
        quantity_now,
        by_conversion,
        optional,
        at,
        not_above,
        stirring,
        stirring_every,
        slowly,
        until,
        remark,
        unknown
    } what;
    Span span;
    Index quantity = nowhere;  ///< quantity_now, not_above, stirring_every
    Index range = nowhere;     ///< at
    Name words;                ///< until, remark, optional's reason, what something is made from
    Number ph;                 ///< until pH 5.0; its span is empty otherwise
};

/// `stir until clear` · `wait 15 min, stirring every 5 min` · `cool to 20 C` · `not above 30 C` · `do "tap out the
/// bells"`
struct Step {
    enum class Verb : std::uint8_t { stir, wait, stand, filter, cool, warm, not_above, do_this } verb;
    enum class Toward : std::uint8_t { none, to, below, above } toward = Toward::none;
    Index range = nowhere;  ///< of ranges: how long, or how warm
    Name words;             ///< do_this
    Slice details;          ///< of details, `until` among them
};

/// `apart lye` · `pour in half of lye, slowly, stirring` · `set aside lye`
struct VesselStep {
    enum class What : std::uint8_t { apart, pour_in, set_aside } what;
    enum class Share : std::uint8_t { all, half, third, quarter, rest, quantity } share = Share::all;
    Index quantity = nowhere;
    Name vessel;
    Slice details;
};

// ---- ingredients ---------------------------------------------------------------------------------

/// `metol 5 g` · `water to make 1 l` · `sodium sulfite the rest` · `acetic acid (28 % v/v) about 3 ml, until pH 5.0`
struct Ingredient {
    enum class How : std::uint8_t { exactly, to_make, the_rest, about, unknown, shares } how;
    Substance what;
    Slice quantities;              ///< of ranges; one, or one a share; unknown has its unit in `low`
    Slice share_names;             ///< of names, as many as quantities
    Slice details;                 ///< of details
    Index per_quantity = nowhere;  ///< `per 1 g borax (decahydrate)`
    Substance per_substance;
};

/// `borax (decahydrate)`: a name alone
struct Bare {
    Substance what;
};

// ---- entries ---------------------------------------------------------------------------------------

/// `2026-11-02 received sodium sulfite (anhydrous) 500 g from Tidewater 8.90 EUR`
struct LogEntry {
    enum class What : std::uint8_t { received, mixed, processed, used, replenished, on_shelf, discarded } what;
    Date date;
    Substance of;  ///< all but processed
    Index quantity = nowhere;
    Slice items;            ///< processed
    Index batch = nowhere;  ///< discarded: of dates
    Name in_or_from;        ///< processed in, received from, used for
    Index price = nowhere;  ///< of sums
};

/// `2026-12-03 6 films 135 through roll film` · `each Thursday from … to … 4 films 120 through roll film`
struct PlanEntry {
    Date from, to;             ///< the same day for a single one
    std::int8_t weekday = -1;  ///< 0 Monday … 6 Sunday; -1 for a single day
    Slice items;
    Name process;
};

/// `sodium sulfite (anhydrous) 500 g 8.90 EUR`
struct PriceEntry {
    Substance of;
    Index pack;   ///< of quantities
    Index price;  ///< of sums
};

/// `Lantern working 8 to 12 min at 20 C` · `wash 10 min, running`
struct ProcessEntry {
    Substance bath;
    Index time;          ///< of ranges
    Index at = nowhere;  ///< of ranges
    Slice remarks;       ///< of names
};

/// A comment on a line of its own.
struct CommentOnly {};

/// Nothing could be read. `keyword` is the fact or step word, the date or the `each Thursday` it began with; empty
/// where there is none.
struct Unread {
    Span keyword;
};

using Node =
    std::variant<Heading, Words, Keeps, UseWithin, Capacity, Variants, Mix, Replenish, Expect, Also, Form, WordList,
                 Ions, Dissolves, Property, Cas, Equilibrium, Interaction, Bystanders, SaltOf, Reaction, Excess, Vessel,
                 Area, Meets, PhLimit, WarmerThan, Accept, Reading, Instrument, Dropper, Bottles, Pace, Postage, Step,
                 VesselStep, Ingredient, Bare, LogEntry, PlanEntry, PriceEntry, ProcessEntry, CommentOnly, Unread>;

// A line of text costs a statement, so the seldom and the large stand in arrays of their own.
static_assert(sizeof(Node) <= 72);

struct Statement {
    Span span;     ///< the statement, without indentation and comment
    Span comment;  ///< from its `#` to the end of the line; empty where there is none
    [[no_unique_address]] Node node;
    bool blank_before = false;  // in the padding of the node
};

struct Tree {
    std::vector<Statement> statements;
    std::vector<Index> headings;  ///< of statements: which of them are headings
    std::vector<Name> names;
    std::vector<Number> numbers;
    std::vector<Quantity> quantities;
    std::vector<Range> ranges;
    std::vector<Money> sums;
    std::vector<FormGiven> forms;
    std::vector<Substance> substances;
    std::vector<FilmFormat> formats;
    std::vector<Item> items;
    std::vector<Bottle> bottles;
    std::vector<Date> dates;
    std::vector<Keeping> keepings;
    std::vector<CapacityItem> capacity_items;
    std::vector<Ion> ions;
    std::vector<Term> terms;
    std::vector<Met> met;
    std::vector<Detail> details;

    /// Empties it, and keeps the room that it has for the next file.
    void clear();

    template <class T>
    [[nodiscard]] static std::span<const T> run(const std::vector<T>& all, Slice slice) {
        return std::span(all).subspan(slice.first, slice.count);
    }
};

/// A tree that is not changed any more, or an empty one: of two words, and copied as fast.
class SharedTree {
  public:
    SharedTree() = default;
    SharedTree(Tree tree)  // NOLINT(google-explicit-constructor)
        : tree_(std::make_shared<const Tree>(std::move(tree))) {}

    const Tree& operator*() const {
        static const Tree empty;
        return tree_ ? *tree_ : empty;
    }
    const Tree* operator->() const { return &**this; }

  private:
    std::shared_ptr<const Tree> tree_;
};

}  // namespace scruple::syntax
