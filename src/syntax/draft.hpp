// SPDX-License-Identifier: MIT
// The statement that is being read: the last piece of each sort, and what of it stands in the tree already.
#pragma once

#include <type_traits>

#include "scruple/syntax/tree.hpp"

namespace scruple::syntax {

/// What a statement gathers as it is read; forgotten when a reading of it fails.
struct Gathered {
    Slice list;  ///< what the statement is a list of: items, terms, substances, parts …
    Slice left_terms, names, ranges, details, ph_bounds;
    Index batch = nowhere, at = nowhere, range = nowhere, strength = nowhere, per_quantity = nowhere, at_most = nowhere,
          met_least = nowhere, price = nowhere, free_over = nowhere;
    Index enthalpy = nowhere, heat_capacity = nowhere, give_or_take = nowhere, in_air = nowhere;
    Per per, first_per;
    Number bottle_count;
    Name source, partner, volume_of, because, said;
    Span when, colon_ratio;
    Substance per_substance;
    std::int32_t coefficient = 1;
    std::int8_t weekday = -1;
    VesselStep::Share share = VesselStep::Share::all;
    Step::Toward toward = Step::Toward::none;
    bool at_least = false;
};
inline constexpr Gathered nothing_gathered;

/// The last piece of each sort that was read. A piece is written whole, so one of a failed reading does no harm.
struct Pieces {
    Name name, text;
    Index form = nowhere;  ///< of the name; nowhere again at each name
    Substance substance, of;
    FormGiven given;
    Number number, count, width, pk, epsilon;
    Span unit, currency, formula, first_ion, liquid, keyword, solvent, size;
    Quantity quantity, first, second, strength;
    Range range, value;
    FilmFormat format;
    Item item;
    Money money, charge;
    Date date, first_date;
    Detail detail{};
    LogEntry entry{};
    Pace::Of pace{};
    Name form_name, vessel;
    Block block{};
    Step::Verb verb{};
    VesselStep::Share share{};
    Ingredient::How how{};
    bool saturated_at = false, sheet = false;
    std::uint8_t length_unit = 0;
};

class Draft {
  public:
    Draft(Tree& tree, const char* base) : tree_(tree), base_(base) {}

    Pieces last;

    [[nodiscard]] const Gathered& gathered() const { return gathered_; }
    [[nodiscard]] Gathered& gather() {
        touched_ = true;
        return gathered_;
    }

    template <class Input>
    [[nodiscard]] Span span(const Input& in) const {
        return {offset(in.begin()), offset(in.end())};
    }

    /// Puts a value into one of the tree's arrays until `undo` takes it back.
    template <auto Array>
    Index add(const auto& value) {
        auto& array = tree_.*Array;
        if (array.size() == array.capacity()) array.reserve(2 * array.size() + 6);
        array.push_back(value);
        added_.push_back([](Tree& tree) { (tree.*Array).pop_back(); });
        return static_cast<Index>(array.size() - 1);
    }

    /// The same for the next element of one of the runs that are gathered.
    template <auto Array>
    void append(Slice& run, const auto& value) {
        const auto index = add<Array>(value);
        if (run.count++ == 0) run.first = index;
    }

    [[nodiscard]] std::size_t mark() const { return added_.size(); }

    /// Takes back what was added since the mark, and forgets what was gathered.
    void undo(std::size_t mark) {
        for (; added_.size() > mark; added_.pop_back()) added_.back()(tree_);
        forget();
    }

    template <class Kind>
    void commit(const Kind& node) {
        if constexpr (std::is_same_v<Kind, Heading>)
            tree_.headings.push_back(static_cast<Index>(tree_.statements.size()));
        tree_.statements.push_back({Span{}, Span{}, node, blank_before_});
        added_.clear();
        last.form = nowhere;
        blank_before_ = false;
        forget();
    }

    void place_statement(Span span) {
        tree_.statements.back().span = span;
        line_holds_ = true;
    }

    void place_comment(Span span) {
        if (!line_holds_) {
            commit(CommentOnly{});
            place_statement({span.begin, span.begin});
        }
        tree_.statements.back().comment = span;
    }

    void end_line() {
        blank_before_ = blank_before_ || !line_holds_;
        line_holds_ = false;
    }

  private:
    void forget() {
        if (!touched_) return;
        gathered_ = nothing_gathered;
        touched_ = false;
    }
    [[nodiscard]] std::uint32_t offset(const char* place) const { return static_cast<std::uint32_t>(place - base_); }

    Tree& tree_;
    const char* base_;
    std::vector<void (*)(Tree&)> added_;
    Gathered gathered_;
    bool touched_ = false;
    bool blank_before_ = false;
    bool line_holds_ = false;
};

}  // namespace scruple::syntax
