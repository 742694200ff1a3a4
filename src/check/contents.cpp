// SPDX-License-Identifier: MIT
// What a finished solution holds, through everything it is made of.
#include "scruple/check/contents.hpp"

#include <algorithm>
#include <unordered_map>

#include "ingredients_of.hpp"
#include "volumes.hpp"

namespace scruple::check {
namespace {

/// Contents of several solutions, each worked out once, the ones it is made of first.
class Gatherer {
  public:
    Gatherer(const Model& model, std::size_t variant) : model_(model), variant_(variant) {}

    std::vector<Content> of(Id section) {
        for (const Id id : made_of(model_, section)) done_[id] = work_out(model_.sections[id]);
        return std::move(done_[section]);
    }

  private:
    std::vector<Content> work_out(const Section& section) {
        std::vector<Content> contents;
        const auto variant = variant_of(section);
        const auto filling = fill(model_, section, variant);
        const double ml = filling.made_ml.to_double();
        if (ml <= 0) return contents;
        for (std::size_t i = 0; i < section.lines.size(); ++i) {
            const auto* addition = std::get_if<Addition>(&section.lines[i]);
            if (addition != nullptr) add(contents, *addition, measure(*addition, filling, i, variant), 1 / ml);
        }
        return contents;
    }

    /// Another recipe's variants are not this one's; where the number does not fit, its first is meant.
    [[nodiscard]] std::size_t variant_of(const Section& section) const {
        if (section.recipe == none) return 0;
        return variant_ < model_.recipes[section.recipe].variants.size() ? variant_ : 0;
    }

    /// How much of an addition the finished solution holds; a make-up is what was still wanting.
    [[nodiscard]] Exact measure(const Addition& addition, const Filling& filling, std::size_t line,
                                std::size_t variant) const {
        if (addition.optional || addition.shares.empty()) return 0;
        switch (addition.how) {
            case Addition::How::unknown:
            case Addition::How::the_rest:
                return 0;
            case Addition::How::to_make: {
                if (line != filling.made_up_at) return 0;
                const Exact before = line == 0 ? Exact(0) : filling.after[line - 1].with_room_ml;
                return filling.made_ml > before ? filling.made_ml - before : Exact(0);
            }
            case Addition::How::exactly:
            case Addition::How::part_now:
            case Addition::How::about:
                break;
        }
        return addition.shares[addition.shares.size() == 1 ? 0 : variant];
    }

    void add(std::vector<Content>& contents, const Addition& addition, const Exact& measure, double per_ml) {
        if (measure.is_zero() || addition.chemical == model_.water) return;
        if (addition.solution == none) {
            const auto dose = dose_of(model_, addition, measure);
            add_to(contents, {addition.chemical, addition.form, dose.grams.to_double() * 1000, dose.mol * 1000},
                   per_ml);
            return;
        }
        const auto part = done_.find(addition.solution);
        if (part == done_.end()) return;
        for (const auto& content : part->second) add_to(contents, content, measure.to_double() * per_ml);
    }

    static void add_to(std::vector<Content>& contents, const Content& more, double share) {
        const auto same = [&](const Content& content) {
            return content.chemical == more.chemical && content.form == more.form;
        };
        auto found = std::ranges::find_if(contents, same);
        if (found == contents.end()) found = contents.insert(contents.end(), {more.chemical, more.form});
        found->g_per_l += more.g_per_l * share;
        found->mol_per_l += more.mol_per_l * share;
    }

    const Model& model_;
    std::size_t variant_;
    std::unordered_map<Id, std::vector<Content>> done_;
};

}  // namespace

std::vector<Content> contents(const Model& model, Id section, std::size_t variant) {
    return Gatherer(model, variant).of(section);
}

}  // namespace scruple::check
