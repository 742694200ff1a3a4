// SPDX-License-Identifier: MIT
// The ways to read a page, and what an amount comes to under each.
#pragma once

#include <array>

#include "naming.hpp"
#include "scruple/printed/page.hpp"
#include "weights.hpp"

namespace scruple::printed {

inline constexpr std::size_t most_columns = 4;
inline constexpr int drops_in_ml = 20;  ///< of a dropper that nobody has counted; common practice, no source

/// What all lines share.
struct Shared {
    std::array<Fluid, most_columns> fluid{};
    Ounce ounce = Ounce::avoirdupois;
    bool gr_is_gram = false;
    double stronger = 1;  ///< the metric column against the others
    Weights weights{};
};

/// How one line is read.
struct Way {
    bool other_ounce = false;  ///< departs from the page's
    check::Id form = check::none;
    Percent percent = Percent::weight_in_volume;  ///< of a line that has one
    Weights weights{};
};

/// A line's chemical, settled before anything else.
struct Known {
    const Line* line = nullptr;
    Named what{};
    bool pure_liquid = false;
    bool liquid = false;  ///< or a solution of what is none
    std::vector<Way> ways{};
    std::optional<Ounce> ounce{};             ///< that a `reading` line settles for it
    std::vector<const Line*> alternatives{};  ///< `or crystals 5 oz`
};

/// What is known of a column.
struct Column {
    bool metric = false;
    bool parts = false;              ///< figures without a unit are parts
    UnitWord unit = UnitWord::none;  ///< of figures without one, by the heading
    Whose whose{};                   ///< by the heading
};

struct Amount {
    double base = 0;  ///< g or ml
    bool by_volume = false;
};

/// What a measure of a column comes to. Parts are grams of what is weighed and millilitres of what is measured.
[[nodiscard]] Amount amount_of(const Measure& measure, const Known& known, const Shared& shared, const Way& way,
                               std::size_t index, const Column& column);

/// `% v/v`
[[nodiscard]] std::string_view words_of(Percent percent);

/// A unit of volume in ml, an ounce and a drachm as fluid ones; 0 for anything else.
[[nodiscard]] Exact ml_of(UnitWord word, Fluid fluid);

/// `to the ounce`, in ml; infinite where that is no volume.
[[nodiscard]] double volume_of(const Piece& piece, const Shared& shared, std::size_t index);

/// The same in units of the language, `6 oz av`; empty where that is nothing.
[[nodiscard]] std::string words_of(const Measure& measure, const Known& known, const Shared& shared, const Way& way,
                                   std::size_t index, const Column& column);

/// Whether some of its figures are parts or drops, which the line ought to say.
[[nodiscard]] bool is_in(const Measure& measure, UnitWord unit);

}  // namespace scruple::printed
