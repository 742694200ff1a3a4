// SPDX-License-Identifier: MIT
// One jar or bottle as it stands on the sheet.
#pragma once

#include "log.hpp"
#include "lot_costs.hpp"
#include "scruple/plan/stock_sheet.hpp"

namespace scruple::plan {

[[nodiscard]] StockLine line_at(const check::Model& model, LineId line);

[[nodiscard]] StockLot stock_lot(const check::Model& model, const Lot& lot, check::Day on);
[[nodiscard]] StockCost stock_cost(const check::Model& model, const Worth& worth, const check::Exact& share);

/// What was poured between two marks, what came from one lot as one.
[[nodiscard]] std::vector<StockShare> stock_shares(const check::Model& model, const Lots& lots, std::uint32_t first,
                                                   std::uint32_t end);

}  // namespace scruple::plan
