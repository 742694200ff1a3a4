// SPDX-License-Identifier: MIT
// The same work for many things, side by side, each worker with its own list of what is wrong.
#pragma once

#include <algorithm>
#include <atomic>
#include <thread>
#include <vector>

#include "scruple/diagnostics/diagnostic.hpp"

namespace scruple::check {

/// Calls work(index, diagnostics) for every index below `count`, in pieces, on `workers` threads. What the workers
/// report comes out together; its order is settled later.
template <class Work>
void for_each_index(std::size_t count, unsigned workers, std::vector<diagnostics::Diagnostic>& out, Work work) {
    constexpr std::size_t piece = 64;
    const auto needed = static_cast<unsigned>(std::min<std::size_t>(workers, (count + piece - 1) / piece));
    std::atomic<std::size_t> next{0};
    std::vector<std::vector<diagnostics::Diagnostic>> reported(std::max(needed, 1u));
    const auto run = [&](std::vector<diagnostics::Diagnostic>& mine) {
        for (std::size_t begin = next.fetch_add(piece); begin < count; begin = next.fetch_add(piece)) {
            for (std::size_t i = begin; i < std::min(begin + piece, count); ++i) work(i, mine);
        }
    };
    {
        std::vector<std::jthread> others;
        for (unsigned i = 1; i < needed; ++i) others.emplace_back([&, i] { run(reported[i]); });
        run(reported[0]);
    }
    for (auto& mine : reported) std::ranges::move(mine, std::back_inserter(out));
}

}  // namespace scruple::check
