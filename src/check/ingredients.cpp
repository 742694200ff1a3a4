// SPDX-License-Identifier: MIT
// Ingredients: what, how much, and what is said after the comma.
#include <algorithm>

#include "lines.hpp"
#include "listed.hpp"
#include "scruple/check/contents.hpp"
#include "scruple/check/sayings.hpp"
#include "scruple/check/solubility.hpp"

namespace scruple::check {
namespace {

using diagnostics::Kind;
using quantity::Dimension;
using quantity::Unit;
using How = syntax::Ingredient::How;

Addition::How kind_of(How how) {
    switch (how) {
        case How::exactly:
        case How::shares:
            return Addition::How::exactly;
        case How::to_make:
            return Addition::How::to_make;
        case How::the_rest:
            return Addition::How::the_rest;
        case How::about:
            return Addition::How::about;
        case How::unknown:
            return Addition::How::unknown;
    }
    return Addition::How::exactly;
}

std::optional<Addition::By> measure_by(Dimension dimension) {
    switch (dimension) {
        case Dimension::mass:
            return Addition::By::mass;
        case Dimension::volume:
            return Addition::By::volume;
        case Dimension::amount:
            return Addition::By::amount;
        case Dimension::count:
            return Addition::By::drops;
        case Dimension::temperature:
        case Dimension::time:
        case Dimension::area:
        case Dimension::strength:
        case Dimension::density:
            return std::nullopt;
    }
    return std::nullopt;
}

bool same(const syntax::Number& a, const syntax::Number& b) {
    return a.span == b.span;
}

}  // namespace

const std::vector<std::string_view>& LineReader::variants() const {
    static const std::vector<std::string_view> no_variants;
    return recipe_ == none ? no_variants : reader_.model.recipes[recipe_].variants;
}

std::string LineReader::name_of(const Addition& addition) const {
    if (addition.solution != none) return shown_name(reader_.model, addition.solution);
    return shown_name(reader_.model.chemicals[addition.chemical], addition.form);
}

void LineReader::take(const syntax::Ingredient& line) {
    const auto span = reader_.statement_span();
    Addition addition{.how = kind_of(line.how), .place = reader_.place(span)};
    if (!read_what(line, addition)) {
        const bool misread = !line.what.name.quoted && !saying_at(reader_.text(line.what.name)).keyword.empty();
        if (!misread) explain_amounts(line);
        return;
    }
    if (line.how == How::the_rest) {
        if (!take_rest(addition, span)) return;
    } else if (!read_shares(line, addition)) {
        return;
    }
    read_details(line.details, addition);
    if (addition.how == Addition::How::part_now) divide(addition, span);
    section_.lines.emplace_back(std::move(addition));
}

/// The name is not known; what is wrong with the amount is said all the same.
void LineReader::explain_amounts(const syntax::Ingredient& line) {
    for (const auto& range : syntax::Tree::run(reader_.tree.ranges, line.quantities)) {
        if (line.how != How::unknown) static_cast<void>(read_any(reader_, range.high));
    }
}

/// `the rest` of a divided weighing needs no form: the line that divided it said which. Moles are of the substance,
/// whatever its bottle holds.
FormNeed LineReader::need_of(const syntax::Ingredient& line) const {
    if (line.how == How::the_rest) return FormNeed::free;
    const auto in_moles = [](const syntax::Range& range) {
        return range.high.unit != Unit::none && quantity::info(range.high.unit).dimension == Dimension::amount;
    };
    const auto ranges = syntax::Tree::run(reader_.tree.ranges, line.quantities);
    return !ranges.empty() && std::ranges::all_of(ranges, in_moles) ? FormNeed::pure : FormNeed::required;
}

bool LineReader::read_what(const syntax::Ingredient& line, Addition& addition) {
    const auto resolved = resolve(reader_, line.what, recipe_, need_of(line));
    if (!resolved) return false;
    addition.chemical = resolved->chemical;
    addition.form = resolved->form;
    addition.solution = resolved->solution;
    addition.grade = resolved->grade;
    addition.strength = resolved->strength;
    addition.solvent = resolved->solvent;
    if (resolved->saturated) addition.saturated_at = resolved->saturated_at.value_or(Interval{20, 20});
    return true;
}

bool LineReader::read_shares(const syntax::Ingredient& line, Addition& addition) {
    const auto ranges = syntax::Tree::run(reader_.tree.ranges, line.quantities);
    if (ranges.empty()) return false;
    addition.written = reader_.text(text::Span{ranges.front().low.number.span.begin, ranges.back().high.span().end});
    if (line.how == How::shares) return read_variant_shares(line, addition);
    if (line.how == How::unknown) return read_unknown(ranges.front().low, addition);
    Exact amount;
    if (!read_one(ranges.front(), addition, amount)) return false;
    addition.shares.push_back(amount);
    return true;
}

/// `? g`: the amount is open, and its unit has to fit all the same.
bool LineReader::read_unknown(const syntax::Quantity& quantity, Addition& addition) {
    if (quantity.unit == Unit::none) {
        if (quantity.unit_span.empty()) return true;
        explain_unit(reader_, quantity);
        return false;
    }
    const auto dimension = quantity::info(quantity.unit).dimension;
    if (!settle_measure(quantity, addition, dimension)) return false;
    addition.by = *measure_by(dimension);
    return check_density(addition, quantity.span(), reader_.text(quantity.span()));
}

bool LineReader::read_one(const syntax::Range& range, Addition& addition, Exact& into) {
    if (!same(range.low.number, range.high.number)) {
        const text::Span span{range.low.number.span.begin, range.high.span().end};
        reader_.report(Kind::range_as_amount, span, {reader_.text(span)});
        return false;
    }
    const auto& quantity = range.high;
    const auto measured = read_any(reader_, quantity);
    if (!measured) return false;
    const auto written = reader_.text(quantity.span());
    if (measured->value <= Exact(0)) {
        reader_.report(Kind::not_above_nothing, quantity.span(), {written});
        return false;
    }
    if (!settle_measure(quantity, addition, measured->dimension)) return false;
    addition.by = *measure_by(measured->dimension);
    // A missing density leaves the line in its place: the lines after it are judged all the same.
    static_cast<void>(check_density(addition, quantity.span(), written));
    into = measured->value;
    return true;
}

/// Whether this dimension can measure this ingredient at all.
bool LineReader::settle_measure(const syntax::Quantity& quantity, const Addition& addition, Dimension dimension) {
    const bool volume_only = addition.how == Addition::How::to_make || addition.solution != none;
    const bool fits = volume_only ? dimension == Dimension::volume : measure_by(dimension).has_value();
    if (!fits) {
        const bool weight_fits = !volume_only;
        const auto wanted = weight_fits && dimension != Dimension::mass ? Dimension::mass : Dimension::volume;
        report_wrong_kind(reader_, quantity, wanted);
        return false;
    }
    const auto has_dropper = [](const Bench& bench) { return bench.drops_per_ml.has_value(); };
    if (dimension == Dimension::count && std::ranges::none_of(reader_.model.benches, has_dropper)) {
        reader_.report(Kind::drops_without_dropper, quantity.span(), {reader_.text(quantity.span())});
        return false;
    }
    return true;
}

/// A word behind an amount names a variant, unless it is a detail that lacks its comma.
void LineReader::report_unknown_variant(const syntax::Quantity& amount, const syntax::Name& label) {
    constexpr std::string_view details[] = {"optional", "slowly", "stirring"};
    const auto word = reader_.text(label);
    if (label.quoted || std::ranges::count(details, word) > 0) {
        const text::Span written = label.quoted ? text::Span{label.span.begin - 1, label.span.end + 1} : label.span;
        reader_.report(Kind::comma_left_out, written, {reader_.text(written), reader_.text(amount.span())});
        return;
    }
    const std::vector<std::string> known(variants().begin(), variants().end());
    reader_.report(Kind::unknown_variant, label.span,
                   {word, known.empty() ? "a `variants` line in the recipe, or one amount alone" : listed(known)});
}

bool LineReader::read_variant_shares(const syntax::Ingredient& line, Addition& addition) {
    const auto ranges = syntax::Tree::run(reader_.tree.ranges, line.quantities);
    const auto labels = syntax::Tree::run(reader_.tree.names, line.share_names);
    std::vector<std::optional<Exact>> amounts(variants().size());
    bool fine = true;
    for (std::size_t i = 0; i < ranges.size() && i < labels.size(); ++i) {
        const auto label = reader_.text(labels[i]);
        Exact amount;
        const bool read = read_one(ranges[i], addition, amount);
        const auto at = std::ranges::find_if(variants(), [&](std::string_view v) { return v == label; });
        if (at == variants().end()) {
            report_unknown_variant(ranges[i].high, labels[i]);
            fine = false;
        } else if (read) {
            amounts[static_cast<std::size_t>(at - variants().begin())] = amount;
        }
        fine = fine && read;
    }
    for (std::size_t i = 0; fine && i < amounts.size(); ++i) {
        if (amounts[i]) {
            addition.shares.push_back(*amounts[i]);
        } else {
            reader_.report(Kind::variant_left_out, reader_.statement_span(), {variants()[i]});
            fine = false;
        }
    }
    return fine;
}

/// A volume of a chemical, or a strength by weight, needs a density; a saturated solution its solubility.
bool LineReader::check_density(const Addition& addition, text::Span span, std::string_view amount) {
    if (addition.chemical == none) return true;
    const auto& chemical = reader_.model.chemicals[addition.chemical];
    if (addition.saturated_at) {
        if (saturated_grams_per_ml(reader_.model, addition, *addition.saturated_at)) return true;
        reader_.report(Kind::no_solubility, span, {shown_name(chemical, addition.form)});
        return false;
    }
    const bool by_volume = addition.by == Addition::By::volume || addition.by == Addition::By::drops;
    switch (density_need(chemical, addition.strength, by_volume)) {
        case DensityNeed::nothing:
            return true;
        case DensityNeed::of_form:
            if (density_of(chemical, addition.form, std::nullopt)) return true;
            if (!addition.strength && chemical.densities.empty()) {
                reader_.report(Kind::solid_by_volume, span, {shown_name(chemical, addition.form), amount});
                return false;
            }
            break;
        case DensityNeed::of_solution:
            if (density_of(chemical, addition.form, addition.strength)) return true;
            break;
    }
    const auto shown = shown_name(chemical, addition.form, addition.strength);
    reader_.report(Kind::no_density, span, {shown, by_volume ? "grams" : "ml", known_densities(chemical)});
    return false;
}

// ---- details --------------------------------------------------------------------------------------

void LineReader::read_details(syntax::Slice details, Addition& addition) {
    for (const auto& detail : syntax::Tree::run(reader_.tree.details, details)) read_detail(detail, addition);
}

void LineReader::read_detail(const syntax::Detail& detail, Addition& addition) {
    using What = syntax::Detail::What;
    switch (detail.what) {
        case What::pinch_now:
            addition.how = Addition::How::part_now;
            return;
        case What::quantity_now: {
            const auto& quantity = reader_.tree.quantities[detail.quantity];
            addition.how = Addition::How::part_now;
            const auto wanted = addition.by == Addition::By::volume ? Dimension::volume : Dimension::mass;
            addition.now = read_positive(reader_, quantity, wanted);
            for (const auto& share : addition.shares) {
                if (!addition.now || *addition.now < share) continue;
                reader_.report(Kind::more_now_than_all, quantity.span(),
                               {reader_.text(quantity.span()), addition.written});
            }
            return;
        }
        case What::by_conversion:
            addition.by_conversion = true;
            if (detail.words.span.empty()) return;
            if (const auto from = resolve_chemical(reader_, {detail.words}, FormNeed::free))
                addition.made_from = from->chemical;
            return;
        case What::optional:
            addition.optional = true;
            addition.optional_reason = reader_.text(detail.words);
            return;
        case What::at:
            addition.at = read_celsius(reader_, reader_.tree.ranges[detail.range]);
            return;
        case What::unknown:
            reader_.report(Kind::unknown_detail, detail.span, {reader_.text(detail.span)});
            return;
        case What::not_above:
        case What::stirring:
        case What::stirring_every:
        case What::slowly:
        case What::until:
        case What::remark:
            break;
    }
    if (auto read = read_step_detail(detail)) addition.details.push_back(std::move(*read));
}

void LineReader::divide(const Addition& addition, text::Span span) {
    divided_.push_back({addition.chemical, addition.form, addition.shares, addition.now, span});
}

bool LineReader::take_rest(Addition& addition, text::Span span) {
    const auto matches = [&](const Divided& divided) {
        return !divided.finished && divided.chemical == addition.chemical &&
               (addition.form == none || divided.form == addition.form);
    };
    const auto found = std::ranges::find_if(divided_, matches);
    if (addition.chemical == none || found == divided_.end()) {
        reader_.report(Kind::rest_of_nothing, span, {name_of(addition)});
        return false;
    }
    found->finished = true;
    addition.form = found->form;
    addition.shares = found->shares;
    addition.now = found->now;
    return true;
}

void LineReader::finish() {
    for (const auto& divided : divided_) {
        if (divided.finished || section_.broken) continue;
        reader_.report(Kind::no_remainder, divided.span, {reader_.model.chemicals[divided.chemical].name});
    }
    for (const auto& vessel : vessels_) {
        if (!vessel.poured) reader_.report(Kind::vessel_not_poured, vessel.span, {vessel.name});
    }
}

}  // namespace scruple::check
