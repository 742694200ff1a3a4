// SPDX-License-Identifier: MIT
#include "options.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace scruple::printed {
namespace {

constexpr double worth_telling = 0.25;  ///< a cost of less says nothing
constexpr double same = 0.005;          ///< a change of less is none

std::string_view evidence_words(Evidence evidence) {
    switch (evidence) {
        case Evidence::habit:
            return "what such pages mostly mean";
        case Evidence::book:
            return "the book's country, year and spelling";
        case Evidence::name:
            return "the page's own words";
        case Evidence::columns:
            return "the columns beside one another";
        case Evidence::dissolving:
            return "what dissolves";
        case Evidence::usual:
            return "the usual amounts";
        case Evidence::acidity:
            return "the pH";
    }
    return "";
}

}  // namespace

std::string odds(double cost) {
    const double times = std::exp(std::min(cost, 14.0));
    return times >= 1e6 ? "over a million to 1" : quantity::significant_text(times, times < 10 ? 2 : 1) + " to 1";
}

std::string name_of(const Known& known) {
    return known.what.chemical == check::none ? known.line->name : std::string(known.what.as);
}

Weights Options::weights_of(std::size_t line, const Found& found) const {
    const Way& way = layout_.lines[line].ways[found.ways[line]];
    return way.weights + judge_.weights(line, way, found.shared);
}

Weights Options::weights(const Found& found) {
    Under& under = under_[found.index];
    if (under.ways.empty()) {
        under.ways = found.ways;
        under.sum = found.shared.weights;
        for (std::size_t line = 0; line < layout_.lines.size(); ++line)
            under.sum += under.lines.emplace_back(weights_of(line, found));
    }
    Weights all = under.sum;
    for (std::size_t line = 0; line < layout_.lines.size(); ++line) {
        if (found.ways[line] == under.ways[line]) continue;
        all += weights_of(line, found);
        all -= under.lines[line];
    }
    all[Evidence::acidity] += acidity_.cost_beside(found, best_);
    return all;
}

std::vector<std::string> Options::told(const Weights& against) const {
    std::vector<std::pair<double, std::string>> all;
    for (std::size_t i = 0; i < kinds_of_evidence; ++i) {
        const double cost = against[static_cast<Evidence>(i)];
        if (std::abs(cost) < worth_telling) continue;
        all.emplace_back(-cost, fmt::format("{} {}{}", evidence_words(static_cast<Evidence>(i)), odds(std::abs(cost)),
                                            cost < 0 ? " for it" : ""));
    }
    std::ranges::stable_sort(all, {}, &std::pair<double, std::string>::first);
    std::vector<std::string> texts;
    texts.reserve(all.size());
    for (auto& [cost, text] : all) texts.push_back(std::move(text));
    return texts;
}

Option Options::option(std::string words, const Found& found, std::size_t of_line) {
    Option option{.words = std::move(words)};
    Weights against = weights(found);
    against -= weights(best_);
    // What is the best itself costs nothing, whatever rounding leaves.
    option.cost = std::max(against.sum(), 0.0) < 1e-9 ? 0 : std::max(against.sum(), 0.0);
    option.weights = told(against);
    for (std::size_t line = 0; line < layout_.lines.size(); ++line)
        if (of_line == every_line || of_line == line)
            if (auto text = difference(line, found); !text.empty()) option.changes.push_back(std::move(text));
    return option;
}

std::string Options::difference(std::size_t line, const Found& other) const {
    const Known& known = layout_.lines[line];
    const Way& here = known.ways[best_.ways[line]];
    const Way& there = known.ways[other.ways[line]];
    const auto amount = [&](const Way& way, const Shared& shared) {
        PerLitre it = judge_.per_litre(line, way, shared);
        // Two percents differ by what they hold, and not by how much is poured.
        if (known.line->percent) {
            it.per_litre = judge_.substance(line, way, shared);
            it.amount.by_volume = it.amount.by_volume && it.per_litre <= 0;
        }
        return it;
    };
    const PerLitre from = amount(here, best_.shared);
    const PerLitre to = amount(there, other.shared);
    const bool by_litre = from.per_litre > 0 && to.per_litre > 0;
    const double one = by_litre ? from.per_litre : from.amount.base;
    const double two = by_litre ? to.per_litre : to.amount.base;
    if (one <= 0 || two <= 0 || std::abs(std::log(two / one)) < same) return {};
    return fmt::format("{} {} to {} {}{}{}", name_of(known), quantity::significant_text(one, 3),
                       quantity::significant_text(two, 3), to.amount.by_volume ? "ml" : "g", by_litre ? "/l" : "",
                       known.line->percent && by_litre ? " of the chemical itself" : "");
}

}  // namespace scruple::printed
