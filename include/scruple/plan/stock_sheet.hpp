// SPDX-License-Identifier: MIT
// What is on the shelf on a day, by the log: jars, bottles, what they came from, and what does not add up.
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "scruple/check/model.hpp"
#include "scruple/plan/figure.hpp"

namespace scruple::plan {

/// A line of the log; `where` (`log.scruple:12`) is for whoever has the sources to fill in.
struct StockLine {
    check::Place place{};
    check::Day day = 0;
    std::string where{};
};

struct StockCost {
    std::vector<std::pair<std::string, check::Exact>> sums;  ///< by currency; empty where nothing is known
    std::vector<std::string> unpriced;                       ///< what has no price and is not in the sums
};

/// What went into a batch: so much of which jar or bottle.
struct StockShare {
    Figure amount;
    std::string name;  ///< `sodium sulfite (anhydrous)`, `Heron part A`
    std::string lot;   ///< `jar of 2026-11-02 from Tidewater`, `batch of 2026-11-05`
    StockLine line;    ///< that put it on the shelf
};

/// A jar, or a batch of a solution.
struct StockLot {
    enum class How : std::uint8_t { received, mixed, counted } how = How::received;
    StockLine line;
    std::string supplier;
    Figure left, made;
    int days_old = 0;
    StockCost cost;  ///< of what is left

    std::optional<check::Day> use_by;
    std::string
        use_by_because;  ///< `6 weeks half full`; where there is no day, why; empty where nothing is said of a jar

    // Of a solution:
    std::optional<int> percent_full;           ///< of what was mixed
    std::optional<check::Exact> percent_used;  ///< of its capacity; 100 and more: used up
    std::vector<std::string> through;          ///< `8 films 135`
    std::string longer;                        ///< `40 % longer`: what comes next through it
    std::vector<StockShare> from;
    std::vector<std::string> warnings;
};

/// All that came and went, in g or ml: received + mixed + first_count + corrections + wanting is what is on hand and
/// all that went.
struct StockMoves {
    check::Exact received, mixed, first_count, corrections, wanting;
    check::Exact into_mixing, processed, used, replenishing, discarded;
    check::Exact on_hand;
};

struct StockItem {
    std::string name, form_name;  ///< form_name: of a chemical with several
    bool by_volume = false;       ///< counted in ml, else in g
    Figure on_hand;
    StockMoves moves;
    std::vector<StockLot> lots;  ///< that are not empty, the oldest first
};

struct StockCorrection {
    StockLine line;
    std::string name;
    Figure expected, counted, by;  ///< signed
    bool first = false;            ///< nothing was known of it before
};

/// A line that takes more than there was.
struct StockFault {
    StockLine line;
    std::string name;
    Figure wanting;
    std::string sentence;
    bool settled = false;  ///< it was counted since
};

struct StockSheet {
    check::Day on = 0;
    bool last_of_log = false;  ///< nobody asked for a day
    std::size_t lines_after = 0;
    std::vector<StockItem> chemicals, solutions;  ///< by name; what came and went is there, too
    std::vector<StockCorrection> corrections;     ///< in the order of the log, as are the faults
    std::vector<StockFault> faults;
};

/// On a day, or on the last day of the log.
[[nodiscard]] StockSheet stock_sheet(const check::Model& model, std::optional<check::Day> on);

/// A line of the log and what it takes from the shelf: which jars and bottles, and what is wanting.
struct StockEntry {
    StockLine line;
    std::string text;  ///< as it was written; for whoever wrote it to fill in
    std::vector<StockShare> shares;
    std::vector<StockCorrection> corrections;
    std::vector<StockFault> faults;
    std::vector<std::string> warnings;  ///< of bottles that it takes from
};
[[nodiscard]] StockEntry stock_entry(const check::Model& model, std::size_t line);

}  // namespace scruple::plan
