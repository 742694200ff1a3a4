// SPDX-License-Identifier: MIT
#include "ways.hpp"

#include <algorithm>

#include "scruple/syntax/normal.hpp"

namespace scruple::printed {
namespace {

// What speaks for a reading before the columns do, as costs; ours, from what formularies usually mean.
constexpr double abroad = 3.0;            ///< another country's measures
constexpr double druggists_weight = 1.0;  ///< chemicals were sold by avoirdupois
constexpr double departs = 3.0;           ///< one line means another ounce than the page
constexpr double gram_beside_ounces = 6.0, grain_beside_grams = 3.0;
constexpr double said_otherwise = 8.0;  ///< another form than the word behind the name
constexpr double name_implies = 1.5;    ///< another form than an old name implies
constexpr double of_its_time = 0.7;     ///< crystals before 1920, dry salts after 1945
constexpr double seldom_sold = 1.0;     ///< neither the dry salt nor its crystals

bool is_crystals(const check::Form& form) {
    return std::ranges::find(form.called, "crystals") != form.called.end();
}

bool is_dry(const check::Form& form) {
    return std::ranges::find(form.called, "anhydrous") != form.called.end() ||
           std::ranges::find(form.called, "dry") != form.called.end();
}

bool is_called(const check::Form& form, const std::string& word) {
    return std::ranges::find(form.called, word) != form.called.end() ||
           (word.starts_with("cryst") && is_crystals(form)) ||
           ((word == "dried" || word == "anhyd" || word == "desiccated") && is_dry(form));
}

double cost_of_time(const check::Form& form, std::optional<int> year) {
    if (!is_crystals(form) && !is_dry(form)) return seldom_sold;
    if (!year) return 0;
    if (*year < 1920 && is_dry(form)) return of_its_time;
    return *year > 1945 && is_crystals(form) ? of_its_time : 0;
}

double cost_of_form(const check::Chemical& chemical, check::Id form, const Known& known, std::optional<int> year) {
    const check::Form& it = chemical.forms[form];
    if (!known.line->form.empty()) return is_called(it, known.line->form) ? 0 : said_otherwise;
    if (known.what.form != check::none) return form == known.what.form ? 0 : name_implies;
    return cost_of_time(it, year);
}

bool says_ounces(const Line& line) {
    return std::ranges::any_of(line.columns, [](const Measure& measure) {
        return std::ranges::any_of(measure.pieces, [](const Piece& piece) {
            return piece.unit == UnitWord::ounce || piece.unit == UnitWord::pound;
        });
    });
}

void add_ways(const check::Model& model, Known& known, std::optional<int> year) {
    std::vector<Way> ways{{false, check::none, 0}};
    if (known.what.chemical != check::none) {
        const check::Chemical& chemical = model.chemicals[known.what.chemical];
        ways.clear();
        for (check::Id form = 0; form < chemical.forms.size(); ++form)
            ways.push_back({false, form, cost_of_form(chemical, form, known, year)});
    }
    known.ways = ways;
    if (known.liquid || !says_ounces(*known.line)) return;
    for (Way way : ways) {
        way.other_ounce = true;
        way.cost += departs;
        known.ways.push_back(way);
    }
}

Known known_of(const check::Model& model, const Line& line, std::optional<int> year) {
    Known known{&line, chemical_named(model, line.name), false, false, {}};
    if (known.what.chemical != check::none) {
        const check::Chemical& chemical = model.chemicals[known.what.chemical];
        const auto pure = [](const check::Density& density) { return !density.strength; };
        known.pure_liquid = std::ranges::any_of(chemical.densities, pure);
        known.liquid = known.pure_liquid || line.percent.has_value();
    } else {
        known.liquid = line.percent.has_value();
    }
    add_ways(model, known, year);
    return known;
}

/// Metric where most of its units are, or where it has none and another column has them.
bool is_metric_column(const Page& page, std::size_t column) {
    int metric = 0;
    int old = 0;
    for (const Line& line : page.lines)
        if (column < line.columns.size())
            for (const Piece& piece : line.columns[column].pieces)
                if (piece.unit != UnitWord::none) ++(is_metric(piece.unit) ? metric : old);
    return metric > old;
}

bool any_unit(const Page& page, std::size_t column, std::initializer_list<UnitWord> units) {
    for (const Line& line : page.lines)
        if (column < line.columns.size())
            for (const Piece& piece : line.columns[column].pieces)
                if (std::ranges::find(units, piece.unit) != units.end()) return true;
    return false;
}

bool has_fluids(const Page& page, const Layout& layout, std::size_t column) {
    static constexpr auto fluids = {UnitWord::fluid_ounce, UnitWord::fluid_drachm, UnitWord::pint,
                                    UnitWord::quart,       UnitWord::gallon,       UnitWord::minim};
    if (any_unit(page, column, fluids)) return true;
    return std::ranges::any_of(layout.columns[column].volume_lines, [column](const Line* line) {
        return line->columns[column].pieces.front().unit == UnitWord::ounce;
    });
}

bool said(const std::vector<check::ReadingByHand>& by_hand, ByHand what) {
    return std::ranges::any_of(by_hand, [&](const auto& line) { return by_hand_of(line.said) == what; });
}

/// What is varied of one thing: both values, or the one that a `reading` line says.
std::vector<bool> values(bool open, bool hand_false, bool hand_true) {
    if (!open || hand_false) return {false};
    if (hand_true) return {true};
    return {false, true};
}

double cost_of_fluid(const Page& page, Fluid fluid) {
    const bool at_home = page.country == Page::Country::britain   ? fluid == Fluid::imperial
                         : page.country == Page::Country::america ? fluid == Fluid::us
                                                                  : true;
    return at_home ? 0 : abroad;
}

void find_volume(const Page& page, const Layout& layout, std::size_t at, Column& column) {
    for (const Line& line : page.lines) {
        if (at >= line.columns.size()) continue;
        if (line.what == Line::What::water_to_make) {
            column.volume_lines = {&line};
            column.made_up = true;
            return;
        }
        const auto known = std::ranges::find(layout.lines, &line, &Known::line);
        if (line.what == Line::What::water || (known != layout.lines.end() && known->liquid))
            column.volume_lines.push_back(&line);
    }
}

}  // namespace

Layout layout_of(const check::Model& model, const Page& page) {
    Layout layout;
    std::size_t columns = 0;
    for (const Line& line : page.lines) columns = std::max(columns, line.columns.size());
    layout.columns.resize(std::min(columns, most_columns));
    layout.water.liquid = true;
    for (std::size_t i = 0; i < layout.columns.size(); ++i) {
        layout.columns[i].metric = is_metric_column(page, i);
    }
    for (const Line& line : page.lines)
        if (line.what == Line::What::ingredient) layout.lines.push_back(known_of(model, line, page.year));
    for (std::size_t i = 0; i < layout.columns.size(); ++i) find_volume(page, layout, i, layout.columns[i]);
    return layout;
}

double volume_of(const Layout& layout, std::size_t column, const Shared& shared) {
    const Column& it = layout.columns[column];
    double volume = 0;
    for (const Line* line : it.volume_lines) {
        const Amount amount = amount_of(line->columns[column], layout.water, shared, {}, column, it.metric);
        if (amount.by_volume) volume += amount.base;
    }
    return volume;
}

std::vector<Shared> shared_readings(const Page& page, const Layout& layout,
                                    const std::vector<check::ReadingByHand>& by_hand) {
    std::vector<Shared> all{Shared{}};
    const auto vary = [&](const std::vector<bool>& both, auto set) {
        std::vector<Shared> more;
        for (const Shared& one : all)
            for (const bool value : both) set(more.emplace_back(one), value);
        all = std::move(more);
    };
    bool ounces = false;
    bool gr = false;
    bool old = false;
    for (std::size_t i = 0; i < layout.columns.size(); ++i) {
        if (has_fluids(page, layout, i))
            vary(values(true, said(by_hand, ByHand::imperial), said(by_hand, ByHand::us)), [&](Shared& one, bool us) {
                one.fluid[i] = us ? Fluid::us : Fluid::imperial;
                // A book in three systems has one column of each.
                const bool again = i > 0 && has_fluids(page, layout, 0) && one.fluid[0] == one.fluid[i];
                one.cost += i == 0 ? cost_of_fluid(page, one.fluid[i]) : again ? 2 : 0;
            });
        ounces = ounces || any_unit(page, i, {UnitWord::ounce, UnitWord::pound});
        gr = gr || any_unit(page, i, {UnitWord::grain_or_gram});
        old = old || !layout.columns[i].metric;
    }
    const auto any_solid_ounce =
        std::ranges::any_of(layout.lines, [](const Known& known) { return !known.liquid && says_ounces(*known.line); });
    vary(values(ounces && any_solid_ounce, said(by_hand, ByHand::avoirdupois), said(by_hand, ByHand::apothecaries)),
         [](Shared& one, bool apothecaries) {
             one.ounce = apothecaries ? Ounce::apothecaries : Ounce::avoirdupois;
             one.cost += apothecaries ? druggists_weight : 0;
         });
    vary(values(gr, said(by_hand, ByHand::grain), said(by_hand, ByHand::gram)), [&](Shared& one, bool gram) {
        one.gr_is_gram = gram;
        one.cost += gram ? (old ? gram_beside_ounces : 0) : (old ? 0 : grain_beside_grams);
    });
    return all;
}

ByHand by_hand_of(std::string_view said) {
    const std::string words = syntax::normal_name(said);
    const auto has = [&](std::string_view word) { return words.find(word) != std::string::npos; };
    if (has("imperial") || has(" uk")) return ByHand::imperial;
    if (words.starts_with("fl oz us") || words.starts_with("us ") || has(" us")) return ByHand::us;
    if (has("avoirdupois") || words == "oz av") return ByHand::avoirdupois;
    if (has("apothecar") || words == "oz ap") return ByHand::apothecaries;
    if (words == "% v/v") return ByHand::by_volume;
    if (words == "% w/w") return ByHand::by_weight;
    if (words == "% w/v") return ByHand::weight_in_volume;
    if (words == "gr grain" || words == "grs grain" || words == "gr grains") return ByHand::grain;
    if (words == "gr gram" || words == "grs gram" || words == "gr grams") return ByHand::gram;
    return words.ends_with(')') ? ByHand::form : ByHand::nothing;
}

std::string_view percent_of(const Known& known, const std::vector<check::ReadingByHand>& by_hand) {
    if (said(by_hand, ByHand::by_volume)) return "% v/v";
    if (said(by_hand, ByHand::by_weight)) return "% w/w";
    if (said(by_hand, ByHand::weight_in_volume)) return "% w/v";
    return known.pure_liquid ? "% v/v" : "% w/v";
}

void keep_to_hand(const check::Model& model, Layout& layout, const std::vector<check::ReadingByHand>& by_hand) {
    for (const auto& line : by_hand) {
        if (by_hand_of(line.said) != ByHand::form) continue;
        const std::string words = syntax::normal_name(line.said);
        const std::size_t open = words.find(" (");
        if (open == std::string::npos) continue;
        const Named named = chemical_named(model, words.substr(0, open));
        const std::string form = words.substr(open + 2, words.size() - open - 3);
        for (Known& known : layout.lines) {
            if (named.chemical == check::none || known.what.chemical != named.chemical) continue;
            std::vector<Way> kept;
            for (const Way& way : known.ways)
                if (is_called(model.chemicals[named.chemical].forms[way.form], form)) kept.push_back(way);
            if (!kept.empty()) known.ways = std::move(kept);
        }
    }
}

}  // namespace scruple::printed
