// SPDX-License-Identifier: MIT
// What a printed page means, as a recipe.
#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "scruple/emit/emit.hpp"
#include "scruple/emit/words.hpp"
#include "scruple/quantity/exact.hpp"
#include "scruple/syntax/parse.hpp"
#include "scruple/text/printable.hpp"
#include "settle_words.hpp"

namespace scruple::emit {
namespace {

using printed::LineRead;
using printed::Question;
using printed::Settlement;

/// In quotes, whatever stands in it.
std::string in_quotes(std::string text) {
    std::ranges::replace(text, '"', '\'');
    return "\"" + text + "\"";
}

/// `whose ounce: oz avoirdupois; oz apothecaries has 50 to 1 against it`
std::string brief(const Question& question) {
    std::string all = settled_words::question(question);
    for (std::size_t i = 1; i < question.options.size(); ++i)
        all +=
            fmt::format("; {} has {} against it", question.options[i].words, printed::odds(question.options[i].cost));
    return all;
}

std::vector<std::string> assumptions(const Settlement& settled) {
    std::vector<std::string> all;
    for (const printed::SolutionRead& solution : settled.solutions)
        if (solution.added_up) all.push_back(settled_words::makes(solution));
    for (const std::string& evidence : settled.evidence) all.push_back(evidence);
    for (const Question& question : settled.questions) all.push_back(brief(question));
    std::vector<std::string> agree;
    for (const LineRead& line : settled.lines) {
        if (!line.off.empty()) agree.push_back(line.name + " " + words::listed(line.off));
        if (!line.fault.empty()) all.push_back(words::listed(settled_words::faults(line), "; "));
    }
    if (!agree.empty()) all.push_back("the columns agree within " + words::listed(agree));
    return all;
}

/// What a `part` is called: its letter or number; without one, what it is.
std::string part_name(const Settlement& settled, std::size_t solution) {
    const std::string& label = settled.solutions[solution].label;
    if (label.empty()) return "part stock";
    return fmt::format("part {}", label.find(' ') == std::string::npos ? label : in_quotes(label));
}

/// The same where another line speaks of it: quotes go around the whole name.
std::string part_meant(const Settlement& settled, std::size_t solution) {
    const std::string& label = settled.solutions[solution].label;
    return label.find(' ') == std::string::npos ? part_name(settled, solution) : in_quotes("part " + label);
}

/// Three quarters of what the other liquids leave, so that there is room for what goes in.
double water_to_begin_with(const Settlement& settled, std::size_t solution) {
    const double makes = *settled.solutions[solution].makes_ml;
    double others = 0;
    for (const LineRead& line : settled.lines)
        if (line.solution == solution && line.by_volume && line.per_litre) others += *line.per_litre / 1000 * makes;
    return std::max(makes - others, 0.0) * 0.75;
}

/// What the library does not know is written so that it is read as a name, and refused as one.
std::string name_in_recipe(const LineRead& line) {
    if (line.chemical != check::none) return settled_words::name_of(line);
    std::string name = line.name;
    std::ranges::replace_if(
        name, [](char c) { return std::string_view(",;()/").find(c) != std::string_view::npos; }, ' ');
    return name;
}

std::string lines_of(const Settlement& settled, std::size_t solution) {
    std::string all;
    const printed::SolutionRead& it = settled.solutions[solution];
    const double water = it.makes_ml ? water_to_begin_with(settled, solution) : 0;
    if (water > 0) all += fmt::format("    water   {} ml\n", quantity::significant_text(water, 3));
    for (const LineRead& line : settled.lines)
        if (line.solution == solution && !line.amount.empty())
            all += fmt::format("    {}   {}\n", name_in_recipe(line), line.amount);
    if (!it.makes.empty()) all += fmt::format("    water to make   {}\n", it.makes);
    return all;
}

/// `mix part A + part B + water   1+1+2`
std::string working(const Settlement& settled, const printed::ForUse& use, std::string_view label) {
    const bool stock = settled.solutions.size() == 1;
    std::string what;
    std::string parts;
    const auto add = [&](const std::string& name, const std::string& share) {
        what += (what.empty() ? "" : " + ") + name;
        parts += (parts.empty() ? "" : "+") + share;
    };
    for (const printed::ForUse::Share& share : use.shares)
        add(stock ? "stock" : part_meant(settled, share.solution), share.parts);
    if (!use.water.empty() && !stock) add("water", use.water);
    if (stock) parts += "+" + use.water;
    return fmt::format("working{}\n    {} {}   {}\n", label, stock ? "dilute" : "mix", what, parts);
}

/// A part that is empty, as one with no known lines, would be a fault of the recipe and not of the page.
bool can_be_mixed(const Settlement& settled, const printed::ForUse& use) {
    const bool water_alone = settled.solutions.size() == 1 && use.water.empty();
    return !use.shares.empty() && !water_alone;
}

}  // namespace

std::string settled_recipe(const Settlement& settled) {
    std::string all = fmt::format("recipe {}\n", settled.name);
    const auto fact = [&](std::string_view word, std::string text) {
        all += fmt::format("    {}   {}\n", word, in_quotes(std::move(text)));
    };
    if (!settled.purpose.empty()) all += fmt::format("    is a   {}\n", settled.purpose);
    if (!settled.book.empty()) fact("source", settled.book);
    for (const std::string& assumption : assumptions(settled)) fact("assumed", assumption);
    for (const printed::Warning& warning : settled.warnings) fact("caution", warning.about + ": " + warning.text);
    for (const std::string& note : settled.notes) fact("note", note);
    for (const std::string& line : settled.not_read) fact("note", line);
    for (const LineRead& line : settled.lines)
        if (line.amount.empty()) fact("note", settled_words::name_of(line) + ": " + words::listed(line.evidence));
    all += "\n";
    if (settled.solutions.size() == 1)
        all += lines_of(settled, 0);
    else
        for (std::size_t i = 0; i < settled.solutions.size(); ++i)
            all += fmt::format("{}\n{}\n", part_name(settled, i), lines_of(settled, i));
    constexpr std::array labels{"", " second", " third", " fourth"};
    for (std::size_t i = 0; i < std::min(labels.size(), settled.for_use.size()); ++i)
        if (can_be_mixed(settled, settled.for_use[i])) all += "\n" + working(settled, settled.for_use[i], labels[i]);
    // Names and words of the page are as they stand in the file.
    const text::Source source{"", text::printable_lines(all)};
    return tidy_text(source, syntax::parse(source));
}

}  // namespace scruple::emit
