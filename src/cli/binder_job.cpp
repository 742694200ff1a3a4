// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <iterator>

#include "batch.hpp"
#include "drawing.hpp"
#include "jobs.hpp"
#include "printing.hpp"
#include "scruple/emit/emit.hpp"
#include "workspace.hpp"

namespace scruple::cli {
namespace {

using check::Id;
using driver::Loaded;

constexpr const char* pdf_name = "binder.pdf";
constexpr const char* contents_name = "index.html";

std::vector<Id> recipes_by_name(const check::Model& model) {
    std::vector<Id> all;
    for (Id id = 0; id < model.recipes.size(); ++id) all.push_back(id);
    std::ranges::sort(all, {}, [&model](Id id) { return model.recipes[id].normal; });
    return all;
}

/// The cards that can be made, and why the others cannot.
struct Cards {
    std::vector<plan::Card> made;
    std::string left_out;
};

void add(const Loaded& loaded, plan::CardMaker& maker, const plan::CardRequest& request, Cards& cards) {
    const check::Model& model = maker.model();
    auto made = maker.make(request);
    if (const auto* refusal = std::get_if<plan::Refusal>(&made)) {
        cards.left_out +=
            fmt::format("left out: {}: {}\n", check::shown_name(model, request.section), refusal->message);
        return;
    }
    plan::Card& card = cards.made.emplace_back(std::move(std::get<plan::Card>(made)));
    card.warnings = driver::warnings_for(loaded, request.section);
    std::ranges::move(driver::notes_for(loaded, request.section), std::back_inserter(card.notes));
}

Cards cards_of(const Loaded& loaded, Id bench) {
    const check::Model& model = loaded.checked.model;
    plan::CardMaker maker(model);
    Cards cards;
    for (const Id recipe : recipes_by_name(model))
        for (const Id section : model.recipes[recipe].sections)
            for (std::size_t variant = 0; variant < check::variants_of(model, model.sections[section]); ++variant)
                add(loaded, maker,
                    {.section = section, .variant = variant, .how_much = {}, .bench = bench, .mixed_on = {}}, cards);
    return cards;
}

std::string counted(std::size_t n) {
    return fmt::format("{} card{}", n, n == 1 ? "" : "s");
}

}  // namespace

Outcome binder_job(const Call& call) {
    const auto folder = call.value("--out");
    if (!folder) throw Stop{Exit::wrong_call, "say which folder to write to: `--out binder`"};
    const paper::Printing printing = as_pdf(call);
    Loaded& loaded = open_for_the_bench(call);
    loaded.checked.model.dropper = asked_bench(call, loaded);
    const Cards cards = cards_of(loaded, loaded.checked.model.dropper);
    if (cards.made.empty()) throw Stop{Exit::wrong_call, cards.left_out + "there is no recipe to make a card of"};

    const auto pages = emit::binder_pages(cards.made);
    Outcome outcome;
    outcome.files.emplace_back(pdf_name, drawing().binder_to_paper(cards.made, printing));
    for (const emit::BinderPage& page : pages)
        outcome.files.emplace_back(page.file_name, emit::card_html({page.card, 1}, contents_name));
    outcome.files.emplace_back(contents_name, emit::binder_html(pages, pdf_name));
    outcome.text = fmt::format("{} in {}/{}; {}/{} leads to the same as pages\n", counted(pages.size()), *folder,
                               pdf_name, *folder, contents_name);
    outcome.aside = cards.left_out;
    return outcome;
}

}  // namespace scruple::cli
