// SPDX-License-Identifier: MIT
#include "amounts.hpp"

#include "advice.hpp"
#include "words.hpp"

namespace scruple::plan {

namespace {

using check::Addition;
using check::Dose;
using check::Exact;
using By = Addition::By;

std::pair<check::Id, check::Id> key_of(const Addition& addition) {
    return {addition.chemical, addition.solution};
}

Exact in_base(const Exact& value, const Figure& figure) {
    return figure.unit == "kg" || figure.unit == "l" ? value * 1000 : value;
}

}  // namespace

Reading Amounts::read(const Addition& addition, const Exact& measure, const Exact& grams) const {
    switch (addition.by) {
        case By::mass:
            return batch_.measures.weighed(measure);
        case By::volume:
            return batch_.measures.measured(measure);
        case By::amount:
            return batch_.measures.weighed(grams);
        case By::drops:
            return batch_.measures.dropped(measure);
    }
    return {};
}

std::vector<std::string> Amounts::advice(const Addition& addition, const Reading& reading, const Exact& exact) const {
    if (is_water(batch_.model, addition) || addition.by == By::drops) return {};
    const Measuring line{batch_.model, addition, batch_.measures, exact, batch_.makes_ml, reading};
    if (addition.by == By::volume) return measuring_advice(line);
    return addition.chemical == check::none ? std::vector<std::string>{} : weighing_advice(line);
}

Reading Amounts::read_and_gather(const Addition& addition, const Exact& measure, const Dose& dose,
                                 const std::string& note, Work& work) {
    Reading reading = read(addition, measure, dose.grams);
    if (!reading.goes.empty()) work.details.push_back(reading.goes);
    work.advice = advice(addition, reading, addition.by == By::amount ? dose.grams : measure);
    gather_.add(addition, reading.figure, dose.mol, note);
    return reading;
}

void Amounts::fill(const Step& step, const Dose& dose, Work& work) {
    switch (step.piece) {
        case Step::Piece::whole:
            return fill_whole(step, dose, work);
        case Step::Piece::first:
            return fill_first(step, dose, work);
        case Step::Piece::rest:
            return fill_rest(step, work);
    }
}

void Amounts::fill_whole(const Step& step, const Dose& dose, Work& work) {
    work.amount = read_and_gather(*step.addition, step.measure * batch_.scale, dose, "", work).figure;
}

/// The whole is weighed once, before its first piece goes in.
void Amounts::fill_first(const Step& step, const Dose& piece, Work& work) {
    const Addition& addition = *step.addition;
    const Exact measure = step.divided * batch_.scale;
    const Dose dose = check::dose_of(batch_.model, addition, measure);
    Divided divided{read_and_gather(addition, measure, dose, "weighed once, used in two goes", work).figure, {}, {}};
    const std::string of = " of the " + divided.whole.with_unit() + " weighed out";
    if (addition.now) {
        work.amount = read(addition, step.measure * batch_.scale, piece.grams).figure;
        work.details.push_back("the first piece" + of);
        divided.taken = in_base(work.amount->value, *work.amount);
        divided.taken_exact = in_base(work.amount->exact, *work.amount);
    } else {
        work.details.push_back("a pinch" + of);
        assumptions_.add(std::string("A pinch counts as 2") + unit_blank + "% of the weighing in the running volume.");
    }
    divided_[key_of(addition)] = std::move(divided);
}

void Amounts::fill_rest(const Step& step, Work& work) const {
    const auto found = divided_.find(key_of(*step.addition));
    if (found == divided_.end()) return;
    const Figure& whole = found->second.whole;
    const Exact printed = in_base(whole.value, whole) - found->second.taken;
    const Exact exact = in_base(whole.exact, whole) - found->second.taken_exact;
    work.amount = step.addition->by == By::volume ? ml_as_read(printed, exact) : grams_as_read(printed, exact);
    work.what += ", the rest";
    work.details.push_back("what is left of the " + whole.with_unit() + " weighed out");
}

}  // namespace scruple::plan
