// SPDX-License-Identifier: MIT
#include "script.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "scruple/check/contents.hpp"
#include "words.hpp"

namespace scruple::plan {

namespace {

using check::Action;
using check::Addition;
using check::Exact;
using check::Id;
using check::Model;
using check::Section;
using check::VesselMove;
using How = Addition::How;
using What = Step::What;

class Writer {
  public:
    Writer(const Model& model, Id section, std::size_t variant)
        : model_(model),
          section_(model.sections[section]),
          name_(check::shown_name(model, section)),
          variant_(variant) {}

    std::variant<Script, Refusal> write() {
        for (const check::Line& line : section_.lines) {
            std::visit([this](const auto& it) { add(it); }, line);
            if (refusal_) return *refusal_;
        }
        return std::move(script_);
    }

  private:
    void add(const Action& action) {
        Step& step = append(What::act);
        step.action = &action;
    }

    void add(const VesselMove& move) {
        using Kind = VesselMove::What;
        Step& step = append(move.what == Kind::apart     ? What::open
                            : move.what == Kind::pour_in ? What::pour
                                                         : What::aside);
        step.move = &move;
        step.vessel = move.vessel;
        step.into = home_;
        here_ = move.what == Kind::apart ? std::string(move.vessel) : home_;
    }

    void add(const Addition& addition) {
        if (addition.chemical == check::none && addition.solution == check::none) return;
        if (addition.how == How::unknown) return refuse_unknown(addition);
        if (addition.by_conversion) return add_made(addition);
        put(addition, amount_of(addition));
    }

    Exact amount_of(const Addition& addition) const {
        if (section_.by_parts && addition.parts) return section_.makes_ml * *addition.parts / parts_in_all();
        return share_for(addition, variant_);
    }

    Exact parts_in_all() const {
        Exact sum;
        for (const check::Line& line : section_.lines)
            if (const auto* addition = std::get_if<Addition>(&line); addition != nullptr && addition->parts)
                sum += *addition->parts;
        return sum;
    }

    void put(const Addition& addition, const Exact& measure) {
        Step step{What::put, here_, &addition, measure, Step::Piece::whole, {}, nullptr, nullptr, {}, {}};
        if (addition.how == How::part_now) {
            step.piece = Step::Piece::first;
            step.divided = measure;
            step.measure = addition.now ? *addition.now : measure / pinches_in_a_weighing;
        } else if (addition.how == How::the_rest) {
            const Step* first = first_piece_of(addition);
            if (first == nullptr) return;
            step.piece = Step::Piece::rest;
            step.divided = first->divided;
            step.measure = first->divided - first->measure;
        }
        script_.steps.push_back(std::move(step));
    }

    const Step* first_piece_of(const Addition& rest) const {
        const auto divided = [&rest](const Step& step) {
            return step.piece == Step::Piece::first && step.addition->chemical == rest.chemical &&
                   step.addition->solution == rest.solution;
        };
        const auto found = std::find_if(script_.steps.rbegin(), script_.steps.rend(), divided);
        return found == script_.steps.rend() ? nullptr : &*found;
    }

    /// The conversion's lines in a vessel of their own, which is then poured in where the product's line stands.
    void add_made(const Addition& addition) {
        const check::Conversion* conversion = conversion_for(model_, addition.chemical, addition.form);
        if (conversion == nullptr || conversion->section == check::none) return refuse_unmade(addition);
        const Exact grams = check::dose_of(model_, addition, amount_of(addition)).grams;
        Making making = worked_out(model_, *conversion, {addition.chemical, addition.form, grams});
        if (!take_water(making.water_ml)) return refuse_dry(addition, making);
        script_.makings.push_back(std::move(making));
        const std::size_t which = script_.makings.size() - 1;
        const std::string vessel = substance_words(model_, addition);
        write_out(which, vessel);
        pour(which, vessel, addition);
    }

    void write_out(std::size_t which, const std::string& vessel) {
        const std::string outer_home = home_;
        const std::string outer_here = here_;
        home_ = here_ = vessel;
        append(What::open).making = which;
        add_lines(which);
        home_ = outer_home;
        here_ = outer_here;
    }

    void add_lines(std::size_t which) {
        const Making making = script_.makings[which];
        const std::vector<check::Line>& lines = model_.sections[making.conversion->section].lines;
        for (std::uint32_t i = 0; i < lines.size(); ++i) {
            if (const auto* addition = std::get_if<Addition>(&lines[i]))
                put(*addition, measure_in(model_, making, *addition, i));
            else
                std::visit([this](const auto& it) { add(it); }, lines[i]);
        }
    }

    void pour(std::size_t which, const std::string& vessel, const Addition& addition) {
        Step& step = append(What::pour);
        step.vessel = vessel;
        step.into = here_;
        step.making = which;
        step.addition = &addition;
    }

    /// Out of the water that stands before this line in the same vessel, the nearest first.
    bool take_water(Exact ml) {
        if (water_before() < ml) return false;
        for (auto step = script_.steps.rbegin(); step != script_.steps.rend() && ml > 0; ++step) {
            if (!is_own_water(*step)) continue;
            const Exact taken = std::min(ml, step->measure);
            step->measure -= taken;
            ml -= taken;
        }
        std::erase_if(script_.steps, [this](const Step& step) { return is_own_water(step) && step.measure.is_zero(); });
        return true;
    }

    Exact water_before() const {
        Exact sum;
        for (const Step& step : script_.steps)
            if (is_own_water(step)) sum += step.measure;
        return sum;
    }

    bool is_own_water(const Step& step) const {
        return step.what == What::put && step.vessel == here_ && is_water(model_, *step.addition) &&
               step.addition->how != How::to_make && !step.addition->optional;
    }

    Step& append(What what) {
        script_.steps.push_back({what, here_, nullptr, {}, Step::Piece::whole, {}, nullptr, nullptr, {}, {}});
        return script_.steps.back();
    }

    void refuse_unknown(const Addition& addition) {
        refuse(fmt::format("{}: the amount of {} is still `?`. Write the amount, or `about` with what to watch for.",
                           name_, substance_words(model_, addition)));
    }

    void refuse_unmade(const Addition& addition) {
        refuse(fmt::format(
            "{}: no conversion gives {}. Write a `conversion of` block for it, or leave `by conversion` out.", name_,
            substance_words(model_, addition)));
    }

    void refuse_dry(const Addition& addition, const Making& making) {
        const std::string needed = plain_ml(making.water_ml).with_unit();
        refuse(fmt::format(
            "{}: making the {} takes {} of water, and only {} stand before it. Write at least {} of water "
            "there, or make it in a recipe of its own.",
            name_, substance_words(model_, addition), needed, plain_ml(water_before()).with_unit(), needed));
    }

    void refuse(std::string message) { refusal_ = Refusal{std::move(message)}; }

    const Model& model_;
    const Section& section_;
    std::string name_;
    std::size_t variant_;
    std::string here_, home_;
    Script script_;
    std::optional<Refusal> refusal_;
};

}  // namespace

Exact share_for(const Addition& addition, std::size_t variant) {
    if (addition.shares.empty()) return {};
    return addition.shares[variant < addition.shares.size() ? variant : 0];
}

std::variant<Script, Refusal> script_of(const Model& model, Id section, std::size_t variant) {
    return Writer(model, section, variant).write();
}

}  // namespace scruple::plan
