// SPDX-License-Identifier: MIT
#include "scruple/quantity/unit.hpp"

#include <algorithm>
#include <array>

#include "spelling.hpp"

namespace scruple::quantity {

namespace {

constexpr std::size_t unit_count = 0
#define SCRUPLE_UNIT(...) +1
#include "scruple/quantity/units.inc"
#undef SCRUPLE_UNIT
    ;

/// Calls `visit` with each of the spellings that `|` parts.
template <typename Visit>
constexpr void each_spelling(std::string_view spellings, Visit visit) {
    for (;;) {
        const std::size_t end = spellings.find('|');
        visit(spellings.substr(0, end));
        if (end == std::string_view::npos) return;
        spellings.remove_prefix(end + 1);
    }
}

std::vector<std::string_view> parted(std::string_view spellings) {
    std::vector<std::string_view> result;
    each_spelling(spellings, [&](std::string_view spelling) { result.push_back(spelling); });
    return result;
}

using Units = std::array<UnitInfo, unit_count>;

const Units& units() {
    static const Units table = {{
#define SCRUPLE_UNIT(id, dimension, numerator, denominator, shown, spellings) \
    {Unit::id, Dimension::dimension, Exact(numerator, denominator), shown, parted(spellings)},
#include "scruple/quantity/units.inc"
#undef SCRUPLE_UNIT
    }};
    return table;
}

/// Spellings by their hash; a slot that is taken sends the next one on to the slot after it.
struct SpellingTable {
    static constexpr std::size_t size = 512;  // a fifth full, so that nearly every look-up is one step
    struct Slot {
        PackedSpelling spelling;
        Unit unit = Unit::none;
    };
    std::array<Slot, size> slots{};

    static constexpr std::size_t start(const PackedSpelling& spelling) {
        // Fibonacci hashing: the odd number next to 2^64 over the golden ratio.
        return ((spelling.low ^ (spelling.high * 31)) * 0x9E3779B97F4A7C15ULL) >> 55;
    }

    constexpr std::size_t place(const PackedSpelling& spelling) const {
        std::size_t at = start(spelling);
        while (slots[at].unit != Unit::none && slots[at].spelling != spelling) at = (at + 1) % size;
        return at;
    }

    constexpr Unit unit(const std::optional<PackedSpelling>& spelling) const {
        return spelling ? slots[place(*spelling)].unit : Unit::none;
    }

    constexpr void add(Unit unit, const PackedSpelling& spelling) { slots[place(spelling)] = {spelling, unit}; }
};

constexpr SpellingTable make_spelling_table() {
    SpellingTable table;
#define SCRUPLE_UNIT(id, dimension, numerator, denominator, shown, spellings) \
    each_spelling(spellings, [&](std::string_view spelling) {                 \
        table.add(Unit::id, packed(spelling).value());                        \
        table.add(Unit::id, folded(spelling).value());                        \
    });
#include "scruple/quantity/units.inc"
#undef SCRUPLE_UNIT
    return table;
}

constexpr SpellingTable spelling_table = make_spelling_table();
static_assert(SpellingTable::size == std::size_t{1} << (64 - 55), "start() must reach every slot and no more");

}  // namespace

std::span<const UnitInfo> all_units() {
    return units();
}

const UnitInfo& info(Unit unit) {
    return units()[static_cast<std::size_t>(unit) - 1];
}

std::string_view shown_for(const Exact& value, Unit unit) {
    const std::string_view many = info(unit).shown;
    if (value != 1 || info(unit).spellings.size() == 1) return many;
    const std::string_view other = info(unit).spellings[1];  // the singular, where the shown one is a plural
    const auto differ = std::mismatch(many.begin(), many.end(), other.begin(), other.end());
    const bool is_singular =
        std::equal(differ.first + (differ.first != many.end()), many.end(), differ.second, other.end());
    return is_singular && *differ.first == 's' ? other : many;
}

Unit find_unit(std::string_view spelling) {
    const Unit as_written = spelling_table.unit(packed(spelling));  // nearly always: folding costs three times as much
    return as_written != Unit::none ? as_written : spelling_table.unit(folded(spelling));
}

Exact to_base(const Exact& value, Unit unit) {
    return value * info(unit).factor;
}

Exact from_base(const Exact& base, Unit unit) {
    return base / info(unit).factor;
}

Exact to_celsius(const Exact& value, Unit unit) {
    return unit == Unit::fahrenheit ? (value - 32) * info(unit).factor : value;
}

}  // namespace scruple::quantity
