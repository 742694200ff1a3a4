// SPDX-License-Identifier: MIT
#include "scruple/chemistry/balance.hpp"

#include <algorithm>
#include <numeric>

#include "elements.hpp"
#include "matrix.hpp"

namespace scruple::chemistry {

using quantity::Exact;

namespace {

/// One row an element and one for the charge; the left counts down, so that a balance is what comes to nothing.
Matrix matrix_of(const std::vector<Formula>& left, const std::vector<Formula>& right) {
    const std::size_t columns = left.size() + right.size();
    Matrix rows(element_count + 1, Vector(columns));
    const auto fill = [&rows](const Formula& formula, std::size_t column, int sign) {
        for (const auto& [element, atoms] : formula.atoms) rows[element][column] = Exact(sign) * atoms;
        rows[element_count][column] = Exact(sign) * formula.charge;
    };
    for (std::size_t i = 0; i < left.size(); ++i) fill(left[i], i, -1);
    for (std::size_t i = 0; i < right.size(); ++i) fill(right[i], left.size() + i, 1);
    std::erase_if(rows, [](const Vector& row) { return std::ranges::all_of(row, &Exact::is_zero); });
    return rows;
}

Coefficients turning_fewest(Vector vector) {
    const auto below = std::ranges::count_if(vector, [](const Exact& entry) { return entry < 0; });
    const auto above = std::ranges::count_if(vector, [](const Exact& entry) { return entry > 0; });
    if (below > above)
        for (Exact& entry : vector) entry = -entry;
    return in_smallest_whole_numbers(std::move(vector));
}

constexpr int largest_tried = 12;
constexpr std::size_t most_freedom_tried = 3;

/// Counts up the digits of a number to the base `largest_tried`, from ones; false after the last.
bool count_up(std::vector<int>& digits) {
    for (int& digit : digits) {
        if (++digit <= largest_tried) return true;
        digit = 1;
    }
    return false;
}

Vector mixture(const std::vector<Vector>& basis, const std::vector<int>& shares) {
    Vector sum(basis.front().size());
    for (std::size_t i = 0; i < basis.size(); ++i)
        for (std::size_t j = 0; j < sum.size(); ++j) sum[j] += basis[i][j] * shares[i];
    return sum;
}

/// Each vector of the basis has a 1 where the others have 0, so that the shares are numbers of the reaction themselves.
Coefficients smallest_of_all(const std::vector<Vector>& basis) {
    if (basis.size() < 2 || basis.size() > most_freedom_tried) return {};
    const auto counts = [](const Exact& entry) { return entry > 0 && entry <= largest_tried && entry.is_whole(); };
    Coefficients best;
    Exact least;
    std::vector<int> shares(basis.size(), 1);
    do {
        Vector tried = mixture(basis, shares);
        const Exact sum = std::accumulate(tried.begin(), tried.end(), Exact());
        if (!std::ranges::all_of(tried, counts) || (!best.empty() && sum >= least)) continue;
        best = std::move(tried);
        least = sum;
    } while (count_up(shares));
    return best;
}

}  // namespace

const Coefficients* Balances::only() const {
    const bool one = ways.size() == 1 && std::ranges::none_of(ways.front(), &Exact::is_zero);
    return one ? &ways.front() : nullptr;
}

Balances balances(const std::vector<Formula>& left, const std::vector<Formula>& right) {
    const std::size_t columns = left.size() + right.size();
    if (columns > most_substances) return {};
    const Matrix matrix = matrix_of(left, right);
    std::vector<Vector> basis = null_space(matrix, columns);
    Balances result{edges_of_cone(matrix, columns), basis.size(), {}, smallest_of_all(basis)};
    if (result.ways.empty() && basis.size() == 1) result.turned = turning_fewest(std::move(basis.front()));
    return result;
}

}  // namespace scruple::chemistry
