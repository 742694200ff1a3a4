// SPDX-License-Identifier: MIT
#include "blocks.hpp"

#include <array>

namespace scruple::cli {
namespace {

constexpr std::array block_table{
    BlockInfo{"recipe", "a whole recipe: its facts, then its parts, or its lines where it has no parts", R"(recipe Heron
    is a       paper developer
    strength   stock
    source     our notebook
    keeps      6 months full, 2 months half full
    caution    "Gloves. Open the window."
    water                              700 ml at 40 C
    sodium sulfite (anhydrous)         40 g
    hydroquinone                       10 g
    stir until clear
    water to make                      1 l
)"},
    BlockInfo{"part", "one of several solutions of a recipe that are mixed with each other later", R"(part A
    water                              700 ml at 45 to 50 C
    sodium sulfite (anhydrous)         80 g, a pinch now
    metol                              4 g
    stir until clear
    sodium sulfite                     the rest
    cool to 20 C
    water to make                      1 l
)"},
    BlockInfo{"bath", "one of several solutions that film or paper goes through, one after the other", R"(bath A
    water                              750 ml at 30 C
    sodium sulfite (anhydrous)         60 g
    water to make                      1 l
    capacity   15 films 135 per 1 l
)"},
    BlockInfo{"working", "how the solution that is used is made from the parts; a recipe may have several",
              R"(working film
    use within 2 h
    water                              600 ml at 20 C
    part A                             100 ml
    stir 1 min
    part B                             50 ml
    water to make                      1 l
)"},
    BlockInfo{"replenisher", "what is added to a bath in use, to hold its strength", R"(replenisher
    water                              700 ml at 40 C
    sodium sulfite (anhydrous)         50 g
    sodium carbonate (anhydrous)       30 g
    water to make                      1 l
)"},
    BlockInfo{"chemical", "what a chemical is; adds to the library that is built in, or takes the place of one there",
              R"(chemical sodium carbonate
    also       soda ash, washing soda
    form       anhydrous       Na2CO3
    form       monohydrate     Na2CO3·H2O
    form       decahydrate     Na2CO3·10H2O
    ions       2 Na+ + CO3-2
    pair       Na+ with CO3-2   -0.08 kg/mol from "a handbook"
    acts as    alkali
    dissolves  21.5 g (anhydrous) in 100 g water at 20 C
    hazard     H319
    cas        497-19-8
)"},
    BlockInfo{"conversion", "how a chemical is made from others, for a line that says `by conversion`",
              R"(conversion of sodium metaborate (anhydrous)
    reaction   borax (decahydrate) + 2 sodium hydroxide -> 4 sodium metaborate (anhydrous) + 11 water
    excess     sodium hydroxide, 2 % more than it needs
    caution    "Lye: goggles and gloves. Add it to the water, a little at a time."
    water                              12 ml at 25 C per 1 g borax (decahydrate)
    borax (decahydrate)
    stir until clear
    sodium hydroxide
    wait 15 min, stirring every 5 min
)"},
    BlockInfo{"bench", "the balances, graduates and bottles there are; cards round to them", R"(bench Saltmarsh
    balance    0.1 g up to 500 g
    balance    0.01 g up to 50 g
    graduate   10 ml by 0.2 ml
    graduate   100 ml by 1 ml
    jug        5 l by 100 ml
    dropper    22 drops per 1 ml water
    bottle     500 ml, 1 l
)"},
    BlockInfo{"supplier", "a shop, its packs and its prices", R"(supplier Tidewater
    postage    6.50 EUR, none over 75 EUR
    sodium sulfite (anhydrous)   500 g   8.90 EUR
    sodium sulfite (anhydrous)   2 kg   24.00 EUR
)"},
    BlockInfo{"log", "what was bought, mixed, used and thrown away, and when", R"(log
    2026-11-02 received   sodium sulfite (anhydrous) 500 g from Tidewater 8.90 EUR
    2026-11-05 mixed      Heron 1 l
    2026-11-12 processed  4 films 135 in Heron
    2026-11-20 on shelf   borax (decahydrate) 180 g
    2026-11-20 discarded  Heron
)"},
    BlockInfo{"process", "the baths that film or paper goes through, in order", R"(process roll film
    Heron working        8 to 12 min at 20 C
    Breakwater working   5 min
    wash                 10 min, running
)"},
    BlockInfo{"plan", "what will be processed, and when; a shopping list is made from it", R"(plan December
    2026-12-03   6 films 135 through roll film
    2026-12-12   24 sheets 8x10 in through print line
    each Thursday from 2026-12-10 to 2026-12-31   4 films 120 through roll film
)"},
    BlockInfo{"meeting",
              "what must not meet, and what comes of it; adds to the library, or takes the place of one there",
              R"(meeting acid on sulfide
    lethal     "H2S gas, which kills"
    one of     S-2, at least 0.1 mmol/l
    below pH   9
    in doubt   acts as acid, Al+3
    note       no acid near sulfide
    caution    "Outdoors or under extraction."
)"},
    BlockInfo{"printed", "a formula as it stands in a book, for `scruple settle` to find out what it means",
              R"(printed Bittern
    is a       film developer
    book       The Tide Table of Photography, 1907, Great Britain, page 61
    | Water                   20 oz       1000 c.c.
    | Metol                   50 grs      5.7 g
    | Sulphite of soda        1 oz        50 g
    | Carbonate of potash     1/4 oz      12 g
    reading oz avoirdupois because "the metric column says so"
)"},
    BlockInfo{"format", "the area of a kind of film, where no width and height say it", R"(format 135
    area       80 sq in from "our own measuring"
)"},
};

}  // namespace

std::span<const BlockInfo> all_blocks() {
    return block_table;
}

}  // namespace scruple::cli
