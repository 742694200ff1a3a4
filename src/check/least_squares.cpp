// SPDX-License-Identifier: MIT
#include "least_squares.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

namespace scruple::check {
namespace {

using Point = std::vector<double>;
using Matrix = std::vector<Point>;

constexpr double good_enough = 1e-10;
constexpr double small_step = 1e-3;
constexpr double longest_step = 1.5;
constexpr int most_rounds = 60;

double squares(const Point& misses) {
    double sum = 0;
    for (const double miss : misses) sum += miss * miss;
    return sum;
}

/// Gauss with pivots; a zero pivot leaves its unknown where it is.
Point solved(Matrix a, Point b) {
    const std::size_t n = b.size();
    for (std::size_t column = 0; column < n; ++column) {
        std::size_t pivot = column;
        for (std::size_t row = column; row < n; ++row)
            if (std::abs(a[row][column]) > std::abs(a[pivot][column])) pivot = row;
        std::swap(a[column], a[pivot]);
        std::swap(b[column], b[pivot]);
        if (a[column][column] == 0) continue;
        for (std::size_t row = 0; row < n; ++row) {
            if (row == column) continue;
            const double factor = a[row][column] / a[column][column];
            for (std::size_t k = column; k < n; ++k) a[row][k] -= factor * a[column][k];
            b[row] -= factor * b[column];
        }
    }
    for (std::size_t i = 0; i < n; ++i) b[i] = a[i][i] == 0 ? 0 : b[i] / a[i][i];
    return b;
}

class Descent {
  public:
    Descent(const Misses& misses, double low, double high) : misses_(misses), low_(low), high_(high) {}

    /// Goes down from `point`; the sum of squares where it stops, or nothing where it cannot begin.
    std::optional<double> run(Point& point) {
        auto here = misses_(point);
        if (!here) return std::nullopt;
        double damping = 1e-2;
        for (int round = 0; round < most_rounds && squares(*here) > good_enough && damping < 1e8; ++round) {
            const auto slopes = slopes_at(point, *here);
            if (!slopes) break;
            const Point next = stepped(point, *slopes, *here, damping);
            const auto there = misses_(next);
            const bool better = there && squares(*there) < squares(*here);
            damping *= better ? 0.2 : 5;
            if (!better) continue;
            point = next;
            here = there;
        }
        return squares(*here);
    }

  private:
    /// One row an unknown.
    std::optional<Matrix> slopes_at(const Point& point, const Point& here) {
        Matrix slopes;
        for (std::size_t i = 0; i < point.size(); ++i) {
            Point aside = point;
            aside[i] += small_step;
            auto there = misses_(aside);
            if (!there) return std::nullopt;
            for (std::size_t k = 0; k < here.size(); ++k) (*there)[k] = ((*there)[k] - here[k]) / small_step;
            slopes.push_back(std::move(*there));
        }
        return slopes;
    }

    [[nodiscard]] Point stepped(const Point& point, const Matrix& slopes, const Point& here, double damping) const {
        const std::size_t n = point.size();
        Matrix normal(n, Point(n, 0.0));
        Point right(n, 0.0);
        for (std::size_t i = 0; i < n; ++i) {
            for (std::size_t k = 0; k < here.size(); ++k) right[i] -= slopes[i][k] * here[k];
            for (std::size_t j = 0; j < n; ++j)
                for (std::size_t k = 0; k < here.size(); ++k) normal[i][j] += slopes[i][k] * slopes[j][k];
            normal[i][i] += damping;
        }
        Point next = solved(std::move(normal), std::move(right));
        for (std::size_t i = 0; i < n; ++i)
            next[i] = std::clamp(point[i] + std::clamp(next[i], -longest_step, longest_step), low_, high_);
        return next;
    }

    const Misses& misses_;
    double low_, high_;
};

/// Starts a coordinate: fewer where there are more of them.
std::size_t starts_for(std::size_t unknowns) {
    constexpr std::array<std::size_t, 4> starts{12, 6, 4, 3};
    return starts[std::min(unknowns, starts.size()) - 1];
}

}  // namespace

std::optional<std::vector<double>> least_squares(const Misses& misses, std::size_t unknowns, double low, double high) {
    const std::size_t each = starts_for(unknowns);
    std::size_t all = 1;
    for (std::size_t i = 0; i < unknowns; ++i) all *= each;
    std::optional<Point> best;
    double least = HUGE_VAL;
    for (std::size_t start = 0; start < all && least > good_enough; ++start) {
        Point point;
        for (std::size_t i = 0, rest = start; i < unknowns; ++i, rest /= each)
            point.push_back(low + (high - low) * (static_cast<double>(rest % each) + 0.5) / static_cast<double>(each));
        const auto sum = Descent(misses, low, high).run(point);
        if (!sum || *sum >= least) continue;
        least = *sum;
        best = point;
    }
    return best;
}

}  // namespace scruple::check
