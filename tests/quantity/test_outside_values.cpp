// SPDX-License-Identifier: MIT
// Units against GNU units (its own definitions, by the program) and against tables of exact definitions.
#include <doctest/doctest.h>

#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <map>

#include "scruple/quantity/unit.hpp"
#include "support/csv.hpp"

using namespace scruple::quantity;
using scruple::test::Row;

namespace {

/// What GNU units calls each of our units, and the base unit the factor is in.
struct Outside {
    const char* from;
    const char* to;
};

const std::map<Unit, Outside>& outside() {
    static const std::map<Unit, Outside> names = {
        {Unit::gram, {"gram", "g"}},
        {Unit::kilogram, {"kg", "g"}},
        {Unit::milligram, {"mg", "g"}},
        {Unit::grain, {"grain", "g"}},
        {Unit::scruple, {"scruple", "g"}},
        {Unit::drachm_ap, {"apdram", "g"}},
        {Unit::dram_av, {"dram", "g"}},
        {Unit::ounce_av, {"ounce", "g"}},
        {Unit::ounce_ap, {"apounce", "g"}},
        {Unit::pound_av, {"pound", "g"}},
        {Unit::pound_ap, {"appound", "g"}},
        {Unit::millilitre, {"cc", "ml"}},
        {Unit::litre, {"liter", "ml"}},
        {Unit::minim_us, {"minimvolume", "ml"}},
        {Unit::fluid_drachm_us, {"fluiddram", "ml"}},
        {Unit::fluid_ounce_us, {"usfloz", "ml"}},
        {Unit::gill_us, {"usgill", "ml"}},
        {Unit::pint_us, {"uspint", "ml"}},
        {Unit::quart_us, {"usquart", "ml"}},
        {Unit::gallon_us, {"usgallon", "ml"}},
        {Unit::minim_uk, {"brminim", "ml"}},
        {Unit::fluid_drachm_uk, {"brdram", "ml"}},
        {Unit::fluid_ounce_uk, {"brfloz", "ml"}},
        {Unit::gill_uk, {"brgill", "ml"}},
        {Unit::pint_uk, {"brpint", "ml"}},
        {Unit::quart_uk, {"brquart", "ml"}},
        {Unit::gallon_uk, {"brgallon", "ml"}},
        {Unit::mole, {"mol", "mol"}},
        {Unit::millimole, {"mmol", "mol"}},
        {Unit::celsius, {"degC", "K"}},
        {Unit::fahrenheit, {"degF", "degC"}},
        {Unit::second, {"s", "s"}},
        {Unit::minute, {"min", "s"}},
        {Unit::hour, {"hour", "s"}},
        {Unit::day, {"day", "s"}},
        {Unit::week, {"week", "s"}},
        {Unit::month, {"julianyear / 12", "s"}},
        {Unit::year, {"julianyear", "s"}},
        {Unit::square_centimetre, {"cm^2", "cm^2"}},
        {Unit::square_metre, {"m^2", "cm^2"}},
        {Unit::square_inch, {"in^2", "cm^2"}},
        {Unit::percent_w_v, {"g / 100 ml", "g/l"}},
        {Unit::gram_per_litre, {"g / dm^3", "g/l"}},
        {Unit::milligram_per_litre, {"mg / l", "g/l"}},
        {Unit::percent_w_w, {"percent", "g/g"}},
        {Unit::ppm, {"ppm", "g/g"}},
        {Unit::percent_v_v, {"percent", "ml/ml"}},
        {Unit::mole_per_litre, {"mol / dm^3", "mol/l"}},
        {Unit::millimole_per_litre, {"mmol / l", "mol/l"}},
        {Unit::gram_per_millilitre, {"g / cm^3", "g/ml"}},
        {Unit::kilogram_per_litre, {"kg / l", "g/ml"}},
    };
    return names;
}

/// Runs GNU units; fails the test where it is not installed or does not know a unit.
double by_gnu_units(const std::string& from, const std::string& to) {
    const std::string command = "LC_ALL=C UNITS_ENGLISH=US units -t -o %.17g '" + from + "' '" + to + "' 2>&1";
    std::FILE* pipe = popen(command.c_str(), "r");
    REQUIRE(pipe != nullptr);
    char answer[200] = "";
    const char* line = std::fgets(answer, sizeof answer, pipe);
    REQUIRE_MESSAGE(pclose(pipe) == 0, "GNU units (Debian: units) does not answer ", command, ": ", answer);
    REQUIRE(line != nullptr);
    char* end = answer;
    const double value = std::strtod(answer, &end);
    REQUIRE_MESSAGE(end != answer, command, ": ", answer);
    return value;
}

// GNU units reckons in doubles; a chain of at most ten factors keeps twelve digits and more.
constexpr double of_doubles = 1e-12;

}  // namespace

