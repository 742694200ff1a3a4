// SPDX-License-Identifier: MIT
// Which vessels stand on the table, and what the lines of a solution do with them.
#pragma once

#include <algorithm>
#include <optional>
#include <string_view>
#include <type_traits>

#include "scruple/check/model.hpp"

namespace scruple::check {

/// The main vessel and those beside it. `Contents` is what one holds: it has a type `Share` (of a whole, a number),
/// `volume()` in ml as such a number, and `part(share)`, so much of it.
template <class Contents>
class Vessels {
  public:
    using Share = typename Contents::Share;

    /// What left a vessel for the main one.
    struct Poured {
        Contents contents;
        Share asked, there;  ///< as shares of the vessel as it was when last filled
    };

    [[nodiscard]] Contents& open() { return all_[open_].in; }
    [[nodiscard]] const Contents& open() const { return all_[open_].in; }
    [[nodiscard]] Contents& main() { return all_.front().in; }
    [[nodiscard]] const Contents& main() const { return all_.front().in; }
    [[nodiscard]] bool main_is_open() const { return open_ == 0; }

    /// Opens a vessel, or closes the one that is open; of what is poured, says what came out. To put it into the main
    /// one is for the caller.
    std::optional<Poured> move(const VesselMove& move) {
        if (move.what == VesselMove::What::apart) {
            open_ = find(move.vessel);
            return std::nullopt;
        }
        close();
        if (move.what != VesselMove::What::pour_in) return std::nullopt;
        return pour(all_[find(move.vessel)], move);
    }

  private:
    struct Vessel {
        std::string_view name{};
        Contents in{};
        Contents full{};  ///< when it was closed
        Share left = 1;   ///< of the full one
    };

    void close() {
        if (open_ == 0) return;
        all_[open_].full = all_[open_].in;
        all_[open_].left = 1;
        open_ = 0;
    }

    static Poured pour(Vessel& from, const VesselMove& move) {
        const Share there = from.left, asked = share_of(move, from);
        const Share taken = std::min(asked, there);
        from.left = there - taken;
        from.in = from.full.part(from.left);
        return {from.full.part(taken), asked, there};
    }

    /// Without a word on it, all that is left; of a vessel without a volume, a stated volume is none of it.
    static Share share_of(const VesselMove& move, const Vessel& from) {
        if (move.share) return as_share(*move.share);
        if (!move.ml) return from.left;
        const Share all = from.full.volume();
        return all == Share(0) ? Share(0) : as_share(*move.ml) / all;
    }

    static Share as_share(const Exact& value) {
        if constexpr (std::is_same_v<Share, Exact>) {
            return value;
        } else {
            return value.to_double();
        }
    }

    std::size_t find(std::string_view name) {
        for (std::size_t i = 1; i < all_.size(); ++i)
            if (all_[i].name == name) return i;
        all_.push_back({.name = name});
        return all_.size() - 1;
    }

    Few<Vessel> all_ = Few<Vessel>(1);
    std::size_t open_ = 0;
};

}  // namespace scruple::check
