// SPDX-License-Identifier: MIT
#include "scruple/check/volumes.hpp"

#include <algorithm>

#include "blocks.hpp"

namespace scruple::check {
namespace {

/// A second vessel: what it holds, and what it held when it was closed.
struct Beaker {
    std::string_view name{};
    Level level{};
    Level full{};
    Exact left = 1;        ///< of the full vessel, as a share
    bool measured = true;  ///< no line left open how much goes in
};

const Exact& share(const Addition& addition, std::size_t variant) {
    return addition.shares[addition.shares.size() == 1 ? 0 : variant];
}

class Filler {
  public:
    Filler(const Model& model, const Section& section, std::size_t variant)
        : model_(model), section_(section), variant_(variant) {}

    Filling run() {
        filling_.after.reserve(section_.lines.size());
        for (std::uint32_t i = 0; i < section_.lines.size(); ++i) {
            line_ = i;
            std::visit([this](const auto& line) { take(line); }, section_.lines[i]);
            filling_.after.push_back(main_);
        }
        if (filling_.made_up_at == none) filling_.made_ml = section_.by_parts ? section_.makes_ml : main_.with_room_ml;
        return std::move(filling_);
    }

  private:
    void take(const Action&) {}

    void take(const Addition& addition) {
        auto& level = open_ == SIZE_MAX ? main_ : beakers_[open_].level;
        if (addition.how == Addition::How::to_make) {
            if (addition.shares.empty()) return;
            const auto& mark = share(addition, variant_);
            level = {mark, mark};
            if (open_ != SIZE_MAX) return;
            filling_.made_up_at = line_;
            filling_.made_ml = mark;
            return;
        }
        const bool open_amount = addition.optional || addition.shares.empty() || addition.how == Addition::How::about;
        if (open_ != SIZE_MAX && open_amount) beakers_[open_].measured = false;
        if (addition.optional) return;
        const auto dose = dose_of(model_, addition, measure_now(addition, variant_));
        level.liquid_ml += dose.room_estimated ? Exact(0) : dose.room_ml;
        level.with_room_ml += dose.room_ml;
    }

    void take(const VesselMove& move) {
        if (move.what == VesselMove::What::apart) {
            open_ = find(move.vessel);
            return;
        }
        close();
        if (move.what == VesselMove::What::pour_in) pour(beakers_[find(move.vessel)], move);
    }

    void close() {
        if (open_ == SIZE_MAX) return;
        beakers_[open_].full = beakers_[open_].level;
        beakers_[open_].left = 1;
        open_ = SIZE_MAX;
    }

    /// The share of the full vessel that is asked for; of a stated volume, nothing where the vessel's is not known.
    static Exact share_of(const VesselMove& move, const Beaker& beaker) {
        if (move.share) return *move.share;
        if (!move.ml) return beaker.left;
        const auto& all = beaker.full.with_room_ml;
        if (all.is_zero()) return 0;
        const Exact asked = *move.ml / all;
        return beaker.measured ? asked : std::min(asked, beaker.left);
    }

    void pour(Beaker& beaker, const VesselMove& move) {
        const Exact asked = share_of(move, beaker);
        const bool too_much = asked > beaker.left || beaker.left.is_zero();
        if (too_much && filling_.poured_out_at == none) filling_.poured_out_at = line_;
        const Exact share = std::min(asked, beaker.left);
        const Level poured{beaker.full.liquid_ml * share, beaker.full.with_room_ml * share};
        main_.liquid_ml += poured.liquid_ml;
        main_.with_room_ml += poured.with_room_ml;
        beaker.level.liquid_ml -= poured.liquid_ml;
        beaker.level.with_room_ml -= poured.with_room_ml;
        beaker.left -= share;
    }

    std::size_t find(std::string_view name) {
        for (std::size_t i = 0; i < beakers_.size(); ++i) {
            if (beakers_[i].name == name) return i;
        }
        beakers_.push_back({.name = name});
        return beakers_.size() - 1;
    }

    const Model& model_;
    const Section& section_;
    std::size_t variant_;
    Filling filling_;
    Level main_;
    std::vector<Beaker> beakers_;
    std::size_t open_ = SIZE_MAX;
    std::uint32_t line_ = 0;
};

}  // namespace

Filling fill(const Model& model, const Section& section, std::size_t variant) {
    return Filler(model, section, variant).run();
}

std::optional<Exact> made_up_to(const Section& section, std::size_t variant) {
    const Exact* mark = nullptr;
    bool apart = false;
    for (const auto& line : section.lines) {
        if (const auto* move = std::get_if<VesselMove>(&line)) apart = move->what == VesselMove::What::apart;
        const auto* addition = std::get_if<Addition>(&line);
        if (addition == nullptr || apart || addition->how != Addition::How::to_make) continue;
        if (!addition->shares.empty()) mark = &share(*addition, variant);
    }
    return mark == nullptr ? std::nullopt : std::optional(*mark);
}

Exact made_ml(const Model& model, const Section& section, std::size_t variant) {
    const auto mark = made_up_to(section, variant);
    return mark ? *mark : fill(model, section, variant).made_ml;
}

}  // namespace scruple::check
