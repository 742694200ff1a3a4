// SPDX-License-Identifier: MIT
// A card for any volume: what each of its figures comes from, for a page that works them out anew where it is read.
// Amounts are those of the batch as written; every one of them grows with the volume.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "scruple/check/model.hpp"

namespace scruple::plan {

/// Words, and a figure within them that grows with the batch.
struct GrowingText {
    enum class Shown : std::uint8_t { none, three_figures, grams, whole_ml };

    std::string before{}, after{};
    Shown shown = Shown::none;
    check::Exact amount{};
    std::string unit{};
    bool only_as_written = false;  ///< left out where the batch is another than the one written
};

/// `text` in a batch `scale` times as large; nothing where it does not stand there.
[[nodiscard]] std::optional<std::string> text_of(const GrowingText& text, const check::Exact& scale);

/// An amount to be read on an instrument.
struct GrowingAmount {
    enum class Read : std::uint8_t { weighed, measured, dropped, made_up } read = Read::weighed;
    check::Exact amount{};
};

/// A thing of the gather list.
struct GrowingThing {
    std::string name, form, grade;
    bool optional = false;
};

/// What a line of the work does to the figures; one for each line.
struct GrowingLine {
    enum class What : std::uint8_t { put, make_up, open, pour, nothing } what = What::nothing;
    enum class Piece : std::uint8_t { whole, first, pinch, rest } piece = Piece::whole;

    std::string vessel;                         ///< where it happens; of a pour, where it comes from
    std::string into;                           ///< pour
    std::string name;                           ///< pour: what is poured
    std::size_t thing = 0;                      ///< put, make up: of the things
    GrowingAmount whole;                        ///< put: what is weighed out; make up: the mark
    check::Exact piece_amount{};                ///< put, first piece: what goes in now
    check::Exact room_ml{};                     ///< put
    bool room_estimated = false;                ///< put
    bool counts = true;                         ///< put: in the running volume
    bool advised = false;                       ///< put: what cannot be measured well wants advice
    std::optional<check::Exact> share{}, ml{};  ///< pour: of all that was put there, or so much; else what is left
    std::vector<GrowingText> details;
};

struct Rescaling {
    check::Exact written_ml{}, card_ml{};  ///< the batch as written, and the one of the card
    std::optional<check::Bench> bench{};
    std::vector<GrowingThing> things;
    std::vector<GrowingLine> lines;
};

}  // namespace scruple::plan
