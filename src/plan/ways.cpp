// SPDX-License-Identifier: MIT
#include "ways.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <tuple>

#include "scruple/check/contents.hpp"
#include "scruple/plan/figure.hpp"
#include "words.hpp"

namespace scruple::plan {

namespace {

using check::Addition;
using check::Conversion;
using check::Exact;
using check::Id;
using check::Model;
using Kind = Way::Kind;
using Supply = Way::Supply;

bool is_solvent(const check::Chemical& chemical) {
    return chemical.acts_as.size() == 1 && chemical.acts_as.front() == "solvent";
}

/// Moles of a chemical in a ml of a solution that holds nothing else but water and solvents; 0 for any other. What is
/// in it by way of other solutions or conversions is not simple enough.
Exact moles_alone(const Model& model, const check::Section& section, Id chemical) {
    if (section.makes_ml <= 0 || section.by_parts || section.broken) return {};
    Exact moles;
    for (const check::Line& line : section.lines) {
        const auto* addition = std::get_if<Addition>(&line);
        if (addition == nullptr || is_water(model, *addition)) continue;
        if (addition->chemical == check::none || addition->by_conversion || addition->shares.size() != 1) return {};
        if (addition->chemical == chemical) {
            const auto held = moles_held(model, Ware{chemical, addition->form, std::nullopt, false});
            if (!held || addition->optional || addition->strength || addition->saturated_at) return {};
            moles += check::dose(model, *addition, 0).grams * *held;
        } else if (!is_solvent(model.chemicals[addition->chemical])) {
            return {};
        }
    }
    return moles / section.makes_ml;
}

/// Gathers and ranks the ways to one amount.
class Finder {
  public:
    Finder(const Model& model, const Shelf& shelf, const Amount& wanted)
        : model_(model), shelf_(shelf), wanted_(wanted) {}

    std::vector<Way> all() {
        add_wares();
        add_solutions();
        return conversions();
    }

    std::vector<Way> conversions() {
        for (Id id = 0; id < model_.conversions.size(); ++id) add_conversion(id);
        std::ranges::stable_sort(ways_, {}, [this](const Way& way) { return rank(way); });
        return std::move(ways_);
    }

  private:
    [[nodiscard]] const check::Chemical& chemical() const { return model_.chemicals[wanted_.ware.chemical]; }

    [[nodiscard]] bool is_missing(const Ware& ware) const {
        return ware == wanted_.ware || std::ranges::find(shelf_.missing, ware) != shelf_.missing.end();
    }

    // ---- another form, a percent solution, a liquid ----

    void add_wares() {
        for (Id form = 0; form < chemical().forms.size(); ++form)
            add_ware(counted(model_, Ware{wanted_.ware.chemical, form, std::nullopt, false}, 1).ware);
        if (shelf_.stock == nullptr) return;
        for (const auto& [ware, measure] : shelf_.stock->wares)
            if (ware.chemical == wanted_.ware.chemical && ware.strength && measure > 0) add_ware(ware);
    }

    void add_ware(const Ware& ware) {
        const bool gas = check::is_gas(chemical().forms[ware.form]);
        const auto rate = gas || is_missing(ware) ? std::nullopt : moles_for_moles(model_, wanted_.ware, ware);
        if (!rate) return;
        Way way{.kind = kind_of(ware), .from = {ware, wanted_.measure * *rate}};
        way.supply = supply_of(way.from, way.lacking);
        if (!way.lacking.empty() && held(*shelf_.stock, ware).is_zero()) way.lacking = "none on hand";
        ways_.push_back(std::move(way));
    }

    static Kind kind_of(const Ware& ware) {
        if (ware.strength) return Kind::percent;
        return ware.by_volume ? Kind::liquid : Kind::form;
    }

    [[nodiscard]] Supply supply_of(const Amount& amount, std::string& lacking) const {
        if (shelf_.stock == nullptr) return is_missing(amount.ware) ? Supply::wanting : Supply::unknown;
        const Exact there = is_missing(amount.ware) ? Exact() : held(*shelf_.stock, amount.ware);
        if (there >= amount.measure) return Supply::enough;
        const std::string what = ware_words(model_, amount.ware);
        lacking = there.is_zero() ? fmt::format("no {} on hand", what)
                                  : fmt::format("{} {} on hand, {} needed", measure_words({amount.ware, there}), what,
                                                measure_words(amount));
        return is_sold(amount.ware) ? Supply::to_buy : Supply::wanting;
    }

    [[nodiscard]] bool is_sold(const Ware& ware) const {
        return shelf_.offers != nullptr && std::ranges::any_of(*shelf_.offers, [&](const Offer& offer) {
                   return in_place_of(model_, ware, offer.pack.ware).has_value();
               });
    }

    // ---- a solution that stands ready ----

