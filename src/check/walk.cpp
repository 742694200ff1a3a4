// SPDX-License-Identifier: MIT
#include "walk.hpp"

#include <algorithm>
#include <utility>

#include "blocks.hpp"

namespace scruple::check {
namespace {

constexpr double room_celsius = 20;

}  // namespace

Walk::Held Walk::Held::part(double share) const {
    Held some{.begun = share > 0};
    if (share > 0) some.mix.add(mix, share);
    return some;
}

void Walk::run(const std::function<void(const Step&)>& see) {
    see_ = &see;
    for (std::uint32_t line = 0; line < section_.lines.size(); ++line) {
        std::visit(
            overloaded{[&](const Addition& addition) {
                           if (!addition.optional) step(line, &addition, [&](Mix& mix) { put(mix, addition); });
                       },
                       [&](const Action& action) { act(action); }, [&](const VesselMove& move) { take(line, move); }},
            section_.lines[line]);
    }
}

void Walk::take(std::uint32_t line, const VesselMove& move) {
    if (const auto poured = vessels_.move(move))
        step(line, nullptr, [&](Mix& mix) { mix.add(poured->contents.mix, 1); });
}

void Walk::step(std::uint32_t line, const Addition* addition, const std::function<void(Mix&)>& put_in) {
    auto& [mix, begun] = vessels_.open();
    before_ = mix;
    const bool fresh = !std::exchange(begun, true);
    put_in(mix);
    const bool known = addition != nullptr && addition->chemical != none;
    const auto purposes = known ? model_.chemicals[addition->chemical].purposes : Purposes{};
    mix.purposes |= purposes;
    (*see_)({line, addition, before_, mix, fresh, purposes});
}

void Walk::put(Mix& mix, const Addition& addition) {
    const bool makes_up = addition.how == Addition::How::to_make;
    if (makes_up && vessels_.main_is_open() && addition.at) end_celsius_ = warmth_of(addition).low;
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
    auto& celsius = vessels_.open().mix.celsius;
    if (action.verb == Action::Verb::stand) celsius = {room_celsius, room_celsius};
    const bool cools = action.verb == Action::Verb::cool, warms = action.verb == Action::Verb::warm;
    if ((!cools && !warms) || !action.celsius) return;
    const double low = action.celsius->low.to_double(), high = action.celsius->high.to_double();
    celsius = {action.toward == Action::Toward::below ? std::min(low, room_celsius) : low, high};
    if (vessels_.main_is_open()) end_celsius_ = cools ? celsius.low : room_celsius;
}

}  // namespace scruple::check
