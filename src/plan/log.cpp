// SPDX-License-Identifier: MIT
#include "log.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "ingredients.hpp"
#include "scruple/plan/calendar.hpp"
#include "scruple/plan/shopping.hpp"
#include "uses.hpp"

namespace scruple::plan {

using check::Exact;
using check::Id;
using check::LogEntry;
using check::Model;

namespace {

std::string_view verb_of(LogEntry::What what) {
    switch (what) {
        case LogEntry::What::received:
            return "received";
        case LogEntry::What::mixed:
            return "mixed";
        case LogEntry::What::processed:
            return "processed";
        case LogEntry::What::used:
            return "used";
        case LogEntry::What::replenished:
            return "replenished";
        case LogEntry::What::on_shelf:
            return "on shelf";
        case LogEntry::What::discarded:
            return "discarded";
    }
    return "";
}

std::string measure_words(const Ware& ware, const Exact& measure) {
    return (ware.by_volume ? plain_ml(measure) : plain_grams(measure)).with_unit();
}

/// Applies the lines one after the other.
class Reader {
  public:
    Reader(const Model& model, std::vector<std::string>& warnings) : model_(model), warnings_(warnings) {}

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
                stock.solutions[entry.solution] = ml;
                break;
            case LogEntry::What::discarded:
                pour(entry.solution, entry.ml.value_or(held(stock, entry.solution)));
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
                stock.wares[amount.ware] = amount.measure;
                break;
            case LogEntry::What::used:
            case LogEntry::What::discarded:
                note_short(amount, amount.measure - take_own(stock, amount));
                break;
            case LogEntry::What::processed:
            case LogEntry::What::replenished:
                break;
        }
    }

    /// All of that form and strength, in whichever unit it is counted.
    void discard_all(const LogEntry& entry) {
        for (auto& [ware, measure] : stock.wares)
            if (ware.chemical == entry.chemical && ware.strength == entry.strength &&
                (entry.form == check::none || ware.form == entry.form))
                measure = 0;
    }

    void mix(Id solution, const Exact& ml) {
        mix_at_once(solution, ml);
        stock.solutions[solution] += ml;
    }

    void mix_at_once(Id solution, const Exact& ml) {
        for (const auto& ingredient : ingredients_of(model_, solution, ml).list) {
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
        const Exact wanting = ml - take_solution(stock, solution, ml);
        if (wanting > 0) note_short(check::shown_name(model_, solution), plain_ml(wanting).with_unit());
    }

    void consume(const Amount& amount) { note_short(amount, take(model_, stock, amount)); }

    void note_short(const Amount& amount, const Exact& wanting) {
        if (wanting > 0) note_short(ware_words(model_, amount.ware), measure_words(amount.ware, wanting));
    }

    void note_short(const std::string& name, const std::string& wanting) {
        warnings_.push_back(
            fmt::format("the log's line `{}` takes {} more {} than there was", line_words(), wanting, name));
    }

    [[nodiscard]] std::string line_words() const {
        const LogEntry& entry = *entry_;
        std::string words = day_text(entry.day) + " " + std::string(verb_of(entry.what));
        for (const auto& use : entry.uses) words += (&use == &entry.uses.front() ? " " : ", ") + std::string(use.text);
        if (entry.what == LogEntry::What::processed) words += " in";
        words +=
            " " + (entry.solution != check::none ? check::shown_name(model_, entry.solution)
                                                 : check::shown_name(model_.chemicals[entry.chemical], entry.form));
        if (entry.grams) words += " " + plain_grams(*entry.grams).with_unit();
        if (entry.ml) words += " " + plain_ml(*entry.ml).with_unit();
        return words;
    }

    const Model& model_;
    std::vector<std::string>& warnings_;
    const LogEntry* entry_ = nullptr;
};

}  // namespace

Stock stock_on(const Model& model, check::Day day, std::vector<std::string>& warnings) {
    Reader reader(model, warnings);
    for (const auto& entry : model.log)
        if (entry.day <= day) reader.apply(entry);
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
