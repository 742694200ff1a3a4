// SPDX-License-Identifier: MIT
// Bottle labels in a grid on sheets.
#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "code.hpp"
#include "column.hpp"
#include "pages.hpp"
#include "scruple/emit/words.hpp"

namespace scruple::paper {
namespace {

namespace words = emit::words;
using plan::Label;

constexpr double margin = 7;
constexpr double least_code = 44, most_code = 84;
constexpr double least_points = 6.5;

/// The sizes of the type on a label, largest first; the last is the least that is still read.
struct Sizes {
    double name, part, fact, small;
};
constexpr Sizes all_sizes[] = {{20, 16, 10, 8.5}, {17, 14, 9, 7.5}, {14, 12, 8, 7}, {11, 10, 7, least_points}};

class LabelComposer {
  public:
    LabelComposer(const Type& type, const LabelGrid& grid, const Sizes& sizes)
        : sizes_(sizes),
          width_(grid.width_mm * points_per_mm - 2 * margin),
          height_(grid.height_mm * points_per_mm - 2 * margin),
          code_side_(std::clamp(height_ * 0.42, least_code, most_code)),
          whole_(type, width_),
          beside_(type, width_ - code_side_ - 4),
          with_hazards_(std::min(grid.width_mm, grid.height_mm) >= hazard_label_height_mm &&
                        std::max(grid.width_mm, grid.height_mm) >= hazard_label_width_mm) {}

    Block label(const Label& label) {
        head(label);
        facts(label);
        if (!with_hazards_) add(beside_.words(words::label_see_sheets, small(true)), 1);
        const Block left = stacked(std::move(blocks_));
        const Block code = qr_code(plan::label_code(label), code_side_);
        blocks_ = {};
        Block top{std::max(left.height, code.height), 0, false,
                  [left, code, at = width_ - code_side_](cairo_t* ink, double x, double y) {
                      left.draw(ink, x, y);
                      code.draw(ink, x + at + 4, y - 4);
                  }};
        add(std::move(top), 0);
        if (!label.accepted.empty()) add(whole_.words(words::label_accepted(label), fact(true)), 2);
        if (with_hazards_) hazards(label);
        if (with_hazards_) own_words(label);
        return stacked(std::move(blocks_));
    }

    [[nodiscard]] double room() const { return height_; }

  private:
    [[nodiscard]] Style fact(bool bold = false) const { return {sizes_.fact, bold}; }
    [[nodiscard]] Style small(bool bold = false) const { return {sizes_.small, bold}; }

    void add(Block block, double before) {
        block.before = before;
        blocks_.push_back(std::move(block));
    }

    void head(const Label& label) {
        add(beside_.words(label.recipe, {sizes_.name, true}), 0);
        if (!label.section.empty()) add(beside_.words(label.section, {sizes_.part, true}), 0);
        if (const auto is_a = words::listed({label.is_a, label.variant}); with_hazards_ && !is_a.empty())
            add(beside_.words(is_a, fact()), 0);
        add(beside_.words(words::label_strength(label), fact(true)), 1);
    }

    /// What is known stands there; what is not has a line to write on.
    [[nodiscard]] Field known_or_line(const std::string& what, const std::string& value) const {
        if (value.empty()) return {Field::What::line, what, sizes_.fact * 5, fact()};
        return {Field::What::words, what + " " + value, 0, fact()};
    }

    void facts(const Label& label) {
        std::vector<Field> fields;
        for (const auto& [what, value] : words::label_facts(label)) {
            const bool only_if_known = what == "batch" || what == "volume";
            if (with_hazards_ || !only_if_known || !value.empty()) fields.push_back(known_or_line(what, value));
        }
        add(beside_.fields(fields), 2);
    }

