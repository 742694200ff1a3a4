// SPDX-License-Identifier: MIT
#include "lot_costs.hpp"

namespace scruple::plan {

using check::Exact;
using check::Model;

namespace {

/// The wanted ones and all that went into them. What goes into a lot was there before it.
std::set<LotId> with_sources(const Lots& all, const std::vector<LotId>& wanted) {
    std::set<LotId> needed(wanted.begin(), wanted.end());
    std::vector<LotId> open(needed.begin(), needed.end());
    while (!open.empty()) {
        const Lot& lot = all.lots[open.back()];
        open.pop_back();
        for (auto i = lot.first; i < lot.end; ++i)
            if (needed.insert(all.pourings[i].of).second) open.push_back(all.pourings[i].of);
    }
    return needed;
}

/// Rounded far below a cent, so that the numbers stay short however many jars there were.
void add_share(Worth& sum, const Worth& of, const Exact& share) {
    for (const auto& [currency, value] : of.sums) sum.sums[currency] += (value * share).rounded_to({1, 1000000000});
    sum.unpriced.insert(of.unpriced.begin(), of.unpriced.end());
}

}  // namespace

std::map<LotId, Worth> worth_of(const Model& model, const Lots& all, const std::vector<LotId>& wanted) {
    std::map<LotId, Worth> known;
    for (const LotId id : with_sources(all, wanted)) {
        const Lot& lot = all.lots[id];
        const check::LogEntry& line = model.log[lot.line];
        Worth& worth = known[id];
        if (line.what != check::LogEntry::What::mixed) {
            if (line.price)
                worth.sums[line.price->currency] += line.price->value;
            else
                worth.unpriced.insert(lot.what);
            continue;
        }
        for (auto i = lot.first; i < lot.end; ++i) {
            const Pouring& part = all.pourings[i];
            add_share(worth, known.at(part.of), part.measure / all.lots[part.of].made);
        }
        for (const Shortage& shortage : of_line(all.shortages, lot.line)) worth.unpriced.insert(shortage.what);
    }
    return known;
}

}  // namespace scruple::plan
