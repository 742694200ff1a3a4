// SPDX-License-Identifier: MIT
// How much of what takes long is tried.
#pragma once

namespace scruple::test {

#if defined(__SANITIZE_ADDRESS__)
inline constexpr bool sanitized = true;
#elif defined(__has_feature)
#if __has_feature(address_sanitizer)
inline constexpr bool sanitized = true;
#else
inline constexpr bool sanitized = false;
#endif
#else
inline constexpr bool sanitized = false;
#endif

/// `many`, or a tenth with the sanitizers, which look for other faults than these numbers do.
template <class Number>
[[nodiscard]] constexpr Number as_many_as_sensible(Number many) {
    return sanitized ? many / 10 : many;
}

}  // namespace scruple::test
