// SPDX-License-Identifier: MIT
// `conversion` blocks: a reaction that must balance, and the lines by which it is done.
#include <algorithm>

#include "lines.hpp"
#include "passes.hpp"
#include "scruple/check/balance.hpp"
#include "scruple/check/making.hpp"

namespace scruple::check {
namespace {

using diagnostics::Kind;
using quantity::Dimension;

class ConversionReader {
  public:
    ConversionReader(BlockContext context, Conversion& conversion, Section& section)
        : reader_(context.reader),
          block_(context.block),
          conversion_(conversion),
          section_(section),
          lines_(reader_, section, none) {}

    void run() {
        read_product();
        each_of_reaction();
        each_statement(reader_, block_, [this](const auto& node) { return take(node); });
        lines_.finish();
        judge();
    }

  private:
    void read_product() {
        reader_.statement = block_.heading;
        const auto& heading = std::get<syntax::Heading>(reader_.tree.statements[block_.heading].node);
        if (heading.bad) return;
        const auto product = resolve_chemical(reader_, heading.title, FormNeed::pure);
        if (!product) return;
        conversion_.product = product->chemical;
        conversion_.product_form = product->form;
    }

    /// The reaction is read first, so that the lines can ask what takes part in it.
    void each_of_reaction() {
        for (std::uint32_t i = block_.begin; i < block_.end; ++i) {
            const auto* reaction = std::get_if<syntax::Reaction>(&reader_.tree.statements[i].node);
            if (reaction == nullptr) continue;
            reader_.statement = i;
            if (has_reaction_) reader_.report(Kind::said_twice, reader_.statement_span(), {"reaction"});
            has_reaction_ = true;
            reaction_span_ = reader_.statement_span();
            whole_ = read_side(reaction->left, conversion_.left);
            whole_ = read_side(reaction->right, conversion_.right) && whole_;
        }
    }

    bool read_side(syntax::Slice terms, std::vector<Conversion::Side>& side) {
        bool whole = true;
        for (const auto& term : syntax::Tree::run(reader_.tree.terms, terms)) {
            if (const auto what = resolve_chemical(reader_, term.substance, FormNeed::pure)) {
                side.push_back({term.coefficient, what->chemical, what->form});
            } else {
                whole = false;
            }
        }
        return whole;
    }

    bool take(const syntax::Reaction&) { return true; }
    bool take(const syntax::Words& words) {
        const auto text = reader_.text(words.text);
        switch (words.of) {
            case syntax::Words::Of::caution:
                conversion_.cautions.push_back(text);
                return true;
            case syntax::Words::Of::note:
                conversion_.notes.push_back(text);
                return true;
            case syntax::Words::Of::source:
                conversion_.sources.push_back(text);
                return true;
            case syntax::Words::Of::is_a:
            case syntax::Words::Of::strength:
            case syntax::Words::Of::lethal:
            case syntax::Words::Of::harmful:
            case syntax::Words::Of::assumed:
            case syntax::Words::Of::book:
            case syntax::Words::Of::printed_line:
                return false;
        }
        return false;
    }
    bool take(const syntax::Excess& line) {
        const auto of = resolve_chemical(reader_, line.of, FormNeed::free);
        const auto percent = read_positive(reader_, line.percent);
        if (!of || !percent) return true;
        if (!reacts(of->chemical))
            reader_.report(Kind::not_in_the_reaction, reader_.statement_span(), {reader_.text(line.of.name)});
        conversion_.excess_of = of->chemical;
        conversion_.excess_percent = *percent;
        return true;
    }
    bool take(const syntax::Vessel& line) {
        conversion_.vessel_times = read_positive(reader_, line.times);
        return true;
    }
    bool take(const syntax::Bare& line) {
        const auto what = resolve_chemical(reader_, line.what, FormNeed::free);
        if (!what) return true;
        if (!reacts(what->chemical)) {
            reader_.report(Kind::not_in_the_reaction, reader_.statement_span(), {reader_.text(line.what.name)});
            return true;
        }
        Addition addition{.chemical = what->chemical,
                          .form = form_in_reaction(*what),
                          .place = reader_.place(reader_.statement_span())};
        section_.lines.emplace_back(std::move(addition));
        return true;
    }
    bool take(const syntax::Ingredient& line) {
        const auto before = section_.lines.size();
        lines_.take(line);
        if (section_.lines.size() > before && line.per_quantity != syntax::nowhere)
            read_per_gram(line, static_cast<std::uint32_t>(before));
        return true;
    }
    bool take(const syntax::Step& line) {
        lines_.take(line);
        return true;
    }
    bool take(const syntax::VesselStep& line) {
        lines_.take(line);
        return true;
    }
    bool take(const auto&) { return false; }

    void read_per_gram(const syntax::Ingredient& line, std::uint32_t index) {
        const auto grams = read_positive(reader_, reader_.tree.quantities[line.per_quantity], Dimension::mass);
        const auto of = resolve_chemical(reader_, line.per_substance, FormNeed::free);
        if (grams && of) conversion_.per.push_back({index, *grams, of->chemical, form_in_reaction(*of)});
    }

