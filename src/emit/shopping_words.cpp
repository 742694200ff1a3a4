// SPDX-License-Identifier: MIT
#include "scruple/emit/shopping_words.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "scruple/emit/words.hpp"

namespace scruple::emit::words {

namespace {

/// `1 × 500 g from Kiln Lane and 2 × 25 g from Drysalter`
std::string with_suppliers(const std::vector<plan::PackRow>& packs) {
    std::string all;
    for (const auto& row : packs)
        all += fmt::format("{}{} from {}", all.empty() ? "" : " and ", words::packs(row), row.supplier);
    return all;
}

}  // namespace

std::string shopping_title(const plan::ShoppingList& list) {
    return "Shopping for " + list.plan;
}

std::string money(const quantity::Exact& value) {
    std::string text = quantity::decimal_text(value, 2);
    const std::size_t point = text.find('.');
    if (point == std::string::npos) return text + ".00";
    text.append(3 - (text.size() - point), '0');
    return text;
}

std::string money(const quantity::Exact& value, const std::string& currency) {
    return money(value) + plan::unit_blank + currency;
}

Errand errand_of(const plan::ChemicalNeed& need) {
    if (need.to_buy.value <= 0) return Errand::enough;
    return need.packs.empty() && need.along_with.empty() ? Errand::nobody_sells : Errand::buy;
}

std::string compared_heading(const plan::ListComparison& compared) {
    return "Otherwise than " + compared.with;
}

std::string use_head(const plan::UseCost& cost) {
    return fmt::format("{} through {}", cost.per, cost.process);
}

/// A sheet's share of a bath is less than a hundredth: three figures, not two places.
std::string use_cost(const quantity::Exact& cost, const std::string& currency) {
    return quantity::significant_text(cost, 3) + plan::unit_blank + currency;
}

std::vector<std::string> use_details(const plan::UseCost& cost) {
    std::vector<std::string> baths;
    for (const auto& one : cost.baths)
        baths.push_back(fmt::format("{} {}", one.bath, use_cost(one.cost, cost.currency)));
    std::vector<std::string> lines{listed(baths)};
    if (!cost.unpriced.empty()) lines.push_back("in no price list, and not in it: " + listed(cost.unpriced));
    return lines;
}

std::string waste(const plan::WasteRow& row) {
    return row.kind + (row.silver ? ", with silver in it" : "");
}

bool comes_along(const plan::ChemicalNeed& need) {
    return errand_of(need) == Errand::buy && need.packs.empty();
}

std::string packs(const plan::PackRow& row) {
    return fmt::format("{}{}×{}{}", row.count, plan::unit_blank, plan::unit_blank, row.pack);
}

std::string packs(const plan::ChemicalNeed& need) {
    if (comes_along(need)) return "—";
    std::string all;
    for (const auto& row : need.packs) all += (all.empty() ? "" : " + ") + packs(row);
    return all;
}

std::string from_whom(const plan::ChemicalNeed& need) {
    if (std::ranges::adjacent_find(need.packs, std::ranges::not_equal_to{}, &plan::PackRow::supplier) ==
        need.packs.end())
        return "from " + need.packs.front().supplier;
    return with_suppliers(need.packs);
}

std::vector<std::string> why_packs(const plan::ChemicalNeed& need) {
    std::vector<std::string> lines;
    if (need.packs.empty()) return lines;
    if (need.filled_up) lines.emplace_back("more than is needed, since so the postage is saved");
    if (!need.next_best) {
        lines.emplace_back("nobody sells it in another pack");
        return lines;
    }
    const std::string other = with_suppliers(need.next_best->packs);
    lines.push_back(need.next_best->more.is_zero() ? fmt::format("at the same cost: {}", other)
                                                   : fmt::format("next best: {}; the whole list then costs {} more",
                                                                 other, money(need.next_best->more, need.currency)));
    return lines;
}

namespace {

std::string keeping_of(const plan::ChemicalNeed& need) {
    if (need.left_over.value.is_zero()) return {};
    return need.keeps.empty() ? ", no keeping time recorded" : fmt::format(", which keeps {} from now", need.keeps);
}

}  // namespace

std::string reckoning(const plan::ChemicalNeed& need) {
    const Errand errand = errand_of(need);
    std::string all = fmt::format("needed {}, on hand {}", need.needed.with_unit(), need.on_hand.with_unit());
    if (errand == Errand::enough) return all;
    all += ", to buy " + need.to_buy.with_unit();
    if (errand == Errand::buy && !comes_along(need))
        all += fmt::format("; {} will be left{}", need.left_over.with_unit(), keeping_of(need));
    return all;
}

std::string reckoning(const plan::SolutionNeed& need) {
    return fmt::format("needed {}, on hand {}", need.needed.with_unit(), need.on_hand.with_unit());
}

std::string other_form(const plan::ChemicalNeed& need) {
    if (need.buy_form.empty() || need.buy_form == need.form_name) return {};
    return fmt::format("sold as {}: {} of it", need.buy_form, need.to_buy_as.with_unit());
}

}  // namespace scruple::emit::words
