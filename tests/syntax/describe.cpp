// SPDX-License-Identifier: MIT
#include "describe.hpp"

#include <array>

#include "kinds.hpp"

namespace scruple::syntax {
namespace {

class Describer {
  public:
    Describer(const Tree& tree, const text::Source& source) : tree_(tree), source_(source) {}

    std::string out;

    void operator()(const Heading& node) {
        constexpr std::array names = {"recipe",   "part",       "bath",   "working",  "replenisher",
                                      "chemical", "conversion", "bench",  "supplier", "log",
                                      "process",  "plan",       "format", "meeting",  "printed"};
        say("block", names[static_cast<std::size_t>(node.block)]);
        substance("title", node.title);
    }
    void operator()(const Words& node) { name("text", node.text); }
    void operator()(const Keeps& node) {
        for (const auto& item : Tree::run(tree_.keepings, node.items)) {
            say("time", range(item.time));
            span("when", item.when);
        }
        name("from", node.source);
    }
    void operator()(const UseWithin& node) { quantity("time", node.quantity); }
    void operator()(const Capacity& node) {
        for (const auto& item : Tree::run(tree_.capacity_items, node.items)) capacity(item);
    }
    void operator()(const Variants& node) { names("name", node.names); }
    void operator()(const Mix& node) {
        names("what", node.what);
        for (const auto& number : Tree::run(tree_.numbers, node.parts)) say("parts", text(number));
        span("ratio", node.colon_ratio);
    }
    void operator()(const Replenish& node) {
        quantity("volume", node.quantity);
        per(node.per);
        quantity("at most", node.at_most);
        per(node.at_most_per);
    }
    void operator()(const Expect& node) {
        if (node.ph) {
            for (const auto& bound : Tree::run(tree_.numbers, node.ph_bounds)) say("bound", text(bound));
        } else {
            substance("of", node.of);
            say("range", range(tree_.ranges[node.range]));
        }
    }
    void operator()(const Also& node) {
        for (const auto& one : Tree::run(tree_.substances, node.names)) substance("name", one);
    }
    void operator()(const Form& node) {
        name("name", node.name);
        span("formula", node.formula);
        names("also", node.also);
        quantity("strength", node.strength);
    }
    void operator()(const WordList& node) {
        names("word", node.words);
        name("from", node.source);
    }
    void operator()(const Ions& node) { ions("ion", node.ions); }
    void operator()(const Dissolves& node) {
        quantity("amount", node.quantity);
        form(node.form);
        quantity("in", node.in);
        span("solvent", node.solvent);
        range_at("at", node.at);
        name("from", node.source);
    }
    void operator()(const Property& node) {
        range_at("value", node.value);
        per(node.per);
        form(node.form);
        range_at("at", node.at);
        name("from", node.source);
    }
    void operator()(const Cas& node) { span("number", node.number); }
    void operator()(const Equilibrium& node) {
        ions("left", node.left);
        ions("right", node.right);
        span("formula", node.formula);
        say("pK", text(tree_.numbers[node.pk]));
        number("enthalpy", node.enthalpy);
        number("heat capacity", node.heat_capacity);
        number("give or take", node.give_or_take);
        number("in air", node.in_air);
        name("from", node.source);
    }
    void operator()(const Interaction& node) {
        span("one", node.one);
        span("other", node.other);
        say("value", text(node.value));
        number("give or take", node.give_or_take);
        name("from", node.source);
    }
    void operator()(const Bystanders& node) {
        names("formula", node.formulas);
        name("from", node.source);
    }
    void operator()(const SaltOf& node) { name("acid", node.acid); }
    void operator()(const Reaction& node) {
        terms("left", node.left);
        terms("right", node.right);
    }
    void operator()(const Excess& node) {
        substance("of", node.of);
        say("percent", text(node.percent));
    }
    void operator()(const Vessel& node) { say("times", text(node.times)); }
    void operator()(const Area& node) {
        quantity("area", node.quantity);
        name("from", node.source);
    }
    void operator()(const Meets& node) {
        for (const auto& met : Tree::run(tree_.met, node.any)) {
            if (met.role)
                name("acts as", met.what.name);
            else
                substance("what", met.what);
        }
        quantity("at least", node.at_least);
    }
    void operator()(const PhLimit& node) {
        if (node.above) say("above", "yes");
        say("pH", text(node.ph));
    }
    void operator()(const WarmerThan& node) { quantity("temperature", node.quantity); }
    void operator()(const Accept& node) {
        name("meeting", node.meeting);
        name("because", node.reason);
    }
    void operator()(const Reading& node) {
        name("said", node.said);
        name("because", node.reason);
    }
    void operator()(const Instrument& node) {
        constexpr std::array names = {"balance", "graduate", "syringe", "jug"};
        say("what", names[static_cast<std::size_t>(node.what)]);
        quantity("division", node.division);
        quantity("capacity", node.capacity);
    }
    void operator()(const Dropper& node) {
        say("drops", text(node.drops));
        quantity("per", node.quantity);
        span("liquid", node.liquid);
    }
    void operator()(const Bottles& node) {
        for (const auto& bottle : Tree::run(tree_.bottles, node.items)) {
            if (!bottle.count.span.empty()) say("count", text(bottle.count));
            say("size", text(bottle.size));
        }
    }
    void operator()(const Pace& node) {
        constexpr const char* names[] = {"weigh", "measure", "stir", "filter", "make up", "bottle"};
        say("of", names[static_cast<std::size_t>(node.of)]);
        quantity("time", node.quantity);
    }
    void operator()(const Postage& node) {
        money("charge", node.charge);
        money("none over", node.free_over);
    }
    void operator()(const Step& node) {
        constexpr std::array verbs = {"stir", "wait", "stand", "filter", "cool", "warm", "not above", "do"};
        constexpr std::array ways = {"", "to", "below", "above"};
        say("verb", verbs[static_cast<std::size_t>(node.verb)]);
        say("toward", ways[static_cast<std::size_t>(node.toward)]);
        range_at("range", node.range);
        name("words", node.words);
        details(node.details);
    }
    void operator()(const VesselStep& node) {
        constexpr std::array shares = {"", "half", "third", "quarter", "rest", "quantity"};
        say("share", shares[static_cast<std::size_t>(node.share)]);
        quantity("quantity", node.quantity);
        name("vessel", node.vessel);
        details(node.details);
    }
    void operator()(const Ingredient& node) {
        constexpr std::array hows = {"", "to make", "the rest", "about", "unknown", "shares"};
        substance("what", node.what);
        say("how", hows[static_cast<std::size_t>(node.how)]);
        for (const auto& amount : Tree::run(tree_.ranges, node.quantities)) say("amount", range(amount));
        names("share", node.share_names);
        details(node.details);
        quantity("per", node.per_quantity);
        substance("per", node.per_substance);
    }
    void operator()(const Bare& node) { substance("what", node.what); }
    void operator()(const LogEntry& node) {
        constexpr std::array verbs = {"received", "mixed", "processed", "used", "replenished", "on shelf", "discarded"};
        say("what", verbs[static_cast<std::size_t>(node.what)]);
        date("date", node.date);
        substance("of", node.of);
        quantity("quantity", node.quantity);
        items(node.items);
        if (node.batch != nowhere) date("batch", tree_.dates[node.batch]);
        name("partner", node.in_or_from);
        money("price", node.price);
    }
    void operator()(const PlanEntry& node) {
        date("from", node.from);
        date("to", node.to);
        if (node.weekday >= 0) say("weekday", std::to_string(node.weekday));
        items(node.items);
        name("through", node.process);
    }
    void operator()(const PriceEntry& node) {
        substance("of", node.of);
        quantity("pack", node.pack);
        money("price", node.price);
    }
    void operator()(const ProcessEntry& node) {
        substance("bath", node.bath);
        range_at("time", node.time);
        range_at("at", node.at);
        names("remark", node.remarks);
    }
    void operator()(const CommentOnly&) {}
    void operator()(const Unread& node) { span("keyword", node.keyword); }

