// SPDX-License-Identifier: MIT
#include "search.hpp"

#include <algorithm>
#include <limits>

namespace scruple::printed {

namespace {

constexpr double never = std::numeric_limits<double>::infinity();

std::size_t least_at(const std::vector<double>& costs) {
    return static_cast<std::size_t>(std::ranges::min_element(costs) - costs.begin());
}

}  // namespace

Search::Search(const std::vector<Known>& lines, const std::vector<Shared>& shared, const CostOfLine& cost)
    : lines_(lines), shared_(shared) {
    for (const Shared& one : shared) {
        double total = one.cost;
        auto& of_lines = costs_.emplace_back();
        for (std::size_t i = 0; i < lines.size(); ++i) {
            auto& of_ways = of_lines.emplace_back();
            for (const Way& way : lines[i].ways) of_ways.push_back(way.cost + cost(i, way, one));
            total += *std::ranges::min_element(of_ways);
        }
        totals_.push_back(total);
    }
    best_shared_ = least_at(totals_);
    best_ = under(best_shared_);
}

Found Search::under(std::size_t shared) const {
    Found found{shared_[shared], {}, totals_[shared]};
    for (const auto& of_ways : costs_[shared]) found.ways.push_back(least_at(of_ways));
    return found;
}

double Search::least(const std::function<bool(const Shared&)>& allowed) const {
    double least = never;
    for (std::size_t s = 0; s < shared_.size(); ++s)
        if (allowed(shared_[s])) least = std::min(least, totals_[s]);
    return least;
}

double Search::least_of_line(std::size_t line, const std::function<bool(const Way&)>& allowed) const {
    double least = never;
    for (std::size_t s = 0; s < shared_.size(); ++s) {
        const auto& of_ways = costs_[s][line];
        const double others = totals_[s] - *std::ranges::min_element(of_ways);
        for (std::size_t w = 0; w < of_ways.size(); ++w)
            if (allowed(lines_[line].ways[w])) least = std::min(least, others + of_ways[w]);
    }
    return least;
}

}  // namespace scruple::printed
