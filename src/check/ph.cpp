// SPDX-License-Identifier: MIT
#include "scruple/check/ph.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "bath.hpp"

namespace scruple::check {
namespace {

using chemistry::Speciation;

constexpr double worth_saying = 0.05;  // of a pH
constexpr double brought_in = 1e-5;    // mol/kg; about the carbon dioxide that water takes from air
constexpr double fizzing = 0.1;        // atm; a stirred beaker loses a gas that presses so. Common practice, no source
// How much more a pK without an enthalpy may be off a degree away from 25 °C; from what those with one move.
constexpr double per_degree = 0.01;

/// Gathers what makes the range wide.
class Width {
  public:
    void add(double by, std::string why) {
        squares_ += by * by;
        note(std::abs(by), std::move(why));
    }
    void add_fixed(double by, std::string why) {
        fixed_ += by;
        note(by, std::move(why));
    }
    [[nodiscard]] double half() const { return std::sqrt(squares_) + fixed_; }
    [[nodiscard]] std::vector<std::string> reasons() {
        std::ranges::stable_sort(all_, std::ranges::greater{}, &Reason::by);
        std::vector<std::string> texts;
        for (auto& reason : all_) texts.push_back(std::move(reason.why));
        return texts;
    }

  private:
    struct Reason {
        double by;
        std::string why;
    };
    void note(double by, std::string why) {
        if (by >= worth_saying) all_.push_back({by, std::move(why)});
    }
    double squares_ = 0, fixed_ = 0;
    std::vector<Reason> all_;
};

class Finder {
  public:
    Finder(const Model& model, std::span<const Content> contents, const Bath& bath, double celsius)
        : model_(model), contents_(contents), bath_(bath), found_(bath.solve()) {
        ph_.celsius = celsius;
    }

    std::variant<Ph, NoPh> run() {
        if (!found_.converged) return NoPh{"it is too strong a solution to be worked out"};
        ph_.value = found_.ph;
        ph_.ionic_strength = found_.ionic_strength;
        by_constants();
        by_pairs();
        by_amounts();
        by_traces();
        by_model();
        ph_.low = ph_.value - width_.half();
        ph_.high = ph_.value + width_.half();
        ph_.widened_by = width_.reasons();
        by_gases();
        return std::move(ph_);
    }

  private:
    [[nodiscard]] double off(const Speciation& other) const { return other.ph - found_.ph; }

    void by_constants() {
        for (const Id id : bath_.constants()) {
            const auto& constant = model_.acid_base.constants[id];
            double give_or_take = constant.value.give_or_take;
            if (!constant.value.enthalpy) give_or_take += per_degree * std::abs(ph_.celsius - 25);
            width_.add(off(bath_.with_constant(found_, id, give_or_take)),
                       "how well `" + constant.text + "` of " + std::string(model_.chemicals[constant.chemical].name) +
                           " is known");
        }
    }

    void by_pairs() {
        for (std::size_t i = 0; i < bath_.pairs().size(); ++i) {
            const auto& pair = model_.acid_base.pairs[bath_.pairs()[i]];
            const auto name = [this](Id id) { return std::string(model_.acid_base.known[id].text); };
            width_.add(off(bath_.with_pair(found_, i, pair.give_or_take)),
                       "how " + name(pair.one) + " and " + name(pair.other) + " act on each other");
        }
    }

    void by_amounts() {
        for (const auto& content : contents_)
            width_.add(off(bath_.with_content(found_, content, content.give_or_take)),
                       "how exactly " + std::string(model_.chemicals[content.chemical].name) + " is weighed");
    }

    /// What the air and the jars bring decides where nothing holds the pH.
    void by_traces() {
        const double acid = std::abs(off(bath_.with_trace(found_, -1, brought_in)));
        const double alkali = std::abs(off(bath_.with_trace(found_, 1, brought_in)));
        width_.add(std::max(acid, alkali), "traces from the air and the jars, since little in it holds the pH");
    }

    void by_model() {
        const double root = std::sqrt(found_.ionic_strength);
        width_.add_fixed(0.15 * root / (1 + root), "its strength, for which models of activity differ");
        width_.add_fixed(0.3 * found_.davies_share * std::min(found_.ionic_strength, 1.0),
                         "ions without figures for how they act on each other");
    }

    void by_gases() {
        for (const auto& gas : model_.acid_base.gases) {
            if (bath_.pressure(gas, found_) < std::max(fizzing, gas.in_air_atm)) continue;
            const auto open = bath_.open_to(found_, gas);
            const auto name = std::string(model_.acid_base.known[gas.known].text);
            if (std::abs(off(open)) >= worth_saying)
                ph_.widened_by.insert(ph_.widened_by.begin(), "how much " + name + " has left for the air");
            ph_.low = std::min(ph_.low, open.ph - width_.half());
            ph_.high = std::max(ph_.high, open.ph + width_.half());
        }
    }

    const Model& model_;
    std::span<const Content> contents_;
    const Bath& bath_;
    Speciation found_;
    Width width_;
    Ph ph_;
};

}  // namespace

std::variant<Ph, NoPh> ph_of(const Model& model, std::span<const Content> contents, double celsius) {
    const auto bath = Bath::of(model, contents, celsius);
    if (const auto* why = std::get_if<std::string>(&bath)) return NoPh{*why};
    return Finder(model, contents, std::get<Bath>(bath), celsius).run();
}

std::optional<double> ph_value_of(const Model& model, std::span<const Content> contents, double celsius) {
    const auto bath = Bath::of(model, contents, celsius);
    if (!std::holds_alternative<Bath>(bath)) return std::nullopt;
    const auto found = std::get<Bath>(bath).solve();
    return found.converged ? std::optional(found.ph) : std::nullopt;
}

std::string shown(double ph, const Ph& range) {
    const int places = range.high - range.low < 0.2 ? 2 : 1;
    return fmt::format("{:.{}f}", ph, places);
}

}  // namespace scruple::check
