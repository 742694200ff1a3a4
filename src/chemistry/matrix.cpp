// SPDX-License-Identifier: MIT
#include "matrix.hpp"

#include <algorithm>
#include <cstdint>

namespace scruple::chemistry {

using quantity::Exact;

namespace {

void subtract(Vector& from, const Vector& row, const Exact& times) {
    for (std::size_t i = 0; i < from.size(); ++i)
        if (!row[i].is_zero()) from[i] -= times * row[i];
}

void divide(Vector& row, const Exact& by) {
    for (Exact& entry : row) entry /= by;
}

/// Brings the matrix to reduced rows, each headed by a 1 alone in its column; gives the columns of the heads.
std::vector<std::size_t> reduce(Matrix& matrix, std::size_t columns) {
    std::vector<std::size_t> heads;
    for (std::size_t column = 0; column < columns && heads.size() < matrix.size(); ++column) {
        const auto next = matrix.begin() + static_cast<std::ptrdiff_t>(heads.size());
        const auto pivot =
            std::find_if(next, matrix.end(), [column](const Vector& row) { return !row[column].is_zero(); });
        if (pivot == matrix.end()) continue;
        std::iter_swap(next, pivot);
        divide(*next, Exact((*next)[column]));
        for (auto row = matrix.begin(); row != matrix.end(); ++row)
            if (row != next && !(*row)[column].is_zero()) subtract(*row, *next, Exact((*row)[column]));
        heads.push_back(column);
    }
    return heads;
}

using Support = std::uint32_t;

Support support_of(const Vector& vector) {
    Support support = 0;
    for (std::size_t i = 0; i < vector.size(); ++i)
        if (!vector[i].is_zero()) support |= Support{1} << i;
    return support;
}

Exact product(const Vector& a, const Vector& b) {
    Exact sum;
    for (std::size_t i = 0; i < a.size(); ++i)
        if (!a[i].is_zero() && !b[i].is_zero()) sum += a[i] * b[i];
    return sum;
}

/// The mixture of two vectors, one on either side of an equation, that lies on it.
Vector meeting(const Vector& above, const Exact& height, const Vector& below, const Exact& depth) {
    Vector result(above.size());
    for (std::size_t i = 0; i < result.size(); ++i) result[i] = above[i] * depth + below[i] * height;
    return in_smallest_whole_numbers(std::move(result));
}

/// Those that need no more than others do: of two with the same support one, and none whose support holds another's.
std::vector<Vector> without_mixtures(const std::vector<Vector>& all) {
    std::vector<Support> supports;
    supports.reserve(all.size());
    for (const Vector& vector : all) supports.push_back(support_of(vector));
    std::vector<Vector> kept;
    for (std::size_t i = 0; i < all.size(); ++i) {
        bool mixture = false;
        for (std::size_t j = 0; j < all.size() && !mixture; ++j) {
            const bool held = (supports[j] & supports[i]) == supports[j];
            mixture = j != i && held && (supports[j] != supports[i] || j < i);
        }
        if (!mixture) kept.push_back(all[i]);
    }
    return kept;
}

std::vector<Vector> cut(const std::vector<Vector>& edges, const Vector& equation) {
    std::vector<Vector> result;
    std::vector<std::pair<const Vector*, Exact>> above, below;
    for (const Vector& edge : edges) {
        const Exact height = product(equation, edge);
        if (height.is_zero())
            result.push_back(edge);
        else
            (height > 0 ? above : below).emplace_back(&edge, quantity::magnitude(height));
    }
    for (const auto& [up, height] : above)
        for (const auto& [down, depth] : below) result.push_back(meeting(*up, height, *down, depth));
    return without_mixtures(result);
}

/// The largest number of which both are whole multiples (Euclid); fractions have one too.
Exact common_measure(Exact a, Exact b) {
    while (!b.is_zero()) {
        Exact rest = a - (a / b).floor() * b;
        a = std::move(b);
        b = std::move(rest);
    }
    return a;
}

}  // namespace

std::vector<Vector> null_space(Matrix matrix, std::size_t columns) {
    const std::vector<std::size_t> heads = reduce(matrix, columns);
    std::vector<Vector> basis;
    for (std::size_t free = 0; free < columns; ++free) {
        if (std::ranges::find(heads, free) != heads.end()) continue;
        Vector vector(columns);
        vector[free] = 1;
        for (std::size_t row = 0; row < heads.size(); ++row) vector[heads[row]] = -matrix[row][free];
        basis.push_back(std::move(vector));
    }
    return basis;
}

std::vector<Vector> edges_of_cone(const Matrix& matrix, std::size_t columns) {
    std::vector<Vector> edges;
    for (std::size_t i = 0; i < columns; ++i) {
        edges.emplace_back(columns);
        edges.back()[i] = 1;
    }
    for (const Vector& equation : matrix) edges = cut(edges, equation);
    return edges;
}

Vector in_smallest_whole_numbers(Vector vector) {
    Exact measure;
    for (const Exact& entry : vector) measure = common_measure(quantity::magnitude(entry), measure);
    if (!measure.is_zero()) divide(vector, measure);
    return vector;
}

}  // namespace scruple::chemistry
