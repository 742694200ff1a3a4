// SPDX-License-Identifier: MIT
// The lines of a section one after the other, with what is in the vessel when each goes in.
#pragma once

#include <functional>
#include <vector>

#include "contents_table.hpp"
#include "mix.hpp"
#include "vessels.hpp"

namespace scruple::check {

/// One thing that went into a vessel.
struct Step {
    std::uint32_t line;        ///< of the section's lines
    const Addition* addition;  ///< null for the pouring in of a second vessel
    const Mix& before;
    const Mix& after;
    bool fresh;         ///< nothing had gone into the vessel before
    Purposes purposes;  ///< of the addition's chemical
};

/// Walks the lines of a section for one variant. Optional lines are left out.
class Walk {
  public:
    Walk(const Model& model, const Section& section, std::size_t variant, ContentsTable& table)
        : model_(model), section_(section), variant_(variant), table_(table) {}

    void run(const std::function<void(const Step&)>& see);

    /// The main vessel when all is done.
    [[nodiscard]] const Mix& end() const { return vessels_.main().mix; }
    /// How warm it is then: what its last `to make` line or the last `cool` says, else 20 °C.
    [[nodiscard]] double end_celsius() const { return end_celsius_; }

  private:
    struct Held {
        using Share = double;
        Mix mix{};
        bool begun = false;

        [[nodiscard]] double volume() const { return mix.ml; }
        [[nodiscard]] Held part(double share) const;
    };
    void step(std::uint32_t line, const Addition* addition, const std::function<void(Mix&)>& put_in);
    void put(Mix& mix, const Addition& addition);
    void act(const Action& action);
    void take(std::uint32_t line, const VesselMove& move);

    const Model& model_;
    const Section& section_;
    std::size_t variant_;
    ContentsTable& table_;
    Vessels<Held> vessels_;
    Mix before_;  ///< of the step at hand; kept for its room
    double end_celsius_ = 20;
    const std::function<void(const Step&)>* see_ = nullptr;
};

}  // namespace scruple::check
