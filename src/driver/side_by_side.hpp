// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <atomic>
#include <cstddef>
#include <exception>
#include <mutex>
#include <thread>
#include <vector>

namespace scruple::driver {

/// Calls `job(i)` for every i below `count`, on as many threads as the machine has cores. An exception of
/// any of them comes out here, after all threads have ended.
template <class Job>
void side_by_side(std::size_t count, const Job& job) {
    std::atomic<std::size_t> next{0};
    std::exception_ptr failure;
    std::once_flag first_failure;
    const auto work = [&] {
        try {
            for (std::size_t i = next++; i < count; i = next++) job(i);
        } catch (...) {
            std::call_once(first_failure, [&] { failure = std::current_exception(); });
        }
    };
    {
        const std::size_t cores = std::max(1u, std::thread::hardware_concurrency());
        std::vector<std::jthread> helpers;
        for (std::size_t n = 1; n < std::min(cores, count); ++n) helpers.emplace_back(work);
        work();
    }
    if (failure) std::rethrow_exception(failure);
}

}  // namespace scruple::driver
