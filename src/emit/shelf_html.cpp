// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "html.hpp"
#include "scruple/emit/emit.hpp"
#include "scruple/emit/shelf_words.hpp"
#include "scruple/emit/words.hpp"
#include "scruple/plan/calendar.hpp"

namespace scruple::emit {
namespace {

using html::element;
using html::Markup;
using plan::StockItem;
using plan::StockLot;
using plan::StockSheet;

Markup head(const plan::Figure& figure, std::string_view name) {
    Markup line = element("span", "class=\"amount\"", figure.with_unit());
    line += element("span", "class=\"what\"", name);
    return element("p", line);
}

Markup block(std::string_view heading, const Markup& items) {
    return items.text.empty() ? items : html::section(heading, element("ul", "class=\"errands\"", items));
}

Markup chemicals(const StockSheet& shelf) {
    Markup all;
    for (const StockItem* item : words::there_is(shelf.chemicals)) {
        Markup one = head(item->on_hand, words::chemical(item->name, item->form_name));
        std::vector<std::string> jars;
        for (const StockLot& lot : item->lots)
            jars.push_back(words::with_cost(words::jar_words(lot, item->lots.size() == 1), lot));
        one += html::list(jars);
        all += element("li", one);
    }
    return block(words::chemicals_heading, all);
}

Markup solutions(const StockSheet& shelf) {
    Markup all;
    for (const StockItem* item : words::there_is(shelf.solutions))
        for (const StockLot& lot : item->lots) {
            Markup one = head(lot.left, item->name);
            one += element("p", words::with_cost(words::batch_words(lot), lot));
            for (const std::string& warning : lot.warnings) one += element("p", element("b", "! " + warning));
            for (const std::string& remark : words::lot_remarks(lot)) one += element("p", remark);
            const auto sources = words::lot_sources(lot);
            if (!sources.empty()) one += element("p", words::made_of);
            one += html::list(sources);
            all += element("li", one);
        }
    return block(words::solutions_heading, all);
}

Markup corrections(const StockSheet& shelf) {
    const auto all = words::corrected(shelf);
    if (all.empty()) return {};
    html::Table table({"what", "counted on", "by"}, 1);
    for (const auto* it : all)
        table.row({words::correction(*it), plan::day_text(it->line.day), words::signed_amount(it->by)});
    return html::section(words::counted_heading, table.take());
}

}  // namespace

std::string shelf_html(const StockSheet& shelf) {
    const std::string title = words::shelf_title(shelf);
    Markup all = element("h1", title);
    for (const std::string& remark : words::shelf_remarks(shelf)) all += element("p", remark);
    if (words::there_is(shelf.chemicals).empty() && words::there_is(shelf.solutions).empty())
        all += element("p", words::nothing_there);
    all += chemicals(shelf);
    all += solutions(shelf);
    all += corrections(shelf);
    all += html::section(words::shortages_heading, html::list(words::shortages(shelf)));
    return html::page(title, element("main", element("article", all)));
}

std::string entry_html(const plan::StockEntry& entry) {
    const std::string title = words::entry_head(entry);
    Markup all = element("h1", title);
    all += element("pre", entry.text);
    Markup shares;
    for (const auto& share : entry.shares) {
        Markup one = head(share.amount, share.name);
        one += element("p", share.lot);
        shares += element("li", one);
    }
    all += block(words::takes, shares);
    for (const auto& it : entry.corrections)
        all += element("p", words::correction(it) + ": " + words::signed_amount(it.by));
    for (const auto& fault : entry.faults) all += element("p", element("b", "! " + words::not_there(fault)));
    return html::page(title, element("main", element("article", all)));
}

}  // namespace scruple::emit
