// SPDX-License-Identifier: MIT
#include "script.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "room.hpp"
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
        for (line_ = 0; line_ < section_.lines.size(); ++line_) {
            std::visit([this](const auto& it) { add(it); }, section_.lines[line_]);
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
        put(addition, amount_in(section_, addition, variant_));
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
        const check::Conversion* conversion = check::conversion_for(model_, addition);
        if (conversion == nullptr || conversion->section == check::none) return refuse_unmade(addition);
        const Exact grams = check::dose_of(model_, addition, amount_in(section_, addition, variant_)).grams;
        check::Making making = check::making_of(model_, *conversion, {addition.chemical, addition.form, grams});
        if (const Exact wanting = take_water(making.water_ml); wanting > 0)
            return refuse_dry(addition, making.water_ml, wanting);
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
        const check::Making making = script_.makings[which];
        const std::vector<check::Line>& lines = model_.sections[making.conversion->section].lines;
        for (std::uint32_t i = 0; i < lines.size(); ++i) {
            if (const auto* addition = std::get_if<Addition>(&lines[i]))
                put(*addition, check::measure_in(model_, making, *addition, i));
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

    /// Out of the recipe's own volumes: the water that stands before this line in the same vessel, the nearest first,
    /// and then the room that is left under the mark. Gives what is wanting.
    Exact take_water(Exact ml) {
        Exact spare = std::min(ml, spare_water());
        ml -= spare;
        for (auto step = script_.steps.rbegin(); step != script_.steps.rend() && spare > 0; ++step) {
            if (!is_own_water(*step)) continue;
            const Exact taken = std::min(spare, step->measure);
            step->measure -= taken;
            spare -= taken;
        }
        std::erase_if(script_.steps, [this](const Step& step) { return is_own_water(step) && step.measure.is_zero(); });
        if (ml.is_zero()) return ml;
        const Exact from_room = std::min(ml, room_left());
        taken_from_room_ += from_room;
        return ml - from_room;
    }

    /// Half of the water stays where something is to dissolve in it: common practice, no source.
    Exact spare_water() const {
        Exact there, written;
        for (const Step& step : script_.steps) {
            if (!is_own_water(step)) continue;
            there += step.measure;
            written += share_for(*step.addition, variant_);
        }
        return solids_before() ? std::max(there - written / 2, Exact()) : there;
    }

    bool solids_before() const {
        return std::ranges::any_of(script_.steps, [this](const Step& step) {
            return step.what == What::put && step.vessel == here_ && !is_own_water(step);
        });
    }

    /// What the make-up would fill with water, less what conversions have had of it.
    Exact room_left() const {
        const auto mark = here_.empty() ? mark_after(section_, line_, variant_) : std::nullopt;
        if (!mark) return {};
        return std::max(*mark - room_of_lines(model_, section_, variant_) - taken_from_room_, Exact());
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

    void refuse_dry(const Addition& addition, const Exact& needed, const Exact& wanting) {
        const std::string making = fmt::format("{}: making the {} takes {} of water, ", name_,
                                               substance_words(model_, addition), plain_ml(needed).with_unit());
        const auto mark = here_.empty() ? mark_after(section_, line_, variant_) : std::nullopt;
        if (mark)
            return refuse(making + fmt::format("{} more than the {} of the recipe have room for. So much of it needs a "
                                               "recipe that makes at least {}; or make it in a recipe of its own.",
                                               plain_ml(wanting).with_unit(), plain_ml(*mark).with_unit(),
                                               plain_ml((*mark + wanting).ceil()).with_unit()));
        refuse(making + fmt::format("and the water before it can give only {}. Write at least {} more there, or make "
                                    "it in a recipe of its own.",
                                    plain_ml(needed - wanting).with_unit(),
                                    plain_ml((wanting * (solids_before() ? 2 : 1)).ceil()).with_unit()));
    }

    void refuse(std::string message) { refusal_ = Refusal{std::move(message)}; }

    const Model& model_;
    const Section& section_;
    std::string name_;
    std::size_t variant_;
    std::size_t line_ = 0;  ///< of the section, the one that is written out now
    std::string here_, home_;
    Exact taken_from_room_;
    Script script_;
    std::optional<Refusal> refusal_;
};

}  // namespace

Exact share_for(const Addition& addition, std::size_t variant) {
    if (addition.shares.empty()) return {};
    return addition.shares[variant < addition.shares.size() ? variant : 0];
}

Exact amount_in(const check::Section& section, const Addition& addition, std::size_t variant) {
    if (section.by_parts && addition.parts) return section.makes_ml * *addition.parts / parts_in_all(section);
    return share_for(addition, variant);
}

Exact parts_in_all(const check::Section& section) {
    Exact sum;
    for (const check::Line& line : section.lines)
        if (const auto* addition = std::get_if<Addition>(&line); addition != nullptr && addition->parts)
            sum += *addition->parts;
    return sum;
}

std::variant<Script, Refusal> script_of(const Model& model, Id section, std::size_t variant) {
    return Writer(model, section, variant).write();
}

}  // namespace scruple::plan
