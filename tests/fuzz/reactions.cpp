// SPDX-License-Identifier: MIT
// A reaction of formulas and of names from the library on the first line, and on each further one how much there is of
// something: grams or moles.
#include <algorithm>
#include <charconv>
#include <cstdint>
#include <sstream>

#include "demand.hpp"
#include "scruple/emit/emit.hpp"
#include "scruple/syntax/normal.hpp"
#include "workspace.hpp"

using namespace scruple;

namespace {

/// A number in front, where there is one; it is taken away.
std::optional<std::int64_t> number_before(std::string_view& text) {
    std::int64_t number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (error != std::errc() || number < 1 || number > 999999) return std::nullopt;
    text.remove_prefix(static_cast<std::size_t>(end - text.data()));
    text.remove_prefix(std::min(text.size(), text.find_first_not_of(' ')));
    return number;
}

std::optional<plan::Substance> substance(const check::Model& model, std::string_view text) {
    const auto read = chemistry::read_formula(text);
    if (const auto* formula = std::get_if<chemistry::Formula>(&read))
        return plan::substance_of(model, std::string(text), *formula);
    const auto named = model.chemical_names.find(syntax::normal_name(text));
    if (named == model.chemical_names.end()) return std::nullopt;
    const auto [chemical, form] = named->second;
    return plan::substance_of(model, chemical, form == check::none ? 0 : form);
}

struct Typed {
    plan::Reaction reaction;
    bool numbered = false, complete = true;
};

void read_side(const check::Model& model, std::string_view text, std::vector<plan::Substance>& side, Typed& typed) {
    while (!text.empty()) {
        std::string_view piece = text.substr(0, text.find(" + "));
        text.remove_prefix(std::min(text.size(), piece.size() + 3));
        const auto number = number_before(piece);
        typed.numbered = typed.numbered || number.has_value();
        typed.reaction.numbers.emplace_back(number.value_or(1));
        auto read = substance(model, piece);
        typed.complete = typed.complete && read.has_value();
        if (read) side.push_back(std::move(*read));
    }
}

Typed read(const check::Model& model, std::string_view line) {
    Typed typed;
    const std::size_t arrow = std::min(line.find(" -> "), line.size());
    read_side(model, line.substr(0, arrow), typed.reaction.left, typed);
    read_side(model, line.substr(std::min(line.size(), arrow + 4)), typed.reaction.right, typed);
    if (!typed.numbered) typed.reaction.numbers.clear();
    const std::size_t substances = typed.reaction.left.size() + typed.reaction.right.size();
    typed.complete = typed.complete && substances <= chemistry::most_substances;
    return typed;
}

std::optional<plan::Taken> taken(const check::Model& model, std::string_view line) {
    const auto amount = number_before(line);
    const bool in_moles = line.starts_with("mol ");
    if (!amount || line.size() < 4) return std::nullopt;
    const auto what = substance(model, line.substr(in_moles ? 4 : 2));
    if (!what) return std::nullopt;
    return plan::taken_of(*what, check::Exact(*amount, 8), in_moles);
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string text(data, data + size);
    if (text::first_invalid_byte(text) != std::string::npos) return 0;
    fuzz::Workspace& workspace = fuzz::workspace();
    if (workspace.model().chemicals.empty()) workspace.take({});
    const check::Model& model = workspace.model();
    std::istringstream lines(text);
    std::string line;
    std::getline(lines, line);
    Typed typed = read(model, line);
    std::vector<plan::Taken> amounts;
    while (std::getline(lines, line))
        if (auto some = taken(model, line)) amounts.push_back(std::move(*some));
    if (!typed.complete) return 0;
    const auto made = plan::react(model, std::move(typed.reaction), amounts);
    const auto* reacted = std::get_if<plan::Reacted>(&made);
    if (reacted == nullptr) return 0;
    fuzz::demand_text("a reaction is text", emit::react_text(*reacted, {80}));
    fuzz::demand_page("a reaction is a page", emit::react_html(*reacted));
    fuzz::demand_json("a reaction is JSON", emit::react_json(*reacted));
    return 0;
}
