// SPDX-License-Identifier: MIT
// The cheapest packs, against going through every order there is. Prices and packs are invented.
#include "scruple/plan/packs.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <functional>
#include <random>

#include "support/sanitized.hpp"

namespace scruple::test {
namespace {

using plan::Exact;
using plan::PackProblem;
using Counts = std::vector<std::vector<std::int64_t>>;

/// What packs cost with postage, reckoned from what is ordered alone.
Exact cost_of(const PackProblem& problem, const Counts& packs) {
    std::vector<Exact> goods(problem.shops.size());
    std::vector<bool> ordered(problem.shops.size());
    for (std::size_t want = 0; want < packs.size(); ++want)
        for (std::size_t kind = 0; kind < packs[want].size(); ++kind) {
            const auto& pack = problem.wants[want].kinds[kind];
            goods[pack.shop] += pack.price * packs[want][kind];
            if (packs[want][kind] > 0) ordered[pack.shop] = true;
        }
    Exact cost;
    for (std::size_t shop = 0; shop < goods.size(); ++shop) {
        const auto& seller = problem.shops[shop];
        const bool free = seller.free_from && goods[shop] >= *seller.free_from;
        cost += goods[shop] + (ordered[shop] && !free ? seller.postage : Exact(0));
    }
    return cost;
}

bool covers(const plan::PackWant& want, const std::vector<std::int64_t>& packs) {
    Exact sum;
    for (std::size_t kind = 0; kind < packs.size(); ++kind) sum += want.kinds[kind].holds * packs[kind];
    return sum >= want.measure;
}

/// Every count of every pack up to a number that no cheapest order can pass: the need, and what fills up to free.
class Everything {
  public:
    explicit Everything(const PackProblem& problem) : problem_(problem), packs_(none_of(problem)) {}

    std::optional<Exact> least() {
        go(0, 0);
        return least_;
    }

    /// Of all other packs of one want, all else being as it is in `choice`.
    std::optional<Exact> least_other(const Counts& choice, std::size_t want) {
        packs_ = choice;
        packs_[want].assign(packs_[want].size(), 0);
        barred_ = choice[want];
        last_ = want;
        go(want, 0);
        return least_;
    }

  private:
    static Counts none_of(const PackProblem& problem) {
        Counts packs;
        for (const auto& want : problem.wants) packs.emplace_back(want.kinds.size());
        return packs;
    }

    void go(std::size_t want, std::size_t kind) {
        if (want > last_) {
            if (is_barred()) return;
            const Exact cost = cost_of(problem_, packs_);
            if (!least_ || cost < *least_) least_ = cost;
            return;
        }
        if (kind == packs_[want].size()) {
            if (covers(problem_.wants[want], packs_[want])) go(want + 1, 0);
            return;
        }
        for (std::int64_t count = 0; count <= 4; ++count) {
            packs_[want][kind] = count;
            go(want, kind + 1);
        }
        packs_[want][kind] = 0;
    }

    [[nodiscard]] bool is_barred() const {
        return !barred_.empty() && std::ranges::equal(packs_[last_], barred_, std::greater_equal{});
    }

