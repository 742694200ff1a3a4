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

/// `6 oz`, `1½`
struct Piece {
    Exact value{};
    UnitWord unit = UnitWord::none;
};

/// What one column of a line says: `1 oz 60 gr` is two pieces.
struct Measure {
    std::vector<Piece> pieces{};
    Exact step{};      ///< what its last place counts: 0.1 of `5.7`, 1/4 of `1¼`, 1 of `75`
    std::string text;  ///< as printed
};

/// `1 : 9`
struct Ratio {
    Exact one{}, other{};
};

struct Line {
    enum class What : std::uint8_t { ingredient, water, water_to_make, dilution, words } what = What::words;
    std::string name;                ///< as printed, without amounts and words for a form: `Sulphite of soda`
    std::string form;                ///< `crystals`, `dry`; empty where none is printed
    std::optional<Exact> percent{};  ///< `acetic acid 28 %`
    std::optional<Ratio> ratio{};    ///< of a dilution
    std::vector<Measure> columns{};
    check::Place place{};
};

struct Page {
    enum class Country : std::uint8_t { unknown, britain, america, metric } country = Country::unknown;
    std::optional<int> year{};
    std::vector<Line> lines{};
};

/// Reads every line; one that says nothing of this kind is `words`.
[[nodiscard]] Page read_page(const check::PrintedPage& typed);

}  // namespace scruple::printed
