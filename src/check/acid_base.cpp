// SPDX-License-Identifier: MIT
// From the lines of all chemicals to one table of acids and bases.
#include <algorithm>
#include <map>

#include "in_water.hpp"
#include "passes.hpp"

namespace scruple::check {

using chemistry::Formula;

namespace {

Exact atoms_of(const Formula& formula, std::string_view symbol) {
    for (const auto& [element, count] : formula.atoms)
        if (chemistry::symbol(element) == symbol) return count;
    return 0;
}

}  // namespace

std::string ion_key(const Formula& formula) {
    const bool without_water = formula.charge != 0 && atoms_of(formula, "C").is_zero();
    std::string key = std::to_string(formula.charge);
    const auto append = [&key](std::string_view symbol, const Exact& count) {
        ((key += ' ') += symbol) += count.ratio_text();
    };
    if (without_water) append("H", atoms_of(formula, "H") - atoms_of(formula, "O") * 2);
    for (const auto& [element, count] : formula.atoms) {
        const auto symbol = chemistry::symbol(element);
        if (!without_water || (symbol != "H" && symbol != "O")) append(symbol, count);
    }
    return key;
}

namespace {

using diagnostics::Kind;

bool is_proton(const Ion& ion) {
    return ion.text == "H+";
}
bool is_water(const Ion& ion) {
    return ion.text == "H2O";
}

/// One side of an equilibrium: the thing that matters, and what of H+ and H2O stands beside it.
struct Half {
    const Ion* thing = nullptr;
    int protons = 0, waters = 0;
    bool several = false;
};

Half half_of(const std::vector<Ion>& side) {
    Half half;
    for (const auto& ion : side) {
        if (is_proton(ion))
            half.protons += ion.coefficient;
        else if (is_water(ion))
            half.waters += ion.coefficient;
        else if (half.thing != nullptr)
            half.several = true;
        else
            half.thing = &ion;
    }
    return half;
}

class Gatherer {
  public:
    Gatherer(const Model& model, std::vector<diagnostics::Diagnostic>& out) : model_(model), out_(out) {}

    AcidBase run() {
        own_.resize(model_.chemicals.size());
        add({"H+", {.charge = 1, .protons = 1}, {}}, proton_key(), none);
        for (Id id = 0; id < model_.chemicals.size(); ++id) add_chain(id);
        for (const auto& chemical : model_.chemicals) add_bystanders(chemical);
        for (const auto& chemical : model_.chemicals) add_pairs_and_gases(chemical);
        for (Id id = 0; id < model_.chemicals.size(); ++id) table_.chemicals.push_back(brought_by(id));
        for (auto& chemical : table_.chemicals) chemical.salt = salt_of(chemical);
        return std::move(table_);
    }

  private:
    static std::string proton_key() { return "1 H1"; }

    Id add(AcidBase::Known known, const std::string& key, Id chemical) {
        const auto id = static_cast<Id>(table_.known.size());
        table_.known.push_back(std::move(known));
        table_.known.back().key = key;
        everywhere_[key].push_back(id);
        if (chemical != none) own_[chemical].emplace(key, id);
        return id;
    }

    Id add_component(const Ion& first, Id chemical) {
        const chemistry::Species species{.charge = first.formula.charge, .component = table_.components++};
        return add({first.text, species, {}}, ion_key(first.formula), chemical);
    }

    // ---- the `in water` lines of one chemical are a chain ----

    void add_chain(Id id) {
        std::vector<const Equilibrium*> open;
        for (const auto& line : model_.chemicals[id].equilibria) open.push_back(&line);
        while (!open.empty()) {
            const auto linked = [&](const Equilibrium* line) { return is_linked(id, *line); };
            auto next = std::ranges::find_if(open, linked);
            if (next == open.end()) {
                next = open.begin();
                if (const auto* thing = half_of((*next)->left).thing) add_component(*thing, id);
            }
            if (!add_link(id, **next))
                out_.push_back(diagnostics::make(Kind::equilibrium_of_many, (*next)->place.file, (*next)->place.span,
                                                 {written(**next)}));
            open.erase(next);
        }
    }

    [[nodiscard]] bool is_linked(Id id, const Equilibrium& line) const {
        return has(id, half_of(line.left).thing) || has(id, half_of(line.right).thing);
    }
    [[nodiscard]] bool has(Id id, const Ion* thing) const {
        return thing != nullptr && own_[id].contains(ion_key(thing->formula));
    }

