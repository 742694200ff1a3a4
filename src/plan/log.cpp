// SPDX-License-Identifier: MIT
#include "log.hpp"

#include "ingredients.hpp"
#include "log_shortages.hpp"
#include "scruple/plan/shopping.hpp"
#include "uses.hpp"

namespace scruple::plan {

using check::Exact;
using check::Id;
using check::LogEntry;
using check::Model;

namespace {

/// Applies the lines one after the other.
class Reader {
  public:
    explicit Reader(const Model& model) : model_(model) {}

    void apply(const LogEntry& entry) {
        entry_ = &entry;
        if (entry.solution != check::none)
            apply_solution(entry);
        else if (const auto amount = counted(model_, entry.chemical, entry.form, entry.strength, entry.grams, entry.ml))
            apply_chemical(entry, *amount);
        else if (entry.what == LogEntry::What::discarded && entry.chemical != check::none)
            discard_all(entry);
    }

    Stock stock;
    Shortages shortages;

  private:
    void apply_solution(const LogEntry& entry) {
        const Exact ml = entry.ml.value_or(Exact());
        switch (entry.what) {
            case LogEntry::What::received:
                stock.solutions[entry.solution] += ml;
                break;
            case LogEntry::What::mixed:
                mix(entry.solution, ml);
                break;
            case LogEntry::What::processed:
                process(entry);
                break;
            case LogEntry::What::used:
                pour(entry.solution, ml);
                break;
            case LogEntry::What::replenished:
                pour(poured_by_replenishing(entry.solution), ml);
                break;
            case LogEntry::What::on_shelf:
                set(stock.solutions, entry.solution, ml);
                break;
            case LogEntry::What::discarded:
                if (entry.ml)
                    pour(entry.solution, ml);
                else
                    set(stock.solutions, entry.solution, Exact());
                break;
        }
    }

    void apply_chemical(const LogEntry& entry, const Amount& amount) {
        switch (entry.what) {
            case LogEntry::What::mixed:
                consume(as_pure(model_, amount));
                stock.wares[amount.ware] += amount.measure;
                break;
            case LogEntry::What::received:
                stock.wares[amount.ware] += amount.measure;
                break;
            case LogEntry::What::on_shelf:
                set(stock.wares, amount.ware, amount.measure);
                break;
            case LogEntry::What::used:
            case LogEntry::What::discarded:
                shortages.note(entry, amount.ware, amount.measure - take_own(stock, amount));
                break;
            case LogEntry::What::processed:
            case LogEntry::What::replenished:
                break;
        }
    }

    /// All of that form and strength, in whichever unit it is counted.
    void discard_all(const LogEntry& entry) {
        for (const auto& [ware, measure] : stock.wares)
            if (ware.chemical == entry.chemical && ware.strength == entry.strength &&
                (entry.form == check::none || ware.form == entry.form))
                set(stock.wares, ware, Exact());
    }

    void mix(Id solution, const Exact& ml) {
        mix_at_once(solution, ml);
        stock.solutions[solution] += ml;
    }

    void mix_at_once(Id solution, const Exact& ml) {
        for (const auto& ingredient : ingredients_of(model_, solution, ml, {.stock = &stock}).list) {
            if (ingredient.solution != check::none)
                pour(ingredient.solution, ingredient.ml);
            else if (ingredient.grade.empty())
                consume(ingredient.amount);
            else
                take(model_, stock, ingredient.amount);  // Better water may come from anywhere.
        }
    }

    /// A bath that nobody logged as mixed was mixed for the occasion, from what it is made of. What a bath
    /// without a capacity took is not known: only what there was of it is gone.
    void process(const LogEntry& entry) {
        std::vector<std::string> doubts;
        const Exact ml = sum_of(bath_draws(model_, entry.solution, entry.uses, doubts));
        const Exact wanting = ml - take_solution(stock, entry.solution, ml);
        if (doubts.empty()) mix_at_once(entry.solution, wanting);
    }

    /// What a `replenished` line names may be the bath or what is poured into it.
    [[nodiscard]] Id poured_by_replenishing(Id named) const {
        return model_.sections[named].kind == check::SectionKind::replenisher ? named : replenisher_of(model_, named);
    }

    void pour(Id solution, const Exact& ml) {
        shortages.note(*entry_, solution, ml - take_solution(stock, solution, ml));
    }

    void consume(const Amount& amount) { shortages.note(*entry_, amount.ware, take(model_, stock, amount)); }

    template <class Key>
    void set(std::map<Key, Exact>& shelf, const Key& key, const Exact& measure) {
        shelf[key] = measure;
        shortages.settle(key);
    }

    const Model& model_;
    const LogEntry* entry_ = nullptr;
};

}  // namespace

Stock stock_on(const Model& model, check::Day day, std::vector<std::string>& warnings) {
    Reader reader(model);
    for (const auto& entry : model.log)
        if (entry.day <= day) reader.apply(entry);
    for (const auto& sentence : reader.shortages.in_words(model)) warnings.push_back(sentence);
    return std::move(reader.stock);
}

std::vector<OnHand> on_hand(const Model& model, check::Day day) {
    std::vector<std::string> unheard;
    const Stock stock = stock_on(model, day, unheard);
    std::vector<OnHand> all;
    for (const auto& [ware, measure] : stock.wares)
        if (!measure.is_zero())
            all.push_back({ware.chemical, ware.form, check::none, ware.strength, ware.by_volume, measure});
    for (const auto& [solution, ml] : stock.solutions)
        if (!ml.is_zero()) all.push_back({check::none, check::none, solution, std::nullopt, true, ml});
    return all;
}

}  // namespace scruple::plan
