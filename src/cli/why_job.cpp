// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>

#include "batch.hpp"
#include "jobs.hpp"
#include "line_places.hpp"
#include "scruple/emit/emit.hpp"
#include "scruple/plan/why.hpp"
#include "scruple/syntax/normal.hpp"
#include "terminal.hpp"
#include "workspace.hpp"

namespace scruple::cli {
namespace {

using driver::Loaded;

struct Question {
    std::string solution, chemical;
};

std::string joined(const std::vector<std::string>& words, std::size_t begin, std::size_t end) {
    const auto at = [&words](std::size_t i) { return words.begin() + static_cast<std::ptrdiff_t>(i); };
    return fmt::format("{}", fmt::join(at(begin), at(end), " "));
}

// Neither name needs quotes: the words are cut where a solution ends and a chemical begins.
Question question(const Loaded& loaded, const std::vector<std::string>& words) {
    const check::Model& model = loaded.checked.model;
    for (std::size_t cut = words.size(); cut-- > 1;) {
        Question tried{joined(words, 0, cut), joined(words, cut, words.size())};
        const std::string solution = syntax::normal_name(tried.solution);
        const bool known = model.recipe_names.contains(solution) || model.section_names.contains(solution);
        if (known && model.chemical_names.contains(syntax::normal_name(tried.chemical))) return tried;
    }
    if (words.size() < 2) throw Stop{Exit::wrong_call, "why what? `scruple why Heron part A hydroquinone`"};
    return {joined(words, 0, words.size() - 1), words.back()};
}

void name_places(const Loaded& loaded, std::vector<plan::Why>& whys) {
    LinePlaces places(loaded);
    for (plan::Why& why : whys)
        for (plan::WhyLine& line : why.lines) {
            if (!line.place) continue;
            const std::string& path = loaded.sources[line.place->file].path;
            line.source = fmt::format("{}, line {}", path, places.line(*line.place));
        }
}

/// Of a recipe with several solutions: where it is weighed, and what it is thinned to only where nothing is weighed.
void keep_own(std::vector<plan::Why>& whys) {
    if (std::ranges::any_of(whys, [](const plan::Why& why) { return !why.by_way; }))
        std::erase_if(whys, [](const plan::Why& why) { return why.by_way; });
}

std::vector<plan::Why> answers(const Call& call, const Loaded& loaded, const Meant& meant, check::Id chemical) {
    const check::Model& model = loaded.checked.model;
    plan::CardRequest request{
        check::none, asked_variant(call, model.recipes[meant.recipe]), how_much(call, loaded), model.dropper, {}};
    add_substitutions(call, loaded, meant, request);
    std::vector<plan::Why> all;
    std::string refused;
    for (const check::Id section : meant.sections) {
        request.section = section;
        auto found = plan::why(model, request, chemical);
        if (const auto* refusal = std::get_if<plan::Refusal>(&found)) {
            refused = refusal->message;
            continue;
        }
        auto& some = std::get<std::vector<plan::Why>>(found);
        all.insert(all.end(), std::move_iterator(some.begin()), std::move_iterator(some.end()));
    }
    if (all.empty()) throw Stop{Exit::wrong_call, refused};
    if (meant.sections.size() > 1) keep_own(all);
    name_places(loaded, all);
    return all;
}

}  // namespace

Outcome why_job(const Call& call) {
    const As as = call.as();
    const Asked asked = asked_amounts(call);
    Loaded& loaded = open_for_the_bench(call, asked);
    loaded.checked.model.dropper = asked_bench(call, loaded);
    const Question asks = question(loaded, call.words);
    Meant meant = find_solution(loaded, asks.solution);
    if (!asked.sources().empty()) meant = one_solution(loaded, meant);
    const auto whys = answers(call, loaded, meant, find_chemical(loaded, asks.chemical));
    switch (as) {
        case As::text:
            return {Exit::fine, emit::why_text(whys, {width_of(Stream::out)}), {}};
        case As::html:
            return {Exit::fine, emit::why_html(whys), {}};
        case As::json:
            return {Exit::fine, emit::why_json(whys), {}};
    }
    return {};
}

}  // namespace scruple::cli
