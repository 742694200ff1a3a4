// SPDX-License-Identifier: MIT
#include "search.hpp"

#include <algorithm>
#include <limits>

namespace scruple::printed {

namespace {

constexpr double never = std::numeric_limits<double>::infinity();

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
    best_ = *best_of([](const Shared&) { return true; });
}

Found Search::under(std::size_t shared, bool of_the_page) const {
    Found found{shared_[shared], {}, shared_[shared].cost};
    for (std::size_t i = 0; i < lines_.size(); ++i) {
        std::size_t best = 0;
        double least = never;
        for (std::size_t w = 0; w < lines_[i].ways.size(); ++w) {
            if ((of_the_page && lines_[i].ways[w].other_ounce) || costs_[shared][i][w] >= least) continue;
            best = w;
            least = costs_[shared][i][w];
        }
        found.ways.push_back(best);
        found.cost += least;
    }
    return found;
}

std::optional<Found> Search::best_of(const std::function<bool(const Shared&)>& allowed, bool of_the_page) const {
    std::optional<Found> best;
    for (std::size_t s = 0; s < shared_.size(); ++s) {
        if (!allowed(shared_[s])) continue;
        Found found = under(s, of_the_page);
        if (!best || found.cost < best->cost) best = std::move(found);
    }
    return best;
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
