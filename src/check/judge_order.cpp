// SPDX-License-Identifier: MIT
// Whether what goes in goes in where the one does not spoil the other, and hurts nobody. The rules are those of the
// trade, and speak of what a chemical acts as and not of its name; their figures are common practice, no source.
#include <algorithm>
#include <cmath>

#include "step_judge.hpp"

namespace scruple::check {
namespace {

using diagnostics::Kind;
using quantity::significant_text;

constexpr double pinch_mol_per_l = 0.12;  // of sulfite: 15 g of the anhydrous salt in a litre
constexpr double cold_enough_celsius = 30;
constexpr double trace_g_per_l = 5;
const Exact concentrated_percent(35);  // hydrochloric acid is sold at 36 %

bool brings(const Step& step, Purposes purposes) {
    return has(step.after.purposes, purposes) && !has(step.before.purposes, purposes);
}

/// Both of them are in now, and what keeps them from each other is not.
bool meets(const Step& step, Purposes both, Purposes keeper) {
    const auto met = [&](const Mix& mix) { return has(mix.purposes, both) && !has(mix.purposes, keeper); };
    return met(step.after) && !met(step.before);
}

class OrderJudge : public StepJudge {
  public:
    OrderJudge(Reader& reader, Id id) : reader_(reader), section_(reader.model.sections[id]) {
        for (const auto& line : section_.lines) gather(line);
    }

    void look_at(const Step& step) override {
        judge_fixer(step);
        judge_hardener(step);
        if (step.addition == nullptr || step.addition->chemical == none) return;
        if (has(step.purposes, kept_by_sulfite)) judge_agent(step);
        if (has(step.purposes, hindered_by_sulfite)) judge_hindered(step);
        if (has(step.purposes, caustic)) judge_caustic(step);
        judge_neat_acid(step);
    }

    bool at_the_end(const Walk&) override { return reported_; }

  private:
    void gather(const Line& line) {
        const auto* addition = std::get_if<Addition>(&line);
        if (addition == nullptr || addition->optional || addition->chemical == none) return;
        const auto purposes = chemical(*addition).purposes;
        all_ |= purposes;
        if (has(purposes, sulfite)) last_sulfite_ = addition;
        if (has(purposes, sulfite) && first_sulfite_ == nullptr) first_sulfite_ = addition;
    }

    [[nodiscard]] const Chemical& chemical(const Addition& addition) const {
        return reader_.model.chemicals[addition.chemical];
    }
    [[nodiscard]] std::string name(const Addition& addition) const {
        if (addition.solution != none) return shown_name(reader_.model, addition.solution);
        return shown_name(chemical(addition), addition.form, addition.strength);
    }
    [[nodiscard]] std::string name(const Step& step) const {
        if (step.addition != nullptr) return name(*step.addition);
        return std::string(std::get<VesselMove>(section_.lines[step.line]).vessel);
    }

    // ---- developers ----

    void judge_agent(const Step& step) {
        const bool comes_later = last_sulfite_ != nullptr && last_sulfite_->place.span.begin > place(step).begin;
        if (!comes_later || has(step.after.purposes, sulfite) || step.after.solvent().chemical != reader_.model.water)
            return;
        report(Kind::agent_before_sulfite, step, {name(step), "`" + name(*last_sulfite_) + "`, or a pinch of it,"});
    }

    void judge_hindered(const Step& step) {
        const auto* there = first_sulfite_ == nullptr ? nullptr : step.before.find(first_sulfite_->chemical);
        if (there == nullptr || step.before.solvents.empty()) return;
        const double mol_per_l = 1000 * there->mol / step.before.ml;
        if (mol_per_l <= pinch_mol_per_l) return;
        const auto& salt = chemical(*first_sulfite_);
        const double grams = mol_per_l * form_of(salt, first_sulfite_->form).molar_mass.to_double();
        const auto sulfite_name = name(*first_sulfite_);
        report(Kind::after_much_sulfite, step,
               {name(step), significant_text(grams, 2) + " g", sulfite_name,
                "`a pinch now` behind the amount of `" + sulfite_name + "`, this line below it, and then `" +
                    std::string(salt.name) + "   the rest`"});
    }

    // ---- fixers ----

    void judge_fixer(const Step& step) {
        if (!meets(step, acid | thiosulfate, sulfite)) return;
        const auto write = last_sulfite_ == nullptr
                               ? std::string("some sulfite before it; the recipe has none")
                               : "`" + name(*last_sulfite_) + "`, which comes later, before this line";
        report(Kind::acid_without_sulfite, step, {name(step), fixing_agent(step.after), write});
    }

