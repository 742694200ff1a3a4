// SPDX-License-Identifier: MIT
#include "scruple/plan/rescaling.hpp"

#include "gather.hpp"
#include "line_details.hpp"
#include "making_details.hpp"
#include "rescaling_of.hpp"
#include "scruple/check/contents.hpp"
#include "words.hpp"

namespace scruple::plan {

namespace {

using check::Addition;
using check::Exact;
using check::Model;
using By = Addition::By;
using LinePiece = GrowingLine::Piece;
using Read = GrowingAmount::Read;

Read read_of(By by) {
    if (by == By::volume) return Read::measured;
    return by == By::drops ? Read::dropped : Read::weighed;
}

class Rescaler {
  public:
    Rescaler(const Model& model, const Script& script) : model_(model), script_(script) {}

    void fill(Rescaling& all) {
        for (const Step& step : script_.steps) all.lines.push_back(line_of(step));
        for (const Addition* addition : things_) all.things.push_back(thing_of(*addition));
    }

  private:
    GrowingLine line_of(const Step& step) {
        GrowingLine line;
        line.vessel = step.vessel;
        switch (step.what) {
            case Step::What::put:
                step.addition->how == Addition::How::to_make ? make_up(step, line) : put(step, line);
                break;
            case Step::What::open:
                open(step, line);
                break;
            case Step::What::pour:
                pour(step, line);
                break;
            case Step::What::act:
            case Step::What::aside:
                break;
        }
        return line;
    }

    void put(const Step& step, GrowingLine& line) {
        const Addition& addition = *step.addition;
        const check::Dose dose = check::dose_of(model_, addition, step.measure);
        line.what = GrowingLine::What::put;
        line.piece = piece_of(step);
        line.thing = thing(addition);
        line.whole = {read_of(addition.by),
                      as_read(addition, step.piece == Step::Piece::whole ? step.measure : step.divided)};
        line.piece_amount = as_read(addition, step.measure);
        line.room_ml = dose.room_ml;
        line.room_estimated = dose.room_estimated;
        line.counts = !addition.optional;
        line.advised = !is_water(model_, addition) && addition.by != By::drops &&
                       (addition.by == By::volume || addition.chemical != check::none);
        line.details = put_details(model_, step);
    }

    static LinePiece piece_of(const Step& step) {
        if (step.piece == Step::Piece::whole) return LinePiece::whole;
        if (step.piece == Step::Piece::rest) return LinePiece::rest;
        return step.addition->now ? LinePiece::first : LinePiece::pinch;
    }

    /// What an instrument reads: moles are weighed.
    Exact as_read(const Addition& addition, const Exact& measure) const {
        return addition.by == By::amount ? check::dose_of(model_, addition, measure).grams : measure;
    }

    void make_up(const Step& step, GrowingLine& line) {
        line.what = GrowingLine::What::make_up;
        line.thing = thing(*step.addition);
        line.whole = {Read::made_up, step.measure};
        line.details = mark_details(step);
    }

    void open(const Step& step, GrowingLine& line) const {
        line.what = GrowingLine::What::open;
        if (step.making) line.details = making_details(model_, script_.makings[*step.making]);
    }

    static void pour(const Step& step, GrowingLine& line) {
        line.what = GrowingLine::What::pour;
        line.into = step.into;
        line.name = (step.making ? "the " : "") + step.vessel;
        if (step.move != nullptr) {
            if (step.move->share) line.share = *step.move->share;
            if (step.move->ml) line.ml = *step.move->ml;
        }
        line.details = pour_details(step);
    }

    std::size_t thing(const Addition& addition) {
        for (std::size_t i = 0; i < things_.size(); ++i)
            if (same_thing(*things_[i], addition)) return i;
        things_.push_back(&addition);
        return things_.size() - 1;
    }

    GrowingThing thing_of(const Addition& addition) const {
        return {gathered_name(model_, addition), form_words(model_, addition), std::string(addition.grade),
                addition.optional};
    }

    const Model& model_;
    const Script& script_;
    std::vector<const Addition*> things_;
};

}  // namespace

Rescaling rescaling_of(const Model& model, const Script& script, const check::Bench* bench, const Exact& written_ml,
                       const Exact& card_ml) {
    Rescaling all{written_ml, card_ml, {}, {}, {}};
    if (bench != nullptr) all.bench = *bench;
    Rescaler(model, script).fill(all);
    return all;
}

}  // namespace scruple::plan
