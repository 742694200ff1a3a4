// SPDX-License-Identifier: MIT
#include "scruple/plan/why.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "measures.hpp"
#include "script.hpp"
#include "scruple/check/contents.hpp"
#include "why_lines.hpp"
#include "words.hpp"

namespace scruple::plan {

namespace {

using check::Addition;
using check::Exact;
using check::Id;
using check::Model;
using By = Addition::By;
using Side = check::Conversion::Side;

const Side* side_of(const std::vector<Side>& sides, Id chemical) {
    const auto found = std::ranges::find(sides, chemical, &Side::chemical);
    return found == sides.end() ? nullptr : &*found;
}

class Deriver {
  public:
    Deriver(const Model& model, const CardRequest& request, const Exact& scale, Id chemical)
        : model_(model),
          section_(model.sections[request.section]),
          name_(check::shown_name(model, request.section)),
          variant_(request.variant),
          scale_(scale),
          chemical_(chemical),
          measures_(request.bench == check::none ? nullptr : &model.benches[request.bench]) {}

    std::vector<Why> all(const Script& script) {
        for (const check::Line& line : section_.lines)
            if (const auto* addition = std::get_if<Addition>(&line)) add(*addition, script);
        return std::move(found_);
    }

  private:
    void add(const Addition& addition, const Script& script) {
        if (addition.by_conversion) return add_made(addition, script.makings.at(next_making_++));
        if (addition.how == Addition::How::the_rest || addition.how == Addition::How::to_make) return;
        const Step* step = step_of(script, addition);
        if (addition.chemical != chemical_ || step == nullptr) return;
        WhyLines lines(model_);
        const Exact measure = scaled(addition, whole_of(*step), lines);
        finish(addition, measure, "", std::move(lines));
    }

    /// nullptr where conversions have taken all of a line's water.
    static const Step* step_of(const Script& script, const Addition& addition) {
        const auto its = [&addition](const Step& step) {
            return step.what == Step::What::put && step.addition == &addition;
        };
        const auto step = std::ranges::find_if(script.steps, its);
        return step == script.steps.end() ? nullptr : &*step;
    }

    static Exact whole_of(const Step& step) { return step.piece == Step::Piece::first ? step.divided : step.measure; }

    /// The amount as written, less what a conversion has of it, and as scaled; in g, ml, mol or drops.
    Exact scaled(const Addition& addition, const Exact& left, WhyLines& lines) const {
        const Exact written = share_for(addition, variant_);
        lines.written(addition, substance_words(model_, addition), written, section_.makes_ml);
        if (left != written) lines.less(written, written - left, unit_of(addition));
        lines.scaled(left, unit_of(addition), scale_, section_.makes_ml);
        return left * scale_;
    }

    void add_made(const Addition& product, const check::Making& making) {
        if (side_of(making.conversion->left, chemical_) == nullptr) return;
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
    const check::Section& section_;
    std::string name_;
    std::size_t variant_;
    Exact scale_;
    Id chemical_;
    Measures measures_;
    std::size_t next_making_ = 0;
    std::vector<Why> found_;
};

Refusal nothing_of(const Model& model, Id section, Id chemical) {
    return Refusal{
        fmt::format("{} takes no {} of its own. Ask for one of the solutions that it is made of, or for a "
                    "chemical of its lines.",
                    check::shown_name(model, section), model.chemicals[chemical].name)};
}

}  // namespace

std::variant<std::vector<Why>, Refusal> why(const Model& model, const CardRequest& request, Id chemical) {
    const auto scale = scale_of(model, request);
    if (const auto* refusal = std::get_if<Refusal>(&scale)) return *refusal;
    const auto script = script_of(model, request.section, request.variant);
    if (const auto* refusal = std::get_if<Refusal>(&script)) return *refusal;
    auto found = Deriver(model, request, std::get<Exact>(scale), chemical).all(std::get<Script>(script));
    if (found.empty()) return nothing_of(model, request.section, chemical);
    return found;
}

}  // namespace scruple::plan
