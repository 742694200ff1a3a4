// SPDX-License-Identifier: MIT
#include "tree_text.hpp"

using namespace scruple;
using namespace scruple::syntax;

namespace {

std::string with_single_blanks(std::string_view text) {
    std::string result;
    while (!text.empty()) {
        const bool no_break = text.starts_with("\u00A0");
        const bool blank = no_break || text.front() == ' ' || text.front() == '\t';
        if (!blank) result += text.front();
        if (blank && !result.ends_with(' ')) result += ' ';
        text.remove_prefix(no_break ? 2 : 1);
    }
    return result;
}

/// Writes every field of every kind of node, references followed.
class Teller {
  public:
    Teller(const text::Source& source, const Tree& tree) : source_(source), tree_(tree) {}

    std::string text() {
        for (const Statement& it : tree_.statements) {
            put(it.node.index());
            std::visit([this](const auto& node) { tell(node); }, it.node);
            put(it.comment);
            out_ += '\n';
        }
        return std::move(out_);
    }

  private:
    template <class... Parts>
    void tell_all(const Parts&... parts) {
        (put(parts), ...);
    }
    template <class T>
    void at(const std::vector<T>& all, Index index) {
        if (index == nowhere)
            out_ += "-|";
        else
            put(all[index]);
    }
    template <class T>
    void run(const std::vector<T>& all, Slice slice) {
        put(slice.count);
        for (const T& one : Tree::run(all, slice)) put(one);
    }
    template <class T>
    requires std::is_integral_v<T>
    void put(T number) { out_ += std::to_string(number) + '|'; }
    template <class T>
    requires std::is_enum_v<T>
    void put(T value) { put(static_cast<int>(value)); }

    void put(Span span) { out_ += with_single_blanks(source_.at(span)) + '|'; }
    void put(const Name& it) {
        out_ +=
            it.quoted ? '"' + std::string(source_.at(it.span)) + "\"|" : with_single_blanks(source_.at(it.span)) + '|';
    }
    void put(const Number& it) {
        if (it.loose())
            put(it.span);
        else
            out_ += it.value().ratio_text() + '|';
    }
    void put(const Quantity& it) { tell_all(it.number, it.unit, it.unit_span); }
    void put(const Range& it) { tell_all(it.low, it.high); }
    void put(const FormGiven& it) {
        run(tree_.names, it.words);
        at(tree_.quantities, it.strength);
        tell_all(it.solvent, it.saturated);
        at(tree_.ranges, it.saturated_at);
    }
    void put(const Substance& it) {
        put(it.name);
        at(tree_.forms, it.form);
    }
    void put(const FilmFormat& it) { tell_all(it.span, it.width, it.height, it.length_unit, it.sheet); }
    void put(const Item& it) {
        put(it.count);
        at(tree_.formats, it.format);
        at(tree_.quantities, it.area);
    }
    void put(const Per& it) {
        at(tree_.formats, it.format);
        at(tree_.quantities, it.quantity);
    }
    void put(const Money& it) { tell_all(it.value, it.currency); }
    void put(const Date& it) { tell_all(it.year, it.month, it.day); }
    void put(const Keeping& it) { tell_all(it.time, it.when); }
    void put(const Bottle& it) { tell_all(it.count, it.size); }
    void put(const CapacityItem& it) {
        tell_all(it.what, it.at_least);
        at(tree_.quantities, it.quantity);
        tell_all(it.of, it.item, it.per, it.source);
    }
    void put(const Ion& it) { tell_all(it.coefficient, it.formula); }
    void put(const Term& it) { tell_all(it.coefficient, it.substance); }
    void put(const Detail& it) {
        tell_all(it.what, it.span, it.words, it.ph);
        at(tree_.quantities, it.quantity);
        at(tree_.ranges, it.range);
    }

