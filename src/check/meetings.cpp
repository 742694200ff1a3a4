// SPDX-License-Identifier: MIT
// `meeting` blocks, and `accept` lines.
#include "meetings.hpp"

#include <algorithm>
#include <iterator>
#include <set>

#include "expected.hpp"
#include "formulas.hpp"
#include "in_water.hpp"
#include "passes.hpp"
#include "scruple/syntax/normal.hpp"

namespace scruple::check {
namespace {

using diagnostics::Kind;
using quantity::Dimension;

// ---- how much of a thing a mole of each chemical brings ----

std::vector<double> brought_by_role(const Model& model, std::string_view role) {
    std::vector<double> all(model.chemicals.size());
    for (std::size_t id = 0; id < all.size(); ++id) all[id] = std::ranges::count(model.chemicals[id].acts_as, role) > 0;
    return all;
}

std::vector<double> brought_by_chemical(const Model& model, Id chemical) {
    std::vector<double> all(model.chemicals.size());
    all[chemical] = 1;
    return all;
}

/// Through the table of acids and bases where the chemical stands in it, else by the very ions of its block.
class IonBringers {
  public:
    IonBringers(const Model& model, const chemistry::Formula& formula)
        : model_(model), table_(model.acid_base), formula_(formula) {
        const auto key = ion_key(formula);
        for (const auto& known : table_.known)
            if (known.key == key && known.species.component != chemistry::no_component)
                components_.insert(known.species.component);
    }

    [[nodiscard]] std::vector<double> run() const {
        std::vector<double> all(model_.chemicals.size());
        for (Id id = 0; id < all.size(); ++id) all[id] = by_table(id) + by_text(id);
        return all;
    }

  private:
    [[nodiscard]] double by_table(Id id) const {
        double brought = 0;
        for (const auto& [known, coefficient] : table_.chemicals[id].brings) {
            const auto& species = table_.known[known].species;
            if (components_.contains(species.component)) brought += coefficient * species.units;
        }
        return brought;
    }
    [[nodiscard]] double by_text(Id id) const {
        if (table_.chemicals[id].missing.empty()) return 0;
        const auto& chemical = model_.chemicals[id];
        if (chemical.ions.empty())
            return !chemical.forms.empty() && chemistry::without_water(chemical.forms.front().formula) == formula_;
        double brought = 0;
        for (const auto& ion : chemical.ions)
            if (ion.formula == formula_) brought += ion.coefficient;
        return brought;
    }

    const Model& model_;
    const AcidBase& table_;
    const chemistry::Formula& formula_;
    std::set<chemistry::Index> components_;
};

// ---- blocks ----

class MeetingReader {
  public:
    MeetingReader(BlockContext context, Meeting& meeting)
        : reader_(context.reader), block_(context.block), meeting_(meeting) {}

    void run() {
        each_statement(reader_, block_, [this](const auto& node) { return take(node); });
        judge();
    }

  private:
    bool take(const syntax::Words& words) {
        const auto text = reader_.text(words.text);
        switch (words.of) {
            case syntax::Words::Of::lethal:
                return take_danger(Danger::lethal, text);
            case syntax::Words::Of::harmful:
                return take_danger(Danger::harmful, text);
            case syntax::Words::Of::caution:
                meeting_.cautions.push_back(text);
                return true;
            case syntax::Words::Of::note:
                meeting_.notes.push_back(text);
                return true;
            case syntax::Words::Of::source:
                meeting_.sources.push_back(text);
                return true;
            case syntax::Words::Of::is_a:
            case syntax::Words::Of::strength:
            case syntax::Words::Of::assumed:
            case syntax::Words::Of::book:
            case syntax::Words::Of::printed_line:
                return false;
        }
        return false;
    }
    bool take_danger(Danger danger, std::string_view text) {
        if (!meeting_.comes.empty()) report_twice(danger == Danger::lethal ? "lethal" : "harmful");
        meeting_.danger = danger;
        meeting_.comes = text;
        return true;
    }

    bool take(const syntax::Meets& line) {
        std::vector<Met> any;
        for (const auto& met : syntax::Tree::run(reader_.tree.met, line.any))
            if (auto read = met.role ? read_role(met.what.name) : read_substance(met.what))
                any.push_back(std::move(*read));
        if (line.of == syntax::Meets::Of::in_doubt) {
            std::ranges::move(any, std::back_inserter(meeting_.in_doubt));
        } else {
            meeting_.sides.push_back({std::move(any), read_least(line.at_least)});
        }
        return true;
    }

