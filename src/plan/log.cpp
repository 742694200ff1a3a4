// SPDX-License-Identifier: MIT
#include "log.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "capacity.hpp"
#include "ingredients.hpp"
#include "uses.hpp"

namespace scruple::plan {

using check::Addition;
using check::Exact;
using check::Id;
using check::LogEntry;
using check::Model;

namespace {

using To = Exact Account::*;

bool has_conversions(const check::Section& section) {
    return std::ranges::any_of(section.lines, [](const check::Line& line) {
        const auto* addition = std::get_if<Addition>(&line);
        return addition != nullptr && addition->by_conversion;
    });
}

/// What a solution is made of, and what films take of it, looked up once: both grow with the amount. What is made by a
/// conversion is looked up each time, since the way depends on the shelf.
class Lookup {
  public:
    explicit Lookup(const Model& model) : model_(model) {}

    std::vector<Ingredient> ingredients(Id solution, const Exact& ml, const Stock& stock) {
        if (has_conversions(model_.sections[solution]))
            return ingredients_of(model_, solution, ml, {.stock = &stock}).list;
        auto [known, is_new] = of_one_ml_.try_emplace(solution);
        if (is_new) known->second = ingredients_of(model_, solution, 1).list;
        std::vector<Ingredient> list = known->second;
        for (auto& ingredient : list) {
            ingredient.ml *= ml;
            ingredient.amount.measure *= ml;
        }
        return list;
    }

    /// Nullopt where the capacity does not say.
    std::optional<Exact> drawn(Id bath, const std::vector<check::Use>& uses) {
        Exact all;
        for (const auto& use : uses) {
            const auto one = drawn_by(bath, use);
            if (!one) return std::nullopt;
            all += *one;
        }
        return all;
    }

  private:
    std::optional<Exact> drawn_by(Id bath, const check::Use& use) {
        const auto [known, is_new] = drawn_.try_emplace({bath, use.text});
        if (!is_new) return known->second;
        std::vector<std::string> doubts;
        const Exact ml = sum_of(bath_draws(model_, bath, {use}, doubts));
        if (doubts.empty()) known->second = ml;
        return known->second;
    }

    const Model& model_;
    std::map<Id, std::vector<Ingredient>> of_one_ml_;
    std::map<std::pair<Id, std::string_view>, std::optional<Exact>> drawn_;
};

/// Applies the lines one after the other.
class Replay {
  public:
    explicit Replay(const Model& model) : model_(model), lookup_(model) {}

    void apply(LineId line) {
        const LogEntry& entry = model_.log[line];
        lots.begin(line);
        if (entry.batch)
            discard_batch(entry);
        else if (entry.what == LogEntry::What::discarded && !entry.grams && !entry.ml)
            discard_all(entry);
        else if (entry.solution != check::none)
            apply_solution(entry);
        else if (const auto amount = counted(model_, entry.chemical, entry.form, entry.strength, entry.grams, entry.ml))
            apply_chemical(entry, *amount);
    }

    Lots lots;

  private:
    void apply_solution(const LogEntry& entry) {
        const Stocked what{.solution = entry.solution};
        const Exact ml = entry.ml.value_or(Exact());
        switch (entry.what) {
            case LogEntry::What::received:
                lots.receive(what, ml);
                break;
            case LogEntry::What::mixed:
                mix(what, ml);
                break;
            case LogEntry::What::processed:
                process(entry);
                break;
            case LogEntry::What::used:
                take_or_lack(what, ml, &Account::used);
                break;
            case LogEntry::What::replenished:
                replenish(entry.solution, ml);
                break;
            case LogEntry::What::on_shelf:
                lots.count(what, ml);
                break;
            case LogEntry::What::discarded:
                take_or_lack(what, ml, &Account::discarded);
                break;
        }
    }

    void apply_chemical(const LogEntry& entry, const Amount& amount) {
        const Stocked what{.ware = amount.ware};
        switch (entry.what) {
            case LogEntry::What::received:
                lots.receive(what, amount.measure);
                break;
            case LogEntry::What::on_shelf:
                lots.count(what, amount.measure);
                break;
            case LogEntry::What::used:
                take_or_lack(what, amount.measure, &Account::used);
                break;
            case LogEntry::What::discarded:
                take_or_lack(what, amount.measure, &Account::discarded);
                break;
            case LogEntry::What::mixed:
            case LogEntry::What::processed:
            case LogEntry::What::replenished:
                break;  // Only solutions are.
        }
    }

    [[nodiscard]] LineId first_line_from(check::Day day) const {
        const auto at = std::ranges::lower_bound(model_.log, day, {}, &LogEntry::day);
        return static_cast<LineId>(at - model_.log.begin());
    }

