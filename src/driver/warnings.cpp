// SPDX-License-Identifier: MIT
#include <algorithm>
#include <set>

#include "scruple/driver/driver.hpp"

namespace scruple::driver {
namespace {

/// From a heading to the next one.
text::Span block_at(const syntax::Tree& tree, std::uint32_t heading) {
    const auto& statements = tree.statements;
    auto last = heading;
    while (last + 1 < statements.size() && !std::holds_alternative<syntax::Heading>(statements[last + 1].node)) ++last;
    return {statements[heading].span.begin, statements[last].span.end};
}

/// Whether it is about what one bath carries into another, and the solution is one of the two.
bool is_carried(const check::Model& model, check::Id section, const diagnostics::Diagnostic& diagnostic) {
    if (diagnostic.kind != diagnostics::Kind::harmful_carry_over) return false;
    for (const auto& process : model.processes)
        for (std::size_t i = 1; i < process.stages.size(); ++i) {
            const auto& before = process.stages[i - 1];
            const auto& next = process.stages[i];
            const bool here = next.place.file == diagnostic.file && next.place.span == diagnostic.span;
            if (here && (before.solution == section || next.solution == section)) return true;
        }
    return false;
}

/// Whether a fault is one of the solution as a whole, whose lines say all that they should.
bool is_judgement(diagnostics::Kind kind) {
    using enum diagnostics::Kind;
    constexpr diagnostics::Kind judgements[] = {expectation_missed, expectation_of_nothing, ph_missed,
                                                water_onto_acid,    lethal_meeting,         lethal_carry_over};
    return std::ranges::find(judgements, kind) != std::end(judgements);
}

/// What was found in the lines of a solution and in its recipe's own.
template <class Wanted>
std::vector<plan::Warning> found_in(const Loaded& loaded, check::Id section, Wanted wanted) {
    const auto& solution = loaded.checked.model.sections[section];
    const auto& recipe = loaded.checked.model.recipes[solution.recipe];
    const auto of_solution = block_at(*loaded.trees[solution.place.file], solution.place.statement);
    const auto of_recipe = block_at(*loaded.trees[recipe.place.file], recipe.place.statement);
    std::vector<plan::Warning> found;
    for (const auto& diagnostic : loaded.checked.diagnostics) {
        if (!wanted(diagnostics::info(diagnostic.kind))) continue;
        const auto stands_in = [&](const check::Place& place, text::Span block) {
            return diagnostic.file == place.file && diagnostic.span.begin >= block.begin &&
                   diagnostic.span.begin < block.end;
        };
        if (stands_in(solution.place, of_solution) || stands_in(recipe.place, of_recipe) ||
            is_carried(loaded.checked.model, section, diagnostic))
            found.push_back({diagnostic.kind, diagnostic.message});
    }
    return found;
}

}  // namespace

std::vector<plan::Warning> warnings_for(const Loaded& loaded, check::Id section) {
    return found_in(loaded, section,
                    [](const diagnostics::KindInfo& kind) { return kind.severity == diagnostics::Severity::warning; });
}

std::vector<plan::Warning> judgements_for(const Loaded& loaded, check::Id section) {
    return found_in(loaded, section, [](const diagnostics::KindInfo& kind) {
        return kind.severity == diagnostics::Severity::error && is_judgement(kind.kind);
    });
}

bool is_read(const Loaded& loaded, check::Id section) {
    const auto unread = [](const diagnostics::KindInfo& kind) {
        return kind.severity == diagnostics::Severity::error && !is_judgement(kind.kind);
    };
    std::set<check::Id> seen{section};
    std::vector<check::Id> open{section};
    while (!open.empty()) {
        const check::Id next = open.back();
        open.pop_back();
        const auto& solution = loaded.checked.model.sections[next];
        if (solution.broken || !found_in(loaded, next, unread).empty()) return false;
        for (const auto& line : solution.lines) {
            const auto* addition = std::get_if<check::Addition>(&line);
            if (addition != nullptr && addition->solution != check::none && seen.insert(addition->solution).second)
                open.push_back(addition->solution);
        }
    }
    return true;
}

std::vector<std::string> notes_for(const Loaded& loaded, check::Id section) {
    std::vector<std::string> notes;
    const auto of_keeping = [](const auto& kind) { return kind.kind == diagnostics::Kind::crystals_in_the_cold; };
    for (auto& advice : found_in(loaded, section, of_keeping)) notes.push_back(std::move(advice.message));
    return notes;
}

}  // namespace scruple::driver
