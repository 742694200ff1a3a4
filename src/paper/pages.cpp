// SPDX-License-Identifier: MIT
#include "pages.hpp"

#include <fmt/format.h>

#include <memory>

#include "column.hpp"

namespace scruple::paper {
namespace {

constexpr double margin_mm = 12;
constexpr double foot_points = 24;
constexpr int most_head_lines = 2;  // a name may be longer than a sheet

/// What stands on one sheet, with the place of each block.
struct Sheet {
    struct Set {
        Block block;
        double y;
    };
    std::vector<Set> blocks;
    double used = 0;
};

class Layout {
  public:
    Layout(Block head, double height) : head_(std::move(head)), height_(height) { sheets_.emplace_back(); }

    std::vector<Sheet> run(const Blocks& blocks) {
        for (std::size_t i = 0; i < blocks.size();) {
            std::size_t end = i + 1;
            while (end < blocks.size() && blocks[end - 1].stays_with_next) ++end;
            put_together(blocks, i, end);
            i = end;
        }
        return std::move(sheets_);
    }

  private:
    [[nodiscard]] double room() const { return height_ - sheets_.back().used; }
    [[nodiscard]] bool at_top() const { return sheets_.back().blocks.size() <= (sheets_.size() > 1 ? 1U : 0U); }

    void put_together(const Blocks& blocks, std::size_t begin, std::size_t end) {
        double height = 0;
        for (std::size_t i = begin; i < end; ++i) height += blocks[i].before + blocks[i].height;
        if (height > room() && !at_top() && height <= height_ - head_.height) turn();
        for (std::size_t i = begin; i < end; ++i) put(blocks[i]);
    }

    void put(const Block& block) {
        const bool long_one = block.height > height_ - head_.height && !block.pieces.empty();
        if (long_one) {
            for (const Block& piece : block.pieces) put(piece);
            return;
        }
        if (block.before + block.height > room() && !at_top()) turn();
        set(block);
    }

    void set(const Block& block) {
        Sheet& sheet = sheets_.back();
        const double y = sheet.used + (sheet.blocks.empty() ? 0 : block.before);
        sheet.blocks.push_back({block, y});
        sheet.used = y + block.height;
    }

    void turn() {
        sheets_.emplace_back();
        set(head_);
    }

    Block head_;
    double height_;
    std::vector<Sheet> sheets_;
};

std::string number_words(const Foot& foot) {
    if (foot.page == 0) return fmt::format("sheet {} of {}", foot.sheet, foot.sheets);
    if (foot.sheets == 0) return fmt::format("page {}", foot.page);
    return fmt::format("{} of {}, page {}", foot.sheet, foot.sheets, foot.page);
}

Block foot_block(const Column& column, const Foot& foot) {
    return column.row({{{{foot.title}}, {{number_words(foot)}}}, {0}, false, false, 1});
}

}  // namespace

Area area_of(const SheetSize& sheet) {
    const double margin = margin_mm * points_per_mm;
    return {margin, margin, sheet.width_mm * points_per_mm - 2 * margin,
            sheet.height_mm * points_per_mm - 2 * margin - foot_points};
}

std::vector<Page> laid_out(const Document& document, const Type& type, const SheetSize& size) {
    const Area area = area_of(size);
    const Column column(type, area.width);
    Block head = stacked({column.shortened(document.title, {17, true}, most_head_lines), column.rule(1.5)});
    auto sheets = Layout(std::move(head), area.height).run(document.blocks);
    std::vector<Page> pages;
    for (std::size_t i = 0; i < sheets.size(); ++i) {
        Page page{[sheet = std::move(sheets[i]), area](cairo_t* ink) {
            for (const auto& [block, y] : sheet.blocks) block.draw(ink, area.x, area.y + y);
        }};
        if (i == 0) page.bookmarks.push_back({document.title});
        page.foot = {document.title, i + 1, sheets.size()};
        pages.push_back(std::move(page));
    }
    return pages;
}

void add_feet(std::vector<Page>& pages, const Type& type, const SheetSize& size) {
    const Area area = area_of(size);
    const Column column(type, area.width);
    for (Page& page : pages)
        page.draw = [above = std::move(page.draw), below = foot_block(column, page.foot), area](cairo_t* ink) {
            above(ink);
            below.draw(ink, area.x, area.y + area.height + foot_points - below.height);
        };
}

}  // namespace scruple::paper
