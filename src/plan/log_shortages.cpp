// SPDX-License-Identifier: MIT
#include "log_shortages.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "scruple/plan/calendar.hpp"
#include "scruple/plan/figure.hpp"

namespace scruple::plan {

using check::Exact;
using check::Id;
using check::LogEntry;
using check::Model;

namespace {

std::string_view verb_of(LogEntry::What what) {
    switch (what) {
        case LogEntry::What::received:
            return "received";
        case LogEntry::What::mixed:
            return "mixed";
        case LogEntry::What::processed:
            return "processed";
        case LogEntry::What::used:
            return "used";
        case LogEntry::What::replenished:
            return "replenished";
        case LogEntry::What::on_shelf:
            return "on shelf";
        case LogEntry::What::discarded:
            return "discarded";
    }
    return "";
}

std::string subject_of(const Model& model, const LogEntry& line) {
    if (line.solution != check::none) return check::shown_name(model, line.solution);
    return check::shown_name(model.chemicals[line.chemical], line.form);
}

std::string line_words(const Model& model, const LogEntry& line) {
    std::string words = fmt::format("{} {}", day_text(line.day), verb_of(line.what));
    for (const auto& use : line.uses) words += fmt::format("{}{}", &use == line.uses.data() ? " " : ", ", use.text);
    if (line.what == LogEntry::What::processed) words += " in";
    words += " " + subject_of(model, line);
    if (line.grams) words += " " + plain_grams(*line.grams).with_unit();
    if (line.ml) words += " " + plain_ml(*line.ml).with_unit();
    return words;
}

}  // namespace

void Shortages::note(const LogEntry& line, const Ware& ware, const Exact& wanting) {
    add({&line, check::none, ware, wanting});
}

void Shortages::note(const LogEntry& line, Id solution, const Exact& ml) {
    Ware nothing;
    nothing.by_volume = true;
    add({&line, solution, nothing, ml});
}

void Shortages::add(const Shortage& shortage) {
    if (shortage.wanting <= 0) return;
    const auto same = std::ranges::find_if(all_, [&](const Shortage& other) {
        return other.line == shortage.line && other.solution == shortage.solution && other.ware == shortage.ware;
    });
    if (same == all_.end())
        all_.push_back(shortage);
    else
        same->wanting += shortage.wanting;
}

void Shortages::settle(const Ware& ware) {
    std::erase_if(all_,
                  [&](const Shortage& shortage) { return shortage.solution == check::none && shortage.ware == ware; });
}

void Shortages::settle(Id solution) {
    std::erase_if(all_, [solution](const Shortage& shortage) { return shortage.solution == solution; });
}

std::vector<std::string> Shortages::in_words(const Model& model) const {
    std::vector<std::string> sentences;
    for (const auto& [line, solution, ware, wanting] : all_) {
        const auto figure = ware.by_volume ? plain_ml(wanting) : plain_grams(wanting);
        const std::string what = solution != check::none ? check::shown_name(model, solution) : ware_words(model, ware);
        sentences.push_back(fmt::format("the log's line `{}` takes {} more {} than there was", line_words(model, *line),
                                        figure.with_unit(), what));
    }
    return sentences;
}

}  // namespace scruple::plan
