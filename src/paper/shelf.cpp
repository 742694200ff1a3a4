// SPDX-License-Identifier: MIT
// What is on the shelf, on paper.
#include "list.hpp"
#include "pages.hpp"
#include "scruple/emit/shelf_words.hpp"
#include "scruple/emit/words.hpp"
#include "scruple/plan/calendar.hpp"

namespace scruple::paper {
namespace {

namespace words = emit::words;
using plan::StockItem;
using plan::StockLot;
using plan::StockSheet;

class ShelfComposer {
  public:
    ShelfComposer(const Type& type, const SheetSize& sheet) : list_(type, area_of(sheet).width) {}

    Blocks shelf(const StockSheet& shelf) {
        auto remarks = words::shelf_remarks(shelf);
        if (words::there_is(shelf.chemicals).empty() && words::there_is(shelf.solutions).empty())
            remarks.emplace_back(words::nothing_there);
        list_.title(words::shelf_title(shelf), remarks);
        chemicals(shelf);
        solutions(shelf);
        corrections(shelf);
        list_.warnings(words::shortages_heading, words::shortages(shelf));
        return list_.take();
    }

  private:
    [[nodiscard]] Block head(const plan::Figure& amount, const std::string& name) const {
        return list_.column().words({{amount.with_unit() + "   ", list_amount}, {name, list_what}});
    }

    void chemicals(const StockSheet& shelf) {
        const auto items = words::there_is(shelf.chemicals);
        if (!items.empty()) list_.heading(words::chemicals_heading);
        for (const StockItem* item : items) {
            std::vector<std::string> jars;
            for (const StockLot& lot : item->lots)
                jars.push_back(words::with_cost(words::jar_words(lot, item->lots.size() == 1), lot));
            list_.item(head(item->on_hand, words::chemical(item->name, item->form_name)), 0, {}, jars);
        }
    }

    void solutions(const StockSheet& shelf) {
        const auto items = words::there_is(shelf.solutions);
        if (!items.empty()) list_.heading(words::solutions_heading);
        for (const StockItem* item : items)
            for (const StockLot& lot : item->lots) {
                std::vector<std::string> remarks{words::with_cost(words::batch_words(lot), lot)};
                for (const std::string& warning : lot.warnings) remarks.push_back("! " + warning);
                for (std::string& remark : words::lot_remarks(lot)) remarks.push_back(std::move(remark));
                const auto sources = words::lot_sources(lot);
                if (!sources.empty()) remarks.emplace_back(words::made_of);
                list_.item(head(lot.left, item->name), 0, remarks, sources);
            }
    }

    void corrections(const StockSheet& shelf) {
        const auto all = words::corrected(shelf);
        if (!all.empty()) list_.heading(words::counted_heading);
        for (const auto* it : all)
            list_.add(list_.column().row({{{{plan::day_text(it->line.day) + "   " + words::correction(*it)}},
                                           {{words::signed_amount(it->by), strong}}},
                                          {list_cost_width}}),
                      3);
    }

    ListColumn list_;
};

}  // namespace

std::string shelf(const StockSheet& shelf, const Printing& printing) {
    const Type type;
    return drawn({words::shelf_title(shelf), ShelfComposer(type, printing.sheet).shelf(shelf)}, type, printing);
}

}  // namespace scruple::paper
