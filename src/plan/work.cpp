// SPDX-License-Identifier: MIT
#include "work.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>

#include "advice.hpp"
#include "gather.hpp"
#include "scruple/check/contents.hpp"
#include "words.hpp"

namespace scruple::plan {

namespace {

using check::Action;
using check::Addition;
using check::Dose;
using check::Exact;
using Do = Work::Do;
using How = Addition::How;
using By = Addition::By;
using Piece = Step::Piece;
using What = Step::What;

std::string equals(const Figure& figure) {
    return fmt::format("(= {})", figure.with_unit());
}

Figure three_figures(const Exact& ml) {
    return plain(ml, "ml", 3);
}

Do what_to_do(const Action& action) {
    switch (action.verb) {
        case Action::Verb::stir:
            return Do::stir;
        case Action::Verb::wait:
            return Do::wait;
        case Action::Verb::stand:
            return Do::stand;
        case Action::Verb::filter:
            return Do::filter;
        case Action::Verb::cool:
            return Do::cool;
        case Action::Verb::warm:
            return Do::warm;
        case Action::Verb::not_above:
            return Do::watch;
        case Action::Verb::do_this:
            return Do::act;
    }
    return Do::act;
}

/// What is in a vessel: all that was put there, and what has not been poured out of it.
struct Vessel {
    Exact full, left;
    bool estimated = false;
    void add(const Exact& ml, bool is_estimate) {
        full += ml;
        left += ml;
        estimated = estimated || is_estimate;
    }
};

class Worker {
  public:
    explicit Worker(const Batch& batch) : batch_(batch), gather_(batch.model) {}

    Worked work() {
        for (const Step& step : batch_.script.steps) add(step);
        mark_what_must_be_clear();
        return {std::move(work_), gather_.take(), std::move(assumed_)};
    }

  private:
    void add(const Step& step) {
        switch (step.what) {
            case What::put:
                return put(step);
            case What::act:
                return act(step);
            case What::open:
                return open(step);
            case What::pour:
                return pour(step);
            case What::aside:
                line(Do::set_aside, "set aside: " + step.vessel, "");
                return;
        }
    }

    Work& line(Do what_to_do, std::string what, const std::string& vessel) {
        Work work;
        work.n = static_cast<int>(work_.size()) + 1;
        work.what_to_do = what_to_do;
        work.what = std::move(what);
        work.vessel = vessel;
        work_.push_back(std::move(work));
        return work_.back();
    }

    void act(const Step& step) {
        Work& work = line(what_to_do(*step.action), action_words(*step.action), step.vessel);
        if (step.action->seconds) work.seconds = step.action->seconds->high.to_double();
    }

    void put(const Step& step) {
        const Addition& addition = *step.addition;
        if (addition.how == How::to_make) return make_up(step);
        const Exact measure = step.measure * batch_.scale;
        const Dose dose = check::dose_of(batch_.model, addition, measure);
        const bool water = is_water(batch_.model, addition);
        const bool starts = water && vessels_[step.vessel].full.is_zero();
        Work& work = line(starts ? Do::water : Do::add, substance_words(batch_.model, addition), step.vessel);
        if (addition.at) work.at = celsius_text(*addition.at);
        work.about = addition.how == How::about;
        work.optional = addition.optional;
        work.weighed_box = !water && step.piece != Piece::rest;
        fill_amount(step, measure, dose, work);
        fill_details(step, dose, work);
        if (addition.optional) return assume("Optional lines are not counted in the running volume or the contents.");
        if (work.about) assume("An amount marked about counts as it stands; the bench finds the true one.");
        run(work, dose.room_ml, dose.room_estimated);
    }

    void run(Work& work, const Exact& ml, bool estimated) {
        if (estimated) assume_room();
        Vessel& vessel = vessels_[work.vessel];
        vessel.add(ml, estimated);
        show_running(work, vessel);
    }

    static void show_running(Work& work, const Vessel& vessel) {
        work.running = vessel.estimated ? three_figures(vessel.left) : plain_ml(vessel.left);
        work.running_estimated = vessel.estimated;
    }

    void make_up(const Step& step) {
        const Exact ml = step.measure * batch_.scale;
        const Reading reading = batch_.measures.made_up(ml);
        Work& work = line(Do::make_up, substance_words(batch_.model, *step.addition), step.vessel);
        work.amount = reading.figure;
        work.up_to = true;
        if (step.addition->at) work.at = celsius_text(*step.addition->at);
        if (!reading.goes.empty()) work.details.push_back(reading.goes);
        add_written(*step.addition, work);
        append(work.details, detail_words(step.addition->details));
        Vessel& vessel = vessels_[step.vessel];
        gather_.add_about(*step.addition, ml - vessel.left);
        vessel = {ml, ml, false};
        show_running(work, vessel);
    }

