// SPDX-License-Identifier: MIT
// Quantities of the text in base units, and the explanation of those that are not one.
#include <fmt/format.h>

#include <algorithm>
#include <chrono>

#include "listed.hpp"
#include "reader.hpp"

namespace scruple::check {
namespace {

using diagnostics::Kind;
using quantity::Dimension;

std::string_view dimension_words(Dimension dimension) {
    switch (dimension) {
        case Dimension::mass:
            return "a weight (g, kg, oz av …)";
        case Dimension::volume:
            return "a volume (ml, l, fl oz us …)";
        case Dimension::amount:
            return "an amount in moles (mol, mmol)";
        case Dimension::temperature:
            return "a temperature (C or F)";
        case Dimension::time:
            return "a time (s, min, h, days, months …)";
        case Dimension::area:
            return "an area (sq in, cm2, m2)";
        case Dimension::strength:
            return "a strength (% w/v, g/l, mol/l …)";
        case Dimension::density:
            return "a density (g/ml)";
        case Dimension::count:
            return "a number of drops";
    }
    return "";
}

std::vector<std::string> split(std::string_view written, char mark) {
    std::vector<std::string> pieces(1);
    for (const char c : written) {
        if (c == mark) {
            pieces.emplace_back();
        } else {
            pieces.back() += c;
        }
    }
    return pieces;
}

/// Whether all of it are digits, and there are some.
bool are_digits(std::string_view text) {
    return !text.empty() && text.find_first_not_of("0123456789") == std::string_view::npos;
}

/// The figure less one part, where the second figure may count the whole: 8 for `1:9`, nothing for `3:1`.
std::optional<long> rest_of_whole(const std::vector<std::string>& pieces) {
    const auto whole = [](const std::string& piece) { return are_digits(piece) && piece.size() < 9; };
    if (pieces.size() != 2 || !whole(pieces[0]) || !whole(pieces[1])) return std::nullopt;
    const long rest = std::stol(pieces[1]) - std::stol(pieces[0]);
    return rest > 0 ? std::optional(rest) : std::nullopt;
}

void explain_colon(Reader& reader, std::string_view written, text::Span span) {
    const auto pieces = split(written, ':');
    std::string plus(written);
    std::ranges::replace(plus, ':', '+');
    const auto rest = rest_of_whole(pieces);
    if (!rest) {
        reader.report(Kind::ratio_by_colon, span,
                      {written, "as parts beside one another or as parts of a whole", "`" + plus + "`"});
        return;
    }
    const auto& [first, second] = std::pair(pieces[0], pieces[1]);
    const auto parts = [](const std::string& number) { return number + (number == "1" ? " part" : " parts"); };
    const auto readings = "two ways: " + parts(first) + " and " + parts(second) + " of water, or " + parts(first) +
                          " in " + parts(second) + " of the whole";
    reader.report(Kind::ratio_by_colon, span,
                  {written, readings,
                   "`" + plus + "` for the first, `" + first + "+" + std::to_string(*rest) + "` for the second"});
}

/// `1,000`, `1,000,000.5`: three digits after each comma, and no nought in front.
bool may_mark_thousands(std::string_view written) {
    const auto point = std::min(written.find('.'), written.size());
    auto whole = written.substr(0, point);
    if (point < written.size() && !are_digits(written.substr(point + 1))) return false;
    const auto first = whole.substr(0, whole.find(','));
    if (!are_digits(first) || first.size() > 3 || first.front() == '0') return false;
    for (whole.remove_prefix(first.size()); !whole.empty(); whole.remove_prefix(4))
        if (whole.size() < 4 || whole.front() != ',' || !are_digits(whole.substr(1, 3))) return false;
    return true;
}

/// `12,5` and `,5`
bool may_be_decimal(std::string_view written) {
    const auto comma = written.find(',');
    return (comma == 0 || are_digits(written.substr(0, comma))) && are_digits(written.substr(comma + 1));
}

/// `.5` and `5.` are as good as read.
void explain_unclear(Reader& reader, std::string_view written, text::Span span) {
    std::string write = "digits, if need be with a decimal point between them (`0.7`), or a fraction (`1 1/2`, `½`)";
    if (written.starts_with('.') && are_digits(written.substr(1))) write = "`0" + std::string(written) + "`";
    if (written.ends_with('.') && are_digits(written.substr(0, written.size() - 1)))
        write = "`" + std::string(written.substr(0, written.size() - 1)) + "`";
    reader.report(Kind::unclear_number, span, {written, write});
}

void explain_comma(Reader& reader, std::string_view written, text::Span span) {
    std::string point(written.starts_with(',') ? "0" : "");
    point += written;
    std::ranges::replace(point, ',', '.');
    std::string without(written);
    std::erase(without, ',');
    const bool decimal = may_be_decimal(written), thousands = may_mark_thousands(written);
    if (!decimal && !thousands) return explain_unclear(reader, written, span);
    const auto write = (decimal ? "`" + point + "`" : "") + (decimal && thousands ? " or " : "") +
                       (thousands ? "`" + without + "`" : "");
    reader.report(Kind::decimal_comma, span, {written, write});
}

void explain_number(Reader& reader, const syntax::Number& number) {
    const auto written = reader.text(number.span);
    if (written.find(':') != std::string_view::npos) {
        explain_colon(reader, written, number.span);
    } else if (written.find(',') != std::string_view::npos) {
        explain_comma(reader, written, number.span);
    } else {
        explain_unclear(reader, written, number.span);
    }
}

/// Spellings that people use and Scruple does not read.
constexpr std::pair<std::string_view, std::string_view> other_spellings[] = {
    {"mls", "ml"},     {"millilitre", "ml"}, {"millilitres", "ml"}, {"milliliter", "ml"}, {"milliliters", "ml"},
    {"c.c.", "cc"},    {"ccs", "cc"},        {"litre", "l"},        {"litres", "l"},      {"liter", "l"},
    {"liters", "l"},   {"ltr", "l"},         {"gm", "g"},           {"gms", "g"},         {"gram", "g"},
    {"grams", "g"},    {"gramme", "g"},      {"grammes", "g"},      {"kgs", "kg"},        {"mgs", "mg"},
    {"sec", "s"},      {"secs", "s"},        {"second", "s"},       {"seconds", "s"},     {"mins", "min"},
    {"minute", "min"}, {"minutes", "min"},   {"hr", "h"},           {"hrs", "h"},         {"hour", "h"},
    {"hours", "h"},    {"wk", "weeks"},      {"wks", "weeks"},      {"yr", "years"},      {"yrs", "years"},
    {"M", "mol/l"},    {"lbs", "lb av"},     {"degC", "C"},         {"degF", "F"},        {"cm3", "ml"},
    {"cm³", "ml"},     {"ccm", "ml"},        {"C.C.", "cc"},        {"CC", "cc"},         {"ML", "ml"},
    {"Ml", "ml"},      {"kilo", "kg"},       {"kilos", "kg"},
};

struct StrengthLimit {
    quantity::Unit unit;
    int most;
    std::string_view why;
};

// A solution of 250 g in 100 ml would be heavier than any that photography uses: silver nitrate saturated at 20 °C
// holds 216 g in 100 g water (CRC Handbook, recalled), about 150 g in 100 ml. Pure water is 55 mol/l.
constexpr std::string_view beyond_pure = "100 % is the pure substance";
constexpr std::string_view beyond_weight = "250 g in 100 ml are out of reach";
constexpr std::string_view beyond_moles = "pure water itself is 55 mol/l";
constexpr StrengthLimit strength_limits[] = {
    {quantity::Unit::percent_w_w, 100, beyond_pure},
    {quantity::Unit::percent_v_v, 100, beyond_pure},
    {quantity::Unit::percent_w_v, 250, beyond_weight},
    {quantity::Unit::gram_per_litre, 2500, beyond_weight},
    {quantity::Unit::milligram_per_litre, 2'500'000, beyond_weight},
    {quantity::Unit::ppm, 1'000'000, "a million parts in a million are the pure substance"},
    {quantity::Unit::mole_per_litre, 60, beyond_moles},
    {quantity::Unit::millimole_per_litre, 60'000, beyond_moles},
};

/// `5 g` and others that the number may have been meant in.
std::string with_units(std::string_view number, std::optional<Dimension> wanted) {
    const auto units = [wanted]() -> std::vector<std::string_view> {
        if (wanted == Dimension::mass) return {"g", "kg"};
        if (wanted == Dimension::volume) return {"ml", "l"};
        if (wanted == Dimension::temperature) return {"C", "F"};
        if (wanted == Dimension::time) return {"min", "h", "months"};
        if (wanted == Dimension::area) return {"sq in", "cm2"};
        return {"g", "ml", "min", "C"};
    }();
    std::vector<std::string> all;
    all.reserve(units.size());
    for (const auto unit : units) all.push_back(fmt::format("{} {}", number, unit));
    return listed(all);
}

std::string nearest_unit(std::string_view written) {
    for (const auto& [spelling, unit] : other_spellings) {
        if (spelling == written) return std::string(unit);
    }
    std::vector<std::string_view> spellings;
    for (const auto& unit : quantity::all_units())
        spellings.insert(spellings.end(), unit.spellings.begin(), unit.spellings.end());
    return diagnostics::nearest(written, spellings);
}

}  // namespace

void explain_unit(Reader& reader, const syntax::Quantity& quantity, std::optional<Dimension> wanted) {
    const auto number = reader.text(quantity.number.span);
    const auto written = reader.text(quantity.unit_span);
    if (written.empty()) {
        reader.report(Kind::no_unit, quantity.span(), {number, with_units(number, wanted)});
    } else if (written == "%") {
        reader.report(Kind::bare_percent, quantity.span(), {number});
    } else if (const auto* ambiguous = quantity::find_ambiguous(written)) {
        reader.report(Kind::ambiguous_unit, quantity.unit_span, {written, ambiguous->readings, ambiguous->write});
    } else {
        const auto near = nearest_unit(written);
        reader.report(
            Kind::unknown_unit, quantity.unit_span,
            {written, near.empty() ? "a unit such as `g`, `ml`, `oz av`, `fl oz uk`, `min` or `C`" : "`" + near + "`"});
    }
}

std::optional<Exact> read_number(Reader& reader, const syntax::Number& number) {
    if (!number.loose()) return number.value();
    explain_number(reader, number);
    return std::nullopt;
}

std::optional<Measured> read_any(Reader& reader, const syntax::Quantity& quantity, std::optional<Dimension> wanted) {
    if (quantity.loose()) {
        if (quantity.number.loose()) {
            explain_number(reader, quantity.number);
        } else {
            explain_unit(reader, quantity, wanted);
        }
        return std::nullopt;
    }
    const auto dimension = quantity::info(quantity.unit).dimension;
    const auto value = quantity.number.value();
    switch (dimension) {
        case Dimension::temperature:
            return Measured{quantity::to_celsius(value, quantity.unit), dimension, quantity.unit};
        case Dimension::strength:
            return Measured{value, dimension, quantity.unit};
        default:
            return Measured{quantity::to_base(value, quantity.unit), dimension, quantity.unit};
    }
}

std::optional<Exact> read_as(Reader& reader, const syntax::Quantity& quantity, Dimension wanted) {
    const auto measured = read_any(reader, quantity, wanted);
    if (!measured) return std::nullopt;
    if (measured->dimension == wanted) return measured->value;
    report_wrong_kind(reader, quantity, wanted);
    return std::nullopt;
}

void report_wrong_kind(Reader& reader, const syntax::Quantity& quantity, Dimension wanted) {
    reader.report(Kind::wrong_kind_of_unit, quantity.span(),
                  {reader.text(quantity.span()), dimension_words(quantity::info(quantity.unit).dimension),
                   dimension_words(wanted)});
}

std::optional<Exact> read_positive(Reader& reader, const syntax::Quantity& quantity, Dimension wanted) {
    auto value = read_as(reader, quantity, wanted);
    if (!value || *value > Exact(0)) return value;
    reader.report(Kind::not_above_nothing, quantity.span(), {reader.text(quantity.span())});
    return std::nullopt;
}

std::optional<Interval> read_interval(Reader& reader, const syntax::Range& range, Dimension wanted) {
    const auto low = read_as(reader, range.low, wanted);
    const bool one = range.low.number.span == range.high.number.span;
    const auto high = one ? low : read_as(reader, range.high, wanted);
    if (!low || !high) return std::nullopt;
    if (*high < *low) {
        const text::Span span{range.low.number.span.begin, range.high.span().end};
        reader.report(Kind::range_backwards, span, {reader.text(span)});
        return std::nullopt;
    }
    return Interval{*low, *high};
}

std::optional<Exact> read_positive(Reader& reader, const syntax::Number& number) {
    auto value = read_number(reader, number);
    if (!value || *value > Exact(0)) return value;
    reader.report(Kind::not_above_nothing, number.span, {reader.text(number.span)});
    return std::nullopt;
}

std::optional<Interval> read_duration(Reader& reader, const syntax::Range& range) {
    auto interval = read_interval(reader, range, Dimension::time);
    if (!interval || interval->low > Exact(0)) return interval;
    const text::Span span{range.low.number.span.begin, range.high.span().end};
    reader.report(Kind::not_above_nothing, span, {reader.text(span)});
    return std::nullopt;
}

std::optional<Interval> read_celsius(Reader& reader, const syntax::Range& range) {
    auto interval = read_interval(reader, range, Dimension::temperature);
    if (interval && (interval->low < Exact(-5) || interval->high > Exact(105))) {
        const text::Span span{range.low.number.span.begin, range.high.span().end};
        reader.report(Kind::unlikely_temperature, span, {reader.text(span), "a solution in water"});
    }
    return interval;
}

std::optional<Strength> read_strength(Reader& reader, const syntax::Quantity& quantity) {
    const auto value = read_positive(reader, quantity, Dimension::strength);
    if (!value) return std::nullopt;
    const auto* limit = std::ranges::find(strength_limits, quantity.unit, &StrengthLimit::unit);
    if (limit != std::end(strength_limits) && *value > Exact(limit->most)) {
        reader.report(Kind::strength_beyond, quantity.span(), {reader.text(quantity.span()), limit->why});
        return std::nullopt;
    }
    return Strength{*value, quantity.unit};
}

std::optional<Money> read_money(Reader& reader, const syntax::Money& money) {
    const auto value = read_number(reader, money.value);
    if (!value) return std::nullopt;
    if (*value < Exact(0)) {
        reader.report(Kind::not_above_nothing, money.value.span, {reader.text(money.value.span)});
        return std::nullopt;
    }
    return Money{*value, reader.text(money.currency)};
}

std::optional<Day> read_day(Reader& reader, const syntax::Date& date) {
    const std::chrono::year_month_day day{std::chrono::year(date.year), std::chrono::month(date.month),
                                          std::chrono::day(date.day)};
    if (!day.ok()) {
        reader.report(Kind::no_such_day, date.span, {reader.text(date.span)});
        return std::nullopt;
    }
    return static_cast<Day>(std::chrono::sys_days(day).time_since_epoch().count());
}

}  // namespace scruple::check
