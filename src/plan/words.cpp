// SPDX-License-Identifier: MIT
#include "words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "scruple/plan/figure.hpp"

namespace scruple::plan {

namespace {

using check::Action;
using check::Addition;
using check::Chemical;
using check::Detail;
using check::Exact;
using check::Interval;
using check::Model;
using quantity::Unit;

std::string to_four_figures(const Exact& value) {
    return quantity::significant_text(value, 4);
}

std::string range(const Interval& interval, const Exact& unit) {
    const std::string low = to_four_figures(interval.low / unit);
    return interval.low == interval.high ? low : low + " to " + to_four_figures(interval.high / unit);
}

bool reads_well(const Exact& seconds, const Exact& unit) {
    return seconds >= unit && (seconds / unit * 2).is_whole();
}

Unit time_unit(const Interval& seconds) {
    for (const Unit unit : {Unit::day, Unit::hour, Unit::minute}) {
        const Exact size = quantity::info(unit).factor;
        if (reads_well(seconds.low, size) && reads_well(seconds.high, size)) return unit;
    }
    return Unit::second;
}

std::string words_of(const Detail& detail) {
    switch (detail.what) {
        case Detail::What::stirring:
            return "stirring";
        case Detail::What::stirring_every:
            return "stirring every " + time_text({detail.value, detail.value});
        case Detail::What::slowly:
            return "slowly";
        case Detail::What::not_above:
            return "not above " + celsius_text({detail.value, detail.value});
        case Detail::What::until:
            return "until " + std::string(detail.words);
        case Detail::What::until_ph:
            return fmt::format("until pH{}{}", unit_blank, quantity::exact_text(detail.value));
        case Detail::What::remark:
            return std::string(detail.words);
    }
    return {};
}

/// To half a degree where it was written in another scale, and comes to more digits than a thermometer has.
Exact readable_celsius(const Exact& celsius) {
    const bool fine = celsius.rounded_to(Exact(1, 10)) == celsius;
    return fine ? celsius : celsius.rounded_to(Exact(1, 2));
}

std::string verb(const Action& action) {
    switch (action.verb) {
        case Action::Verb::stir:
            return "stir";
        case Action::Verb::wait:
            return "wait";
        case Action::Verb::stand:
            return "let it stand";
        case Action::Verb::filter:
            return "filter";
        case Action::Verb::cool:
            return "cool";
        case Action::Verb::warm:
            return "warm";
        case Action::Verb::not_above:
            return "do not let it go above";
        case Action::Verb::do_this:
            return std::string(action.words);
    }
    return {};
}

std::string_view toward(Action::Toward which) {
    switch (which) {
        case Action::Toward::none:
            return "";
        case Action::Toward::to:
            return " to";
        case Action::Toward::below:
            return " below";
        case Action::Toward::above:
            return " above";
    }
    return "";
}

std::string saturated_words(const Interval& celsius) {
    return "saturated at " + celsius_text(celsius);
}

bool metric(Unit unit) {
    static constexpr std::array units{Unit::gram,  Unit::kilogram, Unit::milligram, Unit::millilitre,
                                      Unit::litre, Unit::drop,     Unit::none};
    return std::find(units.begin(), units.end(), unit) != units.end();
}

}  // namespace

std::string joined(const std::vector<std::string>& pieces, std::string_view between) {
    return fmt::format("{}", fmt::join(pieces, between));
}

std::string celsius_text(const Interval& celsius) {
    return range({readable_celsius(celsius.low), readable_celsius(celsius.high)}, 1) + unit_blank + "°C";
}

std::string time_text(const Interval& seconds) {
    const Unit unit = time_unit(seconds);
    const std::string figures = range(seconds, quantity::info(unit).factor);
    const bool one_day = unit == Unit::day && figures == "1";
    return figures + unit_blank + (one_day ? "day" : std::string(quantity::info(unit).shown));
}

std::string strength_text(const check::Strength& strength) {
    return quantity::exact_text(strength.value) + unit_blank + std::string(quantity::info(strength.unit).shown);
}

std::string form_name(const Chemical& chemical, check::Id form) {
    if (chemical.forms.size() < 2 || form >= chemical.forms.size()) return {};
    return std::string(chemical.forms[form].name);
}

std::string form_words(const Model& model, const Addition& addition) {
    if (addition.chemical == check::none) return {};
    std::vector<std::string> words;
    std::string form = form_name(model.chemicals[addition.chemical], addition.form);
    if (!form.empty()) words.push_back(std::move(form));
    if (addition.saturated_at)
        words.push_back(saturated_words(*addition.saturated_at));
    else if (addition.strength)
        words.push_back(strength_text(*addition.strength));
    if (!words.empty() && !addition.solvent.empty()) words.back() += " in " + std::string(addition.solvent);
    return joined(words, ", ");
}

std::string substance_words(const Model& model, const Addition& addition) {
    if (addition.chemical == check::none) return check::shown_name(model, addition.solution);
    std::vector<std::string> words;
    if (std::string form = form_words(model, addition); !form.empty()) words.push_back(std::move(form));
    if (!addition.grade.empty()) words.emplace_back(addition.grade);
    const std::string name(model.chemicals[addition.chemical].name);
    return words.empty() ? name : fmt::format("{} ({})", name, joined(words, ", "));
}

std::vector<std::string> detail_words(std::span<const Detail> details) {
    std::vector<std::string> words;
    words.reserve(details.size());
    for (const Detail& detail : details) words.push_back(words_of(detail));
    return words;
}

std::string action_words(const Action& action) {
    std::string words = verb(action) + std::string(toward(action.toward));
    if (action.celsius) words += ' ' + celsius_text(*action.celsius);
    if (action.seconds) words += ' ' + time_text(*action.seconds);
    for (const Detail& detail : action.details) {
        const bool says_when = detail.what == Detail::What::until || detail.what == Detail::What::until_ph;
        words += (says_when ? " " : ", ") + words_of(detail);
    }
    return words;
}

bool until_clear(const Action& action) {
    for (const Detail& detail : action.details)
        if (detail.what == Detail::What::until && detail.words.find("clear") != std::string_view::npos) return true;
    return false;
}

std::string working_text(const Exact& value) {
    return quantity::significant_text(value, 5);
}

std::string as_written(const Addition& addition) {
    const std::string_view text = addition.written;
    const std::size_t digit = text.find_last_of("0123456789");
    if (digit == std::string_view::npos) return {};
    std::size_t unit = digit + 1;
    while (unit < text.size() && (static_cast<unsigned char>(text[unit]) >= 0x80 || text[unit] == ' ')) ++unit;
    if (metric(quantity::find_unit(text.substr(unit)))) return {};
    return "as written: " + std::string(text);
}

bool is_water(const Model& model, const Addition& addition) {
    return addition.chemical != check::none && addition.chemical == model.water;
}

}  // namespace scruple::plan