    const PackProblem& problem_;
    Counts packs_;
    std::size_t last_ = packs_.size() - 1;
    std::vector<std::int64_t> barred_;
    std::optional<Exact> least_;
};

/// Wants of at most 20 in packs of 10 to 40, at 3.00 or more: two cover any, and two more cost what the dearest
/// postage does.
PackProblem invented(std::mt19937& random) {
    const auto one_of = [&random](int low, int high) { return low + static_cast<int>(random() % (high - low + 1)); };
    PackProblem problem;
    const int shops = one_of(1, 3);
    for (int shop = 0; shop < shops; ++shop) {
        problem.shops.push_back({Exact(one_of(0, 12) * 50, 100), std::nullopt});
        if (one_of(0, 3) > 0) problem.shops.back().free_from = Exact(one_of(8, 40) * 100, 100);
    }
    const int wants = one_of(1, 2);
    for (int want = 0; want < wants; ++want) {
        problem.wants.push_back({one_of(1, 20), {}});
        const int kinds = one_of(1, 3);
        for (int kind = 0; kind < kinds; ++kind)
            problem.wants.back().kinds.push_back(
                {static_cast<std::size_t>(one_of(0, shops - 1)), Exact(one_of(300, 1200), 100), Exact(one_of(10, 40))});
    }
    return problem;
}

TEST_CASE("no order is cheaper than the one that is found, of all there are") {
    std::mt19937 random(20261203);
    for (int round = 0; round < as_many_as_sensible(600); ++round) {
        const PackProblem problem = invented(random);
        const auto found = plan::cheapest_packs(problem);
        REQUIRE(found.has_value());
        CAPTURE(round);
        CHECK(found->proven);
        for (std::size_t want = 0; want < problem.wants.size(); ++want)
            CHECK(covers(problem.wants[want], found->packs[want]));
        CHECK(found->cost == cost_of(problem, found->packs));
        CHECK(found->cost == *Everything(problem).least());
        const plan::PackExchanges exchanges(problem, *found);
        for (std::size_t want = 0; want < problem.wants.size(); ++want) {
            const auto next = exchanges.next_best(want);
            const auto least = Everything(problem).least_other(found->packs, want);
            REQUIRE(next.has_value() == least.has_value());
            if (next) CHECK(next->more == *least - found->cost);
        }
    }
}

TEST_CASE("packs of two sizes together, where that is cheapest") {
    // 600: 500 and 100 cost 9; two of 500 cost 14, six of 100 12, one of 1000 11.
    const PackProblem problem{{{0, std::nullopt}}, {{600, {{0, 7, 500}, {0, 2, 100}, {0, 11, 1000}}}}};
    const auto found = plan::cheapest_packs(problem);
    REQUIRE(found.has_value());
    CHECK(found->packs == std::vector<std::vector<std::int64_t>>{{1, 1, 0}});
    CHECK(found->cost == 9);
}

TEST_CASE("a pack more than is needed, where it saves the postage") {
    // One pack and postage cost 9 + 6; two packs cost 18 and come free from 18 on: no. At 4 each, free from 8: 8,
    // not 10.
    const PackProblem dear{{{6, Exact(18)}}, {{10, {{0, 9, 10}}}}};
    CHECK(plan::cheapest_packs(dear)->cost == 15);
    const PackProblem cheap{{{6, Exact(8)}}, {{10, {{0, 4, 10}}}}};
    CHECK(plan::cheapest_packs(cheap)->packs == std::vector<std::vector<std::int64_t>>{{2}});
    CHECK(plan::cheapest_packs(cheap)->cost == 8);
}

TEST_CASE("one order at a dearer shop, where a second one would cost postage") {
    const PackProblem problem{{{5, std::nullopt}, {5, std::nullopt}}, {{1, {{0, 4, 1}}}, {1, {{0, 9, 1}, {1, 6, 1}}}}};
    CHECK(plan::cheapest_packs(problem)->cost == 18);  // 4 + 9 + 5, against 4 + 6 + 5 + 5
}

TEST_CASE("the next best is no pack more of what is chosen, and none where there is no other") {
    const PackProblem problem{{{0, std::nullopt}}, {{10, {{0, 3, 10}, {0, 8, 10}}}}};
    const plan::PackExchanges exchanges(problem, *plan::cheapest_packs(problem));
    const auto next = exchanges.next_best(0);
    REQUIRE(next.has_value());
    CHECK(next->packs == std::vector<std::int64_t>{0, 1});
    CHECK(next->more == 5);
    const PackProblem only{problem.shops, {{10, {{0, 3, 10}}}}};
    CHECK_FALSE(plan::PackExchanges(only, *plan::cheapest_packs(only)).next_best(0).has_value());
}

TEST_CASE("a want that nobody sells has no order, and a list made to be slow comes to an end") {
    CHECK_FALSE(plan::cheapest_packs({{{0, std::nullopt}}, {{10, {}}}}).has_value());
    PackProblem slow{{{900, Exact(500)}}, {}};
    for (int want = 0; want < 6; ++want)
        slow.wants.push_back({1000, {{0, Exact(1, 100), 1}, {0, Exact(3, 100), Exact(17, 7)}, {0, Exact(2, 9), 13}}});
    const auto found = plan::cheapest_packs(slow);
    REQUIRE(found.has_value());
    CHECK_FALSE(found->proven);
    CHECK(found->cost == cost_of(slow, found->packs));
}

TEST_CASE("more than can be counted in packs has no order, and that is found out at once") {
    const Exact measure = Exact(1'000'000'000'000) * 1'000'000;
    CHECK_FALSE(plan::cheapest_packs({{{0, std::nullopt}}, {{measure, {{0, 3, 25}, {0, 9, 100}}}}}).has_value());
}

}  // namespace
}  // namespace scruple::test