    [[nodiscard]] bool reacts(Id chemical) const {
        return !has_reaction_ || !whole_ || std::ranges::any_of(conversion_.left, [&](const Conversion::Side& side) {
            return side.chemical == chemical;
        });
    }

    [[nodiscard]] Id form_in_reaction(const Resolved& what) const {
        if (what.form != none) return what.form;
        const auto same = std::ranges::find_if(
            conversion_.left, [&](const Conversion::Side& side) { return side.chemical == what.chemical; });
        return same == conversion_.left.end() ? none : same->form;
    }

    // ---- the block as a whole ----

    void judge() {
        const auto heading = reader_.tree.statements[block_.heading].span;
        if (!has_reaction_) {
            reader_.report(Kind::block_incomplete, heading,
                           {"the conversion", "its reaction", "`reaction   A + 2 B -> C + 3 water`"});
            return;
        }
        if (!whole_) return;
        judge_balance();
        if (conversion_.product == none) return;
        const auto is_product = [&](const Conversion::Side& side) {
            return side.chemical == conversion_.product && side.form == conversion_.product_form;
        };
        if (std::ranges::any_of(conversion_.right, is_product)) return;
        reader_.report(Kind::product_not_made, heading,
                       {shown_name(reader_.model.chemicals[conversion_.product], conversion_.product_form)});
    }

    [[nodiscard]] std::vector<chemistry::Term> terms(const std::vector<Conversion::Side>& sides) const {
        std::vector<chemistry::Term> terms;
        for (const auto& side : sides) {
            const auto& forms = reader_.model.chemicals[side.chemical].forms;
            if (side.form < forms.size()) terms.push_back({side.coefficient, forms[side.form].formula});
        }
        return terms;
    }

    [[nodiscard]] std::vector<Reactant> reactants(const std::vector<Conversion::Side>& sides) const {
        std::vector<Reactant> reactants;
        for (const auto& side : sides) {
            const auto& chemical = reader_.model.chemicals[side.chemical];
            if (side.form < chemical.forms.size())
                reactants.push_back({shown_name(chemical, side.form), chemical.forms[side.form].formula});
        }
        return reactants;
    }

    void judge_balance() {
        const auto off = chemistry::imbalance(terms(conversion_.left), terms(conversion_.right));
        if (off.balanced()) return;
        const Reactants reactants{this->reactants(conversion_.left), this->reactants(conversion_.right)};
        reader_.report(Kind::does_not_balance, reaction_span_, {imbalance_words(off), balance_offer(reactants)});
    }

    Reader& reader_;
    const Block& block_;
    Conversion& conversion_;
    Section& section_;
    LineReader lines_;
    bool has_reaction_ = false;
    bool whole_ = true;  ///< every substance of the reaction is known
    text::Span reaction_span_;
};

}  // namespace

bool is_worked(const Model& model, const Conversion& conversion) {
    return conversion.section != none &&
           std::ranges::any_of(model.sections[conversion.section].lines,
                               [](const Line& line) { return std::holds_alternative<Addition>(line); });
}

void read_conversion(BlockContext context, Conversion& conversion, Section& section) {
    ConversionReader(context, conversion, section).run();
}

namespace {

/// What the conversions of a product are made from, for a line that names something else.
std::string ways_to_write(const Model& model, Id product) {
    std::string write;
    for (const Conversion& conversion : model.conversions) {
        if (conversion.product != product || !is_worked(model, conversion) || conversion.left.empty()) continue;
        const std::string_view from = model.chemicals[conversion.left.front().chemical].name;
        const std::string choice = "`by conversion from " + std::string(from) + "`";
        if (write.find(choice) == std::string::npos) write += (write.empty() ? "" : " or ") + choice;
    }
    return write;
}

void judge_conversion(Reader& reader, const Addition& addition) {
    const Model& model = reader.model;
    if (conversion_for(model, addition) != nullptr) return;
    const auto name = shown_name(model.chemicals[addition.chemical], addition.form);
    if (const auto ways = ways_to_write(model, addition.chemical); !ways.empty())
        reader.report(Kind::not_made_from, addition.place.span, {name, model.chemicals[addition.made_from].name, ways});
    else
        reader.report(Kind::no_conversion, addition.place.span, {name});
}

}  // namespace

void judge_conversions(Reader& reader, Id section) {
    for (const auto& line : reader.model.sections[section].lines) {
        const auto* addition = std::get_if<Addition>(&line);
        if (addition == nullptr || !addition->by_conversion) continue;
        if (addition->solution != none)
            reader.report(Kind::no_conversion, addition->place.span, {shown_name(reader.model, addition->solution)});
        else if (addition->chemical != none)
            judge_conversion(reader, *addition);
    }
}

}  // namespace scruple::check
