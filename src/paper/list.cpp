// SPDX-License-Identifier: MIT
#include "list.hpp"

#include "scruple/emit/words.hpp"

namespace scruple::paper {

namespace words = emit::words;

void ListColumn::add(Block block, double before) {
    block.before = before;
    blocks_.push_back(std::move(block));
}

void ListColumn::title(const std::string& words, const std::vector<std::string>& remarks) {
    add(column_.words(words, list_title), 0);
    for (const std::string& remark : remarks) add(column_.words(remark), 2);
}

void ListColumn::heading(std::string_view words) {
    add(column_.heading(words), wide_gap);
}

void ListColumn::item(Block head, double indent, const std::vector<std::string>& remarks,
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

void ListColumn::warnings(std::string_view heading, const std::vector<std::string>& warnings) {
    if (!warnings.empty()) this->heading(heading);
    for (const std::string& warning : warnings) add(column_.marked("!", {{warning}}), gap / 2);
}

}  // namespace scruple::paper
