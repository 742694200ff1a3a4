// SPDX-License-Identifier: MIT
#include "cells.hpp"

#include <algorithm>
#include <string_view>

#include "fold.hpp"

namespace scruple::emit {
namespace {

using syntax::Tree;
using text::Span;

std::uint32_t end_of(const syntax::Name& name) {
    return name.span.end + (name.quoted ? 1 : 0);
}

std::uint32_t end_of(const Tree& tree, const syntax::Substance& substance) {
    return substance.form == syntax::nowhere ? end_of(substance.name) : tree.forms[substance.form].span.end;
}

std::uint32_t past_blanks(std::string_view text, std::uint32_t at) {
    while (at < text.size()) {
        if (text[at] == ' ' || text[at] == '\t')
            ++at;
        else if (text.substr(at).starts_with(no_break_blank))
            at += static_cast<std::uint32_t>(no_break_blank.size());
        else
            break;
    }
    return at;
}

std::uint32_t past_word(std::string_view text, std::uint32_t at) {
    while (at < text.size() && past_blanks(text, at) == at) ++at;
    return at;
}

/// Takes cells off the front of a statement.
class Cutter {
  public:
    Cutter(const text::Source& source, Span whole) : source_(source), rest_(whole) {}

    /// Up to `end`, where it lies within what is left.
    Cutter& to(std::uint32_t end) {
        if (end <= rest_.begin || end >= rest_.end) return *this;
        cells_.push_back({rest_.begin, trimmed(end)});
        rest_.begin += past_blanks(source_.at(rest_), end - rest_.begin);
        return *this;
    }
    Cutter& words(int count) {
        const std::string_view text = source_.at(rest_);
        std::uint32_t at = 0;
        for (int i = 0; i < count; ++i) at = past_word(text, past_blanks(text, at));
        return to(rest_.begin + at);
    }
    Row rest(Shape shape) {
        cells_.push_back(rest_);
        return {shape, std::move(cells_)};
    }

  private:
    [[nodiscard]] std::uint32_t trimmed(std::uint32_t end) const {
        std::uint32_t last = rest_.begin;
        for (std::uint32_t at = last; at < end;) {
            at = rest_.begin + past_word(source_.at(rest_), at - rest_.begin);
            last = std::min(at, end);
            at = rest_.begin + past_blanks(source_.at(rest_), at - rest_.begin);
        }
        return last;
    }

    const text::Source& source_;
    Span rest_;
    std::vector<Span> cells_;
};

/// How many words name a fact, by what it says.
int keyword_words(const syntax::Words& fact) {
    return fact.of == syntax::Words::Of::is_a ? 2 : 1;
}
int keyword_words(const syntax::WordList& fact) {
    return fact.of == syntax::WordList::Of::acts_as ? 2 : 1;
}
int keyword_words(const syntax::Property& fact) {
    return fact.of == syntax::Property::Of::takes_up ? 2 : 1;
}
int keyword_words(const syntax::UseWithin&) {
    return 2;
}
int keyword_words(const syntax::Equilibrium& fact) {
    return fact.of == syntax::Equilibrium::Of::equilibrium ? 2 : 1;
}
int keyword_words(const syntax::SaltOf&) {
    return 2;
}
int keyword_words(const syntax::Meets&) {
    return 2;
}
int keyword_words(const syntax::PhLimit&) {
    return 2;
}
int keyword_words(const syntax::WarmerThan&) {
    return 2;
}
template <class Fact>
int keyword_words(const Fact&) {
    return 1;
}

/// Facts are cut after their keyword.
struct Cut {
    const Tree& tree;
    Cutter& cutter;

    Row operator()(const syntax::Words& fact) const {
        if (fact.of == syntax::Words::Of::printed_line) return cutter.rest(Shape::as_it_stands);
        return cutter.words(keyword_words(fact)).rest(Shape::fact);
    }
    Row operator()(const syntax::Reading&) const { return cutter.rest(Shape::line); }
    template <class Fact>
    Row operator()(const Fact& fact) const {
        return cutter.words(keyword_words(fact)).rest(Shape::fact);
    }
    Row operator()(const syntax::Heading& heading) const {
        return cutter.rest(heading.bad ? Shape::as_it_stands : Shape::heading);
    }
    Row operator()(const syntax::Form& form) const { return cutter.words(1).to(end_of(form.name)).rest(Shape::form); }
    Row operator()(const syntax::Ingredient& it) const {
        const bool to_make = it.how == syntax::Ingredient::How::to_make && it.quantities.count > 0;
        const std::uint32_t name_end =
            to_make ? tree.ranges[it.quantities.first].low.number.span.begin : end_of(tree, it.what);
        return cutter.to(name_end).rest(Shape::ingredient);
    }
    Row operator()(const syntax::PriceEntry& it) const {
        return cutter.to(end_of(tree, it.of)).to(tree.quantities[it.pack].span().end).rest(Shape::price);
    }
    Row operator()(const syntax::ProcessEntry& it) const {
        return cutter.to(end_of(tree, it.bath)).rest(Shape::process);
    }
    Row operator()(const syntax::LogEntry& it) const {
        const int words = it.what == syntax::LogEntry::What::on_shelf ? 2 : 1;
        return cutter.to(it.date.span.end).words(words).rest(Shape::log);
    }
    Row operator()(const syntax::PlanEntry& it) const {
        if (it.items.count == 0) return cutter.rest(Shape::line);
        const syntax::Item& first = tree.items[it.items.first];
        const bool area = first.area != syntax::nowhere;
        const Span begins = area ? tree.quantities[first.area].span() : first.count.span;
        return cutter.to(begins.begin).rest(Shape::plan);
    }
    Row operator()(const syntax::Mix&) const { return cutter.rest(Shape::line); }
    Row operator()(const syntax::Expect&) const { return cutter.rest(Shape::line); }
    Row operator()(const syntax::Step&) const { return cutter.rest(Shape::line); }
    Row operator()(const syntax::VesselStep&) const { return cutter.rest(Shape::line); }
    Row operator()(const syntax::Bare&) const { return cutter.rest(Shape::line); }
    Row operator()(const syntax::CommentOnly&) const { return {Shape::line, {}}; }
    Row operator()(const syntax::Unread&) const { return cutter.rest(Shape::as_it_stands); }
};

}  // namespace

Row row_of(const text::Source& source, const Tree& tree, const syntax::Statement& statement) {
    Cutter cutter(source, statement.span);
    return std::visit(Cut{tree, cutter}, statement.node);
}

}  // namespace scruple::emit
