// SPDX-License-Identifier: MIT
// Words set in type: how wide and how high they come, and what draws them.
#pragma once

#include <cairo.h>
#include <pango/pango.h>

#include <cstdint>
#include <memory>
#include <string>
#include <vector>

namespace scruple::paper {

struct Style {
    double points = 14;
    bool bold = false;
};

inline constexpr Style body{14, false};
inline constexpr Style strong{14, true};
inline constexpr Style title_style{26, true};

/// A piece of a text in one style.
struct Run {
    std::string text;
    Style style = body;
};
using Words = std::vector<Run>;

enum class Align : std::uint8_t { left, centre, right };

struct Unref {
    void operator()(void* object) const;
};
template <class T>
using Owned = std::unique_ptr<T, Unref>;

/// Words in lines of a width, in points. Copies are the same setting.
class Setting {
  public:
    explicit Setting(Owned<PangoLayout> layout);

    [[nodiscard]] double width() const { return width_; }  ///< of the longest line
    [[nodiscard]] double height() const { return height_; }
    [[nodiscard]] double baseline() const { return baseline_; }  ///< of the first line, from the top
    [[nodiscard]] int lines() const;
    [[nodiscard]] double height_of_line(int line) const;

    void draw(cairo_t* ink, double x, double y) const;
    void draw_line(cairo_t* ink, int line, double x, double y) const;

  private:
    std::shared_ptr<PangoLayout> layout_;
    double width_ = 0, height_ = 0, baseline_ = 0;
};

/// The type case: DejaVu Sans, and whatever font has the letters that it lacks.
class Type {
  public:
    Type();
    /// In lines no wider than `width`; words longer than a line are broken. What `most_lines` do not hold is left out
    /// of the last one's middle; 0: as many as it takes.
    [[nodiscard]] Setting set(const Words& words, double width, Align align = Align::left, int most_lines = 0) const;
    /// In one line, however long.
    [[nodiscard]] Setting set(const Words& words) const;

  private:
    Owned<PangoFontMap> fonts_;
    Owned<PangoContext> context_;
};

}  // namespace scruple::paper
