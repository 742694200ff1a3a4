// SPDX-License-Identifier: MIT
#include "held_batches.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "lasting.hpp"
#include "log.hpp"
#include "scruple/plan/calendar.hpp"
#include "shopping_steps.hpp"

namespace scruple::plan {

using check::Exact;

HeldBatches::HeldBatches(const check::Model& model, check::Day on) : model_(model) {
    const Lots lots = lots_on(model, on);
    for (const auto& [what, pile] : lots.piles) {
        if (what.solution == check::none) continue;
        for (const LotId id : pile.lots) {
            const Lot& lot = lots.lots[id];
            const Exact ml = usable(lot);
            if (ml <= 0) continue;
            Batch batch{.last = {}, .ml = ml, .at_first = ml};
            const check::LogEntry& line = model.log[lot.line];
            if (line.what == check::LogEntry::What::mixed)
                batch.last = use_by(model.sections[what.solution], line.day, 0).day;
            batches_[what.solution].push_back(std::move(batch));
        }
    }
}

Exact HeldBatches::take(check::Id solution, check::Day day, const Exact& ml) {
    Exact wanting = ml;
    for (Batch& batch : batches_[solution]) {
        if (wanting <= 0) break;
        if (batch.ml <= 0) continue;
        batch.too_old = batch.too_old || (batch.last && *batch.last < day);
        if (batch.too_old) continue;
        const Exact taken = std::min(batch.ml, wanting);
        batch.ml -= taken;
        wanting -= taken;
        if (batch.ml <= 0) batch.emptied = day;
    }
    return ml - wanting;
}

std::vector<HeldBatches::Standing> HeldBatches::standing() const {
    std::vector<Standing> all;
    for (const auto& [solution, batches] : batches_)
        for (const Batch& batch : batches) all.push_back({batch.at_first, batch.too_old ? batch.last : batch.emptied});
    return all;
}

std::vector<std::string> HeldBatches::passed_over() const {
    std::vector<std::string> lines;
    for (const auto& [solution, batches] : batches_)
        for (const Batch& batch : batches)
            if (batch.too_old && batch.ml > 0)
                lines.push_back(fmt::format("{} of {} on hand is not used after {}, its last day",
                                            rounded_down(batch.ml, true).with_unit(),
                                            check::shown_name(model_, solution), day_text(*batch.last)));
    return lines;
}

}  // namespace scruple::plan
