// SPDX-License-Identifier: MIT
// Steps, second vessels, and solutions made by parts.
#include <algorithm>

#include "lines.hpp"

namespace scruple::check {
namespace {

using diagnostics::Kind;
using quantity::Dimension;

Action::Verb kind_of(syntax::Step::Verb verb) {
    switch (verb) {
        case syntax::Step::Verb::stir:
            return Action::Verb::stir;
        case syntax::Step::Verb::wait:
            return Action::Verb::wait;
        case syntax::Step::Verb::stand:
            return Action::Verb::stand;
        case syntax::Step::Verb::filter:
            return Action::Verb::filter;
        case syntax::Step::Verb::cool:
            return Action::Verb::cool;
        case syntax::Step::Verb::warm:
            return Action::Verb::warm;
        case syntax::Step::Verb::not_above:
            return Action::Verb::not_above;
        case syntax::Step::Verb::do_this:
            return Action::Verb::do_this;
    }
    return Action::Verb::stir;
}

Action::Toward kind_of(syntax::Step::Toward toward) {
    switch (toward) {
        case syntax::Step::Toward::none:
            return Action::Toward::none;
        case syntax::Step::Toward::to:
            return Action::Toward::to;
        case syntax::Step::Toward::below:
            return Action::Toward::below;
        case syntax::Step::Toward::above:
            return Action::Toward::above;
    }
    return Action::Toward::none;
}

std::optional<Exact> share_of(syntax::VesselStep::Share share) {
    using Share = syntax::VesselStep::Share;
    switch (share) {
        case Share::half:
            return Exact(1, 2);
        case Share::third:
            return Exact(1, 3);
        case Share::quarter:
            return Exact(1, 4);
        case Share::all:
        case Share::rest:
        case Share::quantity:
            return std::nullopt;
    }
    return std::nullopt;
}

}  // namespace

void LineReader::take(const syntax::Step& line) {
    Action action{.verb = kind_of(line.verb),
                  .toward = kind_of(line.toward),
                  .seconds = {},
                  .celsius = {},
                  .words = reader_.text(line.words),
                  .details = read_step_details(line.details),
                  .place = reader_.place(reader_.statement_span())};
    if (line.range != syntax::nowhere) {
        const auto& range = reader_.tree.ranges[line.range];
        const bool by_heat = action.verb == Action::Verb::cool || action.verb == Action::Verb::warm ||
                             action.verb == Action::Verb::not_above;
        if (by_heat) {
            action.celsius = read_celsius(reader_, range);
        } else {
            action.seconds = read_duration(reader_, range);
        }
    }
    section_.lines.emplace_back(std::move(action));
}

Few<Detail> LineReader::read_step_details(syntax::Slice details) {
    Few<Detail> read;
    for (const auto& detail : syntax::Tree::run(reader_.tree.details, details)) {
        if (auto one = read_step_detail(detail)) read.push_back(std::move(*one));
    }
    return read;
}

std::optional<Detail> LineReader::read_step_detail(const syntax::Detail& detail) {
    using What = syntax::Detail::What;
    Detail read{.what = Detail::What::remark, .words = reader_.text(detail.words), .value = {}};
    switch (detail.what) {
        case What::stirring:
            read.what = Detail::What::stirring;
            return read;
        case What::slowly:
            read.what = Detail::What::slowly;
            return read;
        case What::remark:
            return read;
        case What::stirring_every:
        case What::not_above: {
            const bool every = detail.what == What::stirring_every;
            read.what = every ? Detail::What::stirring_every : Detail::What::not_above;
            const auto value = read_as(reader_, reader_.tree.quantities[detail.quantity],
                                       every ? Dimension::time : Dimension::temperature);
            if (!value) return std::nullopt;
            read.value = *value;
            return read;
        }
        case What::until:
            if (detail.ph.span.empty()) {
                read.what = Detail::What::until;
                return read;
            }
            read.what = Detail::What::until_ph;
            if (const auto ph = read_number(reader_, detail.ph)) read.value = *ph;
            return read;
        case What::pinch_now:
        case What::quantity_now:
        case What::by_conversion:
        case What::optional:
        case What::at:
        case What::unknown:
            break;
    }
    reader_.report(Kind::unknown_detail, detail.span, {reader_.text(detail.span)});
    return std::nullopt;
}

// ---- vessels --------------------------------------------------------------------------------------

void LineReader::take(const syntax::VesselStep& line) {
    using What = syntax::VesselStep::What;
    VesselMove move{.what = VesselMove::What::apart,
                    .vessel = reader_.text(line.vessel),
                    .share = {},
                    .ml = {},
                    .details = read_step_details(line.details),
                    .place = reader_.place(reader_.statement_span())};
    if (line.what == What::apart) {
        open_vessel(line);
        section_.lines.emplace_back(std::move(move));
        return;
    }
    auto* vessel = find_vessel(line.vessel);
    if (vessel == nullptr) return;
    open_ = SIZE_MAX;
    move.what = line.what == What::pour_in ? VesselMove::What::pour_in : VesselMove::What::set_aside;
    if (line.what == What::pour_in) {
        vessel->poured = true;
        read_share(line, move);
    }
    section_.lines.emplace_back(std::move(move));
}

void LineReader::open_vessel(const syntax::VesselStep& line) {
    const auto name = reader_.text(line.vessel);
    if (open_ != SIZE_MAX)
        reader_.report(Kind::vessel_still_open, reader_.statement_span(), {name, vessels_[open_].name});
    const auto again = std::ranges::find_if(vessels_, [&](const Vessel& vessel) { return vessel.name == name; });
    if (again != vessels_.end()) {
        open_ = static_cast<std::size_t>(again - vessels_.begin());
        return;
    }
    open_ = vessels_.size();
    vessels_.push_back({name, reader_.statement_span(), false});
}

LineReader::Vessel* LineReader::find_vessel(const syntax::Name& name) {
    const auto written = reader_.text(name);
    const auto found = std::ranges::find_if(vessels_, [&](const Vessel& vessel) { return vessel.name == written; });
    if (found != vessels_.end()) return &*found;
    std::vector<std::string_view> known;
    for (const auto& vessel : vessels_) known.push_back(vessel.name);
    const auto near = diagnostics::nearest(written, known);
    reader_.report(Kind::unknown_vessel, name.span,
                   {written, near.empty() ? "`apart " + std::string(written) + "` above it" : "`" + near + "`"});
    return nullptr;
}

void LineReader::read_share(const syntax::VesselStep& line, VesselMove& move) {
    move.share = share_of(line.share);
    if (line.quantity != syntax::nowhere)
        move.ml = read_positive(reader_, reader_.tree.quantities[line.quantity], Dimension::volume);
}

// ---- dilute and mix -------------------------------------------------------------------------------

/// Behind the lines of what it is to be made of.
void LineReader::report_among_lines(const syntax::Mix& line) {
    reader_.report(
        Kind::unread_fact, reader_.statement_span(),
        {line.dilute ? "dilute" : "mix",
         "the heading `working` on a line above it, since what is thinned is another solution than this one"});
    section_.broken = true;
}

void LineReader::take(const syntax::Mix& line) {
    if (!section_.lines.empty() && !section_.by_parts) return report_among_lines(line);
    if (!section_.lines.empty())
        reader_.report(Kind::said_twice, reader_.statement_span(), {line.dilute ? "dilute" : "mix"});
    if (!line.colon_ratio.empty()) {
        const syntax::Number ratio{.span = line.colon_ratio};
        static_cast<void>(read_number(reader_, ratio));
        return;
    }
    const auto names = syntax::Tree::run(reader_.tree.names, line.what);
    const auto numbers = syntax::Tree::run(reader_.tree.numbers, line.parts);
    const std::size_t wanted = line.dilute ? 2 : names.size();
    if (numbers.size() != wanted || (line.dilute && names.size() != 1)) {
        reader_.report(Kind::parts_do_not_match, reader_.statement_span(),
                       {std::to_string(line.dilute ? 2 : names.size()), std::to_string(numbers.size())});
        return;
    }
    std::vector<Addition> additions;
    Exact total;
    for (std::size_t i = 0; i < numbers.size(); ++i) {
        const auto parts = read_positive(reader_, numbers[i]);
        if (!parts) return;
        Addition addition{.by = Addition::By::volume, .place = reader_.place(reader_.statement_span())};
        const auto what = i < names.size() ? resolve(reader_, {.name = names[i]}, recipe_)
                                           : std::optional(Resolved{.chemical = reader_.model.water, .form = 0});
        if (!what) return;
        addition.chemical = what->chemical;
        addition.form = what->form;
        addition.solution = what->solution;
        addition.parts = *parts;
        addition.written = reader_.text(numbers[i].span);
        total += *parts;
        additions.push_back(std::move(addition));
    }
    section_.by_parts = true;
    section_.makes_ml = 1000;
    for (auto& addition : additions) {
        addition.shares.push_back(section_.makes_ml * *addition.parts / total);
        section_.lines.emplace_back(std::move(addition));
    }
}

}  // namespace scruple::check