TEST_CASE("every unit is what GNU units says") {
    for (const UnitInfo& unit : all_units()) {
        if (unit.unit == Unit::drop) continue;  // a drop has no size of its own
        REQUIRE_MESSAGE(outside().contains(unit.unit), unit.shown);
        const Outside& names = outside().at(unit.unit);
        const double expected = by_gnu_units(names.from, names.to);
        CHECK_MESSAGE(unit.factor.to_double() == doctest::Approx(expected).epsilon(of_doubles), unit.shown);
    }
}

TEST_CASE("temperatures are what GNU units says") {
    for (const int fahrenheit : {-40, 0, 32, 65, 68, 75, 125, 212}) {
        const double expected = by_gnu_units("tempF(" + std::to_string(fahrenheit) + ')', "tempC");
        // tempC subtracts 273.15 K from a double near 300 K.
        CHECK(to_celsius(fahrenheit, Unit::fahrenheit).to_double() ==
              doctest::Approx(expected).epsilon(1e-11).scale(300));
    }
}

namespace {

Exact us_tablespoon() {
    return info(Unit::fluid_ounce_us).factor / 2;
}

/// The rows of unit_conversions.csv by what they convert; a row that is not here fails.
Exact converted(const std::string& from, const std::string& to) {
    const auto factor = [](Unit unit) { return info(unit).factor; };
    const std::map<std::string, Exact> known = {
        {"grain>g", factor(Unit::grain)},
        {"grain>mg", factor(Unit::grain) / factor(Unit::milligram)},
        {"1 g in grains>grain", 1 / factor(Unit::grain)},
        {"apothecary drachm (60 grains)>g", factor(Unit::drachm_ap)},
        {"ounce avoirdupois>g", factor(Unit::ounce_av)},
        {"pound avoirdupois>g", factor(Unit::pound_av)},
        {"US minim>ml", factor(Unit::minim_us)},
        {"US fluid ounce>ml", factor(Unit::fluid_ounce_us)},
        {"US quart>ml", factor(Unit::quart_us)},
        {"US gill>ml", factor(Unit::gill_us)},
        {"UK fluid drachm>ml", factor(Unit::fluid_drachm_uk)},
        {"UK pint>ml", factor(Unit::pint_uk)},
        {"UK gallon>ml", factor(Unit::gallon_uk)},
        {"US tablespoon>ml", us_tablespoon()},
        {"grain per US fl oz>g/L", factor(Unit::grain) / factor(Unit::fluid_ounce_us) * 1000},
        {"ounce av per US quart>g/L", factor(Unit::ounce_av) / factor(Unit::quart_us) * 1000},
        {"ounce av per US gallon>g/L", factor(Unit::ounce_av) / factor(Unit::gallon_us) * 1000},
    };
    const auto found = known.find(from + '>' + to);
    REQUIRE_MESSAGE(found != known.end(), from, " to ", to);
    return found->second;
}

}  // namespace

TEST_CASE("unit_conversions.csv: the printed digits, all of them") {
    const auto rows = scruple::test::reference_rows("unit_conversions.csv");
    REQUIRE(rows.size() == 17);
    for (const Row& row : rows) {
        const Exact value = converted(row.at("unit"), row.at("target_unit")) * Exact(std::stoi(row.at("amount")));
        const std::string& printed = row.at("value_in_target_unit");
        const int places = static_cast<int>(printed.size() - printed.find('.') - 1);
        CHECK_MESSAGE(decimal_text(value, places) == printed, row.at("unit"));
    }
}

TEST_CASE("temperature_pairs.csv: to the printed hundredth of a degree") {
    const auto rows = scruple::test::reference_rows("temperature_pairs.csv");
    REQUIRE(rows.size() == 10);
    for (const Row& row : rows) {
        const Exact celsius = to_celsius(std::stoi(row.at("temperature_F")), Unit::fahrenheit);
        const int hundredths = static_cast<int>(std::lround(std::stod(row.at("temperature_C")) * 100));
        CHECK_MESSAGE(celsius.rounded_to(Exact(1, 100)) == Exact(hundredths, 100), row.at("temperature_F"));
    }
}
