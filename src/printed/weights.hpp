// SPDX-License-Identifier: MIT
// What speaks for and against a reading, kept apart by what it comes from.
#pragma once

#include <array>
#include <cstdint>
#include <numeric>
#include <string_view>

namespace scruple::printed {

enum class Evidence : std::uint8_t { habit, book, name, columns, dissolving, usual, acidity };
inline constexpr std::size_t kinds_of_evidence = 7;

/// Costs: negative natural logarithms, 0 for what is no worse than the best.
class Weights {
  public:
    Weights() = default;
    Weights(Evidence of, double cost) { (*this)[of] = cost; }

    double& operator[](Evidence of) { return all_[static_cast<std::size_t>(of)]; }
    double operator[](Evidence of) const { return all_[static_cast<std::size_t>(of)]; }
    Weights& operator+=(const Weights& other) {
        for (std::size_t i = 0; i < all_.size(); ++i) all_[i] += other.all_[i];
        return *this;
    }
    Weights& operator-=(const Weights& other) {
        for (std::size_t i = 0; i < all_.size(); ++i) all_[i] -= other.all_[i];
        return *this;
    }
    [[nodiscard]] double sum() const { return std::accumulate(all_.begin(), all_.end(), 0.0); }

  private:
    std::array<double, kinds_of_evidence> all_{};
};

inline Weights operator+(Weights one, const Weights& other) {
    return one += other;
}

}  // namespace scruple::printed
