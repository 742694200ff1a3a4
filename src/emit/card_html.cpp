// SPDX-License-Identifier: MIT
// Mixing cards as one page, each on paper of its own, in the order in which hands need it.
#include <fmt/format.h>

#include "accepted.hpp"
#include "cautions.hpp"
#include "held.hpp"
#include "html.hpp"
#include "rescaling_data.hpp"
#include "scruple/emit/emit.hpp"
#include "scruple/emit/words.hpp"
#include "scruple/plan/calendar.hpp"

namespace scruple::emit {
namespace {

using html::element;
using html::Markup;
using plan::Card;
using plan::Work;

Markup head(const Card& card) {
    Markup all = element("h1", words::title(card));
    const std::string subtitle = words::subtitle(card);
    if (!subtitle.empty()) all += element("p", subtitle);
    const std::string for_what = card.makes_for.empty() ? "" : " for " + card.makes_for;
    all += element("p", "class=\"makes\"", fmt::format("makes {}{}", card.makes.with_unit(), for_what));
    Markup blanks;
    blanks +=
        card.mixed_on ? element("span", "Mixed on " + plan::day_text(*card.mixed_on)) : html::to_write("Mixed on");
    blanks += html::to_write("by");
    blanks += html::to_write("batch");
    all += element("p", "class=\"blanks\"", blanks);
    if (!card.warnings.empty()) all += element("p", element("b", words::warnings_below(card)));
    return element("header", all);
}

Markup gather(const Card& card) {
    html::Table table({"what", "amount"}, 1);
    for (const plan::Gathered& thing : card.gather) {
        const std::string wanted = thing.optional ? "only if you want it" : "";
        const std::string name = words::chemical(thing.chemical, thing.form);
        table.row_to_tick({words::listed({name, thing.note, wanted}), thing.amount.with_unit()});
    }
    return html::section(words::gather_heading, element("div", "class=\"gather\"", table.take()));
}

Markup amount(const Work& work) {
    if (!work.amount) return {};
    const std::string_view before = words::before_amount(work);
    Markup all;
    if (!before.empty()) all += element("small", fmt::format("{} ", before));
    all += html::words(work.amount->with_unit());
    return element("span", "class=\"amount\"", all);
}

/// For a hand to write on; with scripts there is a clock beside it that runs.
Markup clock(double seconds) {
    Markup all;
    for (const std::string_view label : {"started", "ended"}) {
        Markup one = html::words(label);
        one += element("span", "class=\"clock\"", Markup{});
        all += element("span", "class=\"tick\"", one);
    }
    return element("p", fmt::format("data-seconds=\"{}\"", seconds), all);
}

Markup boxes_and_running(const Work& work) {
    Markup all;
    const std::string_view in = words::box_of(work);
    if (!in.empty()) all += html::box(in);
    if (work.clear_box) all += html::box("clear");
    if (work.running) all += element("span", "class=\"tick running\"", words::running(work));
    return all.text.empty() ? all : element("p", all);
}

Markup step(const Work& work) {
    Markup line = amount(work);
    line += element("span", "class=\"what\"", work.what);
    Markup all = element("span", "class=\"number\"", fmt::format("{}", work.n));
    all += element("p", line);
    for (const std::string& remark : words::remarks(work)) all += element("p", "class=\"remark\"", remark);
    if (work.seconds) all += clock(*work.seconds);
    all += boxes_and_running(work);
    return element("li", all);
}

Markup work(const Card& card) {
    Markup steps;
    for (const Work& line : card.work) steps += step(line);
    if (steps.text.empty()) return {};
    return html::section(words::work_heading, element("ol", "class=\"work\"", steps));
}

Markup end_checks(const Card& card) {
    Markup all = element("p", html::box(words::check_clear));
    all += element("p", html::to_write("colour"));
    for (const std::string& check : card.checks) all += element("p", html::to_write(check + ", found"));
    return html::section(words::checks_heading, all);
}

Markup tally() {
    Markup group;
    for (int i = 0; i < words::tally_of_group; ++i) group += element("span", "class=\"box\"", Markup{});
    Markup all;
    for (int i = 0; i < words::tally_groups; ++i) all += element("span", group);
    Markup both = element("p", words::tally_label);
    both += element("div", "class=\"tally\"", all);
    return both;
}

/// Stands in the place of what is left out where the page works out another volume.
Markup of_one_volume(const Card& card, std::string_view what) {
    if (!card.rescaling) return {};
    return element("p", "class=\"volume-note\"",
                   fmt::format("{} was worked out for {} and is left out here.", what, card.makes.with_unit()));
}

Markup held(const Card& card) {
    Markup all = held_html(card.contents, card.ph);
    if (all.text.empty()) return all;
    all += of_one_volume(card, card.ph ? "The pH, and how far these may be off," : "How far these may be off");
    return html::section(words::held_heading, element("div", "class=\"held\"", all));
}

Markup life(const Card& card) {
    Markup all;
    for (const plan::Life& life : card.keeps) {
        const std::string text = "keeps " + life.text;
        if (life.use_by)
            all += element("p", fmt::format("{}, use by {}", text, plan::day_text(*life.use_by)));
        else
            all += element("p", html::to_write(text + ", use by"));
    }
    if (!card.use_within.empty()) all += element("p", "use within " + card.use_within);
    for (const std::string& rule : card.capacity) all += element("p", "class=\"of-volume\"", rule);
    if (!card.capacity.empty()) all += of_one_volume(card, "How much it does");
    if (words::wants_tally(card)) all += tally();
    return html::section(words::life_heading, all);
}

Markup warnings(const Card& card) {
    std::vector<std::string> lines;
    for (const plan::Warning& warning : card.warnings) lines.push_back(words::warning_line(warning));
    return html::section(words::warnings_heading, html::list(lines));
}

Markup substituted(const Card& card) {
    Markup all;
    for (const plan::Substitution& it : card.substituted) {
        all += element("p", words::substitution_head(it));
        all += html::list(words::substitution(it));
    }
    return html::section(words::substituted_heading, all);
}

/// Shown where scripts run.
Markup rescale(const Card& card) {
    if (!card.rescaling) return {};
    Markup all = element("label", "Make another volume");
    all += Markup{"<input type=\"text\" autocomplete=\"off\" spellcheck=\"false\">\n"};
    all += element("p", "role=\"status\"", Markup{});
    Markup both = element("div", "class=\"rescale\" hidden", all);
    both += rescaling_html(card);
    return both;
}

Markup one_card(const Card& card) {
    Markup all = element("div", "class=\"running-head\" aria-hidden=\"true\"", words::running_head(card));
    all += head(card);
    all += rescale(card);
    all += cautions_html(card.cautions, card.hazards);
    all += accepted_html(card.accepted);
    all += gather(card);
    all += work(card);
    all += end_checks(card);
    all += life(card);
    all += held(card);
    all += substituted(card);
    all += html::section(words::assumed_heading, html::list(card.assumed));
    all += warnings(card);
    all += html::section(words::notes_heading, html::list(card.notes));
    all += html::section(words::sources_heading, html::list(card.sources));
    return element("article", all);
}

}  // namespace

std::string card_html(std::span<const plan::Card> cards, std::string_view contents_page) {
    Markup all;
    if (!contents_page.empty())
        all += element("p", "class=\"way-back\"", html::link(contents_page, words::binder_title));
    for (const Card& card : cards) all += one_card(card);
    return html::page(cards.size() == 1 ? words::title(cards[0]) : "Mixing cards", element("main", all),
                      html::card_script);
}

}  // namespace scruple::emit
