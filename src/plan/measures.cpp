// SPDX-License-Identifier: MIT
#include "measures.hpp"

#include <fmt/format.h>

#include <vector>

namespace scruple::plan {

namespace {

using check::Exact;
using check::Instrument;
using Tool = Instrument::What;

/// Grams or millilitres: how a reading is printed.
using AsRead = Figure (*)(const Exact& printed, const Exact& exact);

Exact reading(const Exact& amount, const Exact& division) {
    const Exact nearest = amount.rounded_to(division);
    return nearest.is_zero() && amount > 0 ? division : nearest;
}

bool holds(const Instrument& instrument, const Exact& amount) {
    return instrument.division > 0 && instrument.capacity >= reading(amount, instrument.division);
}

bool finer(const Instrument& a, const Instrument& b) {
    return a.division != b.division ? a.division < b.division : a.capacity < b.capacity;
}

bool smaller(const Instrument& a, const Instrument& b) {
    return a.capacity != b.capacity ? a.capacity < b.capacity : a.division < b.division;
}

bool holds_more(const Instrument& a, const Instrument& b) {
    return smaller(b, a);
}

bool is_balance(const Instrument& it) {
    return it.what == Tool::balance;
}
bool is_measure(const Instrument& it) {
    return it.what == Tool::graduate || it.what == Tool::syringe;
}
bool is_jug(const Instrument& it) {
    return it.what == Tool::jug;
}
bool is_vessel(const Instrument& it) {
    return it.what != Tool::balance;
}

/// The first by `before` among those of a kind that hold the amount.
template <class Kind, class Before>
const Instrument* best(const check::Bench* bench, Kind kind, Before before, const Exact& amount) {
    const Instrument* found = nullptr;
    if (bench == nullptr) return found;
    for (const Instrument& it : bench->instruments)
        if (kind(it) && holds(it, amount) && (found == nullptr || before(it, *found))) found = &it;
    return found;
}

/// `100 ml`, `2 l`: as it stands on the vessel
std::string capacity_text(const Exact& ml) {
    return ml < 1000 ? plain_ml(ml).with_unit() : plain(ml / 1000, "l").with_unit();
}

std::string name_of(const Instrument& it) {
    switch (it.what) {
        case Tool::balance:
            return "balance " + plain_grams(it.division).with_unit();
        case Tool::graduate:
            return "graduate " + capacity_text(it.capacity);
        case Tool::syringe:
            return "syringe " + capacity_text(it.capacity);
        case Tool::jug:
            return "jug " + capacity_text(it.capacity);
    }
    return {};
}

/// What an instrument cannot read must not stand in large type as if it were wanted: the amount itself, and advice.
void show_unrounded(Figure& figure) {
    const Figure unrounded = plain(figure.exact, figure.unit);
    figure.value = unrounded.value;
    figure.text = unrounded.text;
}

Reading read_on(const Instrument& it, const Exact& amount, AsRead as_read) {
    Reading result{as_read(reading(amount, it.division), amount), "", &it};
    result.figure.instrument = name_of(it);
    if (result.figure.error_percent > badly_off_percent) show_unrounded(result.figure);
    return result;
}

Exact in_base(const Figure& figure) {
    return figure.unit == "kg" || figure.unit == "l" ? figure.value * 1000 : figure.value;
}

constexpr double good_to_percent = 1;  ///< a reading closer than this needs no better one

bool good(const Reading& reading) {
    return reading.figure.error_percent <= good_to_percent;
}

Exact remainder_of(const Exact& amount, const Exact& capacity) {
    return amount - (amount / capacity).floor() * capacity;
}

/// Full loads of an instrument, and `rest` for what remains: `2 × 500 g and 234.6 g`.
std::string loads_text(const Instrument& it, const Exact& full, AsRead as_read, const Reading* rest) {
    const std::string load = as_read(it.capacity, it.capacity).with_unit();
    const std::string loads = full == 1 ? load : fmt::format("{} × {}", quantity::exact_text(full), load);
    return rest == nullptr ? loads : loads + " and " + rest->figure.with_unit();
}

/// An amount past the capacity of an instrument, in loads of it.
Reading in_loads(const Instrument& it, std::string_view word, const Exact& amount, AsRead as_read,
                 const Reading* rest) {
    const Exact full = (amount / it.capacity).floor();
    const Exact printed = full * it.capacity + (rest == nullptr ? Exact() : in_base(rest->figure));
    Reading result{as_read(printed, amount), "", &it};
    result.figure.instrument = name_of(it);
    const Exact count = rest == nullptr ? full : full + 1;
    result.goes = fmt::format("in {} {}: {}", quantity::exact_text(count), word, loads_text(it, full, as_read, rest));
    return result;
}

}  // namespace

const Instrument* Measures::balance_for(const Exact& grams) const {
    return best(bench_, is_balance, finer, grams);
}

const Instrument* Measures::vessel_for(const Exact& ml) const {
    const Instrument* measure = best(bench_, is_measure, smaller, ml);
    return measure != nullptr ? measure : best(bench_, is_jug, smaller, ml);
}

Reading Measures::weighed(const Exact& grams) const {
    if (const Instrument* balance = balance_for(grams)) return read_on(*balance, grams, grams_as_read);
    const Instrument* largest = best(bench_, is_balance, holds_more, 0);
    if (largest == nullptr) return {plain_grams(grams), "", nullptr};
    const Exact remainder = remainder_of(grams, largest->capacity);
    if (remainder.is_zero()) return in_loads(*largest, "goes", grams, grams_as_read, nullptr);
    const Reading rest = weighed(remainder);
    return in_loads(*largest, "goes", grams, grams_as_read, &rest);
}

Reading Measures::in_fills(const Instrument& vessel, const Exact& ml) const {
    const Exact remainder = remainder_of(ml, vessel.capacity);
    if (remainder.is_zero()) return in_loads(vessel, "fills", ml, ml_as_read, nullptr);
    const Reading rest = measured(remainder);
    return in_loads(vessel, "fills", ml, ml_as_read, &rest);
}

/// In a few fills of the largest graduate, where the amount is past it and they come within 1 %.
std::optional<Reading> Measures::in_graduate_fills(const Exact& ml) const {
    const Instrument* graduate = best(bench_, is_measure, holds_more, 0);
    if (graduate == nullptr || ml <= graduate->capacity || ml > check::most_fills * graduate->capacity)
        return std::nullopt;
    Reading fills = in_fills(*graduate, ml);
    return good(fills) ? std::optional(std::move(fills)) : std::nullopt;
}

Reading Measures::measured(const Exact& ml) const {
    if (const Instrument* vessel = vessel_for(ml)) {
        Reading reading = read_on(*vessel, ml, ml_as_read);
        if (good(reading)) return reading;
        return in_graduate_fills(ml).value_or(std::move(reading));
    }
    const Instrument* largest = best(bench_, is_vessel, holds_more, 0);
    return largest == nullptr ? Reading{plain_ml(ml), "", nullptr} : in_fills(*largest, ml);
}

Reading Measures::made_up(const Exact& ml) const {
    if (!has_bench()) return measured(ml);
    const Instrument* vessel = vessel_for(ml);
    if (vessel == nullptr) return {plain_ml(ml), "by the mark of the tank: no vessel of the bench holds it", nullptr};
    Reading reading = read_on(*vessel, ml, ml_as_read);
    if (good(reading)) return reading;
    if (const auto fills = in_graduate_fills(ml))
        return {fills->figure, "to a mark made before you begin: water measured " + fills->goes, nullptr};
    return reading;
}

Reading Measures::dropped(const Exact& drops) const {
    const Exact whole = reading(drops, 1);
    Reading result{plain(drops, whole == 1 ? "drop" : "drops"), "", nullptr};
    result.figure.value = whole;
    result.figure.text = quantity::exact_text(whole);
    if (!drops.is_zero()) result.figure.error_percent = (quantity::magnitude(whole - drops) / drops * 100).to_double();
    if (bench_ != nullptr && bench_->drops_per_ml) result.figure.instrument = "dropper";
    return result;
}

bool badly_measured(const Reading& measured) {
    if (measured.instrument == nullptr || measured.figure.exact.is_zero()) return false;
    if (measured.figure.error_percent > badly_off_percent) return true;
    const Exact half_division = measured.instrument->division / 2;
    return measured.goes.empty() && half_division * 100 > in_base(measured.figure) * badly_off_percent;
}

}  // namespace scruple::plan
