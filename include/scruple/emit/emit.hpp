// SPDX-License-Identifier: MIT
// Back ends: a plan of work as text, as a web page, as JSON; recipes as recipe text.
// None computes chemistry, none knows of another. All text is UTF-8 and ends with a line end.
#pragma once

#include <span>
#include <string>

#include "scruple/check/model.hpp"
#include "scruple/plan/card.hpp"
#include "scruple/plan/compare.hpp"
#include "scruple/plan/contents_sheet.hpp"
#include "scruple/plan/evening.hpp"
#include "scruple/plan/label.hpp"
#include "scruple/plan/mixing_calendar.hpp"
#include "scruple/plan/react.hpp"
#include "scruple/plan/shopping.hpp"
#include "scruple/plan/stock_sheet.hpp"
#include "scruple/plan/swap.hpp"
#include "scruple/plan/weigh.hpp"
#include "scruple/plan/why.hpp"
#include "scruple/printed/settle.hpp"
#include "scruple/syntax/tree.hpp"

namespace scruple::emit {

struct TextStyle {
    std::size_t width = 80;  ///< columns; taken as 40 to 80
};

[[nodiscard]] std::string card_text(const plan::Card& card, const TextStyle& style);
/// `contents_page`: the file name of the page that lists this one among others, if there is one; the program's own.
[[nodiscard]] std::string card_html(std::span<const plan::Card> cards, std::string_view contents_page = {});
/// One card is an object; several are {"kind":"cards","cards":[…]}.
[[nodiscard]] std::string card_json(std::span<const plan::Card> cards);

/// A card as a page of its own beside others.
struct BinderPage {
    const plan::Card* card = nullptr;
    std::string file_name;
};
/// File names of the cards' pages: small letters, digits and hyphens whatever the recipes are called, each once.
[[nodiscard]] std::vector<BinderPage> binder_pages(std::span<const plan::Card> cards);
/// The page that leads to them, with a search where scripts run. `pdf`: the file name of all of them as one document.
[[nodiscard]] std::string binder_html(std::span<const BinderPage> pages, std::string_view pdf);

[[nodiscard]] std::string labels_text(std::span<const plan::Label> labels, const TextStyle& style);
[[nodiscard]] std::string labels_html(std::span<const plan::Label> labels);
[[nodiscard]] std::string labels_json(std::span<const plan::Label> labels);

[[nodiscard]] std::string shopping_text(const plan::ShoppingList& list, const TextStyle& style);
[[nodiscard]] std::string shopping_html(const plan::ShoppingList& list);
[[nodiscard]] std::string shopping_json(const plan::ShoppingList& list);
/// RFC 4180; no cell of it is a formula to a spreadsheet.
[[nodiscard]] std::string shopping_csv(const plan::ShoppingList& list);

[[nodiscard]] std::string calendar_text(const plan::MixingCalendar& calendar, const TextStyle& style);
[[nodiscard]] std::string calendar_html(const plan::MixingCalendar& calendar);
[[nodiscard]] std::string calendar_json(const plan::MixingCalendar& calendar);
/// RFC 5545: days of mixing, last days of use, days on which what is left is discarded.
[[nodiscard]] std::string calendar_ics(const plan::MixingCalendar& calendar);

[[nodiscard]] std::string evening_text(const plan::Evening& evening, const TextStyle& style);
[[nodiscard]] std::string evening_html(const plan::Evening& evening);
[[nodiscard]] std::string evening_json(const plan::Evening& evening);

[[nodiscard]] std::string shelf_text(const plan::StockSheet& shelf, const TextStyle& style);
[[nodiscard]] std::string shelf_html(const plan::StockSheet& shelf);
[[nodiscard]] std::string shelf_json(const plan::StockSheet& shelf);

/// A line that was written into the log.
[[nodiscard]] std::string entry_text(const plan::StockEntry& entry, const TextStyle& style);
[[nodiscard]] std::string entry_html(const plan::StockEntry& entry);
[[nodiscard]] std::string entry_json(const plan::StockEntry& entry);

[[nodiscard]] std::string chemical_text(const check::Chemical& chemical, const TextStyle& style);
[[nodiscard]] std::string chemical_html(const check::Chemical& chemical);
[[nodiscard]] std::string chemical_json(const check::Chemical& chemical);

/// One amount of one form of a chemical as each of some other forms; at least one of them.
[[nodiscard]] std::string weigh_text(std::span<const plan::Weighing> weighings, const TextStyle& style);
[[nodiscard]] std::string weigh_html(std::span<const plan::Weighing> weighings);
[[nodiscard]] std::string weigh_json(std::span<const plan::Weighing> weighings);

/// One solution or several.
[[nodiscard]] std::string contents_text(std::span<const plan::ContentsSheet> sheets, const TextStyle& style);
[[nodiscard]] std::string contents_html(std::span<const plan::ContentsSheet> sheets);
[[nodiscard]] std::string contents_json(std::span<const plan::ContentsSheet> sheets);

[[nodiscard]] std::string why_text(std::span<const plan::Why> whys, const TextStyle& style);
[[nodiscard]] std::string why_html(std::span<const plan::Why> whys);
[[nodiscard]] std::string why_json(std::span<const plan::Why> whys);

[[nodiscard]] std::string react_text(const plan::Reacted& reacted, const TextStyle& style);
[[nodiscard]] std::string react_html(const plan::Reacted& reacted);
[[nodiscard]] std::string react_json(const plan::Reacted& reacted);

[[nodiscard]] std::string settle_text(const printed::Settlement& settled, const TextStyle& style);
[[nodiscard]] std::string settle_html(const printed::Settlement& settled);
[[nodiscard]] std::string settle_json(const printed::Settlement& settled);
/// Recipe text as `tidy_text` would take it, each reading an `assumed` line.
[[nodiscard]] std::string settled_recipe(const printed::Settlement& settled);

[[nodiscard]] std::string compare_text(const plan::Compared& compared, const TextStyle& style);
[[nodiscard]] std::string compare_html(const plan::Compared& compared);
[[nodiscard]] std::string compare_json(const plan::Compared& compared);

/// What is text and no more, as a page that keeps its lines, and as {"kind":…,"name":…,"text":…}.
[[nodiscard]] std::string plain_html(std::string_view title, std::string_view text);
[[nodiscard]] std::string plain_json(std::string_view kind, std::string_view name, std::string_view text);

/// What became of a file that was to be brought into the one layout.
struct TidiedFile {
    std::string path;
    enum class State { changed, unchanged, left } state = State::unchanged;
    std::string why;  ///< left
};
[[nodiscard]] std::string tidied_json(std::span<const TidiedFile> files);

/// One canonical layout: twice equals once, and the tree of the result is the tree of the input.
[[nodiscard]] std::string tidy_text(const text::Source& source, const syntax::Tree& tree);

/// The statements of one recipe (from its heading to the next one) as recipe text with every extensive
/// amount multiplied by `factor`, exactly and in the author's units, the author's comments in place. Numbers that
/// are multiplied come in one spelling (`1.5` for `1 1/2` and `1.50`); their values are exact. Lines that are written
/// anew come with their amounts multiplied too, and say in a comment what they replace.
[[nodiscard]] std::string scaled_text(const text::Source& source, const syntax::Tree& tree, std::uint32_t heading,
                                      const quantity::Exact& factor, std::span<const plan::Rewriting> rewritings = {});

}  // namespace scruple::emit
