// SPDX-License-Identifier: MIT
// The checked workspace: every name resolved, every amount in exact base units.
//
// Base units throughout: g, ml, mol, s, °C, cm², drops. Views point into the sources, which must
// outlive the model. Ids are indices into the model's arrays; `none` is no id.
#pragma once

#include <boost/container/small_vector.hpp>
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <variant>
#include <vector>

#include "scruple/check/acid_base.hpp"
#include "scruple/check/meeting.hpp"
#include "scruple/check/month.hpp"
#include "scruple/check/printed.hpp"
#include "scruple/check/seldom.hpp"
#include "scruple/chemistry/formula.hpp"
#include "scruple/diagnostics/diagnostic.hpp"
#include "scruple/quantity/unit.hpp"

namespace scruple::check {

/// A vector that keeps a first element in itself: one is nearly always all there is, and it costs no allocation.
template <class T>
using Few = boost::container::small_vector<T, 1>;

// ---- chemicals --------------------------------------------------------------------------------

struct Form {
    std::string_view name{};  ///< `decahydrate`; the chemical's only form may be called anything
    std::vector<std::string_view> also{};
    std::string_view formula_text{};
    chemistry::Formula formula{};
    Exact molar_mass{};                 ///< g/mol
    std::optional<Strength> sold_as{};  ///< `99.5 % w/w`, by weight: what the bottle of this form holds
    Place place{};
    std::vector<std::string> called{};  ///< the name and the others, normal (syntax::normal_name)
    Exact room_per_gram{};              ///< ml that a dissolved gram takes up (room_of_gram)
    double molar_mass_off = 0;          ///< how far the molar mass may be off, as a share of it
    double mol_per_gram = 0;            ///< of the substance, in a gram as it is sold; 0 where nothing is known of it
};

/// g/ml of a form as sold, or of a solution of a strength.
struct Density {
    Exact g_per_ml{};
    Id form = none;  ///< index into forms; none: of the strength, or of the only form
    std::optional<Strength> strength{};
    std::optional<Interval> at{};  ///< °C
    std::string_view source{};
};

/// `grams` g of a form dissolve in `in_grams` g of solvent at `at` °C.
struct Solubility {
    Exact grams{};
    Id form = none;
    Exact in_grams{};
    std::string_view solvent{};
    std::optional<Interval> at{};
    std::string_view source{};
    Id solvent_chemical = none;  ///< what the solvent's name stands for
    Place solvent_place{};
};

struct Ion {
    int coefficient = 1;
    std::string_view text{};
    chemistry::Formula formula{};
};

/// What becomes of ions and molecules in water: `HCO3- -> CO3-2 + H+`, and how strongly.
struct Equilibrium {
    std::vector<Ion> left{}, right{};
    chemistry::Constant constant{};
    std::string_view source{};
    Place place{};
};

/// A molecule that leaves the water as a gas: its pK is that of mol/kg in water at 1 atm of the gas.
struct Escape {
    Ion molecule{};
    chemistry::Constant constant{};
    double in_air_atm = 0;  ///< how much of it the air holds
    std::string_view source{};
};

/// Two ions of opposite charge: the ε of the specific ion interaction theory, in kg/mol.
struct IonPair {
    Ion one{}, other{};
    double epsilon = 0;
    std::optional<double> give_or_take{};
    std::string_view source{};
};

/// An ion or molecule that is neither acid nor base in water.
struct Bystander {
    Ion ion{};
    std::string_view source{};
};

struct Keeping {
    Interval seconds{};
    std::string_view text{};  ///< the time as written
    std::string_view when{};  ///< `full`, `half full`, or empty
};

struct Chemical {
    std::string_view name{};
    std::vector<std::pair<std::string_view, Id>> also{};  ///< other names, with the form they imply (or none)
    std::vector<Form> forms{};
    std::vector<std::string_view> grades{};
    std::optional<Keeping> keeps{};  ///< from the day on which a jar came
    std::vector<Ion> ions{};
    std::vector<Equilibrium> equilibria{};
    std::vector<Escape> escapes{};
    std::vector<IonPair> pairs{};
    std::vector<Bystander> bystanders{};
    Id salt_of = none;  ///< the chemical whose equilibria hold for its ions, where several could
    std::vector<std::string_view> acts_as{};
    std::vector<Density> densities{};
    std::vector<Solubility> solubilities{};
    double least_mol_per_kg = 0;              ///< of water, at whatever temperature `solubilities` reach; 0: not known
    std::optional<Exact> takes_up{};          ///< ml a dissolved gram takes up, where the text says so
    std::vector<std::string_view> hazards{};  ///< GHS statement codes
    std::string_view hazard_source{};
    std::vector<std::string_view> cautions{};
    std::vector<std::string_view> notes{};
    std::vector<std::string_view> sources{};
    std::string_view cas{};
    Place place{};
    bool built_in = false;
    std::uint16_t purposes = 0;  ///< what `acts_as` asks of the order of work, as bits that the checker knows
};

// ---- solutions ----------------------------------------------------------------------------------

/// What may follow a line after a comma.
struct Detail {
    enum class What : std::uint8_t { stirring, stirring_every, slowly, not_above, until, until_ph, remark } what;
    std::string_view words{};  ///< until, remark
    Exact value{};             ///< s for stirring_every, °C for not_above, pH for until_ph
};

/// One thing put into a vessel.
struct Addition {
    enum class How : std::uint8_t {
        exactly,   ///< the amount as it stands
        to_make,   ///< enough to reach the volume
        part_now,  ///< the first piece of a divided weighing
        the_rest,  ///< what is left of it
        about,     ///< near this amount, until a detail says stop
        unknown    ///< `?`
    } how = How::exactly;
    enum class By : std::uint8_t { mass, volume, amount, drops } by = By::mass;

