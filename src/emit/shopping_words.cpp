// SPDX-License-Identifier: MIT
#include "scruple/emit/shopping_words.hpp"

#include <fmt/format.h>

#include "scruple/emit/words.hpp"

namespace scruple::emit::words {

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
    return need.supplier.empty() ? Errand::nobody_sells : Errand::buy;
}

bool comes_along(const plan::ChemicalNeed& need) {
    return errand_of(need) == Errand::buy && need.packs == 0;
}

std::string packs(const plan::ChemicalNeed& need) {
    if (comes_along(need)) return "—";
    return fmt::format("{}{}×{}{}", need.packs, plan::unit_blank, plan::unit_blank, need.pack);
}

std::string reckoning(const plan::ChemicalNeed& need) {
    const Errand errand = errand_of(need);
    std::string all = fmt::format("needed {}, on hand {}", need.needed.with_unit(), need.on_hand.with_unit());
    if (errand == Errand::enough) return all;
    all += ", to buy " + need.to_buy.with_unit();
    if (errand == Errand::buy && !comes_along(need))
        all += fmt::format("; {} will be left", need.left_over.with_unit());
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
