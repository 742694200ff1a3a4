// SPDX-License-Identifier: MIT
#include "kind_samples.hpp"

#include <algorithm>

namespace scruple::cli {
namespace {

constexpr KindSample samples[] = {
#include "kind_samples.inc"
};

}  // namespace

const KindSample* sample_of(std::string_view kind) {
    const auto* found = std::ranges::find(samples, kind, &KindSample::kind);
    return found == std::end(samples) ? nullptr : found;
}

}  // namespace scruple::cli
