// SPDX-License-Identifier: MIT
#include "work.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>

#include "amounts.hpp"
#include "line_details.hpp"
#include "making_details.hpp"
#include "words.hpp"

namespace scruple::plan {

namespace {

using check::Action;
using check::Addition;
using check::Dose;
using check::Exact;
using Do = Work::Do;
using How = Addition::How;
using Piece = Step::Piece;
using What = Step::What;

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

double middle(const check::Interval& range) {
    return ((range.low + range.high) / 2).to_double();
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
    explicit Worker(const Batch& batch) : batch_(batch), gather_(batch.model), amounts_(batch, gather_, assumptions_) {}

    Worked work() {
        for (const Step& step : batch_.script.steps) add(step);
        return {std::move(work_), gather_.take(), assumptions_.take()};
    }

  private:
    void add(const Step& step) {
        switch (step.what) {
            case What::put:
                return step.addition->how == How::to_make ? make_up(step) : put(step);
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
        Work& work = work_.emplace_back();
        work.n = static_cast<int>(work_.size());
        work.what_to_do = what_to_do;
        work.what = std::move(what);
        work.vessel = vessel;
        return work;
    }

    void act(const Step& step) {
        Work& work = line(what_to_do(*step.action), action_words(*step.action), step.vessel);
        if (step.action->seconds) work.seconds = step.action->seconds->high.to_double();
        if (step.action->celsius) work.celsius = middle(*step.action->celsius);
        for (const check::Detail& detail : step.action->details) {
            work.stays = work.stays || detail.what == check::Detail::What::stirring;
            if (detail.what == check::Detail::What::stirring_every) work.stirred_every = detail.value.to_double();
        }
        work.clear_box = until_clear(*step.action);
    }

    void put(const Step& step) {
        const Addition& addition = *step.addition;
        const Dose dose = check::dose_of(batch_.model, addition, step.measure * batch_.scale);
        const bool water = is_water(batch_.model, addition);
        const bool starts = water && vessels_[step.vessel].full.is_zero();
        Work& work = line(starts ? Do::water : Do::add, substance_words(batch_.model, addition), step.vessel);
        if (addition.at) {
            work.at = celsius_text(*addition.at);
            work.celsius = middle(*addition.at);
        }
        work.slowly = std::ranges::find(addition.details, check::Detail::What::slowly, &check::Detail::what) !=
                      addition.details.end();
        work.about = addition.how == How::about;
        work.optional = addition.optional;
        work.weighed_box = !water && step.piece != Piece::rest;
        amounts_.fill(step, dose, work);
        describe(step, work);
        if (addition.optional)
            return assumptions_.add("Optional lines are not counted in the running volume or the contents.");
        if (work.about) assumptions_.add("An amount marked about counts as it stands; the bench finds the true one.");
        run(work, dose.room_ml * as_measured(work), dose.room_estimated);
    }

    /// What the instrument reads over what was meant: the running volume is that of the bench.
    static Exact as_measured(const Work& work) {
        return work.amount && !work.amount->exact.is_zero() ? work.amount->value / work.amount->exact : Exact(1);
    }

    void make_up(const Step& step) {
        const Exact ml = step.measure * batch_.scale;
        const Reading reading = batch_.measures.made_up(ml);
        Work& work = line(Do::make_up, substance_words(batch_.model, *step.addition), step.vessel);
        work.amount = reading.figure;
        work.up_to = true;
        if (step.addition->at) work.at = celsius_text(*step.addition->at);
        if (!reading.goes.empty()) work.details.push_back(reading.goes);
        append_details(work.details, mark_details(step), batch_.scale);
        Vessel& vessel = vessels_[step.vessel];
        const Exact mark = ml * as_measured(work);
        gather_.add_about(*step.addition, mark - vessel.left);
        vessel = {mark, mark, false};
        show_running(work, vessel);
    }

    // ---- running volume ----

    void run(Work& work, const Exact& ml, bool estimated) {
        if (estimated)
            assumptions_.add(
                "The room that solids take up in the running volume is an estimate; the final volume is the one you "
                "read.");
        Vessel& vessel = vessels_[work.vessel];
        vessel.add(ml, estimated);
        show_running(work, vessel);
    }

    static void show_running(Work& work, const Vessel& vessel) {
        work.running = vessel.estimated ? three_figures(vessel.left) : plain_ml(vessel.left);
        work.running_estimated = vessel.estimated;
    }

    // ---- details ----

    void describe(const Step& step, Work& work) {
        append_details(work.details, put_details(batch_.model, step), batch_.scale);
        if (step.addition->by == Addition::By::drops) assume_dropper();
        assume_density(*step.addition);
    }

    void assume_dropper() {
        const check::Bench* bench = batch_.measures.bench();
        if (bench != nullptr && bench->drops_per_ml)
            assumptions_.add(fmt::format("The dropper gives {} drops of water to 1{}ml; other liquids drop otherwise.",
                                         quantity::exact_text(*bench->drops_per_ml), unit_blank));
    }

    void assume_density(const Addition& addition) {
        if (addition.chemical == check::none || is_water(batch_.model, addition)) return;
        const check::Chemical& chemical = batch_.model.chemicals[addition.chemical];
        const bool by_volume = addition.by == Addition::By::volume || addition.by == Addition::By::drops;
        const bool of_solution =
            check::density_need(chemical, addition.strength, by_volume) == check::DensityNeed::of_solution;
        const auto density = check::density_of(chemical, addition.form,
                                               of_solution ? addition.strength : check::Seldom<check::Strength>());
        if (!density) return;
        assumptions_.add(fmt::format(
            "{} is taken to weigh {}{}g a ml.",
            of_solution ? substance_words(batch_.model, addition) : check::shown_name(chemical, addition.form),
            quantity::significant_text(*density, 5), unit_blank));
    }

    // ---- vessels ----

    void open(const Step& step) {
        const std::string words = step.making ? "take a vessel for the " : "take a second vessel: ";
        Work& work = line(Do::open_vessel, words + step.vessel, step.vessel);
        vessels_[step.vessel] = {};
        if (step.making) describe_making(batch_.script.makings[*step.making], work);
    }

    void describe_making(const check::Making& making, Work& work) {
        append_details(work.details, making_details(batch_.model, making), batch_.scale);
        assume_of_making(batch_.model, making, assumptions_);
    }

    void pour(const Step& step) {
        Vessel& from = vessels_[step.vessel];
        const Exact ml = poured_ml(step, from);
        const bool all = ml == from.left;
        const bool estimated = from.estimated;
        from.left -= ml;
        Work& work = line(Do::pour_in,
                          fmt::format("pour in {}{}{}", all ? "" : "part of ", step.making ? "the " : "", step.vessel),
                          step.into);
        if (!all) {
            work.amount = estimated ? three_figures(ml) : batch_.measures.measured(ml).figure;
            work.about = estimated;
        }
        append_details(work.details, pour_details(step), batch_.scale);
        run(work, ml, estimated);
    }

    Exact poured_ml(const Step& step, const Vessel& from) const {
        if (step.move == nullptr) return from.left;
        Exact ml = from.left;
        if (step.move->share) ml = from.full * *step.move->share;
        if (step.move->ml) ml = *step.move->ml * batch_.scale;
        return std::min(ml, from.left);
    }

    const Batch& batch_;
    GatherList gather_;
    Assumptions assumptions_;
    Amounts amounts_;
    std::vector<Work> work_;
    std::map<std::string, Vessel> vessels_;
};

}  // namespace

Worked work_of(const Batch& batch) {
    return Worker(batch).work();
}

}  // namespace scruple::plan
