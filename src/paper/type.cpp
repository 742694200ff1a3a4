// SPDX-License-Identifier: MIT
#include "type.hpp"

#include <pango/pangocairo.h>

#include <cmath>
#include <utility>

namespace scruple::paper {
namespace {

constexpr const char* family = "DejaVu Sans";
constexpr float leading = 1.08F;

double points(int pango_units) {
    return static_cast<double>(pango_units) / PANGO_SCALE;
}

/// Letters keep the places that they have on paper whatever they are drawn on.
cairo_font_options_t* unhinted() {
    cairo_font_options_t* options = cairo_font_options_create();
    cairo_font_options_set_hint_style(options, CAIRO_HINT_STYLE_NONE);
    cairo_font_options_set_hint_metrics(options, CAIRO_HINT_METRICS_OFF);
    cairo_font_options_set_antialias(options, CAIRO_ANTIALIAS_GRAY);
    return options;
}

void add(PangoAttrList* list, PangoAttribute* attribute, std::size_t begin, std::size_t end) {
    attribute->start_index = static_cast<guint>(begin);
    attribute->end_index = static_cast<guint>(end);
    pango_attr_list_insert(list, attribute);
}

}  // namespace

void Unref::operator()(void* object) const {
    g_object_unref(object);
}

Setting::Setting(Owned<PangoLayout> layout) : layout_(std::move(layout)) {
    PangoRectangle logical;
    pango_layout_get_extents(layout_.get(), nullptr, &logical);
    width_ = points(logical.width);
    height_ = points(logical.height);
    baseline_ = points(pango_layout_get_baseline(layout_.get()));
}

int Setting::lines() const {
    return pango_layout_get_line_count(layout_.get());
}

double Setting::height_of_line(int line) const {
    PangoRectangle logical;
    pango_layout_line_get_extents(pango_layout_get_line_readonly(layout_.get(), line), nullptr, &logical);
    return points(logical.height) * pango_layout_get_line_spacing(layout_.get());
}

void Setting::draw(cairo_t* ink, double x, double y) const {
    cairo_move_to(ink, x, y);
    pango_cairo_show_layout(ink, layout_.get());
}

void Setting::draw_line(cairo_t* ink, int line, double x, double y) const {
    PangoLayoutLine* one = pango_layout_get_line_readonly(layout_.get(), line);
    PangoRectangle logical;
    pango_layout_line_get_extents(one, nullptr, &logical);
    cairo_move_to(ink, x, y - points(logical.y));
    pango_cairo_show_layout_line(ink, one);
}

Type::Type() : fonts_(pango_cairo_font_map_new()), context_(pango_font_map_create_context(fonts_.get())) {
    pango_cairo_context_set_resolution(context_.get(), 72);
    cairo_font_options_t* options = unhinted();
    pango_cairo_context_set_font_options(context_.get(), options);
    cairo_font_options_destroy(options);
    pango_context_set_round_glyph_positions(context_.get(), FALSE);
}

Setting Type::set(const Words& words, double width, Align align, int most_lines) const {
    Owned<PangoLayout> layout(pango_layout_new(context_.get()));
    PangoFontDescription* font = pango_font_description_new();
    pango_font_description_set_family_static(font, family);
    pango_layout_set_font_description(layout.get(), font);
    pango_font_description_free(font);

    std::string text;
    PangoAttrList* styles = pango_attr_list_new();
    for (const Run& run : words) {
        const std::size_t begin = text.size();
        text += run.text;
        add(styles, pango_attr_size_new(static_cast<int>(std::lround(run.style.points * PANGO_SCALE))), begin,
            text.size());
        if (run.style.bold) add(styles, pango_attr_weight_new(PANGO_WEIGHT_BOLD), begin, text.size());
    }
    pango_layout_set_text(layout.get(), text.c_str(), static_cast<int>(text.size()));
    pango_layout_set_attributes(layout.get(), styles);
    pango_attr_list_unref(styles);

    if (width > 0) pango_layout_set_width(layout.get(), static_cast<int>(width * PANGO_SCALE));
    pango_layout_set_wrap(layout.get(), PANGO_WRAP_WORD_CHAR);
    if (most_lines > 0) {
        pango_layout_set_height(layout.get(), -most_lines);
        pango_layout_set_ellipsize(layout.get(), PANGO_ELLIPSIZE_MIDDLE);
    }
    pango_layout_set_line_spacing(layout.get(), leading);
    pango_layout_set_single_paragraph_mode(layout.get(), TRUE);
    pango_layout_set_alignment(layout.get(), align == Align::left    ? PANGO_ALIGN_LEFT
                                             : align == Align::right ? PANGO_ALIGN_RIGHT
                                                                     : PANGO_ALIGN_CENTER);
    return Setting(std::move(layout));
}

Setting Type::set(const Words& words) const {
    return set(words, -1);
}

}  // namespace scruple::paper
