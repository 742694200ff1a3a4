// SPDX-License-Identifier: MIT
#include "settle.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <limits>

#include "batch_scale.hpp"
#include "log.hpp"
#include "script.hpp"
#include "scruple/plan/swap.hpp"
#include "words.hpp"

namespace scruple::plan {

namespace {

using check::Addition;
using check::Exact;
using check::Id;
using check::LogEntry;
using check::Model;
using How = Addition::How;

/// Each is weighed against all others, which takes the longer the more there are.
constexpr std::size_t most_lines = 1000;

bool says_what_there_is(const LogEntry& entry) {
    return entry.what == LogEntry::What::received || entry.what == LogEntry::What::on_shelf ||
           entry.what == LogEntry::What::mixed;
}

/// A chemical with an amount that is written, and no water.
bool may_be_met_otherwise(const Model& model, const Addition& line) {
    const bool known = line.how == How::exactly || line.how == How::about || line.how == How::part_now;
    return known && !line.worked_out && line.chemical != check::none && !is_water(model, line) && !line.optional &&
           !line.shares.empty();
}

bool matches(const Addition& line, const Missing& missing) {
    return line.chemical == missing.chemical && (missing.form == check::none || missing.form == line.form);
}

bool is_wanted_otherwise(const Model& model, const Addition& line, const std::vector<Missing>& all) {
    return may_be_met_otherwise(model, line) && !line.by_conversion &&
           std::ranges::any_of(all, [&](const Missing& missing) { return matches(line, missing); });
}

/// As large as asked for, as far as that can be told before anything is settled.
Exact likely_scale(const Model& model, const CardRequest& request) {
    const auto scale = batch_scale(model, request);
    const auto* factor = std::get_if<Exact>(&scale);
    return factor == nullptr ? Exact(1) : *factor;
}

class Settler {
  public:
    Settler(const Model& model, const CardRequest& request)
        : request_(request), settled_{model, {}}, model_(*settled_.model), scale_(likely_scale(model, request)) {
        log_known_ = std::ranges::any_of(model.log, says_what_there_is);
        std::vector<std::string> unheard;
        const auto last_day = std::numeric_limits<check::Day>::max();
        if (log_known_) left_ = stock_on(model, request.mixed_on.value_or(last_day), unheard);
    }

    std::variant<Settled, Refusal> run(const std::vector<Id>& sections) {
        if (request_.from_shelf && !log_known_)
            return Refusal{
                "The log does not say what is on the shelf. Write a `log` with what was received or counted."};
        const std::vector<std::size_t> own = lines_short(request_.section);
        if (own.size() > most_lines)
            return Refusal{fmt::format("{} lines are to be met in another way; {} are the most for one solution.",
                                       own.size(), most_lines)};
        for (const std::size_t line : own) settle_line(request_.section, line);
        if (!lacking_.empty()) return Refusal{lacking_};
        if (!settled_.choices.empty()) {
            const auto script = script_of(model_, request_.section, request_.variant);
            if (const auto* refusal = std::get_if<Refusal>(&script)) return *refusal;
        }
        for (const Id id : sections) {
            if (id == request_.section) continue;
            for (const std::size_t line : lines_to_settle(id)) settle_line(id, line);
        }
        return std::move(settled_);
    }

  private:
    // ---- which lines ----

    [[nodiscard]] std::vector<std::size_t> lines_to_settle(Id id) const {
        std::vector<std::size_t> lines;
        for (std::size_t i = 0; i < model_.sections[id].lines.size(); ++i) {
            const auto* line = std::get_if<Addition>(&model_.sections[id].lines[i]);
            if (line == nullptr || line->chemical == check::none) continue;
            if (line->by_conversion || is_wanted_otherwise(model_, *line, request_.instead)) lines.push_back(i);
        }
        return lines;
    }

    /// The same, and what the shelf has too little of; whatever stays as it is takes from the shelf first.
    std::vector<std::size_t> lines_short(Id id) {
        std::vector<std::size_t> lines = lines_to_settle(id);
        for (std::size_t i = 0; i < model_.sections[id].lines.size(); ++i) {
            const auto* line = std::get_if<Addition>(&model_.sections[id].lines[i]);
            if (line == nullptr || !may_be_met_otherwise(model_, *line)) continue;
            if (std::ranges::find(lines, i) != lines.end()) continue;
            const Amount wanted = wanted_by(*line);
            const bool enough = held(left_, wanted.ware) >= wanted.measure;
            if (enough || !request_.from_shelf)
                take_own(left_, wanted);
            else
                lines.push_back(i);
        }
        std::ranges::sort(lines);
        return lines;
    }

    [[nodiscard]] Amount wanted_by(const Addition& line) const {
        return counted(model_, line, share_for(line, request_.variant) * scale_);
    }

    // ---- one line ----

