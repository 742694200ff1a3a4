// SPDX-License-Identifier: MIT
#include "pace.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>

namespace scruple::plan {

namespace {

using Do = Work::Do;

constexpr double room_celsius = 20;
constexpr double joules_per_gram_degree = 4.184;  // of water: the thermochemical calorie

Minutes whole_minutes(double minutes) {
    return static_cast<Minutes>(std::clamp(std::ceil(minutes - 1e-9), 1.0, longest_in_an_evening + 1.0));
}

double ml_in(const Work& work) {
    if (!work.amount) return 0;
    return work.amount->value.to_double() * (work.amount->unit == "l" || work.amount->unit == "kg" ? 1000 : 1);
}

class Pacer {
  public:
    Pacer(const Card& card, const Pace& pace) : card_(card), pace_(pace) {}

    std::vector<PacedStep> run(std::int64_t bottles) {
        for (const Work& work : card_.work) add(work);
        if (bottles > 0)
            put(extra(bottles == 1 ? "fill the bottle and label it" : "fill the bottles and label them"),
                whole_minutes(static_cast<double>(bottles) * pace_.bottle), 0);
        return std::move(steps_);
    }

  private:
    void add(const Work& work) {
        switch (work.what_to_do) {
            case Do::water:
            case Do::add:
                return pour(work);
            case Do::make_up:
                warm_[work.vessel] = work.celsius.value_or(room_celsius);
                return put(work, pace_.make_up, 0);
            case Do::stir:
                return put(work, asked(work).value_or(pace_.stir_clear), 0);
            case Do::wait:
            case Do::stand:
                return wait(work);
            case Do::filter:
                return put(work, pace_.filter, 0);
            case Do::cool:
                return cool(work);
            case Do::warm:
                return warm(work);
            case Do::watch:
                return;  // Nothing is done for it.
            case Do::act:
                return put(work, asked(work).value_or(pace_.act), 0);
            case Do::open_vessel:
            case Do::pour_in:
            case Do::set_aside:
                return put(work, pace_.vessel + (work.slowly ? pace_.slowly : 0), 0);
        }
    }

    [[nodiscard]] static std::optional<Minutes> asked(const Work& work) {
        if (!work.seconds) return std::nullopt;
        return whole_minutes(*work.seconds / 60);
    }

    static Work extra(std::string what) {
        Work work;
        work.what_to_do = Do::act;
        work.what = std::move(what);
        return work;
    }

    void pour(const Work& work) {
        const bool weighed = work.amount && (work.amount->unit == "g" || work.amount->unit == "kg");
        if (work.celsius && *work.celsius > pace_.warm_from) {
            Work ahead = extra("put on to warm: " + work.what);
            ahead.amount = work.amount;
            ahead.at = work.at;
            put(ahead, pace_.measure, heating(ml_in(work), room_celsius, *work.celsius));
            warm_[work.vessel] = *work.celsius;
        }
        put(work, (weighed ? pace_.weigh : pace_.measure) + (work.slowly ? pace_.slowly : 0), 0);
        if (work.running)
            volumes_[work.vessel] = work.running->value.to_double() * (work.running->unit == "l" ? 1000 : 1);
    }

    [[nodiscard]] Minutes heating(double ml, double from, double to) const {
        return whole_minutes(ml * (to - from) * joules_per_gram_degree / pace_.watts / 60);
    }

    void wait(const Work& work) {
        const Minutes minutes = asked(work).value_or(pace_.stir_clear);
        constexpr double worth_leaving = 120;  // s
        if (work.stays || work.stirred_every.value_or(worth_leaving) < worth_leaving) return put(work, minutes, 0);
        if (work.stirred_every) return stir_now_and_then(work, minutes);
        put(work, 1, minutes);
    }

