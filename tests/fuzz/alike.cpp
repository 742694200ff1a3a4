// SPDX-License-Identifier: MIT
// Two ways to one result: a text and the same text tidied; a recipe and the same scaled there and back; a card in text
// and in JSON.
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <nlohmann/json.hpp>
#include <sstream>

#include "demand.hpp"
#include "scruple/emit/emit.hpp"
#include "scruple/syntax/parse.hpp"
#include "solutions.hpp"

using namespace scruple;
using fuzz::Loaded;
using quantity::Exact;

namespace {

// ---- tidied ----

/// Without blanks, and without the tabs of JSON: what is quoted from a text has the blanks that stand there.
std::string squeezed(const std::string& text) {
    std::string result;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool no_break = text.compare(i, 2, "\u00A0") == 0;
        const bool tab = text.compare(i, 2, "\\t") == 0;
        const bool blank = no_break || tab || text[i] == ' ' || text[i] == '\t';
        if (no_break || tab) ++i;
        if (!blank) result += text[i];
    }
    return result;
}

std::vector<std::string> messages(const Loaded& loaded) {
    std::vector<std::string> all;
    for (const diagnostics::Diagnostic& d : loaded.checked.diagnostics)
        all.push_back(fmt::format("{}: {}", diagnostics::info(d.kind).name, squeezed(d.message)));
    std::ranges::sort(all);
    return all;
}

std::string cards_of(const check::Model& model) {
    std::string all;
    for (const plan::CardRequest& request : fuzz::requests(model, 0)) {
        const auto made = plan::make_card(model, request);
        if (const auto* card = std::get_if<plan::Card>(&made)) all += emit::card_json({card, 1});
    }
    return squeezed(all);
}

void demand_same_tidied(fuzz::Workspace& workspace) {
    const auto said = messages(workspace.loaded());
    const std::string cards = cards_of(workspace.model());
    const std::string tidied = emit::tidy_text(workspace.source(), workspace.tree());
    workspace.take(tidied);
    fuzz::demand(
        messages(workspace.loaded()) == said, "tidied text is as right and as wrong as before",
        fmt::format("{}\n{}\n--\n{}", tidied, fmt::join(said, "\n"), fmt::join(messages(workspace.loaded()), "\n")));
    fuzz::demand(cards_of(workspace.model()) == cards, "tidied text has the same cards", tidied);
}

// ---- scaled ----

std::string scaled(const text::Source& source, std::uint32_t heading, const Exact& factor) {
    return emit::scaled_text(source, syntax::parse(source), heading, factor);
}

std::uint32_t heading_in(const std::string& recipe) {
    const syntax::Tree tree = syntax::parse({"scaled.scruple", recipe});
    const auto is_heading = [](const auto& statement) {
        return std::holds_alternative<syntax::Heading>(statement.node);
    };
    return static_cast<std::uint32_t>(std::ranges::find_if(tree.statements, is_heading) - tree.statements.begin());
}

/// Whether each number is one that recipe text can hold: past 19 digits, and below a thousand millionth, it is not.
bool is_in_range(const std::string& recipe) {
    const syntax::Tree tree = syntax::parse({"scaled.scruple", recipe});
    const auto is_loose = [](const syntax::Quantity& quantity) { return quantity.number.loose(); };
    return std::ranges::none_of(tree.quantities, is_loose) && std::ranges::none_of(tree.ranges, [&](const auto& range) {
               return is_loose(range.low) || is_loose(range.high);
           });
}

void demand_same_scaled(const text::Source& source, std::uint32_t heading, const Exact& factor) {
    const std::string once = scaled(source, heading, 1);
    const std::string there = scaled({"once.scruple", once}, heading_in(once), factor);
    if (!is_in_range(there)) return;
    const std::string back = scaled({"there.scruple", there}, heading_in(there), Exact(1) / factor);
    fuzz::demand(back == once, "scaled there and back is as before", fmt::format("{}--\n{}--\n{}", once, there, back));
}

// ---- in text and in JSON ----

/// `12.5`, `33 1/3`
double number_in(const std::string& text) {
    std::istringstream words(text);
    double whole = 0, top = 0, bottom = 1;
    char slash = 0;
    words >> whole;
    if (words.peek() == '/') {
        words >> slash >> bottom;
        return whole / bottom;
    }
    if (words >> top >> slash >> bottom && slash == '/') return whole + top / bottom;
    return whole;
}

/// The last number before the unit; nullopt where the unit does not stand in the line.
void demand_figure(const std::string& line, const nlohmann::json& amount) {
    const std::string unit = amount.at("unit");
    const std::size_t end = line.find(' ' + unit + ' ');
    const std::size_t from = line.find_first_of("0123456789");
    fuzz::demand(end != std::string::npos && from < end, "the text has the unit of the JSON", line + amount.dump());
    const double text = number_in(line.substr(from, end - from)), json = amount.at("value");
    fuzz::demand(std::abs(text - json) <= 1e-6 * std::abs(json), "the text has the figure of the JSON",
                 line + amount.dump());
}

std::vector<std::string> lines_of(const std::string& text) {
    std::vector<std::string> lines;
    std::istringstream all(text);
    for (std::string line; std::getline(all, line);) lines.push_back(std::move(line));
    return lines;
}

void demand_same_figures(const plan::Card& card) {
    const auto json = nlohmann::json::parse(emit::card_json({&card, 1}));
    const auto lines = lines_of(emit::card_text(card, {80}));
    auto line = std::ranges::find(lines, "  PUT OUT ON THE BENCH");
    for (const auto& thing : json.at("gather")) {
        line = std::find_if(line, lines.end(), [](const std::string& it) { return it.starts_with("  □ "); });
        fuzz::demand(line != lines.end(), "all that is put out stands in the text");
        demand_figure(*line++, thing.at("amount"));
    }
    line = std::ranges::find(lines, "  MIX, IN THIS ORDER");
    for (const auto& work : json.at("work")) {
        const std::string number = fmt::format("{:>5}   ", work.at("n").get<int>());
        line = std::find_if(line, lines.end(), [&](const std::string& it) { return it.starts_with(number); });
        fuzz::demand(line != lines.end(), "all that is done stands in the text", number);
        if (!work.at("amount").is_null()) demand_figure(line->substr(number.size()), work.at("amount"));
    }
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    fuzz::Workspace& workspace = fuzz::workspace();
    if (!workspace.take({data, data + size})) return 0;
    demand_same_tidied(workspace);
    if (!workspace.take_what_is_right({data, data + size})) return 0;
    const Exact factors[] = {3, {1, 3}, {7, 2}, {13, 8}, {1000, 3}};
    for (const check::Recipe& recipe : workspace.model().recipes)
        demand_same_scaled(workspace.source(), recipe.place.statement, factors[size % std::size(factors)]);
    for (const plan::CardRequest& request : fuzz::requests(workspace.model(), size)) {
        const auto made = plan::make_card(workspace.model(), request);
        if (const auto* card = std::get_if<plan::Card>(&made)) demand_same_figures(*card);
    }
    return 0;
}
