// SPDX-License-Identifier: MIT
#include "why_share.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "script.hpp"
#include "words.hpp"

namespace scruple::plan {

namespace {

using check::Addition;
using check::Exact;
using check::Id;
using check::Model;
using check::Section;

class Follower {
  public:
    Follower(const Model& model, const Portion& batch, Id chemical)
        : model_(model), batch_(batch), chemical_(chemical) {}

    std::vector<Why> run() {
        look_into(batch_, WhyLines(model_));
        return std::move(found_);
    }

  private:
    void look_into(const Portion& of, const WhyLines& so_far) {
        if (std::ranges::find(within_, of.section) != within_.end()) return;
        within_.push_back(of.section);
        for (const auto& line : model_.sections[of.section].lines) {
            const auto* addition = std::get_if<Addition>(&line);
            if (addition == nullptr || !is_an_amount(*addition)) continue;
            if (addition->solution != check::none) pour(of, *addition, so_far);
            if (addition->chemical == chemical_ && within_.size() > 1) weigh(of, *addition, so_far);
        }
        within_.pop_back();
    }

    static bool is_an_amount(const Addition& addition) {
        using How = Addition::How;
        return addition.how == How::exactly || addition.how == How::about || addition.how == How::part_now;
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

    void pour(const Portion& of, const Addition& addition, WhyLines lines) {
        const Exact ml = measure_in(of, addition, lines);
        const auto& poured = model_.sections[addition.solution];
        const std::size_t variants = check::variants_of(model_, poured);
        if (poured.makes_ml > 0) look_into({addition.solution, of.variant < variants ? of.variant : 0, ml}, lines);
    }

    void weigh(const Portion& of, const Addition& addition, WhyLines lines) {
        const Exact measure = measure_in(of, addition, lines);
        const Exact g_per_l = lines.by_the_litre(addition, measure, batch_.ml);
        found_.push_back({check::shown_name(model_, batch_.section), substance_words(model_, addition),
                          "by way of " + check::shown_name(model_, of.section), plain(g_per_l, "g/l"), lines.take(),
                          true});
    }

    const Model& model_;
    const Portion& batch_;
    Id chemical_;
    std::vector<Id> within_;
    std::vector<Why> found_;
};

}  // namespace

std::vector<Why> shares_in(const Model& model, const Portion& batch, Id chemical) {
    return Follower(model, batch, chemical).run();
}

}  // namespace scruple::plan