    Id chemical = none;               ///< of the model, or
    Id solution = none;               ///< a section of the model
    Id form = none;                   ///< of the chemical
    std::string_view grade{};         ///< `distilled`
    Seldom<Strength> strength{};      ///< of a percent solution of the chemical
    std::string_view solvent{};       ///< of that solution; empty for water
    Seldom<Interval> saturated_at{};  ///< °C; set for a saturated solution (its strength is then derived)

    Few<Exact> shares{};    ///< g, ml, mol or drops by `by`; one, or one a variant of the recipe
    Seldom<Exact> now{};    ///< part_now: the piece weighed out for now (nullopt: a pinch)
    Seldom<Interval> at{};  ///< °C
    bool by_conversion = false;
    bool worked_out = false;  ///< a `?` whose amount was found from what is expected
    Id made_from = none;      ///< a reagent of the conversion that is meant, where the line says one
    Id made_by = none;        ///< which conversion, once that is settled; none: the first of those that make it
    bool optional = false;
    std::string_view optional_reason{};
    std::vector<Detail> details{};
    Seldom<Exact> parts{};       ///< in a `dilute` or `mix`: how many parts of the whole
    std::string_view written{};  ///< the amount as the author wrote it
    Place place{};
};

/// Something done: `stir until clear`, `cool to 20 C`.
struct Action {
    enum class Verb : std::uint8_t { stir, wait, stand, filter, cool, warm, not_above, do_this } verb;
    enum class Toward : std::uint8_t { none, to, below, above } toward = Toward::none;
    Seldom<Interval> seconds{};
    std::optional<Interval> celsius{};
    std::string_view words{};  ///< do_this
    Few<Detail> details{};
    Place place{};
};

/// A second vessel opened, poured in (a share of it) or put aside.
struct VesselMove {
    enum class What : std::uint8_t { apart, pour_in, set_aside } what;
    std::string_view vessel{};
    std::optional<Exact> share{};  ///< of what was in it at the start, 0 to 1; nullopt: all that is left
    std::optional<Exact> ml{};     ///< or a stated volume
    Few<Detail> details{};
    Place place{};
};

using Line = std::variant<Addition, Action, VesselMove>;

/// What the author knows of a finished solution: its pH, how much of a chemical it holds, or of an ion.
struct Expectation {
    bool ph = false;
    Interval range{};  ///< pH, or in `unit`
    quantity::Unit unit = quantity::Unit::none;
    Id chemical = none, form = none;
    Seldom<Ion> ion{};
    Place place{};
};

/// Per film or sheet of a format, or per volume.
struct PerUse {
    Id format = none;                 ///< of the model's formats
    std::optional<Exact> area_cm2{};  ///< of one such film or sheet, where known
    std::optional<Exact> ml{};        ///< per this volume instead
    std::string_view text{};          ///< `film 135`
};

struct CapacityRule {
    enum class What : std::uint8_t { one_shot, reused, volume_per, items_per, carried, longer, source } what;
    bool at_least = false;
    Exact ml{};                            ///< volume_per; carried: what goes over into the next bath
    Exact percent{}, seconds{};            ///< longer: by one of them, for each that went through before
    Id of = none;                          ///< volume_per: the section whose volume is meant; none: this bath
    Exact count{};                         ///< items_per: films or sheets …
    std::string_view item{};               ///< … of this kind, as written; an area is in `item_area_cm2` alone
    std::optional<Exact> item_area_cm2{};  ///< area of all the counted items together
    PerUse per{};
    std::string_view text{};  ///< as written
};

struct Replenishment {
    Exact ml{};
    PerUse per{};
    std::optional<Exact> at_most_ml{}, at_most_per_ml{};
};

enum class SectionKind : std::uint8_t { whole, part, bath, working, replenisher, conversion };

/// One solution that is mixed and (perhaps) bottled: a part, a bath, a working solution, a whole recipe.
struct Section {
    SectionKind kind = SectionKind::whole;
    Id recipe = none;          ///< none for a conversion
    std::string_view label{};  ///< `A`, `film`; empty where it has none
    std::vector<Line> lines{};
    Exact makes_ml{};              ///< final volume of the batch as written
    bool makes_stated = false;     ///< by `to make`; else it is the sum of the lines
    bool broken = false;           ///< a line of it could not be read, so it is not judged as a whole
    bool by_parts = false;         ///< made by `dilute` or `mix`; makes_ml is then nominal
    bool takes_solutions = false;  ///< some of its lines; whoever changes a line sees to it that this stays true
    bool had_open_amount = false;  ///< some of its lines, as they were written
    std::vector<Keeping> keeps{};
    Seldom<Exact> use_within{};  ///< s
    std::string_view use_within_text{};
    SeldomMany<CapacityRule> capacity{};
    Seldom<Replenishment> replenish{};
    SeldomMany<Expectation> expects{};
    SeldomMany<Acceptance> accepts{};
    SeldomMany<std::string_view> cautions{}, notes{};
    Place place{};
};

struct Recipe {
    std::string_view name{};
    std::string_view is_a{}, strength{};
    std::vector<std::string_view> sources{};
    SeldomMany<std::string_view> cautions{}, notes{}, assumed{};
    SeldomMany<std::string_view> variants{};
    SeldomMany<CapacityRule> capacity{};  ///< as stated for the whole recipe; see capacity_of
    SeldomMany<Acceptance> accepts{};     ///< for all of its solutions
    std::vector<Id> sections{};           ///< in the order written
    std::string normal{};                 ///< the normal name, the first half of its sections' keys
    Place place{};
    bool built_in = false;
};

/// A reaction, balanced or reported.
struct Conversion {
    struct Side {
        int coefficient = 1;
        Id chemical = none, form = none;
    };
    Id product = none, product_form = none;
    std::vector<Side> left{}, right{};
    Id excess_of = none;  ///< chemical
    Exact excess_percent{};
    std::optional<Exact> vessel_times{};
    struct PerGram {  ///< `water 12 ml per 1 g borax (decahydrate)`: line index → per what
        std::uint32_t line;
        Exact per_grams{};
        Id chemical = none, form = none;
    };
    std::vector<PerGram> per{};
    Id section = none;  ///< its lines; amounts of a bare reagent are empty `shares`
    std::vector<std::string_view> sources{}, cautions{}, notes{};
    Place place{};
    bool built_in = false;
};

struct Model {
    std::vector<Chemical> chemicals{};
    std::vector<Recipe> recipes{};
    std::vector<Section> sections{};
    std::vector<Conversion> conversions{};
    std::vector<Bench> benches{};
    std::vector<Supplier> suppliers{};
    std::vector<LogEntry> log{};  ///< by day, then as written
    std::vector<Process> processes{};
    std::vector<Plan> plans{};
    std::vector<FilmFormat> formats{};
    std::vector<Meeting> meetings{};
    std::vector<PrintedPage> printed{};
    std::vector<Accepted> accepted{};  ///< what was found and let happen, by solution, then by process

