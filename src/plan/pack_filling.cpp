// SPDX-License-Identifier: MIT
// Want by want, with the parts that may still become the best. What no part can cost less than in the end is known in
// two ways: the cheapest covers of all wants to come; and the same where goods of a shop count for something until it
// sends free (Lagrangian relaxation). The second says a good deal more, once it is known how much they are to count
// for.
#include "pack_filling.hpp"

#include <algorithm>
#include <functional>
#include <numeric>

namespace scruple::plan {

namespace {

constexpr std::size_t most_promising = 100, most_parts = 20'000;
constexpr int rounds = 40;
// What goods count for is a multiple of this, so that the bounds are exact.
constexpr std::int64_t steps_of_worth = 4096;

/// A cover, with what it brings each of the shops that are bought from until free.
struct PackWay {
    const Cover* cover;
    std::vector<Exact> brings;
};

/// Some of the wants met.
struct PackPart {
    PackSum sum;
    std::vector<Exact> brought;  ///< no more than is needed
    Exact least;                 ///< that all wants then cost, with the postage
    std::size_t node;            ///< of the last cover
};

struct PackNode {
    const Cover* cover;
    std::size_t before;
};

constexpr std::size_t no_node = SIZE_MAX;

bool at_least(const std::vector<Exact>& a, const std::vector<Exact>& b) {
    return std::ranges::equal(a, b, std::greater_equal{});
}

class PackFilling {
  public:
    PackFilling(const PackProblem& problem, Covers& covers, const PackOrder& order, BestSelection& best,
                PackPatience& patience)
        : problem_(problem), covers_(covers), order_(order), best_(best), patience_(patience) {
        for (std::size_t shop = 0; shop < problem.shops.size(); ++shop) {
            if ((order.until_free >> shop & 1) == 0) continue;
            shops_.push_back(shop);
            needed_.push_back(*problem.shops[shop].free_from);
        }
    }

    bool run() {
        if (!find_worths()) return !patience_.is_over();
        find_ways();
        // A few of the most promising parts soon lead to a good order, and past that there is less to go through.
        go_through(most_promising, [](const PackPart& part) { return part.least; });
        return go_through(most_parts, [](const PackPart& part) { return part.sum; });
    }

  private:
    // ---- what goods count for ----

    /// With what goods count for taken off; the last 1/32 of a price always counts, or any number of packs would do.
    [[nodiscard]] Counting counting_with(const std::vector<double>& worths) const {
        Counting counting{std::vector<Exact>(problem_.shops.size(), 1), order_.until_free};
        constexpr double most = 1 - 1.0 / 32;
        for (std::size_t i = 0; i < shops_.size(); ++i) {
            const double worth = std::clamp(worths[i], 0.0, most) * steps_of_worth;
            counting.parts[shops_[i]] -= Exact(static_cast<std::int64_t>(worth), steps_of_worth);
        }
        return counting;
    }

    /// What no order of this kind costs less than, as goods count.
    struct Bound {
        Counting counting;
        std::vector<Cover> covers;
        std::vector<Exact> least;  ///< by want, as it counts
        Exact cost;
    };

    Bound bound_with(const std::vector<double>& worths) {
        Bound bound{counting_with(worths), {}, {}, order_.postage};
        for (std::size_t want = 0; want < problem_.wants.size(); ++want) {
            bound.covers.push_back(*covers_.least(want, order_.from, bound.counting));
            bound.least.push_back(counted(bound.counting, bound.covers.back()));
            bound.cost += bound.least.back();
        }
        for (std::size_t i = 0; i < shops_.size(); ++i)
            bound.cost += (Exact(1) - bound.counting.parts[shops_[i]]) * needed_[i];
        return bound;
    }

    static Exact counted(const Counting& counting, const Cover& cover) {
        Exact sum;
        for (std::size_t shop = 0; shop < counting.parts.size(); ++shop)
            sum += counting.parts[shop] * cover.goods.worth[shop];
        return sum;
    }

    /// Steps towards where the bound is highest (Held, Wolfe, Crowder, Mathematical Programming 6 (1974) 62, recalled).
    /// Each step's cheapest covers are an order, too, and maybe the best so far. False where no order of this kind is
    /// better.
    bool find_worths() {
        std::vector<double> worths(shops_.size());
        double pace = 1;
        for (int round = 0; round < rounds && !patience_.is_over(); ++round) {
            Bound bound = bound_with(worths);
            offer(bound.covers);
            if (bound.cost > best_.cost()) return false;
            const std::vector<double> missing = missing_of(bound.covers);
            const double gap = (best_.cost() - bound.cost).to_double();
            if (round == 0 || bound.cost > bound_.cost)
                bound_ = std::move(bound);
            else
                pace *= 0.8;
            const double square = std::inner_product(missing.begin(), missing.end(), missing.begin(), 0.0);
            if (square == 0 || gap == 0) break;
            for (std::size_t i = 0; i < worths.size(); ++i)
                worths[i] = std::clamp(worths[i] + pace * gap / square * missing[i], 0.0, 1.0);
        }
        return !patience_.is_over();
    }

    void offer(const std::vector<Cover>& covers) {
        std::vector<const Cover*> all;
        all.reserve(covers.size());
        for (const Cover& cover : covers) all.push_back(&cover);
        best_.offer(all);
    }

    /// Until each shop sends free; less than nothing where that is more than is needed.
    [[nodiscard]] std::vector<double> missing_of(const std::vector<Cover>& covers) const {
        std::vector<double> missing;
        for (std::size_t i = 0; i < shops_.size(); ++i) {
            Exact brought;
            for (const Cover& cover : covers) brought += cover.goods.worth[shops_[i]];
            missing.push_back((needed_[i] - brought).to_double());
        }
        return missing;
    }

