// SPDX-License-Identifier: MIT
#include <algorithm>
#include <set>
#include <span>
#include <utility>
#include <vector>

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

using Spot = std::pair<std::uint32_t, std::size_t>;

Spot place_of(const diagnostics::Diagnostic& diagnostic) {
    return {diagnostic.file, diagnostic.span.begin};
}

/// They are sorted by where they stand.
std::span<const diagnostics::Diagnostic> found_within(const Loaded& loaded, std::uint32_t file, text::Span span) {
    const auto& all = loaded.checked.diagnostics;
    const auto first = std::ranges::lower_bound(all, Spot(file, span.begin), {}, place_of);
    const auto last = std::ranges::lower_bound(all, Spot(file, span.end), {}, place_of);
    return {first, std::max(first, last)};
}

/// What is told of a process in which the solution carries something over, or has something carried into it.
std::vector<const diagnostics::Diagnostic*> found_carried(const Loaded& loaded, check::Id section) {
    std::vector<const diagnostics::Diagnostic*> found;
    for (const auto& process : loaded.checked.model.processes)
        for (std::size_t i = 1; i < process.stages.size(); ++i) {
            const auto& next = process.stages[i];
            if (process.stages[i - 1].solution != section && next.solution != section) continue;
            for (const auto& diagnostic : found_within(loaded, next.place.file, next.place.span))
                if (diagnostic.kind == diagnostics::Kind::harmful_carry_over && diagnostic.span == next.place.span)
                    found.push_back(&diagnostic);
        }
    return found;
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
    std::set<const diagnostics::Diagnostic*> all;  ///< in the order in which they stand
    for (const auto& diagnostic : found_within(loaded, solution.place.file, of_solution)) all.insert(&diagnostic);
    for (const auto& diagnostic : found_within(loaded, recipe.place.file, of_recipe)) all.insert(&diagnostic);
    for (const auto* diagnostic : found_carried(loaded, section)) all.insert(diagnostic);
    std::vector<plan::Warning> found;
    for (const auto* diagnostic : all)
        if (wanted(diagnostics::info(diagnostic->kind))) found.push_back({diagnostic->kind, diagnostic->message});
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

std::vector<bool> are_read(const Loaded& loaded) {
    const auto unread = [](const diagnostics::KindInfo& kind) {
        return kind.severity == diagnostics::Severity::error && !is_judgement(kind.kind);
    };
    const auto& sections = loaded.checked.model.sections;
    std::vector<bool> read(sections.size(), true);
    std::vector<std::vector<check::Id>> taken_by(sections.size());
    std::vector<check::Id> lost;
    const auto lose = [&](check::Id section) {
        if (read[section]) lost.push_back(section);
        read[section] = false;
    };
    for (check::Id id = 0; id < sections.size(); ++id) {
        for (const auto& line : sections[id].lines)
            if (const auto* addition = std::get_if<check::Addition>(&line);
                addition != nullptr && addition->solution != check::none)
                taken_by[addition->solution].push_back(id);
        const check::Id recipe = sections[id].recipe;
        const bool is_written_here = recipe != check::none && !loaded.checked.model.recipes[recipe].built_in;
        if (sections[id].broken || (is_written_here && !found_in(loaded, id, unread).empty())) lose(id);
    }
    for (std::size_t next = 0; next < lost.size(); ++next)
        for (const check::Id id : taken_by[lost[next]]) lose(id);
    return read;
}

std::vector<std::string> notes_for(const Loaded& loaded, check::Id section) {
    std::vector<std::string> notes;
    const auto of_keeping = [](const auto& kind) { return kind.kind == diagnostics::Kind::crystals_in_the_cold; };
    for (auto& advice : found_in(loaded, section, of_keeping)) notes.push_back(std::move(advice.message));
    return notes;
}

}  // namespace scruple::driver