    [[nodiscard]] std::string fixing_agent(const Mix& mix) const {
        for (const auto& solute : mix.solutes) {
            const auto& one = reader_.model.chemicals[solute.chemical];
            if (has(one.purposes, thiosulfate)) return std::string(one.name);
        }
        return "fixing agent";
    }

    void judge_hardener(const Step& step) {
        if (meets(step, alum | sulfite, acid)) report(Kind::alum_without_acid, step, {name(step)});
        const bool of_a_fixer = (all_ & (alum | thiosulfate)) != 0;
        const bool came_late = has(step.before.purposes, acid) && brings(step, sulfite);
        const bool told = has(step.before.purposes, acid | thiosulfate);
        if (of_a_fixer && came_late && !told && step.addition != nullptr && step.addition->chemical != none)
            report(Kind::sulfite_after_acid, step, {name(step)});
    }

    // ---- what heats ----

    void judge_caustic(const Step& step) {
        const bool dilute =
            step.addition->strength && parts_in_a_hundred(reader_.model, *step.addition) < concentrated_percent;
        if (dilute || step.fresh || step.before.celsius.high <= cold_enough_celsius || is_a_trace(step)) return;
        report(Kind::caustic_into_warm_water, step,
               {name(step), significant_text(step.before.celsius.high, 3) + " °C", water_for(step)});
    }

    /// Five ml a gram, in whole hundreds: enough that what heats does not boil. Common practice, no source.
    [[nodiscard]] std::string water_for(const Step& step) const {
        const double more_ml = 5 * (grams_of(step.after, step) - grams_of(step.before, step));
        return significant_text(100 * std::max(1.0, std::ceil(more_ml / 100)), 6) + " ml";
    }
    [[nodiscard]] double grams_of(const Mix& mix, const Step& step) const {
        const auto* there = mix.find(step.addition->chemical);
        if (there == nullptr) return 0;
        return there->mol * form_of(chemical(*step.addition), there->form).molar_mass.to_double();
    }

    /// So little in so much water that it cannot heat it by a degree or two.
    [[nodiscard]] bool is_a_trace(const Step& step) const {
        return 1000 * grams_of(step.after, step) < trace_g_per_l * step.after.ml;
    }

    /// Water on a concentrated acid that was the first thing in its vessel.
    void judge_neat_acid(const Step& step) {
        const auto& addition = *step.addition;
        if (neat_acid_ != nullptr && addition.chemical == reader_.model.water && !step.fresh)
            report(Kind::water_onto_acid, step, {"water", name(*neat_acid_)});
        const bool wets = step.after.ml > step.before.ml && density_is_known(addition);
        if (step.fresh || wets) neat_acid_ = nullptr;
        if (step.fresh && is_concentrated_acid(addition)) neat_acid_ = &addition;
    }

    [[nodiscard]] bool density_is_known(const Addition& addition) const {
        return addition.strength || density_of(chemical(addition), addition.form, std::nullopt);
    }

    [[nodiscard]] bool is_concentrated_acid(const Addition& addition) const {
        const auto& words = chemical(addition).acts_as;
        const bool sour = std::ranges::find(words, "acid") != words.end();
        if (!sour || !density_is_known(addition)) return false;
        if (addition.strength) return parts_in_a_hundred(reader_.model, addition) >= concentrated_percent;
        const auto& bottle = form_of(chemical(addition), addition.form).sold_as;
        return bottle && bottle->value >= concentrated_percent;
    }

    [[nodiscard]] text::Span place(const Step& step) const {
        return std::visit([](const auto& line) { return line.place.span; }, section_.lines[step.line]);
    }

    void report(Kind kind, const Step& step, std::initializer_list<std::string_view> arguments) {
        reader_.report(kind, place(step), arguments);
        reported_ = true;
    }

    Reader& reader_;
    const Section& section_;
    Purposes all_ = 0;  ///< of all its lines
    const Addition* first_sulfite_ = nullptr;
    const Addition* last_sulfite_ = nullptr;
    const Addition* neat_acid_ = nullptr;
    bool reported_ = false;
};

}  // namespace

std::unique_ptr<StepJudge> order_judge(Reader& reader, Id section) {
    return std::make_unique<OrderJudge>(reader, section);
}

}  // namespace scruple::check