    /// a A + p H+ + w H2O -> b B + q H+ + v H2O, of which one is known and the other new.
    bool add_link(Id id, const Equilibrium& line) {
        const Half left = half_of(line.left);
        const Half right = half_of(line.right);
        if (left.several || right.several || (left.thing == nullptr && right.thing == nullptr)) return false;
        const auto constant = static_cast<std::uint32_t>(table_.constants.size());
        table_.constants.push_back({line.constant, written(line), id});
        if (left.thing == nullptr || right.thing == nullptr) return add_of_water(left, right, constant, id);
        const bool forward = has(id, left.thing);
        if (forward == has(id, right.thing)) return false;
        const Half& from = forward ? left : right;
        const Half& to = forward ? right : left;
        if (to.thing->coefficient != 1) return false;
        AcidBase::Known made = table_.known[own_[id].at(ion_key(from.thing->formula))];
        const int times = from.thing->coefficient;
        made.text = to.thing->text;
        made.species.charge = to.thing->formula.charge;
        made.species.units *= times;
        made.species.protons = times * made.species.protons + from.protons - to.protons;
        made.species.waters = times * made.species.waters + from.waters - to.waters;
        for (auto& weighed : made.constants) weighed.weight *= times;
        made.constants.push_back({constant, forward ? 1 : -1});
        add(std::move(made), ion_key(to.thing->formula), id);
        return true;
    }

    /// H2O -> H+ + OH-: of no component.
    bool add_of_water(const Half& left, const Half& right, std::uint32_t constant, Id id) {
        if (right.thing == nullptr || right.thing->coefficient != 1) return false;
        const chemistry::Species species{.charge = right.thing->formula.charge,
                                         .protons = left.protons - right.protons,
                                         .waters = left.waters - right.waters};
        add({right.thing->text, species, {{constant, 1}}}, ion_key(right.thing->formula), id);
        return true;
    }

    // ---- what stands by, attracts, escapes ----

    void add_bystanders(const Chemical& chemical) {
        const auto id = static_cast<Id>(&chemical - model_.chemicals.data());
        for (const auto& [ion, source] : chemical.bystanders) {
            const auto key = ion_key(ion.formula);
            const bool charged = ion.formula.charge != 0;
            if (charged && everywhere_.contains(key))
                own_[id].emplace(key, everywhere_[key].front());
            else
                add_component(ion, id);
        }
    }

    void add_pairs_and_gases(const Chemical& chemical) {
        for (const auto& pair : chemical.pairs)
            for (const Id one : everywhere_[ion_key(pair.one.formula)])
                for (const Id other : everywhere_[ion_key(pair.other.formula)])
                    table_.pairs.push_back({one, other, pair.epsilon, pair.give_or_take.value_or(usual_pair)});
        for (const auto& escape : chemical.escapes) {
            const auto& mine = own_[static_cast<Id>(&chemical - model_.chemicals.data())];
            const auto at = mine.find(ion_key(escape.molecule.formula));
            if (at != mine.end())
                table_.gases.push_back({static_cast<Id>(&chemical - model_.chemicals.data()), at->second,
                                        escape.constant, escape.in_air_atm});
        }
    }

    // ---- what a mole of a chemical brings ----

    AcidBase::Chemical brought_by(Id id) {
        AcidBase::Chemical brought;
        const auto& chemical = model_.chemicals[id];
        if (id == model_.water || chemical.forms.empty()) return brought;
        auto ions = chemical.ions;
        const auto& form = chemical.forms.front();
        if (ions.empty()) ions.push_back({1, form.formula_text, without_water(form.formula)});
        for (const auto& ion : ions) {
            const auto found = find(id, ion);
            if (found != none)
                brought.brings.push_back({found, ion.coefficient});
            else if (brought.missing.empty())
                brought.missing = ion.text;
        }
        return brought;
    }

    /// Its own lines come first, then those of its acid, then the only other chemical's that has such an ion.
    Id find(Id id, const Ion& ion) const {
        const auto key = ion_key(ion.formula);
        for (const Id owner : {id, model_.chemicals[id].salt_of}) {
            if (owner == none) continue;
            if (const auto at = own_[owner].find(key); at != own_[owner].end()) return at->second;
        }
        const auto all = everywhere_.find(key);
        const bool unique = all != everywhere_.end() && all->second.size() == 1;
        return unique && ion.formula.charge != 0 ? all->second.front() : none;
    }

    [[nodiscard]] Id salt_of(const AcidBase::Chemical& acid) const {
        if (acid.brings.size() != 1) return none;
        const auto& own = table_.known[acid.brings.front().known].species;
        const auto is_its_ion = [&](const AcidBase::Brings& brings) {
            const auto& species = table_.known[brings.known].species;
            return species.component == own.component && species.charge < own.charge && brings.coefficient == 1;
        };
        for (Id id = 0; id < table_.chemicals.size(); ++id)
            if (std::ranges::any_of(table_.chemicals[id].brings, is_its_ion)) return id;
        return none;
    }

    static constexpr double usual_pair = 0.05;

    const Model& model_;
    std::vector<diagnostics::Diagnostic>& out_;
    AcidBase table_;
    std::map<std::string, std::vector<Id>> everywhere_;
    std::vector<std::map<std::string, Id>> own_;
};

}  // namespace

AcidBase gather_acid_base(const Model& model, std::vector<diagnostics::Diagnostic>& out) {
    return Gatherer(model, out).run();
}

}  // namespace scruple::check
