// SPDX-License-Identifier: MIT
// Whether what goes in dissolves.
#include <algorithm>
#include <boost/container/small_vector.hpp>
#include <cmath>

#include "load.hpp"
#include "scruple/check/solubility.hpp"
#include "step_judge.hpp"

namespace scruple::check {
namespace {

using diagnostics::Kind;
using quantity::significant_text;

constexpr double cold_celsius = 5;  // a cellar in winter, a refrigerator; common practice, no source

std::string grams_text(double grams) {
    return significant_text(grams, grams < 10 ? 2 : 3) + " g";
}

std::string about_text(double grams) {
    return significant_text(grams, 2) + " g";
}

std::string volume_text(double ml) {
    return ml >= 1000 ? significant_text(ml / 1000, 3) + " l" : significant_text(ml, 3) + " ml";
}

std::string celsius_text(double celsius) {
    return significant_text(celsius, 3) + " °C";
}

/// Rounded to two digits, to the side that keeps what it promises.
double two_digits(double value, double (*to)(double)) {
    const double step = std::pow(10, std::floor(std::log10(value)) - 1);
    return to(value / step) * step;
}
double down(double value) {
    return std::floor(value);
}
double up(double value) {
    return std::ceil(value);
}

std::string joined_by_or(const std::vector<std::string>& choices) {
    std::string all;
    for (const auto& choice : choices) all += (all.empty() ? "" : &choice == &choices.back() ? ", or " : ", ") + choice;
    return all;
}

class DissolvingJudge : public StepJudge {
  public:
    DissolvingJudge(Reader& reader, Id id) : reader_(reader), section_(reader.model.sections[id]) {}

    void look_at(const Step& step) override {
        const auto* addition = step.addition;
        if (addition == nullptr || addition->chemical == none) return;
        has_alkali_ = has_alkali_ || has(step.purposes, alkali);
        if (chemical(addition->chemical).solubilities.empty()) return;
        if (line_of(addition->chemical) == nullptr) lines_.push_back(addition);
        if (addition->strength) return judge_strength(*addition);
        const bool dry = !(step.before.solvent().g > 0);  // has a warning of its own
        if (dry || addition->saturated_at || addition->by_conversion || addition->shares.empty()) return;
        const double celsius = step.after.celsius.low;
        const auto found = too_much_of(reader_.model, step.after, addition->chemical, celsius);
        const auto same = [&](const Short& other) { return other.load.chemical == addition->chemical; };
        if (found && std::ranges::none_of(short_of_water_, same))
            short_of_water_.push_back({addition, *found, celsius});
    }

    bool at_the_end(const Walk& walk) override {
        judge_end(walk.end(), walk.end_celsius());
        for (const auto& found : short_of_water_)
            if (std::ranges::find(never_, found.load.chemical) == never_.end()) report_short(found, walk.end().ml);
        if (!reported_ && !section_.keeps.empty()) judge_cold(walk.end());
        return reported_;
    }

  private:
    struct Short {
        const Addition* addition;
        Load load;
        double celsius;
    };

    [[nodiscard]] const Chemical& chemical(Id id) const { return reader_.model.chemicals[id]; }

    /// The first line that brings a chemical; null where it comes by way of another solution.
    [[nodiscard]] const Addition* line_of(Id id) const {
        const auto found = std::ranges::find(lines_, id, &Addition::chemical);
        return found == lines_.end() ? nullptr : *found;
    }
    [[nodiscard]] std::string name(const Load& load) const { return shown_name(chemical(load.chemical), load.form_id); }

    // ---- when a line comes ----

    void report_short(const Short& found, double final_ml) {
        const auto& load = found.load;
        const auto solvent = std::string(chemical(load.solvent).name);
        const auto there = load.solvent == reader_.model.water ? volume_text(load.other_g) : grams_text(load.other_g);
        report(Kind::too_little_water, found.addition->place.span,
               {name(load), grams_text(load.grams()), about_text(*load.dissolved_grams()), there + " of " + solvent,
                celsius_text(found.celsius), ways_out(found, solvent, final_ml)});
    }

