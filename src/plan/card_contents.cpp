// SPDX-License-Identifier: MIT
#include <algorithm>

#include "card_facts.hpp"
#include "conversion.hpp"
#include "script.hpp"
#include "scruple/check/contents.hpp"
#include "words.hpp"

namespace scruple::plan {

namespace {

using check::Addition;
using check::Content;
using check::Exact;
using check::Id;
using check::Model;

/// What conversions leave in a solution beside their products, through the parts it is made of.
class Leftovers {
  public:
    Leftovers(const Model& model, std::size_t variant) : model_(model), variant_(variant) {}

    /// Adds what `share` litres of a section hold.
    void add_section(Id id, const Exact& share) {
        const check::Section& section = model_.sections[id];
        if (section.makes_ml.is_zero() || std::ranges::find(under_way_, id) != under_way_.end()) return;
        under_way_.push_back(id);
        for (const check::Line& line : section.lines)
            if (const auto* addition = std::get_if<Addition>(&line); addition != nullptr && !addition->optional)
                add(*addition, share / section.makes_ml);
        under_way_.pop_back();
    }

    std::vector<Content> contents;

  private:
    void add(const Addition& addition, const Exact& per_ml) {
        const Exact measure = share_for(addition, variant_);
        if (addition.solution != check::none && addition.how != Addition::How::to_make)
            return add_section(addition.solution, measure * per_ml);
        if (!addition.by_conversion) return;
        const auto* conversion = conversion_for(model_, addition.chemical, addition.form);
        if (conversion == nullptr || conversion->section == check::none) return;
        const Exact grams = check::dose_of(model_, addition, measure).grams;
        for (const Share& share : worked_out(model_, *conversion, {addition.chemical, addition.form, grams}).besides)
            add(share, per_ml);
    }

    void add(const Share& share, const Exact& per_ml) {
        const check::Chemical& chemical = model_.chemicals[share.chemical];
        const Id form = share.form < chemical.forms.size() ? share.form : 0;
        const double g_per_l = (share.grams * per_ml * 1000).to_double();
        contents.push_back({share.chemical, form, g_per_l, g_per_l / chemical.forms[form].molar_mass.to_double()});
    }

    const Model& model_;
    std::size_t variant_;
    std::vector<Id> under_way_;
};

void merge(std::vector<Content>& into, const Content& content) {
    const auto same = [&content](const Content& other) {
        return other.chemical == content.chemical && other.form == content.form;
    };
    const auto found = std::ranges::find_if(into, same);
    if (found == into.end()) return into.push_back(content);
    found->g_per_l += content.g_per_l;
    found->mol_per_l += content.mol_per_l;
}

}  // namespace

std::vector<ContentRow> content_rows(const Model& model, Id section, std::size_t variant) {
    std::vector<Content> contents = check::contents(model, section, variant);
    Leftovers leftovers(model, variant);
    leftovers.add_section(section, 1);
    for (const Content& content : leftovers.contents) merge(contents, content);
    std::vector<ContentRow> rows;
    for (const Content& content : contents) {
        const check::Chemical& chemical = model.chemicals[content.chemical];
        rows.push_back(
            {std::string(chemical.name), form_name(chemical, content.form), content.g_per_l, content.mol_per_l});
    }
    return rows;
}

}  // namespace scruple::plan
