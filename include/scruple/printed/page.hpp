// SPDX-License-Identifier: MIT
// What the lines of a printed page say, word for word: names and figures in columns, with units that may still mean
// several things.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "scruple/check/printed.hpp"
#include "scruple/quantity/exact.hpp"

namespace scruple::printed {

using quantity::Exact;

/// A unit as its word stands there. Whose ounce it is, and whether `gr` is a grain or a gram, is not said by the word.
enum class UnitWord : std::uint8_t {
    none,
    ounce,
    fluid_ounce,
    pound,
    drachm,
    fluid_drachm,
    scruple,
    grain,
    grain_or_gram,
    minim,
    pint,
    quart,
    gallon,
    milligram,
    gram,
    kilogram,
    millilitre,
    litre,
    part,
    drop
};

[[nodiscard]] bool is_metric(UnitWord unit);

enum class Fluid : std::uint8_t { imperial, us };
enum class Ounce : std::uint8_t { avoirdupois, apothecaries };

/// Whose measure it is, where the page says so: `oz. (imp.)`, `U.S. pint`, `oz avoir.`
struct Whose {
    std::optional<Fluid> fluid{};
    std::optional<Ounce> ounce{};
};

/// `6 oz`, `1½`
struct Piece {
    Exact value{};
    UnitWord unit = UnitWord::none;
    Whose whose{};
};

/// What one column of a line says: `1 oz 60 gr` is two pieces, a dash none.
struct Measure {
    std::vector<Piece> pieces{};
    std::optional<Piece> per{};  ///< `2 grs to the ounce`: so much in each of these
    Exact step{};                ///< what its last place counts: 0.1 of `5.7`, 1/4 of `1¼`, 1 of `75`
    std::string text;            ///< as printed
};

/// `1 : 9`, `1 + 9`
struct Ratio {
    Exact one{}, other{};
    bool by_sum = false;  ///< a plus sign stands between: it has one meaning
};

enum class Percent : std::uint8_t { by_volume, by_weight, weight_in_volume };  ///< v/v, w/w, w/v

/// `take 1 part A, 1 part B and 2 parts of water`, `1 oz A to 1 pint of water`: which solutions of the page are mixed
/// for use. Where no unit stands, and where it is `parts`, the figures are parts.
struct Mixture {
    struct Share {
        std::size_t solution = 0;
        Exact parts{};
        UnitWord unit = UnitWord::none;
    };
    std::vector<Share> shares{};
    Exact water{};
    UnitWord water_unit = UnitWord::none;
};

struct Line {
    enum class What : std::uint8_t {
        ingredient,
        water,
        water_to_make,
        dilution,     ///< `1 : 9`, which has two meanings
        mixture,      ///< for use
        alternative,  ///< `or crystals 5 oz`: instead of the line before
        words
    } what = What::words;
    std::size_t solution = 0;               ///< of the page's
    std::string name{};                     ///< as printed, without amounts and words for a form: `Sulphite of soda`
    std::string form{};                     ///< `crystals`, `dry`; empty where none is printed
    std::optional<Exact> percent{};         ///< `acetic acid 28 %`
    std::optional<Percent> percent_said{};  ///< `by volume`
    bool saturated = false;                 ///< a saturated solution of it is measured out
    std::optional<Ratio> ratio{};           ///< of a dilution
    std::optional<Mixture> mixture{};       ///< of a mixture
    std::vector<Measure> columns{};
    std::size_t stated = 0;  ///< the first column that is no dash
    std::string assumed{};   ///< what was taken for granted in reading it; empty for nothing
    std::string text{};      ///< the line as it was typed
    check::Place place{};
};

/// What stands over a column: `Avoirdupois`, `British`, `Grammes`.
struct Heading {
    bool metric = false;
    Whose whose{};
    UnitWord unit = UnitWord::none;  ///< of figures that have none
};

/// One of the solutions that a page gives: `Solution A`. A page without such lines has one, without a label.
struct Solution {
    std::string label{};
    bool for_use = false;  ///< called a working solution
};

struct Page {
    enum class Country : std::uint8_t { unknown, britain, america, metric } country = Country::unknown;
    std::optional<int> year{};
    std::vector<Heading> headings{};  ///< of the columns, in their order; none where there are none
    std::vector<Solution> solutions{};
    std::vector<Line> lines{};
    /// Which country's spelling it has: `litre` and `drachm`, or `liter` and `dram`.
    Country spelling = Country::unknown;
};

/// Whether a column of a line has an amount, and not a dash or nothing.
[[nodiscard]] bool has_amount(const Line& line, std::size_t column);

/// Reads every line; one that says nothing of this kind is `words`.
[[nodiscard]] Page read_page(const check::PrintedPage& typed);

}  // namespace scruple::printed
