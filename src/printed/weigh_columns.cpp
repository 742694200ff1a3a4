// SPDX-License-Identifier: MIT
#include "weigh_columns.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace scruple::printed {

namespace {

constexpr double rounded = 0.70, rounder = 0.27, slipped = 0.03;
constexpr double deviation = 0.05;
constexpr double least_width = 0.003;           ///< of a figure: tables of equivalents were themselves rounded
constexpr double slip_density = 1 / (2 * 6.9);  ///< over a thousandfold either way, by logarithm

}  // namespace

double cost_of_printing(double printed, double step, double exact) {
    const double off = std::log(printed / exact);
    const double width = std::max(step / 2 / printed, least_width);
    const double within = std::abs(off) <= width ? 1 / (2 * width) : 0;
    const double z = off / deviation;
    const double near = std::exp(-z * z / 2) / (deviation * std::sqrt(2 * std::numbers::pi));
    return -std::log(rounded * within + rounder * near + slipped * slip_density);
}

}  // namespace scruple::printed