    void discard_batch(const LogEntry& entry) {
        const auto first = first_line_from(*entry.batch);
        const auto end = first_line_from(*entry.batch + 1);
        for (const Stocked& what : lots.known_of(entry)) {
            const Exact there = lots.held_of(what, first, end);
            const Exact wanted = entry.ml.value_or(entry.grams.value_or(there));
            lots.lack(what, wanted - lots.take_of(what, first, end, wanted, &Account::discarded), &Account::discarded);
        }
    }

    void discard_all(const LogEntry& entry) {
        for (const Stocked& what : lots.known_of(entry)) {
            lots.take(what, lots.held(what), &Account::discarded);
            if (lots.lacks(what)) lots.count(what, 0);
        }
    }

    void mix(const Stocked& what, const Exact& ml) {
        const auto first = lots.pourings_so_far();
        mix_at_once(what.solution, ml);
        lots.mix(what, ml, first);
    }

    void mix_at_once(Id solution, const Exact& ml) {
        if (ml.is_zero()) return;
        for (const auto& ingredient : lookup_.ingredients(solution, ml, lots.stock)) {
            if (ingredient.solution != check::none) {
                take_or_lack({.solution = ingredient.solution}, ingredient.ml, &Account::into_mixing);
                continue;
            }
            const Stocked what{.ware = ingredient.amount.ware};
            const Exact wanting = ingredient.amount.measure - take_any(ingredient.amount);
            // Better water may come from anywhere.
            if (ingredient.grade.empty()) lots.lack(what, wanting, &Account::into_mixing);
        }
    }

    /// A bath that is kept stays where it is. Of another, what nobody logged as mixed was mixed for the occasion, from
    /// what it is made of. What a bath without a capacity took is not known: all there was of a batch is gone.
    void process(const LogEntry& entry) {
        const Stocked bath{.solution = entry.solution};
        const auto& section = model_.sections[entry.solution];
        const auto ml = lookup_.drawn(entry.solution, entry.uses);
        const bool one_shot = says(check::capacity_of(model_, entry.solution), check::CapacityRule::What::one_shot);
        if (!ml)
            lots.take(bath, section.makes_ml, &Account::processed);
        else if (!one_shot && !lots.held(bath).is_zero())
            spend(entry, *ml);
        else
            mix_at_once(entry.solution, *ml - lots.take(bath, *ml, &Account::processed));
    }

    /// What goes over into the next bath is made up by the replenisher, where there is one.
    void spend(const LogEntry& entry, const Exact& ml) {
        lots.spend(entry.solution, ml, entry.uses, lengthening(model_, entry.solution, entry.uses));
        if (model_.sections[entry.solution].replenish) return;
        lots.take({.solution = entry.solution}, carried_over(model_, entry.solution, entry.uses), &Account::processed);
    }

    /// What a `replenished` line names may be the bath or what is poured into it.
    void replenish(Id named, const Exact& ml) {
        const bool is_replenisher = model_.sections[named].kind == check::SectionKind::replenisher;
        take_or_lack({.solution = is_replenisher ? named : replenisher_of(model_, named)}, ml, &Account::replenishing);
        lots.replenish(is_replenisher ? bath_of(named) : named, ml);
    }

    [[nodiscard]] Id bath_of(Id replenisher) const {
        for (const Id section : model_.recipes[model_.sections[replenisher].recipe].sections)
            if (model_.sections[section].replenish) return section;
        return check::none;
    }

    void take_or_lack(const Stocked& what, const Exact& measure, To to) {
        lots.lack(what, measure - lots.take(what, measure, to), to);
    }

    Exact take_any(const Amount& amount) {
        const Exact own = lots.take({.ware = amount.ware}, amount.measure, &Account::into_mixing);
        return own + lots.take_others(model_, {amount.ware, amount.measure - own}, &Account::into_mixing);
    }

    const Model& model_;
    Lookup lookup_;
};

}  // namespace

Lots lots_on(const Model& model, check::Day day) {
    Replay replay(model);
    for (LineId line = 0; line < model.log.size() && model.log[line].day <= day; ++line) replay.apply(line);
    return std::move(replay.lots);
}

Stock stock_on(const Model& model, check::Day day, std::vector<std::string>& warnings) {
    constexpr std::size_t most_told = 12;
    Lots lots = lots_on(model, day);
    std::size_t unsettled = 0;
    for (const auto& shortage : lots.shortages)
        if (!shortage.settled && ++unsettled <= most_told) warnings.push_back(shortage_words(model, shortage));
    if (unsettled > most_told)
        warnings.push_back(fmt::format("there are {} more such lines of the log; `scruple shelf` tells them all",
                                       unsettled - most_told));
    return std::move(lots.stock);
}

}  // namespace scruple::plan
