// SPDX-License-Identifier: MIT
#include "json.hpp"
#include "scruple/emit/emit.hpp"

namespace scruple::emit {
namespace {

using printed::LineRead;
using printed::Option;
using printed::Question;
using printed::Settlement;
using printed::Verdict;

json::Value or_null(const std::optional<double>& value) {
    return value ? json::Value(*value) : json::Value(nullptr);
}

json::Value solution_json(const printed::SolutionRead& solution) {
    json::Value all;
    all["label"] = json::text_or_null(solution.label);
    all["makes"] = json::text_or_null(solution.makes);
    all["makes_ml"] = or_null(solution.makes_ml);
    all["added_up"] = solution.added_up;
    all["ph"] = or_null(solution.ph);
    return all;
}

json::Value line_json(const LineRead& line) {
    json::Value all;
    all["solution"] = line.solution;
    all["chemical"] = line.name;
    all["form"] = json::text_or_null(line.form);
    all["strength"] = json::text_or_null(line.strength);
    all["amount"] = json::text_or_null(line.amount);
    all["per_litre"] = or_null(line.per_litre);
    all["holds_g_per_l"] = or_null(line.holds);
    all["unit"] = line.by_volume ? "ml/l" : "g/l";
    all["evidence"] = line.evidence;
    all["fault"] = json::text_or_null(line.fault);
    all["slip"] = json::text_or_null(line.slip);
    return all;
}

std::string_view verdict_word(Verdict verdict) {
    switch (verdict) {
        case Verdict::by_hand:
            return "by hand";
        case Verdict::clear:
            return "clear";
        case Verdict::likely:
            return "likely";
        case Verdict::open:
            return "open";
    }
    return "";
}

json::Value question_json(const Question& question) {
    json::Value all;
    all["about"] = question.about;
    all["verdict"] = verdict_word(question.verdict);
    all["because"] = json::text_or_null(question.because);
    all["look_for"] = json::text_or_null(question.look_for);
    all["settle_with"] = json::text_or_null(question.settle_with);
    for (const Option& option : question.options) {
        json::Value one;
        one["reading"] = option.words;
        one["against_it"] = option.cost;
        one["changes"] = option.changes;
        one["weights"] = option.weights;
        all["readings"].push_back(std::move(one));
    }
    return all;
}

json::Value use_json(const printed::ForUse& use) {
    json::Value all;
    all["text"] = use.text;
    all["shares"] = json::each(use.shares, [](const printed::ForUse::Share& it) {
        json::Value one;
        one["solution"] = it.solution;
        one["parts"] = it.parts;
        return one;
    });
    all["water"] = json::text_or_null(use.water);
    all["holds"] = json::each(use.holds, [](const printed::ForUse::Holds& it) {
        json::Value one;
        one["chemical"] = it.name;
        one["g_per_l"] = it.per_litre;
        return one;
    });
    all["ph"] = or_null(use.ph);
    return all;
}

}  // namespace

std::string settle_json(const Settlement& settled) {
    json::Value all;
    all["kind"] = "settlement";
    all["name"] = settled.name;
    all["purpose"] = json::text_or_null(settled.purpose);
    all["book"] = json::text_or_null(settled.book);
    all["solutions"] = json::each(settled.solutions, solution_json);
    all["for_use"] = json::each(settled.for_use, use_json);
    all["lines"] = json::each(settled.lines, line_json);
    all["questions"] = json::each(settled.questions, question_json);
    all["evidence"] = settled.evidence;
    all["notes"] = settled.notes;
    all["not_read"] = settled.not_read;
    all["faults"] = settled.faults;
    all["warnings"] = json::each(settled.warnings, [](const printed::Warning& it) {
        json::Value one;
        one["about"] = it.about;
        one["text"] = it.text;
        return one;
    });
    return json::document(all);
}

}  // namespace scruple::emit
