// SPDX-License-Identifier: MIT
#include "bottle_rack.hpp"

#include <algorithm>

#include "scruple/plan/mixing_calendar.hpp"

namespace scruple::plan {

using check::Bottle;
using check::Day;
using check::Exact;

BottleRack::BottleRack(const std::vector<Bottle>& bottles) : free_(bottles) {}

std::optional<Bottling> BottleRack::fill(const Exact& ml, Day from, Day up_to) {
    if (free_.empty() || ml <= 0) return Bottling{};
    take_back(from);
    Bottling bottles = bottles_for(ml, free_);
    if (bottles.empty()) return std::nullopt;
    for (const auto& [count, size] : bottles) {
        Bottle& kind = *std::ranges::find(free_, size, &Bottle::ml);
        if (kind.count) *kind.count -= count;
    }
    taken_.push_back({up_to, bottles});
    return bottles;
}

/// What is emptied on a day can be filled again on the next.
void BottleRack::take_back(Day before) {
    std::erase_if(taken_, [&](const Taken& one) {
        if (one.up_to >= before) return false;
        for (const auto& [count, size] : one.bottles) {
            Bottle& kind = *std::ranges::find(free_, size, &Bottle::ml);
            if (kind.count) *kind.count += count;
        }
        return true;
    });
}

}  // namespace scruple::plan
