// SPDX-License-Identifier: MIT
// All cards of a workspace as one document, with what is on which page in front.
#include <cairo-pdf.h>
#include <fmt/format.h>

#include <algorithm>
#include <iterator>

#include "card.hpp"
#include "column.hpp"
#include "scruple/emit/words.hpp"

namespace scruple::paper {
namespace {

namespace words = emit::words;
using plan::Card;

constexpr double page_width = 60;
constexpr int most_lines = 3;  // of a name; the card has all of it

/// A line of the contents.
struct Entry {
    const Card* card;
    std::size_t page = 1;
};

/// A touch on it leads to the page, where the reader of the PDF can do that.
Block linked(Block block, std::size_t page) {
    block.draw = [inner = std::move(block.draw), page](cairo_t* ink, double x, double y) {
        cairo_tag_begin(ink, CAIRO_TAG_LINK, fmt::format("page={} pos=[0 0]", page).c_str());
        inner(ink, x, y);
        cairo_tag_end(ink, CAIRO_TAG_LINK);
    };
    return block;
}

Document contents(const std::vector<Entry>& entries, const Type& type, const SheetSize& sheet) {
    const Column column(type, area_of(sheet).width);
    Document document{std::string(words::binder_title), {column.words(words::binder_title, title_style)}};
    for (const Entry& entry : entries) {
        Block row = column.row({{{{words::binder_entry(*entry.card)}}, {{std::to_string(entry.page), strong}}},
                                {page_width},
                                true,
                                false,
                                most_lines});
        row.before = gap;
        document.blocks.push_back(linked(std::move(row), entry.page));
    }
    return document;
}

std::vector<Page> contents_pages(const std::vector<Entry>& entries, const Type& type, const SheetSize& sheet) {
    auto pages = laid_out(contents(entries, type, sheet), type, sheet);
    for (Page& page : pages) page.foot.sheets = 0;  // the page says it
    return pages;
}

/// A recipe's first card has its name above its own.
void set_bookmarks(std::vector<Page>& pages, const Card& card, bool first_of_recipe) {
    Page& front = pages.front();
    front.bookmarks.clear();
    const std::string own = words::listed({card.section, card.variant});
    if (first_of_recipe) front.bookmarks.push_back({card.recipe, 0});
    if (!own.empty()) front.bookmarks.push_back({own, 1});
}

}  // namespace

std::string binder(std::span<const Card> cards, const Printing& printing) {
    const Type type;
    std::vector<Entry> entries;
    std::vector<Page> sheets;
    for (const Card& card : cards) {
        auto pages = card_pages(card, type, printing.sheet);
        set_bookmarks(pages, card, entries.empty() || entries.back().card->recipe != card.recipe);
        entries.push_back({&card, sheets.size() + 1});
        std::ranges::move(pages, std::back_inserter(sheets));
    }
    // The numbers change nothing about how many sheets the contents take: each line is as high as its name.
    const std::size_t in_front = contents_pages(entries, type, printing.sheet).size();
    for (Entry& entry : entries) entry.page += in_front;
    auto all = contents_pages(entries, type, printing.sheet);
    std::ranges::move(sheets, std::back_inserter(all));
    for (std::size_t i = 0; i < all.size(); ++i) all[i].foot.page = i + 1;
    add_feet(all, type, printing.sheet);
    return drawn(all, std::string(words::binder_title), printing);
}

}  // namespace scruple::paper
