// SPDX-License-Identifier: MIT
#include "scruple/driver/compare.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <string_view>
#include <unordered_map>

#include "solutions.hpp"

namespace scruple::driver {
namespace {

using plan::ComparedSolution;
using How = ComparedSolution::How;

class Comparison {
  public:
    Comparison(Side& before, Side& after)
        : before_(before),
          after_(after),
          maker_before_(before.loaded.checked.model),
          maker_after_(after.loaded.checked.model),
          old_(solutions_of(before, maker_before_)),
          new_(solutions_of(after, maker_after_)) {}

    plan::Compared made() {
        plan::Compared all{before_.asked, after_.asked};
        pair_by_name();
        pair_by_what_they_are();
        for (std::size_t i = 0; i < new_.size(); ++i) add(i, all);
        for (std::size_t i = 0; i < old_.size(); ++i)
            if (!taken_[i]) all.solutions.push_back({How::gone, old_[i].name});
        add_errors(before_, all.remarks);
        add_errors(after_, all.remarks);
        return all;
    }

  private:
    [[nodiscard]] plan::SolutionOf in_before(const Solution& it) {
        return {maker_before_.contents(), it.section, it.variant};
    }
    [[nodiscard]] plan::SolutionOf in_after(const Solution& it) {
        return {maker_after_.contents(), it.section, it.variant};
    }

    void pair_by_name() {
        partner_.assign(new_.size(), nullptr);
        taken_.assign(old_.size(), false);
        std::unordered_map<std::string_view, std::vector<std::size_t>> of_name;  ///< the first last
        for (std::size_t i = old_.size(); i-- > 0;) of_name[old_[i].key].push_back(i);
        for (std::size_t i = 0; i < new_.size(); ++i) {
            auto& those = of_name[new_[i].key];
            if (those.empty()) continue;
            pair(those.back(), i);
            those.pop_back();
        }
    }

    /// A new name for a solution that is as it was.
    void pair_by_what_they_are() {
        std::vector<plan::SolutionOf> before, after;
        std::vector<std::size_t> before_is, after_is;
        for (std::size_t i = 0; i < old_.size(); ++i) {
            if (taken_[i] || !old_[i].why.empty()) continue;
            before.push_back(in_before(old_[i]));
            before_is.push_back(i);
        }
        for (std::size_t i = 0; i < new_.size(); ++i) {
            if (partner_[i] != nullptr || !new_[i].why.empty()) continue;
            after.push_back(in_after(new_[i]));
            after_is.push_back(i);
        }
        for (const auto& [old, it] : plan::alike(before, after)) pair(before_is[old], after_is[it]);
    }

    void pair(std::size_t old, std::size_t it) {
        partner_[it] = &old_[old];
        taken_[old] = true;
    }

    void add(std::size_t i, plan::Compared& all) {
        const Solution& after = new_[i];
        if (partner_[i] == nullptr) {
            all.solutions.push_back({How::come, after.name});
            return;
        }
        const Solution& before = *partner_[i];
        ComparedSolution it{How::changed, after.name, before.name == after.name ? "" : before.name};
        if (!before.why.empty() || !after.why.empty()) {
            it.how = How::not_compared;
            it.why = fmt::format("{}: {}", after.why.empty() ? "before" : "after",
                                 after.why.empty() ? before.why : after.why);
        } else {
            it.differences = plan::differences(before.facts, after.facts);
            look_closer(before, after, it);
            if (it.how == How::changed && it.differences.empty() && it.called_before.empty()) {
                ++all.same;
                return;
            }
        }
        all.solutions.push_back(std::move(it));
    }

    void look_closer(const Solution& before, const Solution& after, ComparedSolution& it) {
        it.contents_differ = std::ranges::any_of(
            it.differences, [](const plan::Difference& d) { return d.of == plan::Fact::Of::contents; });
        if (it.contents_differ) {
            it.percent_apart = plan::apart(in_before(before), in_after(after));
            it.of_the_same_chemicals = plan::of_the_same_chemicals(in_before(before), in_after(after));
        }
        if (it.differences.empty() && before.text != after.text) it.how = How::written_otherwise;
    }

    static void add_errors(const Side& side, std::vector<std::string>& remarks) {
        const auto errors = std::ranges::count_if(side.loaded.checked.diagnostics, [](const auto& d) {
            return diagnostics::info(d.kind).severity == diagnostics::Severity::error;
        });
        if (errors > 0)
            remarks.push_back(fmt::format("{}: {} {}; what cannot be read is not compared", side.asked, errors,
                                          errors == 1 ? "error" : "errors"));
    }

    Side& before_;
    Side& after_;
    plan::CardMaker maker_before_, maker_after_;
    std::vector<Solution> old_, new_;
    std::vector<const Solution*> partner_;  ///< of each new one
    std::vector<bool> taken_;               ///< of each old one
};

}  // namespace

plan::Compared compare(Side before, Side after) {
    return Comparison(before, after).made();
}

std::string facts_text(Side side) {
    constexpr std::string_view kinds[] = {"holds", "pH", "test", "batch", "step", "lasts", "caution", "note"};
    plan::CardMaker maker(side.loaded.checked.model);
    std::string text;
    for (const Solution& solution : solutions_of(side, maker)) {
        text += solution.name + "\n";
        if (!solution.why.empty()) text += fmt::format("    not worked out: {}\n", solution.why);
        for (const plan::Fact& fact : solution.facts) {
            std::string line = fmt::format("    {:<8}{}", kinds[static_cast<std::size_t>(fact.of)], fact.what);
            for (const std::string& more : {fact.amount, fact.value})
                if (!more.empty()) line += ", " + more;
            text += line + "\n";
        }
        text += "\n";
    }
    return text;
}

}  // namespace scruple::driver
