// SPDX-License-Identifier: MIT
// Sheets as the bytes of a PDF, SVG or PNG.
#include <cairo-pdf.h>
#include <cairo-svg.h>
#include <fmt/format.h>

#include <cmath>
#include <stdexcept>

#include "pages.hpp"
#include "scruple/plan/calendar.hpp"

namespace scruple::paper {
namespace {

constexpr double dots_per_point = 150.0 / 72;
constexpr double between_sheets = 6;

struct Destroy {
    void operator()(cairo_t* ink) const { cairo_destroy(ink); }
    void operator()(cairo_surface_t* surface) const { cairo_surface_destroy(surface); }
};
using Surface = std::unique_ptr<cairo_surface_t, Destroy>;
using Ink = std::unique_ptr<cairo_t, Destroy>;

cairo_status_t append(void* bytes, const unsigned char* data, unsigned int length) {
    static_cast<std::string*>(bytes)->append(reinterpret_cast<const char*>(data), length);
    return CAIRO_STATUS_SUCCESS;
}

void require(cairo_status_t status) {
    if (status != CAIRO_STATUS_SUCCESS) throw std::runtime_error(cairo_status_to_string(status));
}

void black(cairo_t* ink) {
    cairo_set_source_rgb(ink, 0, 0, 0);
}

void white_ground(cairo_t* ink) {
    cairo_set_source_rgb(ink, 1, 1, 1);
    cairo_paint(ink);
    black(ink);
}

struct Points {
    double width, height;
};

Points points_of(const SheetSize& sheet) {
    return {sheet.width_mm * points_per_mm, sheet.height_mm * points_per_mm};
}

/// The sheets below one another.
void draw_all(cairo_t* ink, const std::vector<Page>& pages, const Points& size) {
    white_ground(ink);
    for (std::size_t i = 0; i < pages.size(); ++i) {
        pages[i].draw(ink);
        cairo_translate(ink, 0, size.height);
        if (i + 1 == pages.size()) continue;
        cairo_rectangle(ink, 0, 0, size.width, between_sheets);
        cairo_fill(ink);
        cairo_translate(ink, 0, between_sheets);
    }
}

double height_of_all(const std::vector<Page>& pages, const Points& size) {
    const double count = static_cast<double>(pages.size());
    return count * size.height + (count - 1) * between_sheets;
}

std::string pdf(const std::vector<Page>& pages, const std::string& title, const Printing& printing) {
    std::string bytes;
    const Points size = points_of(printing.sheet);
    const Surface surface(cairo_pdf_surface_create_for_stream(append, &bytes, size.width, size.height));
    cairo_pdf_surface_set_metadata(surface.get(), CAIRO_PDF_METADATA_TITLE, title.c_str());
    cairo_pdf_surface_set_metadata(surface.get(), CAIRO_PDF_METADATA_AUTHOR, "Scruple");
    cairo_pdf_surface_set_metadata(surface.get(), CAIRO_PDF_METADATA_CREATOR, "Scruple");
    const std::string day = printing.day ? plan::day_text(*printing.day) + "T00:00:00Z" : std::string();
    cairo_pdf_surface_set_metadata(surface.get(), CAIRO_PDF_METADATA_CREATE_DATE, day.c_str());
    const Ink ink(cairo_create(surface.get()));
    int above = CAIRO_PDF_OUTLINE_ROOT;
    for (std::size_t i = 0; i < pages.size(); ++i) {
        const Page& page = pages[i];
        for (const Bookmark& bookmark : page.bookmarks) {
            const int id = cairo_pdf_surface_add_outline(
                surface.get(), bookmark.depth == 0 ? CAIRO_PDF_OUTLINE_ROOT : above, bookmark.text.c_str(),
                fmt::format("page={}", i + 1).c_str(), CAIRO_PDF_OUTLINE_FLAG_OPEN);
            if (bookmark.depth == 0) above = id;
        }
        black(ink.get());
        // A link outside of all structure leaves Cairo 1.16 with an object that it never writes.
        cairo_tag_begin(ink.get(), "Sect", nullptr);
        page.draw(ink.get());
        cairo_tag_end(ink.get(), "Sect");
        cairo_show_page(ink.get());
    }
    require(cairo_status(ink.get()));
    cairo_surface_finish(surface.get());
    require(cairo_surface_status(surface.get()));
    return bytes;
}

std::string svg(const std::vector<Page>& pages, const Printing& printing) {
    std::string bytes;
    const Points size = points_of(printing.sheet);
    const Surface surface(cairo_svg_surface_create_for_stream(append, &bytes, size.width, height_of_all(pages, size)));
    const Ink ink(cairo_create(surface.get()));
    draw_all(ink.get(), pages, size);
    require(cairo_status(ink.get()));
    cairo_surface_finish(surface.get());
    return bytes;
}

std::string png(const std::vector<Page>& pages, const Printing& printing) {
    std::string bytes;
    const Points size = points_of(printing.sheet);
    const auto dots = [](double points) { return static_cast<int>(std::ceil(points * dots_per_point)); };
    constexpr int most_dots = 32767;  // of an image of Cairo's
    if (height_of_all(pages, size) * dots_per_point > most_dots)
        throw std::runtime_error(fmt::format(
            "{} sheets below one another are too high for a PNG, which takes {} dots; `--as pdf` has no such limit",
            pages.size(), most_dots));
    const Surface surface(
        cairo_image_surface_create(CAIRO_FORMAT_RGB24, dots(size.width), dots(height_of_all(pages, size))));
    require(cairo_surface_status(surface.get()));
    const Ink ink(cairo_create(surface.get()));
    cairo_scale(ink.get(), dots_per_point, dots_per_point);
    draw_all(ink.get(), pages, size);
    require(cairo_status(ink.get()));
    require(cairo_surface_write_to_png_stream(surface.get(), append, &bytes));
    return bytes;
}

}  // namespace

std::string drawn(const std::vector<Page>& pages, const std::string& title, const Printing& printing) {
    switch (printing.medium) {
        case Medium::pdf:
            return pdf(pages, title, printing);
        case Medium::svg:
            return svg(pages, printing);
        case Medium::png:
            return png(pages, printing);
    }
    return {};
}

std::string drawn(const Document& document, const Type& type, const Printing& printing) {
    auto pages = laid_out(document, type, printing.sheet);
    add_feet(pages, type, printing.sheet);
    return drawn(pages, document.title, printing);
}

}  // namespace scruple::paper
