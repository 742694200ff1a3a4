// SPDX-License-Identifier: MIT
// `chemical` and `format` blocks: what a chemical is, from recipe text.
#include <algorithm>

#include "formulas.hpp"
#include "in_water.hpp"
#include "passes.hpp"
#include "purposes.hpp"
#include "scruple/check/contents.hpp"
#include "scruple/check/solubility.hpp"

namespace scruple::check {
namespace {

using diagnostics::Kind;
using quantity::Dimension;

/// Reads the lines of one `chemical` block. Forms come first, so that the other lines can name them.
class ChemicalReader {
  public:
    ChemicalReader(BlockContext context, Chemical& chemical)
        : reader_(context.reader), block_(context.block), chemical_(chemical) {}

    void run() {
        each([this](const syntax::Form& form) { read_form(form); });
        each_statement(reader_, block_, [this](const auto& node) { return take(node); });
        for (auto& form : chemical_.forms) form.room_per_gram = room_of_gram(chemical_, form);
        chemical_.purposes = purposes_of(chemical_);
        judge();
    }

  private:
    template <class F>
    void each(F read) {
        for (std::uint32_t i = block_.begin; i < block_.end; ++i) {
            reader_.statement = i;
            if (const auto* form = std::get_if<syntax::Form>(&reader_.tree.statements[i].node)) read(*form);
        }
    }

    /// By weight: the density that would make it so from a volume is said on a line of its own, or not at all.
    std::optional<Strength> read_sold_as(const syntax::Quantity& written) {
        auto strength = read_strength(reader_, written);
        if (!strength || strength->unit == quantity::Unit::percent_w_w) return strength;
        reader_.report(Kind::wrong_kind_of_unit, written.span(),
                       {reader_.text(written.span()), "what a volume holds", "what 100 g hold (% w/w)"});
        return std::nullopt;
    }

    void read_form(const syntax::Form& form) {
        const auto formula = read_formula(reader_, form.formula);
        if (!formula) return;
        Form made{.name = reader_.text(form.name),
                  .also = {},
                  .formula_text = reader_.text(form.formula),
                  .formula = *formula,
                  .molar_mass = chemistry::molar_mass(*formula),
                  .sold_as = {},
                  .place = reader_.place(form.formula),
                  .called = {reader_.normal(reader_.text(form.name))},
                  .room_per_gram = {},
                  .molar_mass_off = chemistry::molar_mass_off(*formula),
                  .mol_per_gram = 0};
        for (const auto& name : syntax::Tree::run(reader_.tree.names, form.also)) {
            made.also.push_back(reader_.text(name));
            made.called.push_back(reader_.normal(made.also.back()));
        }
        if (form.strength != syntax::nowhere) made.sold_as = read_sold_as(reader_.tree.quantities[form.strength]);
        if (made.molar_mass > 0) made.mol_per_gram = (purity(made) / made.molar_mass).to_double();
        for (const auto& other : chemical_.forms) {
            if (other.name == made.name) reader_.report(Kind::said_twice, form.name.span, {made.name});
        }
        chemical_.forms.push_back(std::move(made));
    }

    // ---- one overload a kind of line; true where it belongs here ----

