// SPDX-License-Identifier: MIT
#include "settle_words.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "scruple/emit/words.hpp"
#include "scruple/quantity/exact.hpp"

namespace scruple::emit::settled_words {
namespace {

using printed::Option;
using printed::Question;
using printed::Settlement;
using printed::Verdict;

constexpr std::string_view faults_heading = "Lines that are not as they ought to be";
constexpr std::string_view open_heading = "Too close to call";
constexpr std::string_view other_heading = "Other readings, and what they would change";
constexpr std::string_view hand_heading = "Settled by hand";
constexpr std::string_view warnings_heading = "Old practice";
constexpr std::string_view unread_heading = "Not read";
constexpr std::string_view why_heading = "What speaks for it";

std::string figures(double value) {
    return quantity::significant_text(value, 3);
}

std::string option_words(const Option& option) {
    std::string all = "or " + option.words;
    if (option.cost > 0) all += fmt::format(": {} against it", printed::odds(option.cost));
    if (!option.weights.empty()) all += fmt::format(" ({})", words::listed(option.weights, "; "));
    if (!option.changes.empty()) all += "; with it, " + words::listed(option.changes);
    return all;
}

Told question_told(const Question& question) {
    Told told{settled_words::question(question)};
    for (std::size_t i = 1; i < question.options.size() && question.verdict != Verdict::by_hand; ++i)
        told.under.push_back(option_words(question.options[i]));
    if (question.verdict == Verdict::open && !question.look_for.empty())
        told.under.push_back("what would tell: " + question.look_for);
    if (question.verdict == Verdict::open && !question.settle_with.empty())
        told.under.push_back("settled by hand with: " + question.settle_with);
    return told;
}

Group questions_that(const Settlement& settled, std::string_view heading, auto holds) {
    Group group{heading, {}};
    for (const Question& question : settled.questions)
        if (holds(question.verdict)) group.lines.push_back(question_told(question));
    return group;
}

Group plain(std::string_view heading, const std::vector<std::string>& lines) {
    Group group{heading, {}};
    for (const std::string& line : lines) group.lines.push_back({line});
    return group;
}

Group open_questions(const Settlement& settled) {
    Group group = questions_that(settled, open_heading, [](Verdict verdict) { return verdict == Verdict::open; });
    for (const std::string& fault : settled.faults) group.lines.push_back({fault});
    return group;
}

Group faulty_lines(const Settlement& settled) {
    Group group{faults_heading, {}};
    for (const printed::LineRead& line : settled.lines) {
        const std::vector<std::string> said = faults(line);
        if (!said.empty()) group.lines.push_back({said.front(), {said.begin() + 1, said.end()}});
    }
    return group;
}

Group evidence(const Settlement& settled) {
    Group group = plain(why_heading, settled.evidence);
    for (const printed::LineRead& line : settled.lines)
        for (const std::string& text : line.evidence) group.lines.push_back({line.name + ": " + text});
    return group;
}

}  // namespace

std::string name_of(const printed::LineRead& line) {
    std::string inside = line.form;
    if (!line.strength.empty()) inside += (inside.empty() ? "" : ", ") + line.strength;
    return inside.empty() ? line.name : fmt::format("{} ({})", line.name, inside);
}

std::string per_litre(const printed::LineRead& line) {
    if (!line.per_litre) return "";
    const std::string all = fmt::format("{}\u00A0{}/l", figures(*line.per_litre), line.by_volume ? "ml" : "g");
    return line.holds ? fmt::format("{}, {}\u00A0g/l of it", all, figures(*line.holds)) : all;
}

std::string makes(const printed::SolutionRead& solution) {
    const std::string subject = solution.label.empty() ? "" : "solution " + solution.label + ": ";
    if (solution.makes.empty()) return subject + "the page says no volume, and so nothing is known by the litre";
    const std::string from =
        solution.added_up ? ", the volume of its liquids, since none to make up to is printed" : "";
    const std::string ph = solution.ph ? fmt::format("; its pH comes to about {:.1f}", *solution.ph) : "";
    return fmt::format("{}makes {}{}{}", subject, solution.makes, from, ph);
}

std::vector<std::string> faults(const printed::LineRead& line) {
    if (line.fault.empty()) return {};
    return {name_of(line) + ": " + line.fault,
            line.slip.empty() ? "no usual slip explains it" : "likely: " + line.slip};
}

std::string question(const Question& question) {
    if (question.verdict == Verdict::by_hand)
        return fmt::format("{}: {}, because {}", question.about, question.options.front().words, question.because);
    return fmt::format("{}: {}{}", question.about, question.options.front().words,
                       question.verdict == Verdict::likely ? " is likelier" : "");
}

std::vector<std::string> for_use(const printed::ForUse& use) {
    std::vector<std::string> all{"for use: " + use.text};
    std::vector<std::string> holds;
    for (const printed::ForUse::Holds& it : use.holds)
        holds.push_back(fmt::format("{} {}\u00A0g/l", it.name, figures(it.per_litre)));
    if (!holds.empty()) all.push_back("it then holds " + words::listed(holds));
    if (use.ph) all.push_back(fmt::format("its pH comes to about {:.1f}", *use.ph));
    return all;
}

std::vector<Group> groups(const Settlement& settled) {
    Group warnings{warnings_heading, {}};
    for (const printed::Warning& warning : settled.warnings)
        warnings.lines.push_back({warning.about + ": " + warning.text});
    std::vector<Group> all{
        std::move(warnings),
        faulty_lines(settled),
        open_questions(settled),
        questions_that(settled, hand_heading, [](Verdict verdict) { return verdict == Verdict::by_hand; }),
        questions_that(settled, other_heading,
                       [](Verdict verdict) { return verdict == Verdict::clear || verdict == Verdict::likely; }),
        evidence(settled),
        plain(unread_heading, settled.not_read),
        plain(words::notes_heading, settled.notes)};
    std::erase_if(all, [](const Group& group) { return group.lines.empty(); });
    return all;
}

}  // namespace scruple::emit::settled_words