    std::optional<Met> read_role(const syntax::Name& name) {
        const auto text = reader_.text(name);
        auto brought = brought_by_role(reader_.model, text);
        if (std::ranges::count(brought, 0.0) < static_cast<std::ptrdiff_t>(brought.size()))
            return Met{.what = Met::What::role, .text = text, .mol_per_mol = std::move(brought)};
        std::vector<std::string_view> roles;
        for (const auto& chemical : reader_.model.chemicals)
            roles.insert(roles.end(), chemical.acts_as.begin(), chemical.acts_as.end());
        reader_.report(Kind::unknown_name, name.span,
                       {text, nearest_or(reader_, text, roles, "a word that an `acts as` line has")});
        return std::nullopt;
    }

    /// A chemical by its name, else an ion or a molecule by its formula.
    std::optional<Met> read_substance(const syntax::Substance& substance) {
        const auto text = reader_.text(substance.name);
        const bool is_name = reader_.model.chemical_names.contains(reader_.normal(text));
        if (!is_name && substance.form == syntax::nowhere) {
            auto read = chemistry::read_formula(text);
            if (auto* formula = std::get_if<chemistry::Formula>(&read))
                return Met{.what = Met::What::ion,
                           .text = text,
                           .g_per_mol = chemistry::molar_mass(*formula).to_double(),
                           .mol_per_mol = IonBringers(reader_.model, *formula).run()};
        }
        const auto found = resolve_chemical(reader_, substance, FormNeed::free);
        if (!found) return std::nullopt;
        const bool form = substance.form != syntax::nowhere;
        return Met{.what = form ? Met::What::form : Met::What::chemical,
                   .text = text,
                   .chemical = found->chemical,
                   .form = form ? found->form : none,
                   .mol_per_mol = brought_by_chemical(reader_.model, found->chemical)};
    }

    std::optional<Strength> read_least(syntax::Index index) {
        if (index == syntax::nowhere) return std::nullopt;
        const auto& written = reader_.tree.quantities[index];
        const auto value = read_positive(reader_, written, Dimension::strength);
        if (!value) return std::nullopt;
        if (in_unit({}, written.unit)) return Strength{*value, written.unit};
        reader_.report(Kind::wrong_kind_of_unit, written.span(),
                       {reader_.text(written.span()), "a share of the whole", "g/l, % w/v, mol/l or ppm"});
        return std::nullopt;
    }

    bool take(const syntax::PhLimit& line) {
        auto& limit = line.above ? meeting_.above_ph : meeting_.below_ph;
        if (meeting_.above_ph || meeting_.below_ph) report_twice("a limit of pH");
        if (const auto ph = read_number(reader_, line.ph)) limit = ph->to_double();
        return true;
    }
    bool take(const syntax::WarmerThan& line) {
        if (meeting_.warmer_than) report_twice("warmer than");
        const auto& written = reader_.tree.quantities[line.quantity];
        if (const auto celsius = read_celsius(reader_, {written, written}))
            meeting_.warmer_than = celsius->low.to_double();
        return true;
    }
    bool take(const auto&) { return false; }

    void report_twice(std::string_view keyword) {
        reader_.report(Kind::said_twice, reader_.statement_span(), {keyword});
    }

    void judge() {
        const auto strong = [](const Side& side) { return side.at_least.has_value(); };
        const bool limited = meeting_.below_ph || meeting_.above_ph || meeting_.warmer_than ||
                             std::ranges::any_of(meeting_.sides, strong);
        if (meeting_.sides.size() < (limited ? 1 : 2))
            report_lack("what meets", "a `one of` line for each side, or one and a limit such as `below pH   4.5`");
        if (meeting_.comes.empty()) report_lack("what comes of it", "`lethal` or `harmful`, and what comes of it");
    }
    void report_lack(std::string_view what, std::string_view write) {
        const auto name = meeting_.name.empty() ? "the meeting" : "the meeting `" + std::string(meeting_.name) + "`";
        reader_.report(Kind::block_incomplete, reader_.tree.statements[block_.heading].span, {name, what, write});
    }

    Reader& reader_;
    const Block& block_;
    Meeting& meeting_;
};

}  // namespace

void read_meeting(BlockContext context, Meeting& meeting) {
    MeetingReader(context, meeting).run();
}

void read_acceptance(Reader& reader, const syntax::Accept& line, SeldomMany<Acceptance>& into) {
    const auto written = reader.text(line.meeting);
    const auto found = reader.model.meeting_names.find(reader.normal(written));
    if (found == reader.model.meeting_names.end()) {
        reader.report(
            Kind::unknown_meeting, line.meeting.span,
            {written, suggestion(reader, written, reader.model.meetings, "the name as the message about it has it")});
        return;
    }
    const auto reason = reader.text(line.reason);
    if (reason.find_first_not_of(" \t") == std::string_view::npos) {
        reader.report(Kind::reason_left_out, reader.statement_span(), {written});
        return;
    }
    into.push_back({found->second, reason, reader.place(reader.statement_span())});
}

}  // namespace scruple::check
