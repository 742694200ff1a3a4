// SPDX-License-Identifier: MIT
// What the text, the page and the paper of a shelf all say.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "scruple/plan/stock_sheet.hpp"

namespace scruple::emit::words {

inline constexpr std::string_view chemicals_heading = "Chemicals";
inline constexpr std::string_view solutions_heading = "Solutions";
inline constexpr std::string_view counted_heading = "Corrected by counting";
inline constexpr std::string_view shortages_heading = "More taken than there was";
inline constexpr std::string_view nothing_there = "By the log there is nothing on the shelf.";

/// `On the shelf on 2026-11-28`
[[nodiscard]] std::string shelf_title(const plan::StockSheet& sheet);
/// Which lines count, and how much wants attention; one thing a line.
[[nodiscard]] std::vector<std::string> shelf_remarks(const plan::StockSheet& sheet);

/// `140 g of 1000 g received 2026-09-12 from Kiln Lane`; of one that is `alone` its amount has been said.
[[nodiscard]] std::string jar_words(const plan::StockLot& lot, bool alone);
/// `mixed 2026-09-29, 60 days old, 40 % full`
[[nodiscard]] std::string batch_words(const plan::StockLot& lot);
/// What else is known of a batch: use-by, what went through it, what is not in its cost; one thing a line.
[[nodiscard]] std::vector<std::string> lot_remarks(const plan::StockLot& lot);
inline constexpr std::string_view made_of = "made of";
/// `25 g potassium bromide, jar of 2026-09-18 from Drysalter`
[[nodiscard]] std::vector<std::string> lot_sources(const plan::StockLot& lot);
/// `1.65 EUR`, `at least 1.65 EUR`, `no price`
[[nodiscard]] std::string lot_cost(const plan::StockLot& lot);
/// The same behind other words.
[[nodiscard]] std::string with_cost(const std::string& words, const plan::StockLot& lot);

/// What there is something of.
[[nodiscard]] std::vector<const plan::StockItem*> there_is(const std::vector<plan::StockItem>& items);
/// Those that are no first counts.
[[nodiscard]] std::vector<const plan::StockCorrection*> corrected(const plan::StockSheet& sheet);
/// `borax (decahydrate): 210 g counted, 213.2 g by the log`
[[nodiscard]] std::string correction(const plan::StockCorrection& it);
/// `−3.2 g`, `+5 g`
[[nodiscard]] std::string signed_amount(const plan::Figure& figure);
/// With the line's place; what has been counted since is left out.
[[nodiscard]] std::vector<std::string> shortages(const plan::StockSheet& sheet);

/// `Written: log.scruple:41`
[[nodiscard]] std::string entry_head(const plan::StockEntry& entry);
inline constexpr std::string_view takes = "It takes from the shelf";
/// `by the log the shelf has 5 g metol too little for it`
[[nodiscard]] std::string not_there(const plan::StockFault& fault);

}  // namespace scruple::emit::words
