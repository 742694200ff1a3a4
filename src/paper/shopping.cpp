// SPDX-License-Identifier: MIT
// Shopping lists on paper.
#include <fmt/format.h>

#include "list.hpp"
#include "pages.hpp"
#include "scruple/emit/shopping_words.hpp"
#include "scruple/emit/words.hpp"

namespace scruple::paper {
namespace {

namespace words = emit::words;
using plan::ChemicalNeed;
using plan::ShoppingList;
using words::Errand;

constexpr double box_indent = box_side + gap;

/// Each of them in one piece: a line for each makes a list of many sheets.
std::vector<std::string> paragraphs(const std::vector<std::vector<std::string>>& all) {
    std::vector<std::string> found;
    for (const auto& lines : all)
        if (std::string one = words::listed(lines, "; "); !one.empty()) found.push_back(std::move(one));
    return found;
}

class ListComposer {
  public:
    ListComposer(const Type& type, const SheetSize& sheet) : list_(type, area_of(sheet).width) {}

    Blocks list(const ShoppingList& list) {
        list_.title(words::shopping_title(list), {fmt::format("{} to {}", list.first_day, list.last_day)});
        compared(list);
        solutions(list);
        errands(list, Errand::buy, words::buy_heading);
        errands(list, Errand::nobody_sells, words::nobody_sells_heading);
        errands(list, Errand::enough, words::enough_heading);
        sums(list);
        use_costs(list);
        waste(list);
        list_.warnings(words::warnings_heading, list.warnings);
        return list_.take();
    }

  private:
    void solutions(const ShoppingList& list) {
        if (list.solutions.empty()) return;
        list_.heading(words::mix_heading);
        for (const plan::SolutionNeed& need : list.solutions)
            list_.item(list_.column().words({{need.to_mix.with_unit() + "   ", list_amount}, {need.name, list_what}}),
                       0, {words::reckoning(need)}, {});
        // Day by day it would take as many sheets as all the rest.
        list_.add(list_.column().words(std::string(words::days_elsewhere) + " `scruple shopping " + list.plan + "`"),
                  gap);
    }

    void errands(const ShoppingList& list, Errand which, std::string_view heading) {
        bool begun = false;
        for (const ChemicalNeed& need : list.chemicals) {
            if (words::errand_of(need) != which) continue;
            if (!begun) list_.heading(heading);
            begun = true;
            errand(need);
        }
    }

    void errand(const ChemicalNeed& need) {
        const bool bought = words::errand_of(need) == Errand::buy;
        const bool paid = bought && !words::comes_along(need);
        const std::string name = words::chemical(need.name, need.form_name);
        Words what;
        if (bought) what.push_back({words::packs(need) + "   ", list_amount});
        what.push_back({name, list_what});
        std::vector<std::string> remarks;
        if (paid) remarks.push_back(words::from_whom(need));
        if (std::string other = words::other_form(need); !other.empty()) remarks.push_back(std::move(other));
        remarks.push_back(words::reckoning(need));
        for (std::string& line : words::why_packs(need)) remarks.push_back(std::move(line));
        const std::string cost = paid ? words::money(need.cost, need.currency) : "";
        Block head = bought ? list_.column().row({{what, {{cost, strong}}}, {list_cost_width}, false, true})
                            : list_.column().words(what);
        list_.item(std::move(head), bought ? box_indent : 0, paragraphs({remarks, need.because}), {});
    }

    void sums(const ShoppingList& list) {
        if (list.postage.empty() && list.totals.empty()) return;
        list_.heading(words::cost_heading);
        for (const plan::PostageRow& row : list.postage)
            list_.add(
                list_.column().row({{{{"postage from " + row.supplier}}, {{words::money(row.cost, row.currency)}}},
                                    {list_cost_width}}),
                3);
        for (const auto& [currency, cost] : list.totals)
            list_.add(list_.column().row({{{{"all together", strong}}, {{words::money(cost, currency), list_amount}}},
                                          {list_cost_width}}),
                      3);
    }

    void use_costs(const ShoppingList& list) {
        if (list.use_costs.empty()) return;
        list_.heading(words::use_cost_heading);
        for (const plan::UseCost& cost : list.use_costs) {
            Block head =
                list_.column().row({{{{words::use_head(cost)}}, {{words::use_cost(cost.cost, cost.currency), strong}}},
                                    {list_cost_width},
                                    false});
            list_.item(std::move(head), 0, words::use_details(cost), {});
        }
        list_.add(list_.column().words(words::use_cost_rule), 3);
    }

    void compared(const ShoppingList& list) {
        for (const plan::ListComparison& one : list.compared) {
            list_.heading(words::compared_heading(one));
            for (const std::string& line : one.lines) list_.add(list_.column().marked("–", {{line}}), gap / 2);
        }
    }

    void waste(const ShoppingList& list) {
        if (list.waste.empty()) return;
        list_.heading(words::waste_heading);
        for (const plan::WasteRow& row : list.waste)
            list_.add(list_.column().row({{{{words::waste(row)}}, {{row.volume.with_unit()}}}, {list_cost_width}}), 3);
        list_.add(list_.column().words(words::waste_rule), 3);
    }

    ListColumn list_;
};

}  // namespace

std::string shopping(const ShoppingList& list, const Printing& printing) {
    const Type type;
    return drawn({words::shopping_title(list), ListComposer(type, printing.sheet).list(list)}, type, printing);
}

}  // namespace scruple::paper