    // ---- amounts ----

    void fill_amount(const Step& step, const Exact& measure, const Dose& dose, Work& work) {
        if (step.piece != Piece::whole) return fill_divided(step, dose, work);
        const Reading reading = read(*step.addition, measure, dose);
        work.amount = reading.figure;
        if (!reading.goes.empty()) work.details.push_back(reading.goes);
        work.advice = advice(*step.addition, measure, dose, reading);
        gather_.add(*step.addition, reading.figure, dose.mol);
    }

    Reading read(const Addition& addition, const Exact& measure, const Dose& dose) const {
        switch (addition.by) {
            case By::mass:
                return batch_.measures.weighed(measure);
            case By::volume:
                return batch_.measures.measured(measure);
            case By::amount:
                return batch_.measures.weighed(dose.grams);
            case By::drops:
                return batch_.measures.dropped(measure);
        }
        return {};
    }

    std::vector<std::string> advice(const Addition& addition, const Exact& measure, const Dose& dose,
                                    const Reading& reading) const {
        if (is_water(batch_.model, addition) || addition.by == By::drops) return {};
        const Exact exact = addition.by == By::amount ? dose.grams : measure;
        const Wanted wanted{batch_.model, addition, batch_.measures, exact, batch_.makes_ml, reading};
        if (addition.by == By::volume) return measuring_advice(wanted);
        return addition.chemical == check::none ? std::vector<std::string>{} : weighing_advice(wanted);
    }

    /// The whole is weighed once, before its first piece goes in.
    void fill_divided(const Step& step, const Dose& piece, Work& work) {
        const Exact whole = step.divided * batch_.scale;
        const Dose dose = check::dose_of(batch_.model, *step.addition, whole);
        const Reading reading = read(*step.addition, whole, dose);
        if (step.piece == Piece::rest) return fill_rest(step, reading.figure, work);
        gather_.add(*step.addition, reading.figure, dose.mol, "weighed once, used in two goes");
        if (!reading.goes.empty()) work.details.push_back(reading.goes);
        work.advice = advice(*step.addition, whole, dose, reading);
        const std::string of = " of the " + reading.figure.with_unit() + " weighed out";
        if (step.addition->now) {
            work.amount = read(*step.addition, step.measure * batch_.scale, piece).figure;
            work.details.push_back("first piece" + of);
        } else {
            work.details.push_back("a pinch" + of);
            assume("A pinch counts as 2\u00A0% of the weighing in the running volume.");
        }
    }

    void fill_rest(const Step& step, const Figure& whole, Work& work) const {
        work.what += ", the rest";
        work.amount = whole;
        work.details.push_back("what is left of the " + whole.with_unit() + " weighed out");
        if (const Figure* first = first_piece(step)) {
            const Exact unit = whole.unit == "kg" || whole.unit == "l" ? 1000 : 1;
            const Exact piece_unit = first->unit == "kg" || first->unit == "l" ? 1000 : 1;
            const Exact printed = whole.value * unit - first->value * piece_unit;
            const Exact exact = whole.exact * unit - first->exact * piece_unit;
            work.amount = step.addition->by == By::volume ? ml_as_read(printed, exact) : grams_as_read(printed, exact);
        }
    }

    /// The figure of the first piece, where it was stated.
    const Figure* first_piece(const Step& rest) const {
        const std::string name = substance_words(batch_.model, *rest.addition);
        for (auto work = work_.rbegin() + 1; work != work_.rend(); ++work)
            if (work->what == name && work->amount && !work->details.empty() &&
                work->details.front().starts_with("first piece"))
                return &*work->amount;
        return nullptr;
    }

    // ---- details ----

    void fill_details(const Step& step, const Dose& dose, Work& work) {
        const Addition& addition = *step.addition;
        if (addition.strength && !dose.grams.is_zero()) work.details.push_back(equals(plain(dose.grams, "g", 3)));
        if (addition.by == By::drops && !dose.ml.is_zero()) work.details.push_back(equals(plain(dose.ml, "ml", 3)));
        if (addition.parts)
            work.details.push_back(quantity::exact_text(*addition.parts) + (*addition.parts == 1 ? " part" : " parts"));
        if (step.piece != Piece::rest) add_written(addition, work);
        append(work.details, detail_words(addition.details));
        if (addition.optional)
            work.details.push_back(
                addition.optional_reason.empty() ? "optional" : "optional: " + std::string(addition.optional_reason));
        assume_density(addition);
    }

