// SPDX-License-Identifier: MIT
// The lines of the log in words.
#include <fmt/format.h>

#include "log.hpp"
#include "scruple/plan/calendar.hpp"

namespace scruple::plan {

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

}  // namespace

std::string line_words(const Model& model, const LogEntry& line) {
    std::string words = fmt::format("{} {}", day_text(line.day), verb_of(line.what));
    for (const auto& use : line.uses) words += fmt::format("{}{}", &use == line.uses.data() ? " " : ", ", use.text);
    if (line.what == LogEntry::What::processed) words += " in";
    words += " " + subject_of(model, line);
    if (line.grams) words += " " + plain_grams(*line.grams).with_unit();
    if (line.ml) words += " " + plain_ml(*line.ml).with_unit();
    return words;
}

std::string shortage_words(const Model& model, const Shortage& shortage) {
    return fmt::format(
        "the log's line `{}` takes {} more {} than there was", line_words(model, model.log[shortage.line]),
        stocked_figure(shortage.what, shortage.wanting).with_unit(), stocked_words(model, shortage.what));
}

Figure stocked_figure(const Stocked& what, const check::Exact& measure) {
    return what.by_volume() ? plain_ml(measure) : plain_grams(measure);
}

}  // namespace scruple::plan
