// SPDX-License-Identifier: MIT
#include "refit.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "room.hpp"
#include "script.hpp"
#include "scruple/plan/figure.hpp"
#include "words.hpp"

namespace scruple::plan {

namespace {

using check::Addition;
using check::Exact;
using check::Line;
using check::Model;
using check::Section;

/// To five significant digits.
Exact rounded(const Exact& value) {
    if (value.is_zero()) return value;
    Exact step = 1;
    while (quantity::magnitude(value) >= step * 100000) step = step * 10;
    while (quantity::magnitude(value) < step * 10000) step = step / 10;
    return value.rounded_to(step);
}

Exact measure_of(const Way& way) {
    return way.solution == check::none ? way.from.measure : way.ml;
}

/// The same line, asking for the form or the solution that the way takes.
Addition met(const Model& model, const Addition& line, const Asked& asked, const Way& way) {
    Addition met = line;
    const bool ready = way.solution != check::none;
    met.solution = way.solution;
    met.chemical = ready ? check::none : line.chemical;
    met.form = ready ? check::none : way.from.ware.form;
    met.strength = ready ? std::nullopt : way.from.ware.strength;
    met.saturated_at.reset();
    met.solvent = met.grade = met.written = {};
    met.by = ready || way.from.ware.by_volume ? Addition::By::volume : Addition::By::mass;
    const Exact rate = measure_of(way) / asked.wanted.measure;
    for (Exact& share : met.shares) share = rounded(counted(model, line, share).measure * rate);
    if (met.now) met.now = rounded(counted(model, line, *met.now).measure * rate);
    return met;
}

/// The second half of a divided weighing comes out of the same jar.
void meet_the_rest(Section& section, std::size_t first, const Addition& met) {
    for (std::size_t i = first + 1; i < section.lines.size(); ++i) {
        auto* rest = std::get_if<Addition>(&section.lines[i]);
        if (rest == nullptr || rest->how != Addition::How::the_rest || rest->chemical != met.chemical) continue;
        rest->form = met.form;
        rest->shares = met.shares;
        rest->now = met.now;
        return;
    }
}

Addition* own_water(const Model& model, Line& line) {
    auto* addition = std::get_if<Addition>(&line);
    const bool fits = addition != nullptr && is_water(model, *addition) && addition->how == Addition::How::exactly &&
                      !addition->optional && addition->by == Addition::By::volume;
    return fits ? addition : nullptr;
}

/// How much more the section brings than it may, for the variant that brings most.
Exact surplus(const Model& model, const Section& before, const Section& now, std::size_t line) {
    const std::size_t variants = check::variants_of(model, now);
    std::optional<Exact> most;
    for (std::size_t variant = 0; variant < variants; ++variant) {
        const Exact room = room_of_lines(model, now, variant);
        const auto mark = mark_after(now, line, variant);
        const Exact over = mark ? std::max(room - *mark, Exact()) : room - room_of_lines(model, before, variant);
        most = most ? std::max(*most, over) : over;
    }
    return most.value_or(0);
}

/// The water before the line first, the nearest of it first, then the water behind it. Gives what is still too much.
Exact balance(const Model& model, Section& section, std::size_t line, Exact over) {
    const auto take_from = [&](Line& one) {
        Addition* water = own_water(model, one);
        if (water == nullptr || over.is_zero()) return;
        const Exact change = rounded(std::min(over, *std::ranges::min_element(water->shares) / 2));
        for (Exact& share : water->shares) share -= change;
        water->written = {};
        over -= change;
    };
    for (std::size_t i = line; i-- > 0;) take_from(section.lines[i]);
    for (std::size_t i = line + 1; i < section.lines.size(); ++i) take_from(section.lines[i]);
    return over;
}

std::string refit_amount(Model& model, const Asked& asked, const Section& before) {
    Section& section = model.sections[asked.section];
    const Exact over = balance(model, section, asked.line, surplus(model, before, section, asked.line));
    // What the rounding leaves is less than anybody measures.
    if (over * 10000 <= section.makes_ml) return {};
    const Exact volume = mark_after(section, asked.line, asked.variant).value_or(section.makes_ml);
    return fmt::format("there is no room for it in {}; it would fit into {} or more", plain_ml(volume).with_unit(),
                       plain_ml((volume + over).ceil()).with_unit());
}

/// The forms in which the reagents are there, in the lines that name them without an amount.
void take_reagents_as_they_are(Model& model, const Way& way) {
    for (Line& line : model.sections[model.conversions[way.conversion].section].lines) {
        auto* bare = std::get_if<Addition>(&line);
        if (bare == nullptr || !bare->shares.empty()) continue;
        for (const Amount& reagent : way.reagents)
            if (reagent.ware.chemical == bare->chemical) bare->form = reagent.ware.form;
    }
}

}  // namespace

std::string refit(Model& model, const Asked& asked, const Way& way) {
    Section& section = model.sections[asked.section];
    if (way.kind == Way::Kind::conversion) {
        auto& line = std::get<Addition>(section.lines[asked.line]);
        line.by_conversion = true;
        line.made_by = way.conversion;
        take_reagents_as_they_are(model, way);
        return {};
    }
    const Section before = section;
    const Addition now = met(model, std::get<Addition>(section.lines[asked.line]), asked, way);
    section.lines[asked.line] = now;
    section.takes_solutions = section.takes_solutions || now.solution != check::none;
    meet_the_rest(section, asked.line, now);
    std::string misfit = refit_amount(model, asked, before);
    if (!misfit.empty()) section = before;
    return misfit;
}

}  // namespace scruple::plan