    Id water = none;       ///< the chemical `water`
    Id dropper = none;     ///< the bench whose dropper counts drops; none, or one without: the first that has one
    AcidBase acid_base{};  ///< what all chemicals are in water

    /// Normal names (syntax::normal_name) to ids.
    std::unordered_map<std::string, std::pair<Id, Id>> chemical_names{};  ///< to chemical and implied form
    std::unordered_map<std::string, Id> recipe_names{}, section_names{}, process_names{}, plan_names{},
        supplier_names{}, format_names{}, bench_names{}, meeting_names{}, printed_names{};
};

/// Whether a conversion is work for the bench. One without a line that puts something in is advice: it is told, and
/// nothing is made by it.
[[nodiscard]] bool is_worked(const Model& model, const Conversion& conversion);

/// The capacity of a solution: its own rules, else those of its recipe for the one that is used
/// (a working solution, a bath, or the recipe's only solution).
[[nodiscard]] const std::vector<CapacityRule>& capacity_of(const Model& model, Id section_id);

/// In how many ways a solution is mixed: as many as its recipe has variants, and one where it has none.
[[nodiscard]] std::size_t variants_of(const Model& model, const Section& section);

/// `Lantern part A`, `Lantern`, `Lantern working film`
[[nodiscard]] std::string shown_name(const Model& model, Id section_id);
/// `part A`, `working film`, `` for a whole recipe
[[nodiscard]] std::string section_words(const Section& section);
/// `HCO3- -> CO3-2 + H+`
[[nodiscard]] std::string written(const Equilibrium& equilibrium);
/// `sodium carbonate (monohydrate)`; the form is left out where the chemical has only one.
[[nodiscard]] std::string shown_name(const Chemical& chemical, Id form);
/// `60 % w/w`
[[nodiscard]] std::string shown_strength(const Strength& strength);
/// `ammonium thiosulfate (60 % w/w)`, `sodium carbonate (anhydrous, 20 % w/v)`
[[nodiscard]] std::string shown_name(const Chemical& chemical, Id form, const std::optional<Strength>& strength);

}  // namespace scruple::check