    void settle_line(Id id, std::size_t index) {
        const Addition line = std::get<Addition>(model_.sections[id].lines[index]);
        Choice choice{.asked = {id, index, request_.variant, wanted_by(line)},
                      .as_written = line.by_conversion,
                      .says_from = line.made_from != check::none,
                      .log_known = log_known_};
        const Shelf shelf = shelf_for(choice);
        std::vector<Way> ways = ways_to(model_, shelf, choice.asked.wanted);
        keep_fitting(line, ways);
        if (line.by_conversion)
            put_conversions_first(line, choice, ways);
        else
            choice.also = stand_ins(model_, shelf, choice.asked.wanted);
        take_the_first_that_fits(std::move(ways), std::move(choice));
    }

    /// What the recipe wants made is made; what it could be spared for is told.
    void put_conversions_first(const Addition& line, Choice& choice, std::vector<Way>& ways) const {
        const auto is_made = [](const Way& way) { return way.kind == Way::Kind::conversion; };
        std::erase_if(ways, [&](const Way& way) { return !is_made(way) && way.supply != Way::Supply::enough; });
        std::ranges::stable_sort(
            ways, {}, [&](const Way& way) { return std::pair(!is_allowed(model_, line, way), !is_made(way)); });
        for (Way& way : ways)
            if (!is_made(way)) way.lacking = "on hand, but the recipe wants it made";
        const Amount& wanted = choice.asked.wanted;
        if (log_known_ && held(left_, wanted.ware) >= wanted.measure)
            choice.also.push_back(ware_words(model_, wanted.ware) + " as it is: on hand, but the recipe wants it made");
    }

    [[nodiscard]] Shelf shelf_for(const Choice& choice) const {
        Shelf shelf{.stock = log_known_ ? &left_ : nullptr, .making = choice.asked.section};
        const Ware& asked = choice.asked.wanted.ware;
        if (choice.as_written) return shelf;
        shelf.missing.push_back(asked);
        const bool in_any_form = !log_known_ && std::ranges::any_of(request_.instead, [&](const Missing& missing) {
            return missing.chemical == asked.chemical && missing.form == check::none;
        });
        for (Id form = 0; in_any_form && form < model_.chemicals[asked.chemical].forms.size(); ++form)
            shelf.missing.push_back(counted(model_, Ware{asked.chemical, form, std::nullopt, false}, 1).ware);
        return shelf;
    }

    /// A divided weighing stays a weighing; a line that asks for a solution is not made from crystals at the bench.
    static void keep_fitting(const Addition& line, std::vector<Way>& ways) {
        std::erase_if(ways, [&](const Way& way) {
            if (line.how == How::part_now) return way.kind != Way::Kind::form;
            return way.kind == Way::Kind::conversion && (line.strength || line.saturated_at);
        });
    }

    void take_the_first_that_fits(std::vector<Way> ways, Choice choice) {
        bool taken = false;
        for (Way& way : ways) {
            if (!taken && may_be_taken(way, choice) && fits(way, choice)) {
                take(left_, way);
                choice.taken = std::move(way);
                taken = true;
            } else {
                choice.others.push_back(std::move(way));
            }
        }
        if (!taken && !choice.as_written) return say_no_way(choice);
        if (choice.asked.section == request_.section && taken) settled_.choices.push_back(std::move(choice));
    }

    /// What a recipe wants made is made, and the card says what is short; else only from what is there.
    static bool may_be_taken(const Way& way, const Choice& choice) {
        if (way.kind == Way::Kind::advice) return false;
        return (choice.as_written && way.kind == Way::Kind::conversion) || way.supply <= Way::Supply::unknown;
    }

    bool fits(Way& way, const Choice& choice) {
        std::string misfit = refit(model_, choice.asked, way);
        if (misfit.empty()) return true;
        way.lacking = std::move(misfit);
        return false;
    }

    void say_no_way(const Choice& choice) {
        if (choice.asked.section != request_.section) return;  // Its own card says so.
        const Amount& wanted = choice.asked.wanted;
        if (!lacking_.empty()) lacking_ += '\n';
        lacking_ += fmt::format("There is no way to {} {} {}.", measure_words(wanted), ware_words(model_, wanted.ware),
                                log_known_ ? "from what the log has on hand" : "but by itself");
        for (const Way& way : choice.others) lacking_ += "\n    " + other_way_words(model_, way);
        for (const std::string& other : choice.also) lacking_ += "\n    " + other;
    }

    const CardRequest& request_;
    Settled settled_;
    Model& model_;
    Exact scale_;
    bool log_known_ = false;
    Stock left_;
    std::string lacking_;
};

}  // namespace

std::variant<Settled, Refusal> settle(const Model& model, const CardRequest& request) {
    return settle(model, request, reach_of(model, request.section));
}

std::variant<Settled, Refusal> settle(const Model& model, const CardRequest& request, const Reach& reach) {
    if (!request.from_shelf && request.instead.empty() && !reach.anything_converted) return Settled{};
    return Settler(model, request).run(sections_within(model, request.section));
}

bool asks_for(const Model& model, Id section, const Missing& missing) {
    return std::ranges::any_of(model.sections[section].lines, [&](const check::Line& line) {
        const auto* addition = std::get_if<Addition>(&line);
        return addition != nullptr && is_wanted_otherwise(model, *addition, {missing});
    });
}

}  // namespace scruple::plan
