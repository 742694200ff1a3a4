// SPDX-License-Identifier: MIT
#include "walk.hpp"

#include <algorithm>
#include <utility>

#include "blocks.hpp"

namespace scruple::check {
namespace {

constexpr double room_celsius = 20;

}  // namespace

void Walk::run(const std::function<void(const Step&)>& see) {
    see_ = &see;
    for (std::uint32_t line = 0; line < section_.lines.size(); ++line) {
        std::visit(overloaded{[&](const Addition& addition) {
                                  if (!addition.optional) step(line, &addition, nullptr);
                              },
                              [&](const Action& action) { act(action); },
                              [&](const VesselMove& move) {
                                  shift(move);
                                  if (move.what == VesselMove::What::pour_in) step(line, nullptr, &move);
                              }},
                   section_.lines[line]);
    }
}

void Walk::step(std::uint32_t line, const Addition* addition, const VesselMove* move) {
    before_ = vessels_[open_].mix;
    const bool fresh = !std::exchange(vessels_[open_].begun, true);
    if (addition != nullptr) {
        put(vessels_[open_].mix, *addition);
    } else {
        pour(*move);
    }
    const bool known = addition != nullptr && addition->chemical != none;
    const auto purposes = known ? model_.chemicals[addition->chemical].purposes : Purposes{};
    vessels_[open_].mix.purposes |= purposes;
    (*see_)({line, addition, before_, vessels_[open_].mix, fresh, purposes});
}

void Walk::put(Mix& mix, const Addition& addition) {
    const bool makes_up = addition.how == Addition::How::to_make;
    if (makes_up && open_ == 0 && addition.at) end_celsius_ = warmth_of(addition).low;
    if (addition.shares.empty() || addition.by_conversion) mix.vague = true;
    if (addition.shares.empty()) return;
    const Exact measure = measure_now(addition, variant_);
    if (makes_up) {
        mix.vague = false;  // whatever came before, the mark settles how much solvent there is
        mix.fill_up(model_, addition, measure.to_double());
    } else if (addition.solution != none) {
        const auto& part = table_.of(addition.solution);
        mix.vague = mix.vague || !part.whole;
        mix.add(model_, part.contents, measure.to_double(), warmth_of(addition));
    } else {
        mix.add(model_, addition, measure);
    }
}

void Walk::act(const Action& action) {
    auto& celsius = vessels_[open_].mix.celsius;
    if (action.verb == Action::Verb::stand) celsius = {room_celsius, room_celsius};
    const bool cools = action.verb == Action::Verb::cool, warms = action.verb == Action::Verb::warm;
    if ((!cools && !warms) || !action.celsius) return;
    const double low = action.celsius->low.to_double(), high = action.celsius->high.to_double();
    celsius = {action.toward == Action::Toward::below ? std::min(low, room_celsius) : low, high};
    if (open_ == 0) end_celsius_ = cools ? celsius.low : room_celsius;
}

void Walk::shift(const VesselMove& move) {
    open_ = move.what == VesselMove::What::apart ? find(move.vessel) : 0;
    auto& vessel = vessels_[open_];
    if (open_ == 0 || vessel.left == 1) return;
    Mix rest;
    if (vessel.left > 0) rest.add(vessel.mix, vessel.left);
    vessel = {.name = vessel.name, .mix = rest, .begun = vessel.left > 0};
}

void Walk::pour(const VesselMove& move) {
    auto& from = vessels_[find(move.vessel)];
    double share = from.left;
    if (move.share) share = move.share->to_double();
    if (move.ml) share = from.mix.ml > 0 ? move.ml->to_double() / from.mix.ml : 0;
    share = std::min(share, from.left);
    from.left -= share;
    vessels_[0].mix.add(from.mix, share);
}

std::size_t Walk::find(std::string_view name) {
    for (std::size_t i = 1; i < vessels_.size(); ++i)
        if (vessels_[i].name == name) return i;
    vessels_.push_back({.name = name});
    return vessels_.size() - 1;
}

}  // namespace scruple::check