    // ---- the ways that are left for each want ----

    void find_ways() {
        const Exact gap = best_.cost() - bound_.cost;
        const Exact gap_paid = best_.cost() - order_.postage - *covers_.least_of_all(order_.from);
        const std::size_t wants = problem_.wants.size();
        for (std::size_t want = 0; want < wants; ++want) {
            const Exact& least = covers_.least(want, order_.from)->sum.cost;
            found_.push_back(
                covers_.within(want, order_.from, bound_.counting, {bound_.least[want] + gap, least + gap_paid}));
            ways_.push_back(worth_taking(found_.back()));
        }
        least_from_.resize(wants + 1);
        least_counted_from_.resize(wants + 1);
        for (std::size_t want = wants; want-- > 0;) {
            least_from_[want] = least_from_[want + 1] + covers_.least(want, order_.from)->sum.cost;
            least_counted_from_[want] = least_counted_from_[want + 1] + bound_.least[want];
        }
    }

    /// Those to which no other is preferred whatever is still needed.
    std::vector<PackWay> worth_taking(const std::vector<Cover>& covers) {
        std::vector<const Cover*> sorted;
        sorted.reserve(covers.size());
        for (const Cover& cover : covers) sorted.push_back(&cover);
        std::ranges::stable_sort(sorted, {}, [](const Cover* cover) -> const PackSum& { return cover->sum; });
        std::vector<PackWay> ways;
        for (const Cover* cover : sorted) {
            PackWay way{cover, {}};
            for (const std::size_t shop : shops_) way.brings.push_back(cover->goods.worth[shop]);
            if (!is_outdone(ways, way.brings, &PackWay::brings)) ways.push_back(std::move(way));
        }
        return ways;
    }

    /// Whether one of those before, which are no dearer or at least as promising, brings each shop as much.
    template <class Kept>
    bool is_outdone(const std::vector<Kept>& kept, const std::vector<Exact>& goods, std::vector<Exact> Kept::*its) {
        patience_.spend(kept.size());
        return std::ranges::any_of(kept, [&](const Kept& one) { return at_least(one.*its, goods); });
    }

    // ---- want by want ----

    /// Of the parts with so many wants met, `most` are kept, the first by `rank`. False where others were let go.
    template <class Rank>
    bool go_through(std::size_t most, Rank rank) {
        std::vector<PackPart> parts{{{order_.postage, {}, 0}, std::vector<Exact>(shops_.size()), {}, no_node}};
        bool all = true;
        for (std::size_t want = 0; want < ways_.size(); ++want) {
            auto next = with_each_way(parts, want);
            std::ranges::stable_sort(next, {}, rank);
            parts = those_worth_keeping(std::move(next), most);
            all = all && parts.size() < most && !patience_.is_over();
            if (parts.empty() || patience_.is_over()) return all;
        }
        for (const PackPart& part : parts)
            if (part.brought == needed_) best_.offer(covers_of(part));
        return all;
    }

    std::vector<PackPart> with_each_way(const std::vector<PackPart>& parts, std::size_t want) {
        std::vector<PackPart> next;
        for (const PackPart& part : parts) {
            patience_.spend(ways_[want].size());
            if (patience_.is_over()) break;
            for (const PackWay& way : ways_[want]) {
                if (part.sum.cost + way.cover->sum.cost + least_from_[want + 1] > best_.cost()) break;
                PackPart longer = part;
                longer.sum += way.cover->sum;
                for (std::size_t i = 0; i < shops_.size(); ++i)
                    longer.brought[i] = std::min(longer.brought[i] + way.brings[i], needed_[i]);
                longer.least = least_with(longer, want + 1);
                if (longer.least > best_.cost()) continue;
                longer.node = nodes_.size();
                nodes_.push_back({way.cover, part.node});
                next.push_back(std::move(longer));
            }
        }
        return next;
    }

    /// What the part brought counts in full here, and what is still needed counts for so much.
    [[nodiscard]] Exact least_with(const PackPart& part, std::size_t want) const {
        Exact least = part.sum.cost + least_counted_from_[want];
        for (std::size_t i = 0; i < shops_.size(); ++i)
            least += (Exact(1) - bound_.counting.parts[shops_[i]]) * (needed_[i] - part.brought[i]);
        return least;
    }

    std::vector<PackPart> those_worth_keeping(std::vector<PackPart> parts, std::size_t most) {
        std::vector<PackPart> kept;
        for (PackPart& part : parts) {
            if (kept.size() == most || patience_.is_over()) break;
            if (!is_outdone(kept, part.brought, &PackPart::brought)) kept.push_back(std::move(part));
        }
        return kept;
    }

    [[nodiscard]] std::vector<const Cover*> covers_of(const PackPart& part) const {
        std::vector<const Cover*> covers;
        for (std::size_t node = part.node; node != no_node; node = nodes_[node].before)
            covers.push_back(nodes_[node].cover);
        std::ranges::reverse(covers);
        return covers;
    }

    const PackProblem& problem_;
    Covers& covers_;
    const PackOrder& order_;
    BestSelection& best_;
    PackPatience& patience_;
    // Of each shop that is bought from until free.
    std::vector<std::size_t> shops_;
    std::vector<Exact> needed_;
    Bound bound_;
    // Of each want.
    std::vector<std::vector<Cover>> found_;
    std::vector<std::vector<PackWay>> ways_;
    std::vector<Exact> least_from_, least_counted_from_;
    std::vector<PackNode> nodes_;
};

}  // namespace

bool fill_up_to_free(const PackProblem& problem, Covers& covers, const PackOrder& order, BestSelection& best,
                     PackPatience& patience) {
    return PackFilling(problem, covers, order, best, patience).run();
}

}  // namespace scruple::plan