    /// Each stirring is a step, soon enough after the one before.
    void stir_now_and_then(const Work& work, Minutes minutes) {
        const Minutes every = std::max<Minutes>(2, whole_minutes(*work.stirred_every / 60));
        const Minutes times = std::max<Minutes>(1, minutes / every);
        put(work, 1, every - 1);
        for (Minutes i = 2; i <= times && steps_.size() <= most_of_an_evening; ++i) {
            Work again = extra(fmt::format("stir again, {} of {}", i, times));
            again.vessel = work.vessel;
            put(std::move(again), 1, every - 1);
            steps_.back().timed.within = pace_.stir_late;
        }
    }

    void cool(const Work& work) {
        Minutes minutes = pace_.cool;
        const auto from = warm_.find(work.vessel);
        const double to = work.celsius.value_or(room_celsius);
        if (from != warm_.end())
            minutes = from->second > to ? whole_minutes((from->second - to) * pace_.cool_per_degree) : 0;
        put(work, 1, minutes);
        warm_[work.vessel] = to;
    }

    void warm(const Work& work) {
        const double to = work.celsius.value_or(room_celsius);
        const double from = warm_.contains(work.vessel) ? warm_[work.vessel] : room_celsius;
        put(work, 1, to > from ? heating(volumes_[work.vessel], from, to) : 0);
        warm_[work.vessel] = to;
    }

    /// What has been warmed does not wait long, unless it is to cool.
    void put(Work work, Minutes hands, Minutes alone) {
        TimedStep timed{hands, alone, {}, {}};
        const auto warmth = warm_.find(work.vessel);
        if (!steps_.empty() && warmth != warm_.end() && warmth->second > pace_.warm && work.what_to_do != Do::cool)
            timed.within = pace_.while_warm;
        steps_.push_back({std::move(work), std::move(timed)});
    }

    const Card& card_;
    const Pace& pace_;
    std::vector<PacedStep> steps_;
    std::map<std::string, double> warm_;     ///< °C by vessel, as last said
    std::map<std::string, double> volumes_;  ///< ml by vessel
};

}  // namespace

Pace pace_of(const check::Bench* bench) {
    Pace pace;
    if (bench == nullptr) return pace;
    const auto take = [bench](check::BenchWork work, Minutes& minutes) {
        const auto& said = bench->pace[static_cast<std::size_t>(work)];
        if (said) minutes = whole_minutes(said->to_double() / 60);
    };
    take(check::BenchWork::weigh, pace.weigh);
    take(check::BenchWork::measure, pace.measure);
    take(check::BenchWork::stir, pace.stir_clear);
    take(check::BenchWork::filter, pace.filter);
    take(check::BenchWork::make_up, pace.make_up);
    take(check::BenchWork::bottle, pace.bottle);
    return pace;
}

std::vector<PacedStep> paced(const Card& card, const Pace& pace, std::int64_t bottles) {
    return Pacer(card, pace).run(bottles);
}

std::vector<std::string> pace_words(const Pace& pace) {
    return {
        fmt::format("How long a step takes is assumed where neither its recipe nor the bench gives a time, and rounded "
                    "up to whole minutes: "
                    "to weigh something {} min, to measure a liquid {} min, {} min more where it goes in slowly, to "
                    "stir until clear {} min, to filter {} min, to make up to the mark {} min, to fill and label a "
                    "bottle {} min, anything else {} min.",
                    pace.weigh, pace.measure, pace.slowly, pace.stir_clear, pace.filter, pace.make_up, pace.bottle,
                    pace.act),
        fmt::format(
            "What is used at more than {:g} °C is warmed from {:g} °C with {:g} W, as if it were water; what is "
            "cooled stands in cold water for half a minute a degree. What is warmer than {:g} °C does not wait "
            "more than {} min for its next step. What is stirred now and then may wait {} min longer each time.",
            pace.warm_from, room_celsius, pace.watts, pace.warm, pace.while_warm, pace.stir_late),
        "There is one pair of hands and one balance; each solution has a vessel of its own until it is bottled.",
    };
}

}  // namespace scruple::plan