    [[nodiscard]] std::string ways_out(const Short& found, const std::string& solvent, double final_ml) const {
        const auto& load = found.load;
        std::vector<std::string> ways;
        if (has_alkali_ && dissolves_in_alkali(chemical(load.chemical))) return "the alkali before it";
        const double wanted = two_digits(water_to_dissolve(*load.form, load.mol_per_kg, load.grams()), up);
        if (wanted < final_ml) ways.push_back("at least " + volume_text(wanted) + " of " + solvent + " before it");
        if (const auto warm = celsius_to_dissolve(reader_.model, load.chemical, load.solvent, load.wanted_mol_per_kg(),
                                                  found.celsius))
            ways.push_back(solvent + " at " + celsius_text(*warm) + " or warmer");
        ways.push_back("at most " + grams_text(two_digits(*load.dissolved_grams(), down)) + " of it");
        return joined_by_or(ways);
    }

    void judge_strength(const Addition& addition) {
        const double celsius = addition.at ? addition.at->low.to_double() : Warmth{}.low;
        if (addition.shares.empty()) return;
        Mix bottle;
        bottle.add(reader_.model, addition, addition.shares.front());
        const auto found = too_much_of(reader_.model, bottle, addition.chemical, celsius);
        if (!found) return;
        const Exact at(std::llround(celsius * 10), 10);
        const auto most = saturated_grams_per_ml(reader_.model, addition, {at, at});
        if (!most) return;
        const double percent = most->to_double() * 100;
        report(Kind::stronger_than_saturated, addition.place.span,
               {shown_name(chemical(addition.chemical), addition.form, addition.strength),
                significant_text(percent, 2) + " % w/v", celsius_text(celsius),
                "a strength of at most " + significant_text(two_digits(percent, down), 2) +
                    " % w/v, and as much more of it"});
    }

    // ---- when all is in ----

    void judge_end(const Mix& end, double celsius) {
        for (const auto& solute : end.solutes) {
            const Id id = solute.chemical;
            const auto found = too_much_of(reader_.model, end, id, celsius);
            if (!found) continue;
            never_.push_back(id);
            const double most = *found->dissolved_grams();
            const double more = water_to_dissolve(*found->form, found->mol_per_kg, found->grams()) - found->other_g;
            report(
                Kind::will_not_all_dissolve, place_of(id),
                {name(*found), grams_text(found->grams()), volume_text(end.ml), celsius_text(celsius), about_text(most),
                 "at most " + grams_text(two_digits(most, down)) + " of it, or make at least " +
                     volume_text(two_digits(end.ml + more, up)) + " of it"});
        }
    }

    void judge_cold(const Mix& end) {
        for (const auto& solute : end.solutes) {
            const Id id = solute.chemical;
            const auto found = too_much_of(reader_.model, end, id, cold_celsius);
            if (!found) continue;
            report(Kind::crystals_in_the_cold, place_of(id),
                   {name(*found), grams_text(found->grams()), volume_text(end.ml), celsius_text(cold_celsius),
                    about_text(*found->dissolved_grams())});
        }
    }

    [[nodiscard]] text::Span place_of(Id id) const {
        const auto* line = line_of(id);
        return line == nullptr ? section_.place.span : line->place.span;
    }

    void report(Kind kind, text::Span span, std::initializer_list<std::string_view> arguments) {
        reader_.report(kind, span, arguments);
        reported_ = true;
    }

    Reader& reader_;
    const Section& section_;
    boost::container::small_vector<const Addition*, 8> lines_;
    std::vector<Short> short_of_water_;
    std::vector<Id> never_;  ///< what does not dissolve at the final volume either
    bool has_alkali_ = false;
    bool reported_ = false;
};

}  // namespace

std::unique_ptr<StepJudge> dissolving_judge(Reader& reader, Id section) {
    return std::make_unique<DissolvingJudge>(reader, section);
}

}  // namespace scruple::check
