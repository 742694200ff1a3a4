// SPDX-License-Identifier: MIT
#include "kinds.hpp"

#include <algorithm>
#include <array>

namespace scruple::syntax {
namespace {

template <class... Fs>
struct overloaded : Fs... {
    using Fs::operator()...;
};
// Clang deduces it for aggregates from 17 on.
template <class... Fs>
overloaded(Fs...) -> overloaded<Fs...>;

template <class Enum, std::size_t N>
std::string named(Enum value, const std::array<const char*, N>& names) {
    return names.at(static_cast<std::size_t>(value));
}

std::string heading_kind(const Heading& heading) {
    const bool label = heading.block == Block::part || heading.block == Block::bath ||
                       heading.block == Block::working || heading.block == Block::replenisher ||
                       heading.block == Block::log;
    if (!heading.size.empty()) return "sized_title";
    if (heading.bad) return label ? "bad_label" : "bad_title";
    if (heading.block == Block::conversion) return "conversion_of";
    if (!label) return "titled";
    return heading.title.name.span.empty() && !heading.title.name.quoted ? "untitled" : "labelled";
}

/// No unit that an ingredient is measured in: none that is known, or one of time or temperature.
bool is_odd(quantity::Unit unit) {
    if (unit == quantity::Unit::none) return true;
    const auto dimension = quantity::info(unit).dimension;
    return dimension == quantity::Dimension::time || dimension == quantity::Dimension::temperature;
}

std::string ingredient_kind(const Ingredient& ingredient, const Tree& tree) {
    const bool unknown = ingredient.how == Ingredient::How::unknown;
    const auto loose = [&](const Quantity& quantity) {
        return is_odd(quantity.unit) || (quantity.number.loose() && !unknown);
    };
    const auto amounts = Tree::run(tree.ranges, ingredient.quantities);
    const bool any = std::any_of(amounts.begin(), amounts.end(),
                                 [&](const Range& range) { return loose(range.low) || loose(range.high); });
    return any ? "loose_ingredient" : "ingredient";
}

std::string step_kind(const Step& step) {
    using enum Step::Verb;
    switch (step.verb) {
        case stir:
        case wait:
        case stand:
        case filter:
            return "pause";
        case cool:
        case warm:
            return "temper";
        case not_above:
            return "limit";
        case do_this:
            return "do_this";
    }
    return "?";
}

}  // namespace

std::string kind_of(const Statement& statement, const Tree& tree) {
    return std::visit(
        overloaded{
            [](const Heading& heading) { return heading_kind(heading); },
            [](const Words& words) {
                return named(words.of, std::array{"is_a", "strength_is", "source", "caution", "note", "lethal",
                                                  "harmful", "assumed", "book", "printed_line"});
            },
            [](const Keeps&) { return std::string("keeps"); },
            [](const UseWithin&) { return std::string("use_within"); },
            [](const Capacity&) { return std::string("capacity"); },
            [](const Variants&) { return std::string("variants"); },
            [](const Mix& mix) { return std::string(mix.dilute ? "dilute" : "mix"); },
            [](const Replenish&) { return std::string("replenish"); },
            [](const Expect& expect) { return std::string(expect.ph ? "expect_ph" : "expect_content"); },
            [](const Also&) { return std::string("also"); },
            [](const Form&) { return std::string("form"); },
            [](const WordList& list) {
                return named(list.of, std::array{"grade", "acts_as", "hazard"});
            },
            [](const Ions&) { return std::string("ions"); },
            [](const Dissolves&) { return std::string("dissolves"); },
            [](const Property& property) {
                return named(property.of, std::array{"density", "takes_up"});
            },
            [](const Cas&) { return std::string("cas"); },
            [](const Equilibrium& line) {
                return named(line.of, std::array{"in_water", "escapes"});
            },
            [](const Interaction&) { return std::string("pair"); },
            [](const Bystanders&) { return std::string("bystander"); },
            [](const SaltOf&) { return std::string("salt_of"); },
            [](const Reaction&) { return std::string("reaction"); },
            [](const Excess&) { return std::string("excess"); },
            [](const Vessel&) { return std::string("vessel"); },
            [](const Area&) { return std::string("area"); },
            [](const Meets& line) {
                return named(line.of, std::array{"one_of_these", "in_doubt"});
            },
            [](const PhLimit&) { return std::string("ph_limit"); },
            [](const WarmerThan&) { return std::string("warmer_than"); },
            [](const Accept&) { return std::string("accept"); },
            [](const Reading&) { return std::string("reading"); },
            [](const Instrument& instrument) {
                return std::string(instrument.what == Instrument::What::balance ? "balance" : "measure");
            },
            [](const Dropper&) { return std::string("dropper"); },
            [](const Bottles&) { return std::string("bottles"); },
            [](const Pace&) { return std::string("pace"); },
            [](const Postage&) { return std::string("postage"); },
            [](const Step& step) { return step_kind(step); },
            [](const VesselStep& step) {
                return named(step.what, std::array{"apart", "pour_in", "set_aside"});
            },
            [&](const Ingredient& ingredient) { return ingredient_kind(ingredient, tree); },
            [](const Bare&) { return std::string("bare"); },
            [](const LogEntry&) { return std::string("log_entry"); },
            [](const PlanEntry&) { return std::string("plan_entry"); },
            [](const PriceEntry&) { return std::string("price_entry"); },
            [](const ProcessEntry&) { return std::string("process_entry"); },
            [](const CommentOnly&) { return std::string("comment"); },
            [](const Unread& unread) { return std::string(unread.keyword.empty() ? "unread" : "bad_line"); },
        },
        statement.node);
}

}  // namespace scruple::syntax
