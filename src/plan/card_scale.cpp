// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>

#include "batch_scale.hpp"
#include "capacity.hpp"
#include "ingredients.hpp"
#include "script.hpp"
#include "scruple/check/contents.hpp"
#include "scruple/plan/card.hpp"
#include "uses.hpp"
#include "words.hpp"

namespace scruple::plan {

namespace {

using check::Addition;
using check::Exact;
using check::Id;
using check::Model;
using check::SectionKind;
using Scale = std::variant<Exact, Refusal>;

class Scaler {
  public:
    Scaler(const Model& model, const CardRequest& request)
        : model_(model),
          request_(request),
          section_(model.sections[request.section]),
          name_(check::shown_name(model, request.section)) {}

    Scale operator()(std::monostate) const { return Exact(1); }

    Scale operator()(const MakeVolume& make) const {
        if (make.ml <= 0) return Refusal{"Nothing is made from nothing: give a volume above 0 ml."};
        if (section_.makes_ml <= 0)
            return Refusal{name_ +
                           " states no final volume, so it cannot be made to one. Write `water to make 1 l` in it."};
        return make.ml / section_.makes_ml;
    }

    Scale operator()(const MakeForUses& make) const {
        for (const Id bath : baths()) {
            const Exact share = share_in(bath);
            const Exact ml = ml_of(bath, make.uses);
            if (ml > 0 && share > 0) return (*this)(MakeVolume{ml * share});
        }
        return Refusal{
            fmt::format("How much {} {} take is not stated. Write the capacity in the recipe, such as "
                        "`capacity one-shot, 250 ml per film 135`, or ask for a volume.",
                        name_, uses_text(make.uses))};
    }

    Scale operator()(const MakeWith& make) const {
        if (make.grams <= 0) return Refusal{"Nothing is made from nothing: give an amount above 0 g."};
        const auto script = script_of(model_, request_.section, request_.variant);
        if (const auto* refusal = std::get_if<Refusal>(&script)) return *refusal;
        Exact taken;
        for (const Step& step : std::get<Script>(script).steps) taken += grams_of(step, make);
        if (taken > 0) return make.grams / taken;
        return Refusal{
            fmt::format("{} weighs out no {} of its own. Name a chemical that its lines weigh, or ask for a volume.",
                        name_, check::shown_name(model_.chemicals[make.chemical], make.form))};
    }

  private:
    /// A part is sized by the working solutions that take it; anything else by itself first.
    std::vector<Id> baths() const {
        std::vector<Id> others;
        if (section_.recipe != check::none)
            for (const Id id : model_.recipes[section_.recipe].sections)
                if (id != request_.section) others.push_back(id);
        const bool itself_first = section_.kind != SectionKind::part || !section_.capacity.empty();
        others.insert(itself_first ? others.begin() : others.end(), request_.section);
        return others;
    }

    Exact share_in(Id bath) const {
        const auto shares = shares_of(model_, bath);
        const auto found = shares.find(request_.section);
        return found == shares.end() ? Exact() : found->second;
    }

    /// 0 where the capacity of the bath does not say. A bath that is kept must at least fill its tank.
    Exact ml_of(Id bath, const std::vector<check::Use>& uses) const {
        std::vector<std::string> unknown;
        const Exact fill = fill_of(model_, bath, uses);
        const Exact drawn = sum_of(bath_draws(model_, bath, uses, unknown));
        return unknown.empty() ? std::max(fill, drawn) : fill;
    }

    static std::string uses_text(const std::vector<check::Use>& uses) {
        std::vector<std::string> texts;
        texts.reserve(uses.size());
        for (const check::Use& use : uses) texts.emplace_back(use.text);
        return joined(texts, ", ");
    }

    /// What a line takes out of the jar, in the jar's form; a percent solution is not made from it here.
    Exact grams_of(const Step& step, const MakeWith& make) const {
        if (step.what != Step::What::put || step.addition->chemical != make.chemical || step.addition->strength ||
            step.addition->saturated_at || step.addition->optional || step.addition->how == Addition::How::to_make)
            return {};
        Exact grams = check::dose_of(model_, *step.addition, step.measure).grams;
        const auto& forms = model_.chemicals[make.chemical].forms;
        if (make.form >= forms.size() || step.addition->form >= forms.size() || make.form == step.addition->form)
            return grams;
        return check::as_form(forms[step.addition->form], forms[make.form], grams);
    }

    const Model& model_;
    const CardRequest& request_;
    const check::Section& section_;
    std::string name_;
};

}  // namespace

Scale batch_scale(const Model& model, const CardRequest& request) {
    if (model.sections[request.section].kind == SectionKind::conversion)
        return Refusal{"A conversion is written out on the card of the recipe that uses it; ask for that."};
    return std::visit(Scaler(model, request), request.how_much);
}

}  // namespace scruple::plan