    void add_written(const Addition& addition, Work& work) const {
        if (batch_.scale != 1) return;
        if (std::string text = as_written(addition); !text.empty()) work.details.push_back(std::move(text));
    }

    static void append(std::vector<std::string>& to, std::vector<std::string> from) {
        to.insert(to.end(), from.begin(), from.end());
    }

    // ---- vessels ----

    void open(const Step& step) {
        Work& work = line(Do::open_vessel,
                          step.making ? "take a vessel for the " + step.vessel : "take a second vessel: " + step.vessel,
                          step.vessel);
        if (step.making) describe_making(batch_.script.makings[*step.making], work);
    }

    void describe_making(const Making& making, Work& work) {
        const check::Chemical& product = batch_.model.chemicals[making.product.chemical];
        work.details.push_back(fmt::format("makes {} {}", plain_grams(making.product.grams * batch_.scale).with_unit(),
                                           check::shown_name(product, making.product.form)));
        const bool fizzes = !making.gases.empty();
        for (const Share& gas : making.gases)
            work.details.push_back(fmt::format(
                "gives off about {} of {}", plain(litres_of_gas(batch_.model, gas) * batch_.scale, "l", 2).with_unit(),
                batch_.model.chemicals[gas.chemical].name));
        const auto& stated = making.conversion->vessel_times;
        if (!fizzes && !stated) return;
        const Exact times = stated ? *stated : Exact(2);
        work.details.push_back(fmt::format("an open vessel that holds at least {}",
                                           plain(solution_ml(making) * times, "ml", 2).with_unit()));
        if (!stated) assume("A vessel in which gas is given off is taken at twice its contents.");
    }

    /// The conversion's own volume: its water and the room of its reagents.
    Exact solution_ml(const Making& making) const {
        Exact ml = making.water_ml;
        for (const Share& share : making.reagents) {
            const check::Chemical& chemical = batch_.model.chemicals[share.chemical];
            const check::Id form = share.form < chemical.forms.size() ? share.form : 0;
            ml += check::room_of_solid(chemical, chemical.forms[form], share.grams);
        }
        return ml * batch_.scale;
    }

    void pour(const Step& step) {
        Vessel& from = vessels_[step.vessel];
        const Exact ml = poured_ml(step, from);
        const bool all = ml == from.left;
        const bool estimated = from.estimated;
        from.left -= ml;
        Work& work = line(Do::pour_in, fmt::format("pour in {}{}", all ? "" : "part of ", step.vessel), step.into);
        if (!all) {
            work.amount = estimated ? three_figures(ml) : batch_.measures.measured(ml).figure;
            work.about = estimated;
        }
        if (step.move != nullptr) append(work.details, detail_words(step.move->details));
        if (step.addition != nullptr) append(work.details, detail_words(step.addition->details));
        run(work, ml, estimated);
    }

    Exact poured_ml(const Step& step, const Vessel& from) const {
        if (step.move == nullptr) return from.left;
        Exact ml = from.left;
        if (step.move->share) ml = from.full * *step.move->share;
        if (step.move->ml) ml = *step.move->ml * batch_.scale;
        return std::min(ml, from.left);
    }

    // ---- boxes, assumptions ----

    /// What is weighed must be clear where a `stir until clear` follows it at once.
    void mark_what_must_be_clear() {
        for (std::size_t i = 0; i < work_.size(); ++i) {
            if (work_[i].what_to_do != Do::stir || work_[i].what.find("until clear") == std::string::npos) continue;
            work_[i].clear_box = true;
        }
    }

    void assume_room() {
        assume(
            "The room that solids take up in the running volume is an estimate; the final volume is the one you read.");
    }

    void assume_density(const Addition& addition) {
        if (addition.chemical == check::none || is_water(batch_.model, addition)) return;
        const check::Chemical& chemical = batch_.model.chemicals[addition.chemical];
        const auto density = check::density_of(chemical, addition.form, addition.strength);
        if (!density) return;
        assume(fmt::format("Density of {}: {}{}g/ml.", substance_words(batch_.model, addition),
                           quantity::significant_text(*density, 5), unit_blank));
    }

    void assume(std::string text) {
        if (std::ranges::find(assumed_, text) == assumed_.end()) assumed_.push_back(std::move(text));
    }

    const Batch& batch_;
    GatherList gather_;
    std::vector<Work> work_;
    std::map<std::string, Vessel> vessels_;
    std::vector<std::string> assumed_;
};

}  // namespace

Worked work_of(const Batch& batch) {
    return Worker(batch).work();
}

}  // namespace scruple::plan
