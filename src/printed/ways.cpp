// SPDX-License-Identifier: MIT
#include "ways.hpp"

#include <algorithm>

#include "scruple/syntax/normal.hpp"

namespace scruple::printed {
namespace {

// What speaks for a reading before the columns do, as costs; ours, from what formularies usually mean.
constexpr double departs = 3.0;         ///< one line means another ounce than the page
constexpr double said_otherwise = 8.0;  ///< another form, or another percent, than the words behind the name
constexpr double name_implies = 1.5;    ///< another form than an old name implies
constexpr double of_its_time = 0.7;     ///< crystals before 1920, dry salts after 1945
constexpr double seldom_sold = 1.0;     ///< neither the dry salt nor its crystals
constexpr double seldom_dry = 0.7;      ///< the dry salt of what is mostly sold as crystals
constexpr double other_percent = 0.4;   ///< by weight for a liquid, by weight for a salt
constexpr double odd_percent = 2.0;     ///< by volume for a salt, weight in volume for a liquid

bool is_crystals(const check::Form& form) {
    return std::ranges::find(form.called, "crystals") != form.called.end();
}

bool is_dry(const check::Form& form) {
    return std::ranges::find(form.called, "anhydrous") != form.called.end() ||
           std::ranges::find(form.called, "dry") != form.called.end();
}

Weights weights_of_time(std::string_view name, const check::Form& form, std::optional<int> year) {
    if (!is_crystals(form) && !is_dry(form)) return {Evidence::habit, seldom_sold};
    // What is sold as crystals alone is meant by its name alone; these are sold dry as well.
    const bool sold_dry = name == "sodium sulfite" || name == "sodium carbonate" || name == "sodium sulfate";
    const bool unlikely = year && ((*year < 1920 && is_dry(form)) || (*year > 1945 && is_crystals(form) && sold_dry));
    Weights weights{Evidence::book, unlikely ? of_its_time : 0};
    if (is_dry(form) && !sold_dry) weights[Evidence::habit] += seldom_dry;
    return weights;
}

Weights weights_of_form(const check::Chemical& chemical, check::Id form, const Known& known, std::optional<int> year) {
    if (chemical.forms.size() < 2) return {};
    const check::Form& it = chemical.forms[form];
    if (!known.line->form.empty()) return {Evidence::name, is_called(it, known.line->form) ? 0 : said_otherwise};
    if (known.what.form != check::none) return {Evidence::name, form == known.what.form ? 0 : name_implies};
    return weights_of_time(chemical.name, it, year);
}

Weights weights_of_percent(Percent percent, const Known& known) {
    if (known.line->percent_said) return {Evidence::name, percent == *known.line->percent_said ? 0 : said_otherwise};
    if (percent == Percent::by_weight) return {Evidence::habit, other_percent};
    const Percent usual = known.pure_liquid ? Percent::by_volume : Percent::weight_in_volume;
    return {Evidence::habit, percent == usual ? 0 : odd_percent};
}

bool says_ounces(const Line& line) {
    return std::ranges::any_of(line.columns, [](const Measure& measure) {
        return std::ranges::any_of(measure.pieces, [](const Piece& piece) {
            return !piece.whose.ounce && (piece.unit == UnitWord::ounce || piece.unit == UnitWord::pound);
        });
    });
}

void add_ways(const check::Model& model, Known& known, std::optional<int> year) {
    std::vector<Way> ways{Way{}};
    if (known.what.chemical != check::none) {
        const check::Chemical& chemical = model.chemicals[known.what.chemical];
        ways.clear();
        for (check::Id form = 0; form < chemical.forms.size(); ++form)
            ways.push_back({.form = form, .weights = weights_of_form(chemical, form, known, year)});
    }
    // A saturated solution is the same of whichever form.
    if (known.line->saturated) ways.resize(1);
    if (known.line->percent) {
        std::vector<Way> of_each;
        for (const Way& way : ways)
            for (const Percent percent : {Percent::by_volume, Percent::by_weight, Percent::weight_in_volume}) {
                if (percent == Percent::by_volume && !known.pure_liquid && !known.line->percent_said) continue;
                of_each.push_back(way);
                of_each.back().percent = percent;
                of_each.back().weights += weights_of_percent(percent, known);
            }
        ways = std::move(of_each);
    }
    known.ways = ways;
    if (known.liquid || !says_ounces(*known.line)) return;
    for (Way way : ways) {
        way.other_ounce = true;
        way.weights[Evidence::habit] += departs;
        known.ways.push_back(way);
    }
}

Known known_of(const check::Model& model, const Line& line, std::optional<int> year) {
    Known known{.line = &line, .what = chemical_named(model, line.name)};
    if (known.what.chemical != check::none) {
        const check::Chemical& chemical = model.chemicals[known.what.chemical];
        const auto pure = [](const check::Density& density) { return !density.strength; };
        known.pure_liquid = std::ranges::any_of(chemical.densities, pure);
    }
    known.liquid = known.pure_liquid || line.percent.has_value() || line.saturated;
    add_ways(model, known, year);
    return known;
}

struct UnitCount {
    int metric = 0, old = 0, parts = 0, unsure = 0;