    void tell(const Heading& it) { tell_all(it.block, it.bad, it.title); }
    void tell(const Words& it) { tell_all(it.of, it.text); }
    void tell(const Keeps& it) {
        run(tree_.keepings, it.items);
        put(it.source);
    }
    void tell(const UseWithin& it) { at(tree_.quantities, it.quantity); }
    void tell(const Capacity& it) { run(tree_.capacity_items, it.items); }
    void tell(const Variants& it) { run(tree_.names, it.names); }
    void tell(const Mix& it) {
        put(it.dilute);
        run(tree_.names, it.what);
        run(tree_.numbers, it.parts);
        put(it.colon_ratio);
    }
    void tell(const Replenish& it) {
        at(tree_.quantities, it.quantity);
        put(it.per);
        at(tree_.quantities, it.at_most);
        put(it.at_most_per);
    }
    void tell(const Expect& it) {
        put(it.ph);
        run(tree_.numbers, it.ph_bounds);
        put(it.of);
        at(tree_.ranges, it.range);
    }
    void tell(const Also& it) { run(tree_.substances, it.names); }
    void tell(const Form& it) {
        tell_all(it.name, it.formula);
        run(tree_.names, it.also);
        at(tree_.quantities, it.strength);
    }
    void tell(const WordList& it) {
        put(it.of);
        run(tree_.names, it.words);
        put(it.source);
    }
    void tell(const Ions& it) { run(tree_.ions, it.ions); }
    void tell(const Dissolves& it) {
        at(tree_.quantities, it.quantity);
        at(tree_.forms, it.form);
        at(tree_.quantities, it.in);
        put(it.solvent);
        at(tree_.ranges, it.at);
        put(it.source);
    }
    void tell(const Property& it) {
        put(it.of);
        at(tree_.ranges, it.value);
        put(it.per);
        at(tree_.forms, it.form);
        at(tree_.ranges, it.at);
        put(it.source);
    }
    void tell(const Cas& it) { put(it.number); }
    void tell(const Equilibrium& it) {
        tell_all(it.of, it.formula);
        at(tree_.numbers, it.pk);
        run(tree_.ions, it.left);
        run(tree_.ions, it.right);
        for (const Index number : {it.enthalpy, it.heat_capacity, it.give_or_take, it.in_air})
            at(tree_.numbers, number);
        put(it.source);
    }
    void tell(const Interaction& it) {
        tell_all(it.one, it.other, it.value);
        at(tree_.numbers, it.give_or_take);
        put(it.source);
    }
    void tell(const Bystanders& it) {
        run(tree_.names, it.formulas);
        put(it.source);
    }
    void tell(const SaltOf& it) { put(it.acid); }
    void tell(const Reaction& it) {
        run(tree_.terms, it.left);
        run(tree_.terms, it.right);
    }
    void tell(const Excess& it) { tell_all(it.of, it.percent); }
    void tell(const Vessel& it) { put(it.times); }
    void tell(const Area& it) {
        at(tree_.quantities, it.quantity);
        put(it.source);
    }
    void put(const Met& it) { tell_all(it.role, it.what); }
    void tell(const Meets& it) {
        put(it.of);
        run(tree_.met, it.any);
        at(tree_.quantities, it.at_least);
    }
    void tell(const PhLimit& it) { tell_all(it.above, it.ph); }
    void tell(const WarmerThan& it) { at(tree_.quantities, it.quantity); }
    void tell(const Accept& it) { tell_all(it.meeting, it.reason); }
    void tell(const Reading& it) { tell_all(it.said, it.reason); }
    void tell(const Instrument& it) {
        put(it.what);
        at(tree_.quantities, it.division);
        at(tree_.quantities, it.capacity);
    }
    void tell(const Dropper& it) {
        put(it.drops);
        at(tree_.quantities, it.quantity);
        put(it.liquid);
    }
    void tell(const Pace& it) {
        put(it.of);
        at(tree_.quantities, it.quantity);
    }
    void tell(const Bottles& it) { run(tree_.bottles, it.items); }
    void tell(const Postage& it) {
        at(tree_.sums, it.charge);
        at(tree_.sums, it.free_over);
    }
    void tell(const Step& it) {
        tell_all(it.verb, it.toward, it.words);
        at(tree_.ranges, it.range);
        run(tree_.details, it.details);
    }
    void tell(const VesselStep& it) {
        tell_all(it.what, it.share, it.vessel);
        at(tree_.quantities, it.quantity);
        run(tree_.details, it.details);
    }
    void tell(const Ingredient& it) {
        tell_all(it.how, it.what, it.per_substance);
        run(tree_.ranges, it.quantities);
        run(tree_.names, it.share_names);
        run(tree_.details, it.details);
        at(tree_.quantities, it.per_quantity);
    }
    void tell(const Bare& it) { put(it.what); }
    void tell(const LogEntry& it) {
        tell_all(it.what, it.date, it.of);
        at(tree_.quantities, it.quantity);
        run(tree_.items, it.items);
        at(tree_.dates, it.batch);
        put(it.in_or_from);
        at(tree_.sums, it.price);
    }
    void tell(const PlanEntry& it) {
        tell_all(it.from, it.to, it.weekday);
        run(tree_.items, it.items);
        put(it.process);
    }
    void tell(const PriceEntry& it) {
        put(it.of);
        at(tree_.quantities, it.pack);
        at(tree_.sums, it.price);
    }
    void tell(const ProcessEntry& it) {
        put(it.bath);
        at(tree_.ranges, it.time);
        at(tree_.ranges, it.at);
        run(tree_.names, it.remarks);
    }
    void tell(const CommentOnly&) {}
    void tell(const Unread& it) { put(it.keyword); }

    const text::Source& source_;
    const Tree& tree_;
    std::string out_;
};

}  // namespace

std::string tree_text(const text::Source& source, const Tree& tree) {
    return Teller(source, tree).text();
}
