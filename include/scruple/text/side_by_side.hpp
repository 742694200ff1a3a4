// SPDX-License-Identifier: MIT
// The same work for many things on several threads. It stands on the lowest rung because rungs far apart need it.
#pragma once

#include <algorithm>
#include <atomic>
#include <cstddef>
#include <exception>
#include <mutex>
#include <system_error>
#include <thread>
#include <vector>

namespace scruple::text {

/// As many threads as the machine has cores, for those who name no number.
inline unsigned all_cores() {
    return std::max(1u, std::thread::hardware_concurrency());
}

/// How many threads share `count` things handed out `piece` at a time: `workers` at most, and one at least.
inline unsigned workers_for(std::size_t count, unsigned workers, std::size_t piece) {
    const std::size_t pieces = (count + piece - 1) / piece;
    return static_cast<unsigned>(std::clamp<std::size_t>(pieces, 1, std::max(workers, 1u)));
}

/// Calls `job(i, worker)` for every i below `count`, handed out `piece` at a time, on workers_for(…) threads that are
/// numbered from 0. An exception of any of them comes out here, after all threads have ended.
template <class Job>
void side_by_side(std::size_t count, unsigned workers, std::size_t piece, const Job& job) {
    std::atomic<std::size_t> next{0};
    std::exception_ptr failure;
    std::once_flag first_failure;
    const auto work = [&](unsigned worker) {
        try {
            for (std::size_t begin = next.fetch_add(piece); begin < count; begin = next.fetch_add(piece)) {
                for (std::size_t i = begin; i < std::min(begin + piece, count); ++i) job(i, worker);
            }
        } catch (...) {
            std::call_once(first_failure, [&] { failure = std::current_exception(); });
        }
    };
    {
        std::vector<std::jthread> helpers;
        try {
            for (unsigned i = 1; i < workers_for(count, workers, piece); ++i) helpers.emplace_back(work, i);
        } catch (const std::system_error&) {
            // Where there is no room for one more, those that there are do it.
        }
        work(0);
    }
    if (failure) std::rethrow_exception(failure);
}

}  // namespace scruple::text
