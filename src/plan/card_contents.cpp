// SPDX-License-Identifier: MIT
#include <algorithm>

#include "card_facts.hpp"
#include "ingredients.hpp"
#include "script.hpp"
#include "scruple/check/ph.hpp"
#include "ways.hpp"
#include "words.hpp"

namespace scruple::plan {

namespace {

using check::Addition;
using check::Content;
using check::Exact;
using check::Id;
using check::Model;

/// What the conversions of one section leave in its solution beside their products.
class Leftovers {
  public:
    Leftovers(const Model& model, std::size_t variant) : model_(model), variant_(variant) {}

    /// `share`: ml of the section in a ml of the solution that is asked about.
    void add_section(Id id, const Exact& share) {
        const check::Section& section = model_.sections[id];
        if (section.makes_ml <= 0) return;
        for (const check::Line& line : section.lines)
            if (const auto* addition = std::get_if<Addition>(&line))
                if (addition->by_conversion && !addition->optional) add(*addition, share / section.makes_ml);
    }

    std::vector<Content> contents;

  private:
    void add(const Addition& addition, const Exact& per_ml) {
        const auto* conversion = conversion_for(model_, addition);
        if (conversion == nullptr || conversion->section == check::none) return;
        const Exact grams = check::dose_of(model_, addition, share_for(addition, variant_)).grams;
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

std::vector<Content> contents_with_leftovers(const Model& model, Id section, std::size_t variant) {
    std::vector<Content> contents = check::contents(model, section, variant);
    Leftovers leftovers(model, variant);
    for (const auto& [solution, share] : shares_of(model, section)) leftovers.add_section(solution, share);
    for (const Content& content : leftovers.contents) merge(contents, content);
    return contents;
}

std::vector<ContentRow> content_rows(const Model& model, const std::vector<Content>& contents) {
    std::vector<ContentRow> rows;
    for (const Content& content : contents) {
        const check::Chemical& chemical = model.chemicals[content.chemical];
        rows.push_back({std::string(chemical.name), form_name(chemical, content.form), content.g_per_l,
                        content.mol_per_l, content.give_or_take});
    }
    return rows;
}

std::optional<PhRow> ph_row(const Model& model, const std::vector<Content>& contents, double celsius) {
    if (contents.empty()) return std::nullopt;
    PhRow row;
    row.celsius = celsius;
    const auto found = check::ph_of(model, contents, celsius);
    if (const auto* none = std::get_if<check::NoPh>(&found)) {
        row.text = "none is given: " + none->why;
        return row;
    }
    const auto& ph = std::get<check::Ph>(found);
    row.value = ph.value;
    row.low = ph.low;
    row.high = ph.high;
    row.text = shown(ph.value, ph) + " (" + shown(ph.low, ph) + " to " + shown(ph.high, ph) + ")";
    row.widened_by = ph.widened_by;
    return row;
}

}  // namespace scruple::plan
