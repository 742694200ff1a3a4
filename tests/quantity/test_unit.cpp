// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <fstream>
#include <set>
#include <sstream>

#include "scruple/quantity/unit.hpp"

using namespace scruple::quantity;

namespace {

std::string text_of(const std::string& path) {
    std::ifstream file(std::string(SCRUPLE_SOURCE_DIR) + '/' + path);
    REQUIRE_MESSAGE(file, "cannot read ", path);
    std::stringstream text;
    text << file.rdbuf();
    return text.str();
}

std::string with_blanks(std::string_view spelling, std::string_view blanks) {
    std::string result;
    for (const char c : spelling) c == ' ' ? result += blanks : result += c;
    return result;
}

}  // namespace

TEST_CASE("every unit stands at its place, and each of its spellings finds it") {
    std::size_t place = 0;
    for (const UnitInfo& unit : all_units()) {
        CHECK(static_cast<std::size_t>(unit.unit) == ++place);
        CHECK(&info(unit.unit) == &unit);
        CHECK(unit.factor > 0);
        CHECK(unit.spellings.front() == unit.shown);
        for (const std::string_view spelling : unit.spellings) CHECK(find_unit(spelling) == unit.unit);
    }
}

TEST_CASE("no spelling means two units, or is both a unit and ambiguous") {
    std::set<std::string_view> seen;
    for (const UnitInfo& unit : all_units())
        for (const std::string_view spelling : unit.spellings) {
            CHECK_MESSAGE(seen.insert(spelling).second, spelling);
            CHECK_MESSAGE(find_ambiguous(spelling) == nullptr, spelling);
        }
    for (const AmbiguousUnit& unit : all_ambiguous()) {
        CHECK_MESSAGE(seen.insert(unit.spelling).second, unit.spelling);
        CHECK_MESSAGE(find_unit(unit.spelling) == Unit::none, unit.spelling);
    }
}

TEST_CASE("runs of blanks, tabs and no-break blanks are one blank") {
    for (const UnitInfo& unit : all_units())
        for (const std::string_view spelling : unit.spellings) {
            CHECK(find_unit(with_blanks(spelling, "   ")) == unit.unit);
            CHECK(find_unit(with_blanks(spelling, "\t \u00A0")) == unit.unit);
        }
    CHECK(find_unit("%w/v") == Unit::percent_w_v);
    CHECK(find_unit("%\u00A0\u00A0w/w") == Unit::percent_w_w);
    CHECK(find_ambiguous("fl   oz") == find_ambiguous("fl oz"));
}

TEST_CASE("what is no unit is none") {
    for (const std::string_view spelling : {"",     " ",       "G",        "ML",    "Ml",
                                            "gram", "floz us", "fl oz",    "oz",    "oz  av x",
                                            "c",    "f",       "g ",       " g",    "mol/",
                                            "%",    "% w/",    "MIN",      "hours", "drop s",
                                            "sqin", "\xC2",    "\xC2\xA0", "°",     "wwwwwwwwwwwwwwwwwwwwwwwww"})
        CHECK_MESSAGE(find_unit(spelling) == Unit::none, spelling);
    CHECK(find_unit(std::string_view("g\0", 2)) == Unit::none);
    CHECK(find_unit(std::string_view("\0\0", 2)) == Unit::none);
    CHECK(find_unit(std::string(100000, ' ')) == Unit::none);
}

TEST_CASE("what the trade uses for several units is ambiguous, with or without a full stop") {
    for (const std::string_view spelling :
         {"oz",    "oz.",    "ounce",   "ounces", "lb",    "lbs", "pound", "pounds", "dr",  "dram",  "drams",
          "fl oz", "fl dr",  "minim",   "minims", "m",     "pt",  "pint",  "pints",  "qt",  "quart", "quarts",
          "gal",   "gallon", "gallons", "gill",   "gills", "gr",  "gr.",   "grs",    "grm", "%"}) {
        const AmbiguousUnit* ambiguous = find_ambiguous(spelling);
        REQUIRE_MESSAGE(ambiguous != nullptr, spelling);
        CHECK(ambiguous->readings.find(" or ") != std::string_view::npos);
    }
    for (const std::string_view spelling : {"", ".", "ml", "drachm", "drachms", "min", "cwt", "oz av", "ozz"})
        CHECK_MESSAGE(find_ambiguous(spelling) == nullptr, spelling);
}

