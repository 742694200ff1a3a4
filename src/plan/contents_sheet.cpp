// SPDX-License-Identifier: MIT
#include "scruple/plan/contents_sheet.hpp"

#include <algorithm>
#include <map>
#include <optional>
#include <utility>

#include "card_facts.hpp"
#include "settle.hpp"
#include "totals.hpp"
#include "words.hpp"

namespace scruple::plan {

namespace {

using check::Addition;
using check::Chemical;
using check::Content;
using check::Id;
using check::Model;

std::string variant_name(const Model& model, Id section, std::size_t variant) {
    const Id recipe = model.sections[section].recipe;
    const bool known = recipe != check::none && variant < model.recipes[recipe].variants.size();
    return known ? std::string(model.recipes[recipe].variants[variant]) : std::string();
}

void add(std::vector<SpeciesRow>& rows, std::string_view name, bool ion, double mol_per_l,
         const check::Exact& molar_mass) {
    const auto same = [&](const SpeciesRow& row) { return row.ion == ion && row.name == name; };
    auto row = std::ranges::find_if(rows, same);
    if (row == rows.end()) row = rows.insert(rows.end(), {std::string(name), ion});
    row->mol_per_l += mol_per_l;
    row->g_per_l += mol_per_l * molar_mass.to_double();
}

std::vector<SpeciesRow> species_rows(const Model& model, const std::vector<Content>& contents) {
    std::vector<SpeciesRow> rows;
    for (const Content& content : contents) {
        const Chemical& chemical = model.chemicals[content.chemical];
        for (const check::Ion& ion : chemical.ions)
            add(rows, ion.text, true, content.mol_per_l * ion.coefficient, chemistry::molar_mass(ion.formula));
        if (!chemical.ions.empty() || content.form >= chemical.forms.size()) continue;
        const auto dry = chemistry::without_water(chemical.forms[content.form].formula);
        add(rows, chemical.name, false, content.mol_per_l, chemistry::molar_mass(dry));
    }
    std::stable_partition(rows.begin(), rows.end(), [](const SpeciesRow& row) { return row.ion; });
    return rows;
}

/// Moles a litre of each chemical, all its forms together.
std::map<Id, double> by_chemical(const std::vector<Content>& contents) {
    std::map<Id, double> moles;
    for (const Content& content : contents) moles[content.chemical] += content.mol_per_l;
    return moles;
}

bool of_the_same_chemicals(const std::vector<Content>& a, const std::vector<Content>& b) {
    const auto names = [](const std::vector<Content>& contents) {
        std::vector<Id> ids;
        for (const auto& [chemical, moles] : by_chemical(contents)) ids.push_back(chemical);
        return ids;
    };
    return names(a) == names(b);
}

class Comparison {
  public:
    Comparison(const Model& model, Id section, std::size_t variant, const std::vector<Content>& contents)
        : model_(model),
          section_(section),
          variant_(variant),
          totals_(model),
          contents_(contents),
          own_(totals_.of(contents)) {}

    [[nodiscard]] std::vector<SameSolution> same(check::KnownContents& known) const {
        std::map<std::pair<Id, std::size_t>, SameSolution> found;
        for (std::size_t variant = 0; !own_.empty(); ++variant) {
            const auto others = mixed_in(variant);
            if (others.empty()) break;
            for (const Id other : others)
                if (auto same = compared(other, variant, known.of(other, variant)))
                    found.emplace(std::pair(other, variant), *std::move(same));
        }
        std::vector<SameSolution> in_order;
        in_order.reserve(found.size());
        for (auto& [place, same] : found) in_order.push_back(std::move(same));
        return in_order;
    }

  private:
    /// Solutions of the workspace that have so many variants.
    [[nodiscard]] std::vector<Id> mixed_in(std::size_t variant) const {
        std::vector<Id> sections;
        for (Id id = 0; id < model_.sections.size(); ++id) {
            const check::Section& section = model_.sections[id];
            if (section.recipe == check::none || model_.recipes[section.recipe].built_in) continue;
            if (variant < check::variants_of(model_, section)) sections.push_back(id);
        }
        return sections;
    }

    [[nodiscard]] std::optional<SameSolution> compared(Id other, std::size_t variant,
                                                       const std::vector<Content>& contents) const {
        if (other == section_ && variant == variant_) return std::nullopt;
        const auto apart = percent_apart(own_, totals_.of(contents));
        if (!apart || *apart > most_percent_apart) return std::nullopt;
        const std::string name = variant_name(model_, other, variant);
        return SameSolution{check::shown_name(model_, other) + (name.empty() ? "" : ", variant " + name), *apart,
                            of_the_same_chemicals(contents_, contents)};
    }

    const Model& model_;
    Id section_;
    std::size_t variant_;
    Totals totals_;
    const std::vector<Content>& contents_;
    std::vector<Total> own_;
};

std::vector<std::string> left_out(const Model& model, const check::Section& section) {
    std::vector<std::string> lines;
    for (const check::Line& line : section.lines) {
        const auto* addition = std::get_if<Addition>(&line);
        if (addition == nullptr) continue;
        if (addition->optional)
            lines.push_back(substance_words(model, *addition) + ": optional");
        else if (addition->how == Addition::How::unknown)
            lines.push_back(substance_words(model, *addition) + ": no amount is stated yet");
    }
    return lines;
}

ContentsSheet sheet_of(const Model& model, const CardRequest& request) {
    const auto [section, variant] = std::pair(request.section, request.variant);
    const check::Section& it = model.sections[section];
    check::KnownContents known(model);
    const std::vector<Content> contents = known.of(section, variant);
    return {it.recipe == check::none ? "" : std::string(model.recipes[it.recipe].name),
            check::section_words(it),
            variant_name(model, section, variant),
            content_rows(model, contents),
            ph_row(model, contents, celsius_of(request)),
            species_rows(model, contents),
            Comparison(model, section, variant, contents).same(known),
            left_out(model, it)};
}

}  // namespace

std::variant<ContentsSheet, Refusal> contents_sheet(const Model& model, const CardRequest& request) {
    const auto settled = settle(model, request);
    if (const auto* refusal = std::get_if<Refusal>(&settled)) return *refusal;
    const auto& changed = std::get<Settled>(settled).model;
    return sheet_of(changed ? *changed : model, request);
}

}  // namespace scruple::plan
