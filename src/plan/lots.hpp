// SPDX-License-Identifier: MIT
// What stands on the shelf jar by jar and bottle by bottle, and what became of all that was ever there. The oldest is
// taken first. Nothing in it is ever less than nothing: what is taken beyond is written down as wanting.
#pragma once

#include <algorithm>
#include <map>
#include <span>
#include <vector>

#include "stock.hpp"
#include "uses.hpp"

namespace scruple::plan {

using LotId = std::uint32_t;
using LineId = std::uint32_t;  ///< an index into the model's log

/// What is counted together: one ware, or one solution.
struct Stocked {
    check::Id solution = check::none;
    Ware ware{};  ///< where solution is none

    [[nodiscard]] bool by_volume() const { return solution != check::none || ware.by_volume; }
    friend bool operator==(const Stocked&, const Stocked&) = default;
    friend std::strong_ordering operator<=>(const Stocked& a, const Stocked& b);
};

[[nodiscard]] std::string stocked_words(const check::Model& model, const Stocked& what);

/// Films or sheets of one kind, or an area; `what` is empty for an area in cm².
struct Through {
    std::string_view what;  ///< `films 135`, as the log has it
    check::Exact count;
};

/// What one line put on the shelf: a jar, a batch, or what was counted beyond what the log knew of.
struct Lot {
    LineId line = 0;
    Stocked what{};
    check::Exact made{}, left{};       ///< g or ml
    check::Exact spent{};              ///< ml of `made` that take no more films, of a bath that is kept
    check::Exact replenished{};        ///< ml
    std::vector<Through> through{};    ///< of a bath that is kept
    Lengthening longer{};              ///< what comes next, for what went through it
    check::Exact poured_off{};         ///< by a line that names its day: no count brings it back
    std::uint32_t first = 0, end = 0;  ///< of the pourings that went into it
};

/// So much of one lot, taken at once.
struct Pouring {
    LotId of = 0;
    check::Exact measure;
};

/// Everything that came and went of one thing. What came (and what was wanting) is always what went and what is held.
struct Account {
    check::Exact received, mixed, first_count, corrections, wanting;
    check::Exact into_mixing, processed, used, replenishing, discarded;
};

struct Pile {
    std::vector<LotId> lots;  ///< the oldest first
    std::size_t oldest = 0;   ///< those before it are empty
    std::size_t in_use = 0;   ///< those before it take no more films
    std::size_t cleared = 0;  ///< those before it were thrown away
    check::Exact held;        ///< g or ml
    Account account;
    std::vector<std::uint32_t> unsettled;  ///< shortages since it was counted last
};

/// A line took more than there was.
struct Shortage {
    LineId line = 0;
    Stocked what{};
    check::Exact wanting;
    bool settled = false;  ///< by a count since
};

/// What was counted is not what the log comes to.
struct Correction {
    LineId line = 0;
    Stocked what{};
    check::Exact expected, counted;  ///< expected is less than nothing where something was wanting
    bool first = false;              ///< nothing was known of it before
};

class Lots {
  public:
    /// All that follows is done by this line; lines come in the order of the log.
    void begin(LineId line);

    /// A new jar or batch; made of what has been poured since `first_pouring`.
    void receive(const Stocked& what, const check::Exact& measure);
    void mix(const Stocked& what, const check::Exact& measure, std::uint32_t first_pouring);

    /// As much as there is of exactly this; gives what was taken and books it to where it goes.
    check::Exact take(const Stocked& what, const check::Exact& wanted, check::Exact Account::*to);
    /// The same of other forms and strengths of a chemical, in the measure of what was asked for.
    check::Exact take_others(const check::Model& model, const Amount& asked, check::Exact Account::*to);
    /// The same of what certain lines put on the shelf, and for good.
    check::Exact take_of(const Stocked& what, LineId first_line, LineId end_line, const check::Exact& wanted,
                         check::Exact Account::*to);
    [[nodiscard]] check::Exact held_of(const Stocked& what, LineId first_line, LineId end_line) const;
    void lack(const Stocked& what, const check::Exact& wanting, check::Exact Account::*to);

    void count(const Stocked& what, const check::Exact& counted);

    /// Films through a bath that is kept: so much of it is spent. What is past the capacity of all batches falls to
    /// the latest. There must be some of it.
    /// `longer` is what the next take longer for it.
    void spend(check::Id bath, const check::Exact& ml, const std::vector<check::Use>& uses, const Lengthening& longer);
    void replenish(check::Id bath, const check::Exact& ml);

    [[nodiscard]] check::Exact held(const Stocked& what) const;
    [[nodiscard]] bool lacks(const Stocked& what) const;  ///< since it was counted last
    [[nodiscard]] std::uint32_t pourings_so_far() const { return static_cast<std::uint32_t>(pourings.size()); }
    [[nodiscard]] std::vector<Stocked> known_of(const check::LogEntry& line) const;

    Stock stock;  ///< the same in sums; of a bath that is kept, what still takes films
    std::vector<Lot> lots;
    std::vector<Pouring> pourings;
    std::vector<std::uint32_t> pourings_before;  ///< each line
    std::map<Stocked, Pile> piles;
    std::vector<Shortage> shortages;  ///< in the order of their lines
    std::vector<Correction> corrections;

  private:
    Lot& put(const Stocked& what, const check::Exact& measure);
    void drain(Pile& pile, const check::Exact& measure);
    void take_from(LotId id, const check::Exact& measure);
    check::Exact refill(Pile& pile, const check::Exact& more);
    void pour(Lot& lot, const check::Exact& measure);
    void add_usable(const Lot& lot, const check::Exact& before);

    LineId line_ = 0;
};

/// Of shortages or corrections those of one line.
template <class It>
[[nodiscard]] std::span<const It> of_line(const std::vector<It>& all, LineId line) {
    const auto begin = std::partition_point(all.begin(), all.end(), [line](const It& it) { return it.line < line; });
    const auto end = std::partition_point(begin, all.end(), [line](const It& it) { return it.line == line; });
    return {all.data() + (begin - all.begin()), static_cast<std::size_t>(end - begin)};
}

/// What is left of a lot and still takes films.
[[nodiscard]] check::Exact usable(const Lot& lot);

}  // namespace scruple::plan