namespace {

/// Every piece of `text` that stands between `open` and the next `close`.
std::vector<std::string> between(std::string_view text, char open, char close) {
    std::vector<std::string> pieces;
    for (std::size_t from = text.find(open); from != text.npos; from = text.find(open, from)) {
        const std::size_t to = text.find(close, from + 1);
        pieces.emplace_back(text.substr(from + 1, to - from - 1));
        from = to + 1;
    }
    return pieces;
}

/// The number that a text such as `28.35 g` starts with, without its trailing zeros.
std::string leading_number(const std::string& text) {
    std::string number = text.substr(0, text.find(' '));
    if (number.find('.') != std::string::npos) number.erase(number.find_last_not_of('0') + 1);
    return number;
}

}  // namespace

TEST_CASE("what an ambiguity says to write is a unit, and means one thing") {
    for (const AmbiguousUnit& ambiguous : all_ambiguous()) {
        std::set<Unit> units;
        for (const std::string& write : between(ambiguous.write, '`', '`')) units.insert(find_unit(write));
        CHECK_MESSAGE(units.size() >= 2, ambiguous.spelling);
        CHECK_MESSAGE(!units.contains(Unit::none), ambiguous.spelling);
    }
}

TEST_CASE("each metric value in the readings is that of a unit to write, to four figures") {
    for (const AmbiguousUnit& ambiguous : all_ambiguous()) {
        std::set<std::string> values;
        for (const std::string& write : between(ambiguous.write, '`', '`'))
            values.insert(significant_text(info(find_unit(write)).factor, 4));
        const std::vector<std::string> figures = between(ambiguous.readings, '(', ')');
        CHECK_MESSAGE(figures.size() >= 2, ambiguous.spelling);
        for (const std::string& figure : figures)
            CHECK_MESSAGE(values.contains(leading_number(figure)), ambiguous.spelling, ": ", figure);
    }
}

TEST_CASE("going to base units and back gives the same number") {
    for (const UnitInfo& unit : all_units()) {
        const Exact value(355, 113);
        CHECK(from_base(to_base(value, unit.unit), unit.unit) == value);
    }
    CHECK(to_base(Exact(3, 2), Unit::ounce_av) == Exact(42524284687500, 1000000000000));
}

TEST_CASE("temperatures have their own zero") {
    CHECK(to_celsius(20, Unit::celsius) == Exact(20));
    CHECK(to_celsius(212, Unit::fahrenheit) == Exact(100));
    CHECK(to_celsius(-40, Unit::fahrenheit) == Exact(-40));
    CHECK(to_celsius(68, Unit::fahrenheit) == Exact(20));
}

namespace {

/// A decimal where one holds the whole value, else a fraction.
std::string value_on_page(const Exact& factor) {
    const int places = 18;  // more than any factor that ends has
    const Exact unit_in_last_place = Exact(1, 1000000000000000000);
    return factor.rounded_to(unit_in_last_place) == factor ? decimal_text(factor, places) : factor.ratio_text();
}

std::string row_of(const std::string& page, std::string_view shown) {
    const std::size_t start = page.find("\n| `" + std::string(shown) + "` |");
    return start == std::string::npos ? "" : page.substr(start + 1, page.find('\n', start + 1) - start - 1);
}

}  // namespace

TEST_CASE("the page on units has a row for every unit, with its spellings and its exact value") {
    const std::string page = text_of("docs/units.md");
    for (const UnitInfo& unit : all_units()) {
        const std::string row = row_of(page, unit.shown);
        REQUIRE_MESSAGE(!row.empty(), unit.shown);
        for (const std::string_view spelling : unit.spellings)
            CHECK_MESSAGE(row.find('`' + std::string(spelling) + '`') != std::string::npos, spelling);
        if (unit.unit == Unit::celsius || unit.unit == Unit::drop) continue;  // these have no factor to show
        const std::string value = "| " + value_on_page(unit.factor) + ' ';
        CHECK_MESSAGE(row.find(value) != std::string::npos, row, " has no ", value);
    }
}

TEST_CASE("the page on units shows everything that is refused") {
    const std::string page = text_of("docs/units.md");
    const std::size_t refused = page.find("## What is refused");
    REQUIRE(refused != std::string::npos);
    for (const AmbiguousUnit& unit : all_ambiguous())
        CHECK_MESSAGE(page.find('`' + std::string(unit.spelling) + '`', refused) != std::string::npos, unit.spelling);
}

TEST_CASE("one of a unit is named in the singular") {
    CHECK(shown_for(1, Unit::day) == "day");
    CHECK(shown_for(2, Unit::day) == "days");
    CHECK(shown_for(Exact(1, 2), Unit::month) == "months");
    CHECK(shown_for(1, Unit::pint_uk) == "pint uk");
    CHECK(shown_for(1, Unit::dram_av) == "dram av");
    for (const Unit same :
         {Unit::gram, Unit::millilitre, Unit::ounce_av, Unit::celsius, Unit::percent_w_v, Unit::second})
        CHECK(shown_for(1, same) == info(same).shown);
}
