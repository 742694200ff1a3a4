// SPDX-License-Identifier: MIT
// A shopping list as rows for a spreadsheet: what is mixed, each pack that is bought, postage and sums.
#include "csv.hpp"
#include "scruple/emit/emit.hpp"
#include "scruple/emit/shopping_words.hpp"

namespace scruple::emit {
namespace {

using csv::words;

class Rows {
  public:
    std::string run(const plan::ShoppingList& list) {
        add({"what", "name", "form", "needed", "on hand", "to get", "unit", "supplier", "pack", "packs", "cost",
             "currency", "left over"});
        for (const auto& need : list.solutions) solution(need);
        for (const auto& need : list.chemicals) chemical(need);
        for (const auto& row : list.postage)
            add({"postage", "", "", "", "", "", "", words(row.supplier), "", "", emit::words::money(row.cost),
                 words(row.currency), ""});
        for (const auto& [currency, cost] : list.totals)
            add({"total", "", "", "", "", "", "", "", "", "", emit::words::money(cost), words(currency), ""});
        for (const auto& row : list.waste)
            add({"poured off", words(row.kind), row.silver ? "with silver" : "", measure(row.volume), "", "",
                 unit(row.volume), "", "", "", "", "", ""});
        return std::move(text_);
    }

  private:
    void add(const std::vector<std::string>& cells) { text_ += csv::row(cells); }

    /// In g or ml throughout, so that a column can be summed.
    static std::string measure(const plan::Figure& figure) {
        const bool thousands = figure.unit == "kg" || figure.unit == "l";
        return quantity::decimal_text(thousands ? figure.value * 1000 : figure.value, 3);
    }

    static std::string unit(const plan::Figure& figure) {
        return figure.unit == "kg" ? "g" : figure.unit == "l" ? "ml" : figure.unit;
    }

    void solution(const plan::SolutionNeed& need) {
        add({"mix", words(need.name), "", measure(need.needed), measure(need.on_hand), measure(need.to_mix),
             unit(need.needed), "", "", "", "", "", ""});
    }

    /// A row for each size of pack, the amounts on the first.
    void chemical(const plan::ChemicalNeed& need) {
        const bool enough = emit::words::errand_of(need) == emit::words::Errand::enough;
        std::vector<std::string> cells{enough               ? "enough"
                                       : need.packs.empty() ? "needed"
                                                            : "buy",
                                       words(need.name),
                                       words(need.form_name),
                                       measure(need.needed),
                                       measure(need.on_hand),
                                       measure(need.to_buy),
                                       unit(need.needed)};
        std::string left = measure(need.left_over);
        if (need.packs.empty()) add(with_pack(cells, {}, need.currency, left));
        for (const auto& row : need.packs) {
            add(with_pack(cells, row, need.currency, left));
            cells = {"buy", words(need.name), words(need.form_name), "", "", "", ""};
            left.clear();
        }
    }

    static std::vector<std::string> with_pack(std::vector<std::string> cells, const plan::PackRow& row,
                                              const std::string& currency, const std::string& left) {
        const bool none = row.count == 0;
        for (const std::string& cell : {words(row.supplier), words(row.pack), none ? "" : std::to_string(row.count),
                                        none ? "" : emit::words::money(row.cost), none ? "" : words(currency), left})
            cells.push_back(cell);
        return cells;
    }

    std::string text_;
};

}  // namespace

std::string shopping_csv(const plan::ShoppingList& list) {
    return Rows().run(list);
}

}  // namespace scruple::emit
