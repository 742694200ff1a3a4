// SPDX-License-Identifier: MIT
#include "beakers.hpp"

#include <algorithm>
#include <array>
#include <boost/container/small_vector.hpp>
#include <utility>

#include "leftovers.hpp"
#include "vessels.hpp"

namespace scruple::check {
namespace {

// What goes in meets all that is there with its first drop. How much of it counts is the meeting's to say.
constexpr std::array shares_gone_in = {0.01, 0.1, 1.0};
constexpr double least_ml = 1e-3;  // of what is weighed into an empty vessel

/// Something with its volume, in grams and moles all told.
struct Portion {
    using Share = double;
    double ml = 0;
    boost::container::small_vector<Content, 8> all{};  ///< g and mol, not by the litre
    std::optional<double> celsius{};

    void add(const Content& more, double share) {
        const auto same = [&](const Content& content) {
            return content.chemical == more.chemical && content.form == more.form;
        };
        auto found = std::ranges::find_if(all, same);
        if (found == all.end()) found = all.insert(all.end(), Content{more.chemical, more.form});
        found->g_per_l += more.g_per_l * share;
        found->mol_per_l += more.mol_per_l * share;
    }
    /// Warmth by volume; what is not said to be warm is as warm as what it meets.
    void add(const Portion& more, double share) {
        if (ml <= 0 || !celsius) celsius = more.celsius;
        if (celsius && more.celsius && more.ml > 0)
            celsius = (*celsius * ml + *more.celsius * more.ml * share) / (ml + more.ml * share);
        ml += more.ml * share;
        for (const auto& content : more.all) add(content, share);
    }
    [[nodiscard]] double volume() const { return ml; }
    [[nodiscard]] Portion part(double share) const {
        Portion some;
        some.add(*this, share);
        return some;
    }
    [[nodiscard]] Moment mix() && {
        Moment result{.contents = {all.begin(), all.end()}, .ml = ml, .celsius = celsius};
        const double per_litre = 1000 / std::max(ml, least_ml);
        for (auto& content : result.contents) {
            content.g_per_l *= per_litre;
            content.mol_per_l *= per_litre;
        }
        return result;
    }
};

class Walker {
  public:
    Walker(const Model& model, const Section& section, std::size_t variant, ContentsTable& table,
           const MomentViewer& viewer)
        : model_(model), section_(section), variant_(variant), table_(table), viewer_(viewer) {}

    void run() {
        for (const auto& line : section_.lines) std::visit([this](const auto& it) { take(it); }, line);
    }

  private:
    void take(const Action& action) {
        const bool tempers = action.verb == Action::Verb::cool || action.verb == Action::Verb::warm;
        if (tempers && action.celsius) vessels_.open().celsius = action.celsius->high.to_double();
    }

    void take(const Addition& addition) {
        if (addition.shares.empty()) return;
        const bool as_such = !addition.strength && !addition.saturated_at;
        const auto portion = portion_of(addition);
        goes_in(portion, addition.place, as_such ? addition.chemical : none, addition.form);
    }

    /// In g, ml, mol or drops; of what fills up to a mark, what is wanting.
    [[nodiscard]] double measure_of(const Addition& addition) const {
        const double measure = measure_now(addition, variant_).to_double();
        if (addition.how != Addition::How::to_make) return measure;
        return std::max(measure - vessels_.open().ml, 0.0);
    }

    [[nodiscard]] Portion portion_of(const Addition& addition) {
        Portion portion;
        if (addition.at) portion.celsius = addition.at->high.to_double();
        const double measure = measure_of(addition);
        const auto dose = dose_of(model_, addition, 1);
        portion.ml = dose.room_ml.to_double() * measure;
        if (addition.solution != none) {
            for (const auto& content : table_.of(addition.solution).contents) portion.add(content, measure / 1000);
        } else if (addition.chemical != model_.water) {
            portion.all.push_back(
                {addition.chemical, addition.form, dose.grams.to_double() * measure, dose.mol * measure});
            if (addition.by_conversion)
                for (const auto& left : leftovers_of(model_, addition, dose.grams)) portion.add(left, measure);
        }
        return portion;
    }

    void goes_in(const Portion& portion, const Place& place, Id put_in = none, Id form = none) {
        const Portion before = vessels_.open();
        vessels_.open().add(portion, 1);
        const auto& there = vessels_.open().all;
        if (!viewer_.minds({there.data(), there.size()})) return;
        for (const double share : shares_gone_in) {
            const bool part_alone = share < 1 && (before.ml <= 0 || portion.all.empty());
            if (part_alone) continue;
            Portion now = before;
            now.add(portion, share);
            auto mix = std::move(now).mix();
            if (share == 1) mix.put_in = put_in;
            mix.put_in_form = form;
            viewer_.show(mix, place);
        }
    }

    void take(const VesselMove& move) {
        if (const auto poured = vessels_.move(move)) goes_in(poured->contents, move.place);
    }

    const Model& model_;
    const Section& section_;
    std::size_t variant_;
    ContentsTable& table_;
    const MomentViewer& viewer_;
    Vessels<Portion> vessels_;
};

}  // namespace

void each_moment(const Model& model, const Section& section, std::size_t variant, ContentsTable& table,
                 const MomentViewer& viewer) {
    Walker(model, section, variant, table, viewer).run();
}

}  // namespace scruple::check
