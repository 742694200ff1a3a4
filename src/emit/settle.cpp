// SPDX-License-Identifier: MIT
// What a printed page means, in all three ways.
#include <fmt/format.h>

#include <cmath>

#include "html.hpp"
#include "json.hpp"
#include "layout.hpp"
#include "scruple/emit/emit.hpp"
#include "scruple/emit/words.hpp"
#include "scruple/syntax/parse.hpp"
#include "scruple/text/printable.hpp"

namespace scruple::emit {
namespace {

using html::element;
using html::Markup;
using printed::LineRead;
using printed::Option;
using printed::Question;
using printed::Settlement;
using printed::Verdict;

constexpr std::string_view read_heading = "As it reads best";
constexpr std::string_view faults_heading = "Lines that no reading explains";
constexpr std::string_view open_heading = "Too close to call";
constexpr std::string_view other_heading = "Other readings, and what they would change";
constexpr std::string_view hand_heading = "Settled by hand";
constexpr std::string_view warnings_heading = "Old practice";
constexpr std::string_view unread_heading = "Not read";
constexpr std::string_view why_heading = "What speaks for it";

std::string name_of(const LineRead& line) {
    std::string inside = line.form;
    if (!line.strength.empty()) inside += (inside.empty() ? "" : ", ") + line.strength;
    return inside.empty() ? line.name : fmt::format("{} ({})", line.name, inside);
}

std::string per_litre(const LineRead& line) {
    if (!line.per_litre) return "";
    return fmt::format("{}\u00A0{}/l", quantity::significant_text(*line.per_litre, 3), line.by_volume ? "ml" : "g");
}

/// As odds, which say more than logarithms: `20 to 1`.
std::string odds(double cost) {
    const double times = std::exp(std::min(cost, 14.0));
    return times >= 1e6 ? "over a million to 1" : quantity::significant_text(times, times < 10 ? 2 : 1) + " to 1";
}

std::string option_words(const Option& option) {
    std::string all = option.words;
    if (option.cost > 0) all += fmt::format(": {} against it", odds(option.cost));
    if (!option.changes.empty()) all += "; " + words::listed(option.changes);
    return all;
}

std::string question_words(const Question& question) {
    if (question.verdict == Verdict::by_hand)
        return fmt::format("{}: {}, because {}", question.about, question.options.front().words, question.because);
    return fmt::format("{}: {}{}", question.about, question.options.front().words,
                       question.verdict == Verdict::likely ? " is likelier" : "");
}

std::string makes_words(const Settlement& settled) {
    if (settled.makes.empty()) return "the page says no volume, and so nothing is known by the litre";
    const std::string from = settled.added_up ? ", the volume of its liquids, since none to make up to is printed" : "";
    return fmt::format("makes {}{}", settled.makes, from);
}

std::vector<std::string> fault_words(const LineRead& line) {
    return {name_of(line) + ": " + line.fault,
            line.slip.empty() ? "no usual slip explains it" : "likely: " + line.slip};
}

/// Each group of lines under its heading, for pages and terminals alike.
struct Group {
    std::string_view heading;
    std::vector<std::string> lines;
};

std::vector<Group> groups(const Settlement& settled) {
    Group faults{faults_heading, {}};
    Group open{open_heading, {}};
    Group others{other_heading, {}};
    Group hand{hand_heading, {}};
    Group warnings{warnings_heading, {}};
    Group unread{unread_heading, settled.not_read};
    Group notes{words::notes_heading, settled.notes};
    Group why{why_heading, settled.evidence};
    for (const LineRead& line : settled.lines) {
        if (!line.fault.empty()) faults.lines.push_back(words::listed(fault_words(line), "; "));
        for (const std::string& evidence : line.evidence) why.lines.push_back(line.name + ": " + evidence);
    }
    for (const Question& question : settled.questions) {
        if (question.verdict == Verdict::by_hand) {
            hand.lines.push_back(question_words(question));
            continue;
        }
        std::vector<std::string>& into = question.verdict == Verdict::open ? open.lines : others.lines;
        std::string all = question_words(question);
        for (std::size_t i = 1; i < question.options.size(); ++i) all += "; or " + option_words(question.options[i]);
        if (question.verdict == Verdict::open && !question.settle_with.empty())
            all += "; settled by hand with " + question.settle_with;
        into.push_back(std::move(all));
    }
    for (const std::string& fault : settled.faults) open.lines.push_back(fault);
    for (const printed::Warning& warning : settled.warnings)
        warnings.lines.push_back(warning.about + ": " + warning.text);
    return {std::move(warnings), std::move(faults), std::move(open),   std::move(hand),
            std::move(others),   std::move(why),    std::move(unread), std::move(notes)};
}

json::Value line_json(const LineRead& line) {
    json::Value all;
    all["chemical"] = line.name;
    all["form"] = json::text_or_null(line.form);
    all["strength"] = json::text_or_null(line.strength);
    all["amount"] = json::text_or_null(line.amount);
    all["per_litre"] = line.per_litre ? json::Value(*line.per_litre) : json::Value(nullptr);
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
    all["settle_with"] = json::text_or_null(question.settle_with);
    for (const Option& option : question.options) {
        json::Value one;
        one["reading"] = option.words;
        one["against_it"] = option.cost;
        one["changes"] = option.changes;
        all["readings"].push_back(std::move(one));
    }
    return all;
}

}  // namespace

std::string settle_text(const Settlement& settled, const TextStyle& style) {
    Sheet sheet(style);
    sheet.item("", settled.name);
    if (!settled.purpose.empty()) sheet.item("", settled.purpose);
    if (!settled.book.empty()) sheet.item("", settled.book);
    sheet.heading(read_heading);
    sheet.item("", makes_words(settled));
    sheet.blank();
    for (const LineRead& line : settled.lines)
        sheet.item(padded_left(line.amount, 16) + "  ", name_of(line), per_litre(line));
    for (const Group& group : groups(settled)) {
        if (group.lines.empty()) continue;
        sheet.heading(group.heading);
        for (const std::string& line : group.lines) sheet.item("- ", line);
    }
    return sheet.take();
}

std::string settle_html(const Settlement& settled) {
    Markup all = element("h1", settled.name);
    if (!settled.purpose.empty()) all += element("p", settled.purpose);
    if (!settled.book.empty()) all += element("p", settled.book);
    html::Table table({"what", "amount", "by the litre"}, 2);
    for (const LineRead& line : settled.lines) table.row({name_of(line), line.amount, per_litre(line)});
    Markup lines = element("p", makes_words(settled));
    lines += table.take();
    all += html::section(read_heading, lines);
    for (const Group& group : groups(settled)) all += html::section(group.heading, html::list(group.lines));
    return html::page(settled.name, element("main", element("article", all)));
}

std::string settle_json(const Settlement& settled) {
    json::Value all;
    all["kind"] = "settlement";
    all["name"] = settled.name;
    all["purpose"] = json::text_or_null(settled.purpose);
    all["book"] = json::text_or_null(settled.book);
    all["makes"] = json::text_or_null(settled.makes);
    all["makes_ml"] = settled.makes_ml ? json::Value(*settled.makes_ml) : json::Value(nullptr);
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

// ---- as a recipe ----

namespace {

/// In quotes, whatever stands in it.
std::string in_quotes(std::string_view text) {
    std::string all = "\"";
    for (const char c : text::printable(text)) all += c == '"' ? '\'' : c;
    return all + "\"";
}

/// `whose ounce: oz avoirdupois; oz apothecaries has 50 to 1 against it`
std::string brief(const Question& question) {
    std::string all = question_words(question);
    for (std::size_t i = 1; i < question.options.size(); ++i)
        all += fmt::format("; {} has {} against it", question.options[i].words, odds(question.options[i].cost));
    return all;
}

std::vector<std::string> assumptions(const Settlement& settled) {
    std::vector<std::string> all;
    if (settled.added_up)
        all.push_back(
            fmt::format("its liquids, {}, are the whole volume, since none to make up to is printed", settled.makes));
    for (const std::string& evidence : settled.evidence) all.push_back(evidence);
    for (const Question& question : settled.questions) all.push_back(brief(question));
    std::vector<std::string> agree;
    for (const LineRead& line : settled.lines) {
        if (!line.off.empty()) agree.push_back(line.name + " " + words::listed(line.off));
        if (!line.fault.empty()) all.push_back(words::listed(fault_words(line), "; "));
    }
    if (!agree.empty()) all.push_back("the columns agree within " + words::listed(agree));
    return all;
}

/// Three quarters of what the other liquids leave, so that there is room for what goes in.
double water_to_begin_with(const Settlement& settled) {
    double others = 0;
    for (const LineRead& line : settled.lines)
        if (line.by_volume && line.per_litre) others += *line.per_litre / 1000 * *settled.makes_ml;
    return std::max(*settled.makes_ml - others, 0.0) * 0.75;
}

}  // namespace

std::string settled_recipe(const Settlement& settled) {
    std::string all = fmt::format("recipe {}\n", text::printable(settled.name));
    const auto fact = [&](std::string_view word, std::string_view text) {
        all += fmt::format("    {}   {}\n", word, in_quotes(text));
    };
    if (!settled.purpose.empty()) all += fmt::format("    is a   {}\n", text::printable(settled.purpose));
    if (!settled.book.empty()) fact("source", settled.book);
    for (const std::string& assumption : assumptions(settled)) fact("assumed", assumption);
    for (const printed::Warning& warning : settled.warnings) fact("caution", warning.text);
    for (const std::string& note : settled.notes) fact("note", note);
    for (const std::string& line : settled.not_read) fact("note", line);
    for (const LineRead& line : settled.lines)
        if (line.amount.empty()) fact("note", name_of(line) + ": " + words::listed(line.evidence));
    all += "\n";
    if (settled.makes_ml)
        all += fmt::format("    water   {} ml\n", quantity::significant_text(water_to_begin_with(settled), 3));
    for (const LineRead& line : settled.lines)
        if (!line.amount.empty()) all += fmt::format("    {}   {}\n", text::printable(name_of(line)), line.amount);
    if (!settled.makes.empty()) all += fmt::format("    water to make   {}\n", settled.makes);
    const text::Source source{"", std::move(all)};
    return tidy_text(source, syntax::parse(source));
}

}  // namespace scruple::emit
