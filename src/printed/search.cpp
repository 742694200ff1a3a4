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
        Under& under = under_.emplace_back();
        under.total = under.total_of_page = one.weights.sum();
        for (std::size_t i = 0; i < lines.size(); ++i) {
            auto& of_ways = under.costs.emplace_back();
            for (const Way& way : lines[i].ways) of_ways.push_back(way.weights.sum() + cost(i, way, one));
            const auto least = std::ranges::min_element(of_ways);
            under.ways.push_back(static_cast<std::size_t>(least - of_ways.begin()));
            under.total += *least;
            under.total_of_page += of_ways[of_page(under, i)];
        }
    }
    best_ = *best_of([](const Shared&) { return true; });
}

std::size_t Search::of_page(const Under& under, std::size_t line) const {
    const std::vector<Way>& ways = lines_[line].ways;
    std::size_t best = under.ways[line];
    double least = under.costs[line][best];
    if (ways[best].other_ounce) least = never;
    for (std::size_t w = 0; w < ways.size(); ++w) {
        if (ways[w].other_ounce || under.costs[line][w] >= least) continue;
        best = w;
        least = under.costs[line][w];
    }
    return best;
}

Found Search::found(std::size_t shared, bool of_the_page) const {
    const Under& under = under_[shared];
    Found found{shared_[shared], shared, under.ways, of_the_page ? under.total_of_page : under.total};
    for (std::size_t i = 0; of_the_page && i < lines_.size(); ++i) found.ways[i] = of_page(under, i);
    return found;
}

std::optional<Found> Search::best_of(const std::function<bool(const Shared&)>& allowed, bool of_the_page) const {
    std::optional<std::size_t> best;
    const auto total = [&](std::size_t s) { return of_the_page ? under_[s].total_of_page : under_[s].total; };
    for (std::size_t s = 0; s < shared_.size(); ++s)
        if (allowed(shared_[s]) && (!best || total(s) < total(*best))) best = s;
    if (!best) return std::nullopt;
    return found(*best, of_the_page);
}

std::optional<Found> Search::best_with(std::size_t line, const std::function<bool(const Way&)>& allowed) const {
    std::size_t best_shared = 0;
    std::size_t best_way = 0;
    double least = never;
    for (std::size_t s = 0; s < shared_.size(); ++s) {
        const auto& of_ways = under_[s].costs[line];
        const double others = under_[s].total - of_ways[under_[s].ways[line]];
        for (std::size_t w = 0; w < of_ways.size(); ++w) {
            if (!allowed(lines_[line].ways[w]) || others + of_ways[w] >= least) continue;
            least = others + of_ways[w];
            best_shared = s;
            best_way = w;
        }
    }
    if (least == never) return std::nullopt;
    Found it = found(best_shared, false);
    it.ways[line] = best_way;
    it.cost = least;
    return it;
}

}  // namespace scruple::printed
