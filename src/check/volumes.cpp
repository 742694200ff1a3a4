// SPDX-License-Identifier: MIT
#include "scruple/check/volumes.hpp"

#include "vessels.hpp"

namespace scruple::check {
namespace {

/// What a vessel holds.
struct Held {
    using Share = Exact;
    Level level{};
    bool measured = true;  ///< no line left open how much goes in

    [[nodiscard]] const Exact& volume() const { return level.with_room_ml; }
    [[nodiscard]] Held part(const Exact& share) const {
        return {{level.liquid_ml * share, level.with_room_ml * share}, measured};
    }
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
            filling_.after.push_back(vessels_.main().level);
        }
        if (filling_.made_up_at == none)
            filling_.made_ml = section_.by_parts ? section_.makes_ml : vessels_.main().level.with_room_ml;
        return std::move(filling_);
    }

  private:
    void take(const Action&) {}

    void take(const Addition& addition) {
        auto& [level, measured] = vessels_.open();
        if (addition.how == Addition::How::to_make) {
            if (addition.shares.empty()) return;
            const auto& mark = share(addition, variant_);
            level = {mark, mark};
            if (!vessels_.main_is_open()) return;
            filling_.made_up_at = line_;
            filling_.made_ml = mark;
            return;
        }
        const bool open_amount = addition.optional || addition.shares.empty() || addition.how == Addition::How::about;
        if (open_amount) measured = false;
        if (addition.optional) return;
        const auto dose = dose_of(model_, addition, measure_now(addition, variant_));
        level.liquid_ml += dose.room_estimated ? Exact(0) : dose.room_ml;
        level.with_room_ml += dose.room_ml;
    }

    void take(const VesselMove& move) {
        const auto poured = vessels_.move(move);
        if (!poured) return;
        const auto& [contents, asked, there] = *poured;
        const bool too_much = there.is_zero() || (asked > there && contents.measured);
        if (too_much && filling_.poured_out_at == none) filling_.poured_out_at = line_;
        auto& level = vessels_.main().level;
        level.liquid_ml += contents.level.liquid_ml;
        level.with_room_ml += contents.level.with_room_ml;
    }

    const Model& model_;
    const Section& section_;
    std::size_t variant_;
    Filling filling_;
    Vessels<Held> vessels_;
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