  private:
    void say(std::string_view key, std::string_view value) {
        if (!value.empty()) out += "; " + std::string(key) + " = " + std::string(value);
    }
    [[nodiscard]] std::string text(Span span) const { return std::string(source_.at(span)); }
    void ions(std::string_view key, Slice slice) {
        for (const auto& ion : Tree::run(tree_.ions, slice))
            say(key, std::to_string(ion.coefficient) + " " + text(ion.formula));
    }
    void number(std::string_view key, Index number) {
        if (number != nowhere) say(key, text(tree_.numbers[number]));
    }
    void span(std::string_view key, Span span) { say(key, text(span)); }

    [[nodiscard]] std::string text(const Number& number) const {
        if (number.loose()) return "?" + text(number.span);
        const auto top = std::to_string(number.numerator);
        return number.denominator == 1 ? top : top + "/" + std::to_string(number.denominator);
    }
    [[nodiscard]] std::string text(const Quantity& quantity) const {
        const auto unit = quantity.unit == quantity::Unit::none ? "?" + text(quantity.unit_span)
                                                                : std::string(quantity::info(quantity.unit).shown);
        return text(quantity.number) + " " + unit;
    }
    [[nodiscard]] std::string range(const Range& range) const {
        const auto low = text(range.low);
        const auto high = text(range.high);
        return low == high ? low : low + " to " + high;
    }
    void range_at(std::string_view key, Index index) {
        if (index != nowhere) say(key, range(tree_.ranges[index]));
    }
    void quantity(std::string_view key, Index index) {
        if (index != nowhere) say(key, text(tree_.quantities[index]));
    }
    void name(std::string_view key, const Name& name) {
        if (name.quoted) {
            say(key, "\"" + text(name.span) + "\"");
        } else {
            span(key, name.span);
        }
    }
    void names(std::string_view key, Slice slice) {
        for (const auto& one : Tree::run(tree_.names, slice)) name(key, one);
    }
    void date(std::string_view key, const Date& date) {
        say(key, std::to_string(date.year) + "-" + std::to_string(date.month) + "-" + std::to_string(date.day));
    }
    void money(std::string_view key, Index index) {
        if (index == nowhere) return;
        const auto& sum = tree_.sums[index];
        say(key, text(sum.value) + " " + text(sum.currency));
    }

