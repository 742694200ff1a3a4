// SPDX-License-Identifier: MIT
// The instruments of a bench, and what each reads.
#pragma once

#include <optional>
#include <string>

#include "scruple/check/model.hpp"
#include "scruple/plan/figure.hpp"

namespace scruple::plan {

/// What to weigh or measure out. `goes` says how, where no instrument holds it at once: `in 3 goes: 2 × 500 g and 200
/// g`.
struct Reading {
    Figure figure;
    std::string goes;
    const check::Instrument* instrument = nullptr;  ///< nullptr: no bench, or nothing of the kind on it
};

/// The bench as its balances and graduates see an amount. Without a bench every figure is a plain one.
class Measures {
  public:
    explicit Measures(const check::Bench* bench) : bench_(bench) {}

    /// On the finest balance that holds it, else in goes on the largest.
    [[nodiscard]] Reading weighed(const check::Exact& grams) const;
    /// In the smallest graduate or syringe that holds it, else the smallest jug; where that is off by more than 1 %, in
    /// a few fills of the largest graduate; what no vessel holds, in fills of the largest of all.
    [[nodiscard]] Reading measured(const check::Exact& ml) const;
    /// A final volume: read on the vessel it is in; where that is off by more than 1 %, to a mark made beforehand with
    /// water measured in fills; by the mark of the tank where nothing on the bench holds it.
    [[nodiscard]] Reading made_up(const check::Exact& ml) const;
    /// Whole drops, at least one.
    [[nodiscard]] Reading dropped(const check::Exact& drops) const;

    [[nodiscard]] bool has_bench() const { return bench_ != nullptr; }
    [[nodiscard]] const check::Bench* bench() const { return bench_; }
    [[nodiscard]] const check::Instrument* balance_for(const check::Exact& grams) const;
    [[nodiscard]] const check::Instrument* vessel_for(const check::Exact& ml) const;

  private:
    [[nodiscard]] Reading in_fills(const check::Instrument& vessel, const check::Exact& ml) const;
    [[nodiscard]] std::optional<Reading> in_graduate_fills(const check::Exact& ml) const;

    const check::Bench* bench_;
};

/// Half a division more than this of an amount, or a rounding past it, is not well measured.
inline constexpr int badly_off_percent = 5;

/// Is the amount rounded by more than 5 %, or can the instrument read it no closer than that?
[[nodiscard]] bool badly_measured(const Reading& measured);

}  // namespace scruple::plan
