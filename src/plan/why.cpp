// SPDX-License-Identifier: MIT
#include "scruple/plan/why.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <unordered_map>

#include "batch_scale.hpp"
#include "measures.hpp"
#include "script.hpp"
#include "scruple/check/contents.hpp"
#include "settle.hpp"
#include "why_lines.hpp"
#include "why_share.hpp"
#include "words.hpp"

namespace scruple::plan {

namespace {

using check::Addition;
using check::Exact;
using check::Id;
using check::Model;
using By = Addition::By;
using Side = check::Conversion::Side;

const Side* side_with(const std::vector<Side>& sides, Id chemical) {
    const auto found = std::ranges::find(sides, chemical, &Side::chemical);
    return found == sides.end() ? nullptr : &*found;
}

class Deriver {
  public:
    /// `as_written`: the section before anything in it was met in other ways.
    Deriver(const Model& model, const check::Section& as_written, const CardRequest& request, const Exact& scale,
            Id chemical)
        : model_(model),
          as_written_(as_written),
          section_(model.sections[request.section]),
          name_(check::shown_name(model, request.section)),
          variant_(request.variant),
          scale_(scale),
          chemical_(chemical),
          measures_(request.bench == check::none ? nullptr : &model.benches[request.bench]) {}

    std::vector<Why> all(const Script& script) {
        for (const auto& step : script.steps)
            if (step.what == Step::What::put) steps_.try_emplace(step.addition, &step);
        for (std::size_t i = 0; i < section_.lines.size(); ++i)
            if (const auto* addition = std::get_if<Addition>(&section_.lines[i]))
                add(*addition, std::get<Addition>(as_written_.lines[i]), script);
        return std::move(found_);
    }

  private:
    void add(const Addition& addition, const Addition& as_written, const Script& script) {
        if (addition.by_conversion) return add_made(addition, script.makings.at(next_making_++));
        if (addition.how == Addition::How::the_rest || addition.how == Addition::How::to_make) return;
        // Conversions may have taken all of a line's water.
        const auto step = steps_.find(&addition);
        if (addition.chemical != chemical_ || step == steps_.end()) return;
        WhyLines lines(model_);
        begin(as_written, lines);
        if (is_another(addition, as_written)) lines.taken_for(as_written, share_for(as_written, variant_), addition);
        const Exact measure = scaled(addition, whole_of(*step->second), lines);
        finish(addition, measure, "", std::move(lines));
    }

    static bool is_another(const Addition& taken, const Addition& as_written) {
        return taken.form != as_written.form || taken.strength != as_written.strength;
    }

    static Exact whole_of(const Step& step) { return step.piece == Step::Piece::first ? step.divided : step.measure; }

    void begin(const Addition& as_written, WhyLines& lines) const {
        const Exact amount = share_for(as_written, variant_);
        lines.written(as_written, substance_words(model_, as_written), amount, section_.makes_ml);
        if (as_written.worked_out) lines.found_from(as_written, section_, amount);
    }

    /// The amount as it stands, less what a conversion has of it, and as scaled; in g, ml, mol or drops.
    Exact scaled(const Addition& addition, const Exact& left, WhyLines& lines) const {
        const Exact written = share_for(addition, variant_);
        if (left != written) lines.less(written, written - left, unit_of(addition));
        lines.scaled(left, unit_of(addition), scale_, section_.makes_ml);
        return left * scale_;
    }

    void add_made(const Addition& product, const check::Making& making) {
        if (side_with(making.conversion->left, chemical_) == nullptr) return;
        const auto& lines = model_.sections[making.conversion->section].lines;
        for (std::uint32_t i = 0; i < lines.size(); ++i) {
            const auto* addition = std::get_if<Addition>(&lines[i]);
            // What has an amount of its own (`water 5 ml per 1 g`) is not by the numbers of the reaction.
            if (addition != nullptr && addition->chemical == chemical_ && addition->shares.empty())
                add_reagent(product, making, *addition, i);
        }
    }

    void add_reagent(const Addition& product, const check::Making& making, const Addition& reagent,
                     std::uint32_t line) {
        WhyLines lines(model_);
        begin(product, lines);
        const Exact measure = scaled(product, share_for(product, variant_), lines);
        lines.reacted(*making.conversion, product, measure, reagent);
        const Exact of_reagent = check::measure_in(model_, making, reagent, line) * scale_;
        lines.measured(reagent, of_reagent, substance_words(model_, reagent));
        finish(reagent, of_reagent, substance_words(model_, product) + " by conversion", std::move(lines));
    }

    void finish(const Addition& addition, const Exact& measure, std::string amid, WhyLines lines) {
        const Exact grams = check::dose_of(model_, addition, measure).grams;
        const Reading reading = read(addition, measure, grams);
        lines.rounded(addition, measure, grams, reading);
        found_.push_back({name_, substance_words(model_, addition), std::move(amid), reading.figure, lines.take()});
    }

    Reading read(const Addition& addition, const Exact& measure, const Exact& grams) const {
        switch (addition.by) {
            case By::mass:
                return measures_.weighed(measure);
            case By::volume:
                return measures_.measured(measure);
            case By::amount:
                return measures_.weighed(grams);
            case By::drops:
                return measures_.dropped(measure);
        }
        return {};
    }

    const Model& model_;
    const check::Section& as_written_;
    const check::Section& section_;
    std::string name_;
    std::size_t variant_;
    Exact scale_;
    Id chemical_;
    Measures measures_;
    std::unordered_map<const Addition*, const Step*> steps_;  ///< the first that puts in each
    std::size_t next_making_ = 0;
    std::vector<Why> found_;
};

Refusal nothing_of(const Model& model, Id section, Id chemical, bool too_thin) {
    return Refusal{fmt::format("{} takes no {}: {}.", check::shown_name(model, section), model.chemicals[chemical].name,
                               too_thin
                                   ? "the solutions that it is made of bring less than a molecule of it into a litre"
                                   : "neither a line of it nor a solution that it is made of has an amount of it")};
}

std::variant<std::vector<Why>, Refusal> why_of(const Model& model, const check::Section& as_written,
                                               const CardRequest& request, Id chemical) {
    const auto scale = batch_scale(model, request);
    if (const auto* refusal = std::get_if<Refusal>(&scale)) return *refusal;
    const auto script = script_of(model, request.section, request.variant);
    if (const auto* refusal = std::get_if<Refusal>(&script)) return *refusal;
    auto found = Deriver(model, as_written, request, std::get<Exact>(scale), chemical).all(std::get<Script>(script));
    const Portion batch{request.section, request.variant,
                        model.sections[request.section].makes_ml * std::get<Exact>(scale)};
    Shares shares = shares_in(model, batch, chemical);
    std::ranges::move(shares.found, std::back_inserter(found));
    if (found.empty()) return nothing_of(model, request.section, chemical, shares.any_too_thin);
    return found;
}

}  // namespace

std::variant<std::vector<Why>, Refusal> why(const Model& model, const CardRequest& request, Id chemical) {
    const auto settled = settle(model, request);
    if (const auto* refusal = std::get_if<Refusal>(&settled)) return *refusal;
    const auto& changed = std::get<Settled>(settled).model;
    return why_of(changed ? *changed : model, model.sections[request.section], request, chemical);
}

}  // namespace scruple::plan