    void form(Index index) {
        if (index == nowhere) return;
        const auto& form = tree_.forms[index];
        names("form", form.words);
        quantity("strength", form.strength);
        span("solvent", form.solvent);
        if (form.saturated) say("saturated", "yes");
        range_at("saturated at", form.saturated_at);
    }
    void substance(std::string_view key, const Substance& substance) {
        name(key, substance.name);
        form(substance.form);
    }
    void terms(std::string_view key, Slice slice) {
        for (const auto& term : Tree::run(tree_.terms, slice)) {
            say(key, std::to_string(term.coefficient));
            substance("of", term.substance);
        }
    }
    void format(Index index) {
        if (index == nowhere) return;
        const auto& format = tree_.formats[index];
        say(format.sheet ? "sheet" : "film", text(format.span));
        if (format.length_unit == 0) return;
        say("size", text(format.width) + " by " + text(format.height) + " " + static_cast<char>(format.length_unit));
    }
    void per(const Per& per) {
        quantity("per", per.quantity);
        format(per.format);
    }
    void item(const Item& item) {
        if (item.format != nowhere) say("count", text(item.count));
        format(item.format);
        quantity("area", item.area);
    }
    void items(Slice slice) {
        for (const auto& one : Tree::run(tree_.items, slice)) item(one);
    }
    void capacity(const CapacityItem& one) {
        constexpr std::array names = {"one-shot", "reused", "volume", "items", "carried", "longer", "source"};
        say("item", names[static_cast<std::size_t>(one.what)]);
        if (one.at_least) say("at least", "yes");
        quantity("volume", one.quantity);
        name("of", one.of);
        if (one.what == CapacityItem::What::items_per) item(one.item);
        per(one.per);
        name("from", one.source);
    }
    void details(Slice slice) {
        constexpr std::array names = {"a pinch now", "now",       "by conversion", "optional",
                                      "at",          "not above", "stirring",      "stirring every",
                                      "slowly",      "until",     "remark",        "unknown"};
        for (const auto& detail : Tree::run(tree_.details, slice)) {
            say("detail", names[static_cast<std::size_t>(detail.what)]);
            quantity("quantity", detail.quantity);
            range_at("range", detail.range);
            name("words", detail.words);
            if (!detail.ph.span.empty()) say("pH", text(detail.ph));
        }
    }

    const Tree& tree_;
    const text::Source& source_;
};

}  // namespace

std::string describe(const Statement& statement, const Tree& tree, const text::Source& source) {
    Describer describer(tree, source);
    std::visit(describer, statement.node);
    return kind_of(statement, tree) + describer.out;
}

}  // namespace scruple::syntax