    void hazards(const Label& label) {
        add(whole_.words(words::label_hazards, small(true)), 2);
        Words all;
        for (const plan::LabelHazard& hazard : label.hazards) {
            all.push_back({words::label_chemical(hazard), small(true)});
            all.push_back({words::label_statements(hazard) + ". ", small()});
        }
        all.push_back({std::string(words::label_reminder), small()});
        add(whole_.words(all), 0.5);
    }

    void own_words(const Label& label) {
        std::vector<Field> fields;
        if (label.tally) fields.assign(10, {Field::What::box, "", 0, small()});
        fields.push_back({Field::What::line, "", width_ * (label.tally ? 0.35 : 0.9), fact()});
        add(whole_.fields(fields), 3);
    }

    Sizes sizes_;
    double width_, height_, code_side_;
    Column whole_, beside_;
    bool with_hazards_;
    Blocks blocks_;
};

/// In the largest type that fits; in the least where none does, and then it is too high.
struct Composed {
    Block block;
    double room = 0;
};
Composed composed(const Type& type, const LabelGrid& grid, const Label& label) {
    Composed made;
    for (const Sizes& sizes : all_sizes) {
        LabelComposer composer(type, grid, sizes);
        made = {composer.label(label), composer.room()};
        if (made.block.height <= made.room) break;
    }
    return made;
}

struct Places {
    double left, top, step_x, step_y, width, height;
};

Places places_of(const LabelGrid& grid, const SheetSize& sheet) {
    const double step_x = grid.width_mm + grid.gap_x_mm, step_y = grid.height_mm + grid.gap_y_mm;
    const double all_wide = grid.columns * step_x - grid.gap_x_mm, all_high = grid.rows * step_y - grid.gap_y_mm;
    const auto points = [](double mm) { return mm * points_per_mm; };
    return {points(grid.left_mm.value_or((sheet.width_mm - all_wide) / 2)),
            points(grid.top_mm.value_or((sheet.height_mm - all_high) / 2)),
            points(step_x),
            points(step_y),
            points(grid.width_mm),
            points(grid.height_mm)};
}

Page page_of(std::vector<Block> blocks, const LabelGrid& grid, const Places& at) {
    return {[blocks = std::move(blocks), grid, at](cairo_t* ink) {
                for (std::size_t i = 0; i < blocks.size(); ++i) {
                    const auto columns = static_cast<std::size_t>(grid.columns);
                    const double x = at.left + static_cast<double>(i % columns) * at.step_x;
                    const std::size_t row = i / columns;
                    const double y = at.top + static_cast<double>(row) * at.step_y;
                    if (grid.gap_x_mm <= 0 || grid.gap_y_mm <= 0) {
                        cairo_set_line_width(ink, 0.3);
                        cairo_rectangle(ink, x, y, at.width, at.height);
                        cairo_stroke(ink);
                    }
                    blocks[i].draw(ink, x + margin, y + margin);
                }
            },
            {}};
}

}  // namespace

std::variant<std::string, Misfit> labels(std::span<const Label> labels, const LabelGrid& grid,
                                         const Printing& printing) {
    const Type type;
    const Places places = places_of(grid, printing.sheet);
    const auto a_sheet = static_cast<std::size_t>(grid.columns) * static_cast<std::size_t>(grid.rows);
    std::vector<Page> pages;
    std::vector<Block> blocks;
    for (const Label& label : labels) {
        Composed made = composed(type, grid, label);
        if (made.block.height > made.room)
            return Misfit{words::listed({label.recipe, label.section}),
                          grid.height_mm + (made.block.height - made.room) / points_per_mm};
        blocks.push_back(std::move(made.block));
        if (blocks.size() == a_sheet) pages.push_back(page_of(std::exchange(blocks, {}), grid, places));
    }
    if (!blocks.empty()) pages.push_back(page_of(std::move(blocks), grid, places));
    return drawn(pages, labels.size() == 1 ? words::listed({labels[0].recipe, labels[0].section}) : "Bottle labels",
                 printing);
}

}  // namespace scruple::paper
