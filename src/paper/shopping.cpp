// SPDX-License-Identifier: MIT
// Shopping lists on paper.
#include <fmt/format.h>

#include "column.hpp"
#include "pages.hpp"
#include "scruple/emit/shopping_words.hpp"
#include "scruple/emit/words.hpp"

namespace scruple::paper {
namespace {

namespace words = emit::words;
using plan::ChemicalNeed;
using plan::ShoppingList;
using words::Errand;

constexpr Style title_style{26, true};
constexpr Style amount_style{20, true};
constexpr Style what_style{16, false};
constexpr double cost_width = 110;
constexpr double box_indent = box_side + gap;

class Composer {
  public:
    Composer(const Type& type, const SheetSize& sheet) : column_(type, area_of(sheet).width) {}

    Blocks list(const ShoppingList& list) {
        add(column_.words(words::shopping_title(list), title_style), 0);
        add(column_.words(fmt::format("{} to {}", list.first_day, list.last_day)), 2);
        solutions(list);
        errands(list, Errand::buy, words::buy_heading);
        errands(list, Errand::nobody_sells, words::nobody_sells_heading);
        errands(list, Errand::enough, words::enough_heading);
        sums(list);
        if (!list.warnings.empty()) add(column_.heading(words::warnings_heading), wide_gap);
        for (const std::string& warning : list.warnings) add(column_.marked("!", {{warning}}), gap / 2);
        return std::move(blocks_);
    }

  private:
    void add(Block block, double before) {
        block.before = before;
        blocks_.push_back(std::move(block));
    }

    /// A head and what hangs below it, with a rule under all of it.
    void add_item(Block head, double indent, const std::vector<std::string>& remarks,
                  const std::vector<std::string>& because) {
        const Column inner = column_.narrower(indent);
        Blocks all{std::move(head)};
        const auto below = [&](Block block) {
            block.before = 2;
            all.push_back(indented(std::move(block), indent));
        };
        for (const std::string& remark : remarks) below(inner.words(words::with_units_kept(remark)));
        for (const std::string& reason : because) below(inner.marked("–", {{words::with_units_kept(reason)}}));
        Block rule = column_.rule(0.8);
        rule.before = 4;
        rule.stays_with_next = false;
        all.push_back(std::move(rule));
        add(stacked(std::move(all)), gap);
    }

    void solutions(const ShoppingList& list) {
        if (list.solutions.empty()) return;
        add(column_.heading(words::mix_heading), wide_gap);
        for (const plan::SolutionNeed& need : list.solutions)
            add_item(column_.words({{need.to_mix.with_unit() + "   ", amount_style}, {need.name, what_style}}), 0,
                     {words::reckoning(need)}, need.because);
    }

    void errands(const ShoppingList& list, Errand which, std::string_view heading) {
        bool begun = false;
        for (const ChemicalNeed& need : list.chemicals) {
            if (words::errand_of(need) != which) continue;
            if (!begun) add(column_.heading(heading), wide_gap);
            begun = true;
            errand(need);
        }
    }

    void errand(const ChemicalNeed& need) {
        const bool bought = words::errand_of(need) == Errand::buy;
        const bool paid = bought && !words::comes_along(need);
        const std::string name = words::chemical(need.name, need.form_name);
        Words what;
        if (bought) what.push_back({words::packs(need) + "   ", amount_style});
        what.push_back({name, what_style});
        std::vector<std::string> remarks;
        if (paid) remarks.push_back("from " + need.supplier);
        if (std::string other = words::other_form(need); !other.empty()) remarks.push_back(std::move(other));
        remarks.push_back(words::reckoning(need));
        const std::string cost = paid ? words::money(need.cost, need.currency) : "";
        Block head = bought ? column_.row({{what, {{cost, strong}}}, {cost_width}, false, true}) : column_.words(what);
        add_item(std::move(head), bought ? box_indent : 0, remarks, need.because);
    }

    void sums(const ShoppingList& list) {
        if (list.postage.empty() && list.totals.empty()) return;
        add(column_.heading(words::cost_heading), wide_gap);
        for (const plan::PostageRow& row : list.postage)
            add(column_.row(
                    {{{{"postage from " + row.supplier}}, {{words::money(row.cost, row.currency)}}}, {cost_width}}),
                3);
        for (const auto& [currency, cost] : list.totals)
            add(column_.row(
                    {{{{"all together", strong}}, {{words::money(cost, currency), amount_style}}}, {cost_width}}),
                3);
    }

    Column column_;
    Blocks blocks_;
};

}  // namespace

std::string shopping(const ShoppingList& list, const Printing& printing) {
    const Type type;
    const std::string title = words::shopping_title(list);
    auto pages = laid_out({title, Composer(type, printing.sheet).list(list)}, type, printing.sheet);
    add_feet(pages, type, printing.sheet);
    return drawn(pages, title, printing);
}

}  // namespace scruple::paper