    bool take(const syntax::Form&) { return true; }
    bool take(const syntax::Also&) { return true; }
    bool take(const syntax::Keeps& line) {
        for (const auto& item : syntax::Tree::run(reader_.tree.keepings, line.items)) {
            const auto seconds = read_duration(reader_, item.time);
            const text::Span span{item.time.low.number.span.begin, item.time.high.span().end};
            if (!item.when.empty())
                reader_.report(Kind::jar_keeps_one_time, item.when, {reader_.text(item.when), reader_.text(span)});
            else if (chemical_.keeps)
                reader_.report(Kind::said_twice, span, {"keeps"});
            else if (seconds)
                chemical_.keeps = Keeping{*seconds, reader_.text(span), {}};
        }
        return true;
    }
    bool take(const syntax::Words& words) {
        const auto text = reader_.text(words.text);
        switch (words.of) {
            case syntax::Words::Of::caution:
                chemical_.cautions.push_back(text);
                return true;
            case syntax::Words::Of::note:
                chemical_.notes.push_back(text);
                return true;
            case syntax::Words::Of::source:
                chemical_.sources.push_back(text);
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
    bool take(const syntax::WordList& list) {
        for (const auto& word : syntax::Tree::run(reader_.tree.names, list.words)) {
            const auto text = reader_.text(word);
            switch (list.of) {
                case syntax::WordList::Of::grade:
                    chemical_.grades.push_back(text);
                    break;
                case syntax::WordList::Of::acts_as:
                    chemical_.acts_as.push_back(text);
                    break;
                case syntax::WordList::Of::hazard:
                    take_hazard(word, text);
                    break;
            }
        }
        if (list.of == syntax::WordList::Of::hazard) chemical_.hazard_source = reader_.text(list.source);
        return true;
    }
    bool take(const syntax::Ions& ions) {
        for (const auto& ion : syntax::Tree::run(reader_.tree.ions, ions.ions)) {
            if (auto formula = read_formula(reader_, ion.formula)) {
                chemical_.ions.push_back({ion.coefficient, reader_.text(ion.formula), std::move(*formula)});
            } else {
                ions_broken_ = true;
            }
        }
        ions_span_ = reader_.statement_span();
        return true;
    }
    bool take(const syntax::Equilibrium& line) {
        if (line.of == syntax::Equilibrium::Of::gas)
            read_escape(reader_, line, chemical_);
        else
            read_equilibrium(reader_, line, chemical_);
        return true;
    }
    bool take(const syntax::Interaction& line) {
        read_pair(reader_, line, chemical_);
        return true;
    }
    bool take(const syntax::Bystanders& line) {
        read_bystanders(reader_, line, chemical_);
        return true;
    }
    bool take(const syntax::SaltOf&) { return true; }  // read with the other names, when all are known
    bool take(const syntax::Dissolves& line) {
        const auto grams = read_positive(reader_, reader_.tree.quantities[line.quantity], Dimension::mass);
        const auto in = read_positive(reader_, reader_.tree.quantities[line.in], Dimension::mass);
        const auto at = read_at(line.at);
        const Id form = read_form_of(line.form).first;
        if (grams && in) {
            chemical_.solubilities.push_back({.grams = *grams,
                                              .form = form,
                                              .in_grams = *in,
                                              .solvent = reader_.text(line.solvent),
                                              .at = at,
                                              .source = reader_.text(line.source),
                                              .solvent_place = reader_.place(line.solvent)});
        }
        return true;
    }
    bool take(const syntax::Property& line) {
        const auto& range = reader_.tree.ranges[line.value];
        if (line.of == syntax::Property::Of::takes_up) {
            take_room(line, range.low);
            return true;
        }
        const auto value = read_positive(reader_, range.low, Dimension::density);
        const auto [form, strength] = read_form_of(line.form);
        const auto at = read_at(line.at);
        if (value) chemical_.densities.push_back({*value, form, strength, at, reader_.text(line.source)});
        return true;
    }
    bool take(const syntax::Cas& cas) {
        if (!chemical_.cas.empty()) reader_.report(Kind::said_twice, reader_.statement_span(), {"cas"});
        chemical_.cas = reader_.text(cas.number);
        if (!check_digit_fits(chemical_.cas)) reader_.report(Kind::cas_check_digit, cas.number, {chemical_.cas});
        return true;
    }
    bool take(const auto&) { return false; }

    // ---- parts of lines ----

    std::optional<Interval> read_at(syntax::Index at) {
        if (at == syntax::nowhere) return std::nullopt;
        return read_interval(reader_, reader_.tree.ranges[at], Dimension::temperature);
    }

    /// `(anhydrous)` or `(60 % w/w)` after a figure of this chemical.
    std::pair<Id, std::optional<Strength>> read_form_of(syntax::Index form) {
        if (form == syntax::nowhere) return {none, std::nullopt};
        const auto& given = reader_.tree.forms[form];
        Id id = none;
        for (const auto& word : syntax::Tree::run(reader_.tree.names, given.words)) {
            for (Id i = 0; i < chemical_.forms.size(); ++i) {
                if (reader_.text(word) == chemical_.forms[i].name) id = i;
            }
            if (id == none)
                reader_.report(Kind::unknown_form, word.span,
                               {reader_.text(word), chemical_.name, "one of its `form` lines"});
        }
        if (given.strength == syntax::nowhere) return {id, std::nullopt};
        return {id, read_strength(reader_, reader_.tree.quantities[given.strength])};
    }

    void take_room(const syntax::Property& line, const syntax::Quantity& value) {
        const auto ml = read_positive(reader_, value, Dimension::volume);
        if (line.per.quantity == syntax::nowhere) return;
        const auto per = read_positive(reader_, reader_.tree.quantities[line.per.quantity], Dimension::mass);
        if (ml && per) chemical_.takes_up = *ml / *per;
    }

    void take_hazard(const syntax::Name& word, std::string_view code) {
        const auto digits = code.starts_with("EUH") ? code.substr(3) : code.substr(code.empty() ? 0 : 1);
        const bool fits =
            digits.size() >= 3 && std::ranges::all_of(digits.substr(0, 3), [](char c) { return c >= '0' && c <= '9'; });
        if (!fits) reader_.report(Kind::unknown_hazard, word.span, {code});
        chemical_.hazards.push_back(code);
    }

    /// The check digit of a CAS registry number: the other digits, weighted 1, 2, 3 … from the right, modulo 10.
    static bool check_digit_fits(std::string_view cas) {
        int sum = 0;
        int weight = 0;
        const int last = cas.back() - '0';
        for (auto at = cas.rbegin() + 1; at != cas.rend(); ++at) {
            if (*at != '-') sum += ++weight * (*at - '0');
        }
        return sum % 10 == last;
    }

    // ---- the block as a whole ----

    void judge() {
        const auto heading = reader_.tree.statements[block_.heading].span;
        const std::string what = "the chemical `" + std::string(chemical_.name) + "`";
        if (chemical_.forms.empty() && reader_.out.size() == reported_before_) {
            reader_.report(Kind::block_incomplete, heading,
                           {what, "a form with its formula", "`form   anhydrous   Na2CO3`"});
        } else if (!chemical_.forms.empty() && !chemical_.ions.empty() && !ions_broken_) {
            judge_ions();
        }
    }

    void judge_ions() {
        std::vector<chemistry::Term> ions;
        for (const auto& ion : chemical_.ions) ions.push_back({ion.coefficient, ion.formula});
        const auto off_by = [&](const Form& form) {
            return chemistry::imbalance({{1, chemistry::without_water(form.formula)}}, ions);
        };
        const bool charged = off_by(chemical_.forms.front()).charge != 0;
        const bool fits =
            std::ranges::any_of(chemical_.forms, [&](const Form& form) { return off_by(form).balanced(); });
        if (fits) return;
        reader_.report(Kind::ions_do_not_fit, ions_span_,
                       {charged ? "are not neutral together" : "are not the atoms of its formula", chemical_.name});
    }

    Reader& reader_;
    const Block& block_;
    Chemical& chemical_;
    std::size_t reported_before_ = reader_.out.size();
    text::Span ions_span_;
    bool ions_broken_ = false;
};

/// Whether `name` may stand for the chemical: nobody has it, or a built-in one that gives way to a user's.
bool takes_name(Reader& reader, const syntax::Name& name, Id chemical, Model& model) {
    const auto written = reader.text(name);
    const auto [at, fresh] = model.chemical_names.try_emplace(reader.normal(written), chemical, none);
    if (fresh || at->second.first == chemical) return true;
    const auto& first = model.chemicals[at->second.first];
    if (first.built_in && !model.chemicals[chemical].built_in) return true;
    auto& twice = reader.report(Kind::defined_twice, name.span, {written});
    twice.related.push_back({first.place.file, first.place.span, "first here"});
    return false;
}

void name_also(Reader& reader, const syntax::Substance& name, Id chemical, Model& model) {
    if (!takes_name(reader, name.name, chemical, model)) return;
    Id form = none;
    if (name.form != syntax::nowhere) {
        if (const auto resolved = resolve_chemical(reader, name, FormNeed::pure)) form = resolved->form;
    }
    const auto written = reader.text(name.name);
    model.chemical_names[reader.normal(written)] = {chemical, form};
    model.chemicals[chemical].also.emplace_back(written, form);
}

}  // namespace

void read_salt_of(BlockContext context, Model& model) {
    auto& reader = context.reader;
    for (std::uint32_t i = context.block.begin; i < context.block.end; ++i) {
        const auto* line = std::get_if<syntax::SaltOf>(&reader.tree.statements[i].node);
        if (line == nullptr) continue;
        reader.statement = i;
        auto& chemical = model.chemicals[context.block.id];
        if (chemical.salt_of != none) reader.report(Kind::said_twice, reader.statement_span(), {"salt of"});
        const auto acid = resolve_chemical(reader, {line->acid}, FormNeed::free);
        if (acid) chemical.salt_of = acid->chemical;
    }
}

void read_solvents(BlockContext context, Model& model) {
    auto& reader = context.reader;
    for (auto& row : model.chemicals[context.block.id].solubilities) {
        reader.statement = row.solvent_place.statement;
        row.solvent_chemical = solvent_called(model, row.solvent);
        const syntax::Name name{.span = row.solvent_place.span};
        if (row.solvent_chemical == none) report_unknown(reader, name, none, NameOf::chemical);
    }
    auto& chemical = model.chemicals[context.block.id];
    chemical.least_mol_per_kg = least_saturated_mol_per_kg(chemical, model.water);
}

void read_chemical(BlockContext context, Chemical& chemical) {
    ChemicalReader(context, chemical).run();
}

void name_other_names(BlockContext context, Model& model) {
    auto& reader = context.reader;
    const auto& block = context.block;
    for (std::uint32_t i = block.begin; i < block.end; ++i) {
        const auto* also = std::get_if<syntax::Also>(&reader.tree.statements[i].node);
        if (also == nullptr) continue;
        reader.statement = i;
        for (const auto& name : syntax::Tree::run(reader.tree.substances, also->names))
            name_also(reader, name, block.id, model);
    }
}

void read_format(BlockContext context, FilmFormat& format) {
    auto& reader = context.reader;
    const auto& block = context.block;
    bool stated = false;
    each_statement(reader, block,
                   overloaded{[&](const syntax::Area& line) {
                                  stated = true;
                                  const auto area =
                                      read_positive(reader, reader.tree.quantities[line.quantity], Dimension::area);
                                  if (area) format.area_cm2 = *area;
                                  format.source = reader.text(line.source);
                                  return true;
                              },
                              [](const syntax::Words& words) {
                                  return words.of == syntax::Words::Of::note || words.of == syntax::Words::Of::source;
                              },
                              [](const auto&) { return false; }});
    if (stated) return;
    reader.report(Kind::block_incomplete, reader.tree.statements[block.heading].span,
                  {"the format `" + std::string(format.name) + "`", "its area", "`area   80 sq in`"});
}

}  // namespace scruple::check