    void add(UnitWord unit) {
        if (unit == UnitWord::none || unit == UnitWord::part)
            ++parts;
        else if (unit == UnitWord::grain_or_gram)
            ++unsure;
        else if (unit != UnitWord::drop)
            ++(is_metric(unit) ? metric : old);
    }
};

/// Metric where most of its units are; in parts where it has none.
Column column_of(const Page& page, std::size_t index) {
    Column column;
    UnitCount count;
    for (const Line& line : page.lines) {
        if (line.what == Line::What::words || index >= line.columns.size()) continue;
        for (const Piece& piece : line.columns[index].pieces) count.add(piece.unit);
    }
    if (index < page.headings.size()) {
        column.whose = page.headings[index].whose;
        column.unit = page.headings[index].unit;
        column.metric = page.headings[index].metric;
    }
    column.metric = column.metric || count.metric > count.old;
    column.parts =
        !column.metric && count.old == 0 && count.unsure == 0 && count.parts > 0 && column.unit == UnitWord::none;
    return column;
}

VolumeLines volume_lines(const Page& page, const Layout& layout, std::size_t solution, std::size_t column) {
    VolumeLines all;
    for (const Line& line : page.lines) {
        if (line.solution != solution || !has_amount(line, column)) continue;
        if (line.what == Line::What::water_to_make) return {{&line}, true};
        const auto known = std::ranges::find(layout.lines, &line, &Known::line);
        if (line.what == Line::What::water || (known != layout.lines.end() && known->liquid))
            all.lines.push_back(&line);
    }
    return all;
}

}  // namespace

bool is_called(const check::Form& form, const std::string& word) {
    constexpr std::size_t shortest = 3;  // of a word cut short: `anh`, `mono`
    const auto is_cut_short = [&](const std::string& name) {
        return word.size() >= shortest && name.starts_with(word);
    };
    const auto is_past = [&](const std::string& name) { return word == name + "d"; };  // `monohydrated`
    return std::ranges::any_of(form.called, is_cut_short) || std::ranges::any_of(form.called, is_past) ||
           (word.find("crys") != std::string::npos && is_crystals(form)) ||
           ((word == "dried" || word == "desiccated" || word == "exsiccated") && is_dry(form));
}

Layout layout_of(const check::Model& model, const Page& page) {
    Layout layout;
    std::size_t columns = 0;
    for (const Line& line : page.lines)
        if (line.what != Line::What::words) columns = std::max(columns, line.columns.size());
    columns = std::min(columns, most_columns);
    for (std::size_t i = 0; i < columns; ++i) layout.columns.push_back(column_of(page, i));
    layout.water.liquid = true;
    for (const Line& line : page.lines) {
        if (line.what == Line::What::ingredient) layout.lines.push_back(known_of(model, line, page.year));
        const bool belongs = !layout.lines.empty() && layout.lines.back().line->solution == line.solution;
        if (line.what == Line::What::alternative && belongs) layout.lines.back().alternatives.push_back(&line);
    }
    for (std::size_t solution = 0; solution < page.solutions.size(); ++solution) {
        auto& of_columns = layout.volumes.emplace_back();
        for (std::size_t i = 0; i < columns; ++i) of_columns.push_back(volume_lines(page, layout, solution, i));
    }
    return layout;
}

double volume_of(const Layout& layout, std::size_t solution, std::size_t column, const Shared& shared) {
    double volume = 0;
    for (const Line* line : layout.volumes[solution][column].lines) {
        const Amount amount =
            amount_of(line->columns[column], layout.water, shared, {}, column, layout.columns[column]);
        if (amount.by_volume) volume += amount.base;
    }
    return volume;
}

}  // namespace scruple::printed
