// SPDX-License-Identifier: MIT
#include "why_share.hpp"

#include <fmt/format.h>

#include <unordered_map>

#include "reach.hpp"
#include "script.hpp"
#include "words.hpp"

namespace scruple::plan {

namespace {

using check::Addition;
using check::Exact;
using check::Id;
using check::Model;
using check::Section;

// A litre has less than 10²⁷ molecules of anything: thinner, a solution brings none.
constexpr double least_share = 1e-27;
// A few solutions may be in one another in more ways than there is paper for.
constexpr std::size_t most_ways = 100, most_lines_of_ways = 100'000;

bool is_an_amount(const Addition& addition) {
    using How = Addition::How;
    return addition.how == How::exactly || addition.how == How::about || addition.how == How::part_now;
}

template <class Each>
void for_each_amount(const Section& section, Each each) {
    for (const auto& line : section.lines)
        if (const auto* addition = std::get_if<Addition>(&line); addition != nullptr && is_an_amount(*addition))
            each(*addition);
}

/// Those of a section and what it is made of that have some of a chemical.
std::vector<bool> with_some(const Model& model, Id section, Id chemical) {
    std::vector<bool> has(model.sections.size());
    std::unordered_map<Id, std::vector<Id>> taken_by;
    std::vector<Id> found;
    const auto add = [&](Id id) {
        if (!has[id]) found.push_back(id);
        has[id] = true;
    };
    for (const Id id : sections_within(model, section))
        for_each_amount(model.sections[id], [&](const Addition& addition) {
            if (addition.solution != check::none) taken_by[addition.solution].push_back(id);
            if (addition.chemical == chemical) add(id);
        });
    for (std::size_t next = 0; next < found.size(); ++next)
        for (const Id id : taken_by[found[next]]) add(id);
    return has;
}

/// Goes down every way, and so not by recursion: chains may be long.
class Follower {
  public:
    Follower(const Model& model, const Portion& batch, Id chemical)
        : model_(model),
          batch_(batch),
          chemical_(chemical),
          has_(with_some(model, batch.section, chemical)),
          is_within_(model.sections.size()),
          so_far_(model) {}

    Shares run() {
        go_into(batch_);
        while (!within_.empty() && !are_more_) {
            Inside& inside = within_.back();
            so_far_.cut_to(inside.lines_before);
            const auto& lines = model_.sections[inside.of.section].lines;
            if (inside.next == lines.size()) {
                is_within_[inside.of.section] = false;
                within_.pop_back();
                continue;
            }
            const auto* addition = std::get_if<Addition>(&lines[inside.next++]);
            if (addition == nullptr || !is_an_amount(*addition)) continue;
            const Portion of = inside.of;
            if (addition->chemical == chemical_ && within_.size() > 1) weigh(of, *addition);
            if (addition->solution != check::none) pour(of, *addition);
        }
        if (are_more_)
            shares_.found.back().lines.push_back(
                {fmt::format("{} is in it by more ways than these", model_.chemicals[chemical_].name),
                 "",
                 "docs/limits.md says how many are written out",
                 {}});
        return std::move(shares_);
    }

  private:
    /// A solution that is being gone through, up to one of its lines.
    struct Inside {
        Portion of;
        std::size_t lines_before;  ///< of the derivation
        std::size_t next = 0;
    };

    [[nodiscard]] bool is_enough() const {
        return shares_.found.size() >= most_ways || lines_found_ >= most_lines_of_ways;
    }

    void go_into(const Portion& of) {
        is_within_[of.section] = true;
        within_.push_back({of, so_far_.count()});
    }

    /// As the batch has it, in g, ml, mol or drops.
    Exact measure_in(const Portion& of, const Addition& addition, WhyLines& lines) const {
        const Section& section = model_.sections[of.section];
        const Exact amount = amount_in(section, addition, of.variant);
        if (section.by_parts && addition.parts) {
            lines.parted(addition, substance_words(model_, addition), parts_in_all(section), of.ml);
            return amount * of.ml / section.makes_ml;
        }
        lines.written(addition, substance_words(model_, addition), amount, section.makes_ml);
        const Exact scale = of.ml / section.makes_ml;
        lines.scaled(amount, unit_of(addition), scale, section.makes_ml);
        return amount * scale;
    }

    void pour(const Portion& of, const Addition& addition) {
        if (!has_[addition.solution] || is_within_[addition.solution]) return;
        const Exact ml = measure_in(of, addition, so_far_);
        if ((ml / batch_.ml).to_double() < least_share) {
            shares_.any_too_thin = true;
            return;
        }
        const auto& poured = model_.sections[addition.solution];
        const std::size_t variants = check::variants_of(model_, poured);
        if (poured.makes_ml > 0) go_into({addition.solution, of.variant < variants ? of.variant : 0, ml});
    }

    void weigh(const Portion& of, const Addition& addition) {
        are_more_ = is_enough();
        if (are_more_) return;
        WhyLines lines = so_far_;
        const Exact measure = measure_in(of, addition, lines);
        const Exact g_per_l = lines.by_the_litre(addition, measure, batch_.ml);
        auto& found = shares_.found;
        found.push_back({check::shown_name(model_, batch_.section), substance_words(model_, addition),
                         "by way of " + check::shown_name(model_, of.section), plain(g_per_l, "g/l"), lines.take(),
                         true});
        lines_found_ += found.back().lines.size();
    }

    const Model& model_;
    const Portion& batch_;
    Id chemical_;
    std::vector<bool> has_;        ///< the chemical, by section
    std::vector<bool> is_within_;  ///< by section: one that goes round in a circle is not gone into again
    std::vector<Inside> within_;
    WhyLines so_far_;
    std::size_t lines_found_ = 0;
    bool are_more_ = false;  ///< ways than are shown
    Shares shares_;
};

}  // namespace

Shares shares_in(const Model& model, const Portion& batch, Id chemical) {
    return Follower(model, batch, chemical).run();
}

}  // namespace scruple::plan
