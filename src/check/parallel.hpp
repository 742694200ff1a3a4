// SPDX-License-Identifier: MIT
// The same work for many things, side by side, each worker with its own list of what is wrong.
#pragma once

#include <iterator>

#include "scruple/diagnostics/diagnostic.hpp"
#include "scruple/text/side_by_side.hpp"

namespace scruple::check {

struct Worker {
    std::vector<diagnostics::Diagnostic>& out;
    unsigned number;  ///< from 0
};

/// Calls work(index, worker) for every index below `count`, so many of a `piece` at a time, on `workers` threads. What
/// the workers report comes out together; its order is settled later.
template <class Work>
void for_each_index(std::size_t count, unsigned workers, std::vector<diagnostics::Diagnostic>& out, Work work,
                    std::size_t piece = 64) {
    std::vector<std::vector<diagnostics::Diagnostic>> reported(text::workers_for(count, workers, piece));
    text::side_by_side(count, workers, piece, [&](std::size_t i, unsigned worker) {
        work(i, Worker{reported[worker], worker});
    });
    for (auto& mine : reported) std::ranges::move(mine, std::back_inserter(out));
}

}  // namespace scruple::check
