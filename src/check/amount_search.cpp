// SPDX-License-Identifier: MIT
#include "amount_search.hpp"

#include <algorithm>
#include <cmath>
#include <map>

#include "expected.hpp"
#include "least_squares.hpp"
#include "scruple/check/ph.hpp"

namespace scruple::check {
namespace {

using diagnostics::Kind;

constexpr double ph_tolerance = 0.005;

/// Six digits: two more than an expectation is held to.
Exact rounded(double measure) {
    const double digits = std::floor(std::log10(measure)) - 5;
    const double step = std::pow(10, std::abs(digits));
    return digits < 0 ? Exact(std::llround(measure * step), std::llround(step))
                      : Exact(std::llround(measure / step)) * Exact(std::llround(step));
}

std::string printed(double amount) {
    return quantity::significant_text(amount, 4);
}

std::string_view unit_of(Addition::By by) {
    switch (by) {
        case Addition::By::mass:
            return "g";
        case Addition::By::volume:
            return "ml";
        case Addition::By::amount:
            return "mol";
        case Addition::By::drops:
            return "drops";
    }
    return "";
}

}  // namespace

AmountSearch::AmountSearch(Reader& reader, Model& model, std::vector<Id> sections)
    : reader_(reader), model_(model), sections_(std::move(sections)) {
    for (const Id id : sections_) {
        for (auto& line : model.sections[id].lines)
            if (auto* addition = std::get_if<Addition>(&line); addition && addition->how == Addition::How::unknown)
                unknowns_.push_back(addition);
        for (const auto& expectation : model.sections[id].expects) wanted_.push_back({id, &expectation});
    }
}

bool AmountSearch::can_be_tried() const {
    return !unknowns_.empty() && unknowns_.size() <= most_unknowns && wanted_.size() >= unknowns_.size();
}

void AmountSearch::run() {
    std::vector<Few<Exact>> found(unknowns_.size());
    for (std::size_t variant = 0; variant < variants(); ++variant) {
        variant_ = variant;
        const auto amounts = nearest();
        if (!amounts) return leave_open();
        if (!met(*amounts)) return report_nearest(*amounts);
        for (std::size_t i = 0; i < unknowns_.size(); ++i) found[i].push_back(rounded((*amounts)[i]));
    }
    for (std::size_t i = 0; i < unknowns_.size(); ++i) settle(*unknowns_[i], std::move(found[i]));
}

std::size_t AmountSearch::variants() const {
    return variants_of(model_, model_.sections[sections_.front()]);
}

void AmountSearch::leave_open() {
    for (auto* addition : unknowns_) {
        open(*addition);
        reader_.report(Kind::amount_left_open, addition->place.span, {name(*addition)});
    }
}

void AmountSearch::open(Addition& addition) {
    addition.how = Addition::How::unknown;
    addition.shares.clear();
}

std::string AmountSearch::name(const Addition& addition) const {
    return addition.chemical == none ? shown_name(model_, addition.solution)
                                     : shown_name(model_.chemicals[addition.chemical], addition.form);
}

std::optional<std::vector<double>> AmountSearch::values(const std::vector<double>& amounts) {
    for (std::size_t i = 0; i < unknowns_.size(); ++i) {
        unknowns_[i]->how = Addition::How::exactly;
        unknowns_[i]->shares.assign(variants(), rounded(amounts[i]));
    }
    std::map<Id, std::vector<Content>> contents;
    std::vector<double> all;
    for (const auto& [section, expectation] : wanted_) {
        if (!contents.contains(section)) contents[section] = check::contents(model_, section, variant_);
        const auto value = value_of(*expectation, contents[section]);
        if (!value) return std::nullopt;
        all.push_back(*value);
    }
    return all;
}

std::optional<double> AmountSearch::value_of(const Expectation& expectation,
                                             const std::vector<Content>& contents) const {
    if (expectation.ph) return ph_value_of(model_, contents, usual_celsius);
    const auto content = content_of(model_, contents, expectation);
    return content ? in_unit(*content, expectation.unit) : std::nullopt;
}

std::optional<std::vector<double>> AmountSearch::misses(const std::vector<double>& logs) {
    std::vector<double> amounts;
    amounts.reserve(logs.size());
    for (const double log : logs) amounts.push_back(std::exp(log));
    auto all = values(amounts);
    if (!all) return std::nullopt;
    for (std::size_t i = 0; i < all->size(); ++i) {
        const auto& range = wanted_[i].expectation->range;
        const double middle = (range.low.to_double() + range.high.to_double()) / 2;
        (*all)[i] = ((*all)[i] - middle) / (wanted_[i].expectation->ph || middle == 0 ? 1 : middle);
    }
    return all;
}

std::optional<std::vector<double>> AmountSearch::nearest() {
    double litres = 1e-3;
    for (const Id id : sections_) litres = std::max(litres, model_.sections[id].makes_ml.to_double() / 1000);
    const auto of = [this](const std::vector<double>& logs) { return misses(logs); };
    auto best = least_squares(of, unknowns_.size(), std::log(1e-4 * litres), std::log(3e3 * litres));
    if (!best) return std::nullopt;
    for (double& log : *best) log = std::exp(log);
    return best;
}

bool AmountSearch::met(const std::vector<double>& amounts) {
    const auto found = values(amounts);
    for (std::size_t i = 0; found && i < found->size(); ++i) {
        const auto& expectation = *wanted_[i].expectation;
        const double slack = expectation.ph ? ph_tolerance : 0;
        const bool inside = (*found)[i] >= expectation.range.low.to_double() - slack &&
                            (*found)[i] <= expectation.range.high.to_double() + slack;
        if (!inside && !(!expectation.ph && lies_within((*found)[i], expectation.range))) return false;
    }
    return found.has_value();
}

void AmountSearch::settle(Addition& addition, Few<Exact> amounts) {
    std::string text;
    for (const auto& amount : amounts) text += (text.empty() ? "" : ", ") + printed(amount.to_double());
    addition.how = Addition::How::exactly;
    addition.shares = std::move(amounts);
    addition.worked_out = true;
    reader_.report(Kind::amount_found, addition.place.span,
                   {name(addition), text + " " + std::string(unit_of(addition.by))});
}

void AmountSearch::report_nearest(const std::vector<double>& amounts) {
    const auto found = values(amounts);
    std::string names, nearest;
    for (std::size_t i = 0; i < unknowns_.size(); ++i) {
        names += (i == 0 ? "`" : " and `") + name(*unknowns_[i]) + "`";
        nearest += (i == 0 ? "" : " and ") + printed(amounts[i]) + " " + std::string(unit_of(unknowns_[i]->by));
    }
    nearest += found ? " " + gives(*found) : "";
    for (auto* addition : unknowns_) open(*addition);
    reader_.report(Kind::amounts_not_found, unknowns_.front()->place.span, {names, nearest});
}

std::string AmountSearch::gives(const std::vector<double>& found) const {
    std::string text = "with";
    for (std::size_t i = 0; i < found.size(); ++i) {
        const auto& expectation = *wanted_[i].expectation;
        const auto value = quantity::significant_text(found[i], 3);
        text += i == 0 ? " " : ", ";
        text += expectation.ph ? "pH " + value
                               : value + " " + std::string(quantity::info(expectation.unit).shown) + " " +
                                     expected_name(model_, expectation);
    }
    return text;
}

}  // namespace scruple::check
