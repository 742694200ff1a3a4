// SPDX-License-Identifier: MIT
// Ingredients and steps of a solution, line by line.
#pragma once

#include "reader.hpp"

namespace scruple::check {

/// Reads the lines of one solution in order and appends them to the section.
class LineReader {
  public:
    /// `recipe` is where short names (`part A`) are looked up; none outside recipes.
    LineReader(Reader& reader, Section& section, Id recipe) : reader_(reader), section_(section), recipe_(recipe) {}

    void take(const syntax::Ingredient& line);
    void take(const syntax::Step& line);
    void take(const syntax::VesselStep& line);
    void take(const syntax::Mix& line);
    void report_among_lines(const syntax::Mix& line);
    /// After the last line: what was divided and never finished, vessels never poured.
    void finish();

  private:
    /// A weighing of which a piece went in already.
    struct Divided {
        Id chemical, form;
        Few<Exact> shares;
        std::optional<Exact> now;
        text::Span span;
        bool finished = false;
    };
    struct Vessel {
        std::string_view name;
        text::Span span;
        bool poured = false;
    };

    [[nodiscard]] const std::vector<std::string_view>& variants() const;
    [[nodiscard]] std::string name_of(const Addition& addition) const;

    void explain_amounts(const syntax::Ingredient& line);
    [[nodiscard]] FormNeed need_of(const syntax::Ingredient& line) const;
    bool read_what(const syntax::Ingredient& line, Addition& addition);
    bool read_shares(const syntax::Ingredient& line, Addition& addition);
    bool read_one(const syntax::Range& range, Addition& addition, Exact& into);
    bool settle_measure(const syntax::Quantity& quantity, const Addition& addition, quantity::Dimension dimension);
    bool read_variant_shares(const syntax::Ingredient& line, Addition& addition);
    void report_unknown_variant(const syntax::Quantity& amount, const syntax::Name& label);
    void read_details(syntax::Slice details, Addition& addition);
    void read_detail(const syntax::Detail& detail, Addition& addition);
    Few<Detail> read_step_details(syntax::Slice details);
    std::optional<Detail> read_step_detail(const syntax::Detail& detail);
    void divide(const Addition& addition, text::Span span);
    bool take_rest(Addition& addition, text::Span span);
    bool read_unknown(const syntax::Quantity& quantity, Addition& addition);
    [[nodiscard]] bool check_density(const Addition& addition, text::Span span, std::string_view amount);

    Vessel* find_vessel(const syntax::Name& name);
    void open_vessel(const syntax::VesselStep& line);
    void read_share(const syntax::VesselStep& line, VesselMove& move);

    Reader& reader_;
    Section& section_;
    Id recipe_;
    std::vector<Divided> divided_;
    std::vector<Vessel> vessels_;
    std::size_t open_ = SIZE_MAX;  ///< the vessel being filled, or none
};

}  // namespace scruple::check