    void add_solutions() {
        const auto moles = moles_held(model_, wanted_.ware);
        if (shelf_.stock == nullptr || !moles) return;
        for (const auto& [solution, ml] : shelf_.stock->solutions) {
            if (ml.is_zero() || solution == shelf_.making) continue;
            const Exact per_ml = moles_alone(model_, model_.sections[solution], wanted_.ware.chemical);
            if (per_ml <= 0) continue;
            Way way{.kind = Kind::solution, .solution = solution, .ml = wanted_.measure * *moles / per_ml};
            way.supply = way.ml <= ml ? Supply::enough : Supply::wanting;
            if (way.supply == Supply::wanting)
                way.lacking = fmt::format("{} {} on hand, {} needed", plain_ml(ml).with_unit(),
                                          check::shown_name(model_, solution), plain_ml(way.ml).with_unit());
            ways_.push_back(std::move(way));
        }
    }

    // ---- conversions ----

    void add_conversion(Id id) {
        const Conversion& conversion = model_.conversions[id];
        const auto grams = grams_held(model_, wanted_.ware);
        if (conversion.product != wanted_.ware.chemical || conversion.section == check::none || !grams) return;
        Way way{.kind = check::is_worked(model_, conversion) ? Kind::conversion : Kind::advice, .conversion = id};
        way.supply = shelf_.stock == nullptr ? Supply::unknown : Supply::enough;
        const check::Share product{wanted_.ware.chemical, wanted_.ware.form, wanted_.measure * *grams};
        for (const check::Share& reagent : check::making_of(model_, conversion, product).reagents)
            add_reagent(reagent, way);
        ways_.push_back(std::move(way));
    }

    /// In the reaction's own form where there is enough of it, else in another that there is enough of.
    void add_reagent(const check::Share& reagent, Way& way) const {
        const Ware own{reagent.chemical, reagent.form == check::none ? 0 : reagent.form, std::nullopt, false};
        Amount amount = counted(model_, own, reagent.grams);
        std::string lacking;
        Supply supply = supply_of(amount, lacking);
        for (Id form = 0; supply > Supply::unknown && form < model_.chemicals[own.chemical].forms.size(); ++form) {
            const Ware other = counted(model_, Ware{own.chemical, form, std::nullopt, false}, 1).ware;
            const auto rate = moles_for_moles(model_, amount.ware, other);
            std::string unheard;
            if (!rate || supply_of({other, amount.measure * *rate}, unheard) != Supply::enough) continue;
            amount = {other, amount.measure * *rate};
            supply = Supply::enough;
        }
        if (supply > Supply::unknown) way.lacking += (way.lacking.empty() ? "" : ", ") + lacking;
        way.supply = std::max(way.supply, supply);
        way.reagents.push_back(std::move(amount));
    }

    // ---- which comes first ----

    using Rank = std::tuple<bool, Supply, bool, Kind, bool, bool>;
    [[nodiscard]] Rank rank(const Way& way) const {
        const bool advice = way.kind == Kind::advice;
        // Where a solution is asked for, one that stands ready comes before weighing.
        const bool to_weigh = wanted_.ware.strength && way.kind != Kind::percent && way.kind != Kind::solution;
        if (way.conversion == check::none) return {advice, way.supply, to_weigh, way.kind, false, false};
        const Conversion& conversion = model_.conversions[way.conversion];
        return {advice,   way.supply,          to_weigh,
                way.kind, conversion.built_in, conversion.product_form != wanted_.ware.form};
    }

    const Model& model_;
    const Shelf& shelf_;
    const Amount& wanted_;
    std::vector<Way> ways_;
};

std::string reagent_words(const Model& model, const Way& way) {
    std::vector<std::string> words;
    for (const Amount& reagent : way.reagents)
        words.push_back(measure_words(reagent) + " " + ware_words(model, reagent.ware));
    return joined(words, " and ");
}

}  // namespace

std::vector<Way> ways_to(const Model& model, const Shelf& shelf, const Amount& wanted) {
    return Finder(model, shelf, wanted).all();
}

std::vector<Way> conversions_to(const Model& model, const Shelf& shelf, const Amount& wanted) {
    std::vector<Way> ways = Finder(model, shelf, wanted).conversions();
    std::erase_if(ways, [](const Way& way) { return way.kind != Kind::conversion; });
    return ways;
}

bool is_allowed(const Model& model, const Addition& line, const Way& way) {
    if (way.kind != Kind::conversion) return false;
    if (line.made_by != check::none) return line.made_by == way.conversion;
    const auto& left = model.conversions[way.conversion].left;
    return line.made_from == check::none ||
           std::ranges::find(left, line.made_from, &Conversion::Side::chemical) != left.end();
}

void take(Stock& stock, const Way& way) {
    if (way.solution != check::none) {
        take_solution(stock, way.solution, way.ml);
    } else if (way.conversion == check::none) {
        take_own(stock, way.from);
    }
    for (const Amount& reagent : way.reagents) take_own(stock, reagent);
}

std::string measure_words(const Amount& amount) {
    return (amount.ware.by_volume ? plain_ml(amount.measure) : plain_grams(amount.measure)).with_unit();
}

std::string way_words(const Model& model, const Way& way) {
    if (way.kind == Kind::advice) return "from " + reagent_words(model, way);
    if (way.kind == Kind::conversion) return "made from " + reagent_words(model, way);
    if (way.kind == Kind::solution)
        return fmt::format("{} {}", check::shown_name(model, way.solution), plain_ml(way.ml).with_unit());
    return fmt::format("{} {}", ware_words(model, way.from.ware), measure_words(way.from));
}

}  // namespace scruple::plan
