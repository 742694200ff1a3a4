// SPDX-License-Identifier: MIT
// Which facts of two lists belong to each other, and what of them differs.
#include <algorithm>

#include "scruple/plan/compare.hpp"

namespace scruple::plan {
namespace {

using Of = Fact::Of;
using Changed = Difference::How;
using Facts = std::vector<const Fact*>;

constexpr Of all_kinds_of_facts[] = {Of::contents, Of::ph,      Of::checks,   Of::batch,
                                     Of::work,     Of::keeping, Of::cautions, Of::notes};

Facts those(std::span<const Fact> facts, Of of) {
    Facts found;
    for (const Fact& fact : facts)
        if (fact.of == of) found.push_back(&fact);
    return found;
}

std::string said(const Fact& fact) {
    if (fact.amount.empty()) return fact.value;
    return fact.value.empty() ? fact.amount : fact.amount + ", " + fact.value;
}

/// For each fact after, its index before; or none.
using Pairs = std::vector<std::size_t>;
constexpr std::size_t nobody = static_cast<std::size_t>(-1);

/// The longest run of steps that are in both lists in one order (Hunt and McIlroy's problem, by the plain table: a
/// recipe has dozens of lines).
Pairs in_order(const Facts& before, const Facts& after) {
    const std::size_t rows = before.size() + 1, columns = after.size() + 1;
    std::vector<std::size_t> longest(rows * columns, 0);
    const auto at = [&](std::size_t i, std::size_t j) -> std::size_t& { return longest[i * columns + j]; };
    for (std::size_t i = before.size(); i-- > 0;)
        for (std::size_t j = after.size(); j-- > 0;)
            at(i, j) = before[i]->what == after[j]->what ? at(i + 1, j + 1) + 1 : std::max(at(i + 1, j), at(i, j + 1));
    Pairs pairs(after.size(), nobody);
    for (std::size_t i = 0, j = 0; i < before.size() && j < after.size();) {
        if (before[i]->what == after[j]->what)
            pairs[j++] = i++;
        else if (at(i + 1, j) >= at(i, j + 1))
            ++i;
        else
            ++j;
    }
    return pairs;
}

/// Pairs what is still alone, wherever it stands: the very same first, then what has the same name.
void pair_the_rest(const Facts& before, const Facts& after, Pairs& pairs) {
    std::vector<bool> taken(before.size(), false);
    for (const std::size_t i : pairs)
        if (i != nobody) taken[i] = true;
    const auto pair = [&](auto alike) {
        for (std::size_t j = 0; j < after.size(); ++j)
            for (std::size_t i = 0; pairs[j] == nobody && i < before.size(); ++i) {
                if (taken[i] || !alike(*before[i], *after[j])) continue;
                pairs[j] = i;
                taken[i] = true;
            }
    };
    pair([](const Fact& a, const Fact& b) { return a == b; });
    pair([](const Fact& a, const Fact& b) { return a.what == b.what; });
}

std::string follows(const Facts& facts, std::size_t index) {
    return index == 0 ? "first" : "after " + facts[index - 1]->what;
}

std::string with(const std::string& place, const std::string& rest) {
    return rest.empty() ? place : place + "; " + rest;
}

class FactsOfAKind {
  public:
    FactsOfAKind(std::span<const Fact> before, std::span<const Fact> after, Of of)
        : of_(of), before_(those(before, of)), after_(those(after, of)) {
        kept_ = of == Of::work ? in_order(before_, after_) : Pairs(after_.size(), nobody);
        pairs_ = kept_;
        pair_the_rest(before_, after_, pairs_);
    }

    void add_to(std::vector<Difference>& all) const {
        std::vector<bool> stays(before_.size(), false);
        for (const std::size_t i : pairs_)
            if (i != nobody) stays[i] = true;
        std::size_t gone = 0;
        for (std::size_t j = 0; j < after_.size(); ++j) {
            add_gone(stays, gone, until(j), all);
            add_pair(j, all);
        }
        add_gone(stays, gone, before_.size(), all);
    }

  private:
    /// What has gone stands before what has come in its place.
    [[nodiscard]] std::size_t until(std::size_t j) const {
        const Pairs& pairs = of_ == Of::work ? kept_ : pairs_;
        while (j < pairs.size() && pairs[j] == nobody) ++j;
        return j == pairs.size() ? before_.size() : pairs[j];
    }

    void add_gone(const std::vector<bool>& stays, std::size_t& next, std::size_t end,
                  std::vector<Difference>& all) const {
        for (; next < end; ++next)
            if (!stays[next]) all.push_back({Changed::gone, of_, before_[next]->what, said(*before_[next]), ""});
    }

    void add_pair(std::size_t j, std::vector<Difference>& all) const {
        const Fact& after = *after_[j];
        if (pairs_[j] == nobody) {
            all.push_back({Changed::come, of_, after.what, "", said(after)});
            return;
        }
        const Fact& before = *before_[pairs_[j]];
        const bool moved = of_ == Of::work && kept_[j] == nobody;
        if (moved) {
            const bool as_it_was = before == after;
            all.push_back({Changed::moved, of_, after.what,
                           with(follows(before_, pairs_[j]), as_it_was ? "" : said(before)),
                           with(follows(after_, j), as_it_was ? "" : said(after))});
        } else if (before != after) {
            all.push_back({Changed::changed, of_, after.what, said(before), said(after)});
        }
    }

    Of of_;
    Facts before_, after_;
    Pairs kept_, pairs_;
};

/// Whether the contents tell of it: nothing of the step but its amount differs, and so does how much the solution
/// holds.
bool told_by_contents(const Difference& it, std::span<const Fact> before, std::span<const Fact> after,
                      const std::vector<Difference>& all) {
    if (it.of != Of::work || it.how != Changed::changed) return false;
    const auto values = [&](std::span<const Fact> facts) {
        std::vector<std::string> found;
        for (const Fact* fact : those(facts, Of::work))
            if (fact->what == it.what) found.push_back(fact->value);
        return found;
    };
    return values(before).size() == 1 && values(before) == values(after) &&
           std::ranges::any_of(all, [&](const Difference& other) {
               return other.of == Of::contents && other.how == Changed::changed && other.what == it.what;
           });
}

}  // namespace

std::vector<Difference> differences(std::span<const Fact> before, std::span<const Fact> after) {
    std::vector<Difference> all;
    for (const Of of : all_kinds_of_facts) FactsOfAKind(before, after, of).add_to(all);
    std::vector<Difference> told;
    for (const Difference& it : all)
        if (!told_by_contents(it, before, after, all)) told.push_back(it);
    return told;
}

}  // namespace scruple::plan
