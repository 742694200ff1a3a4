// SPDX-License-Identifier: MIT
#include "scruple/printed/page.hpp"

#include <algorithm>
#include <cctype>
#include <string>

#include "directions.hpp"
#include "headings.hpp"
#include "line_reader.hpp"
#include "wording.hpp"

namespace scruple::printed {
namespace {

std::optional<int> year_in(std::string_view text) {
    for (std::size_t at = 0; at + 4 <= text.size(); ++at) {
        const auto digit = [&](std::size_t i) { return std::isdigit(static_cast<unsigned char>(text[i])) != 0; };
        const bool begins = at == 0 || !digit(at - 1);
        const bool four = digit(at) && digit(at + 1) && digit(at + 2) && digit(at + 3);
        if (begins && four && (at + 4 == text.size() || !digit(at + 4)))
            if (const int year = std::stoi(std::string(text.substr(at, 4))); year >= 1800 && year <= 2100) return year;
    }
    return std::nullopt;
}

Page::Country country_in(std::string_view book) {
    const std::string said = lower(book);
    const auto any = [&](std::initializer_list<std::string_view> words) {
        return std::ranges::any_of(words, [&](std::string_view word) { return said.find(word) != std::string::npos; });
    };
    if (any({"britain", "british", "england", "london", "scotland", "ireland", "australia", "canada",
             "united kingdom"}))
        return Page::Country::britain;
    if (any({"america", "united states", "u.s.", "usa", "new york", "boston", "chicago"}))
        return Page::Country::america;
    if (any({"germany", "france", "austria", "switzerland", "italy", "netherlands"})) return Page::Country::metric;
    return Page::Country::unknown;
}

bool is_figure_at(std::string_view text, std::size_t at) {
    return at < text.size() && std::isdigit(static_cast<unsigned char>(text[at])) != 0;
}

/// A comma before one or two figures: where a page has such, `2,500` is two and a half.
bool has_decimal_comma(const check::PrintedPage& typed) {
    for (const check::PrintedLine& line : typed.lines)
        for (std::size_t at = line.text.find(','); at != line.text.npos; at = line.text.find(',', at + 1)) {
            std::size_t end = at + 1;
            while (is_figure_at(line.text, end)) ++end;
            if (at > 0 && is_figure_at(line.text, at - 1) && end > at + 1 && end < at + 4 &&
                (end == line.text.size() || line.text[end] != '-'))
                return true;
        }
    return false;
}

std::string with_points(std::string_view text) {
    std::string all(text);
    for (std::size_t at = 1; at + 3 < all.size() + 1; ++at)
        if (all[at] == ',' && is_figure_at(all, at - 1) && is_figure_at(all, at + 1) &&
            all.compare(at + 1, 3, "000") != 0)
            all[at] = '.';
    return all;
}

/// A formula run on in one line: `Amidol, 50 grs.; sulphite of soda, 1 oz.; water, 20 ozs.`
std::vector<std::string_view> run_on(std::string_view text) {
    std::vector<std::string_view> all;
    for (std::size_t begin = 0; begin <= text.size();) {
        const std::size_t end = std::min(text.find(';', begin), text.size());
        const std::string_view piece = text.substr(begin, end - begin);
        begin = end + 1;
        if (tidied(piece).empty()) continue;
        const bool has_figure = std::ranges::any_of(piece, [](unsigned char c) { return std::isdigit(c) != 0; });
        const std::size_t first = piece.find_first_not_of(' ');
        if (!has_figure || !is_letter(piece[first])) return {text};
        all.push_back(piece);
    }
    if (all.empty()) return {text};
    return all;
}

/// What parts two ways to make the same thing in one line: `25 g, or crystals 68 g`.
std::size_t alternative_at(std::string_view text) {
    for (const std::string_view word : {", or ", "; or ", " or "}) {
        const std::size_t at = text.find(word);
        if (at == std::string_view::npos) continue;
        const std::string_view before = text.substr(0, at);
        const std::string_view behind = text.substr(at + word.size());
        const auto is_figure = [](unsigned char c) { return std::isdigit(c) != 0; };
        const bool between_figures = !behind.empty() && is_figure(static_cast<unsigned char>(behind.front())) &&
                                     is_figure(static_cast<unsigned char>(before.back()));
        if (!between_figures && std::ranges::any_of(before, is_figure) && std::ranges::any_of(behind, is_figure))
            return at + word.size() - 3;
    }
    return std::string_view::npos;
}

Page::Country spelling_of(const check::PrintedPage& typed) {
    int british = 0;
    int american = 0;
    for (const check::PrintedLine& line : typed.lines) {
        const std::string said = lower(line.text);
        for (const std::string_view word : {"litre", "litres", "drachm", "drachms", "gramme", "grammes"})
            british += has_word(said, word) ? 1 : 0;
        for (const std::string_view word : {"liter", "liters", "sulfite", "dram", "drams"})
            american += has_word(said, word) ? 1 : 0;
    }
    if (british == american) return Page::Country::unknown;
    return british > american ? Page::Country::britain : Page::Country::america;
}

/// A few words that begin with a capital, without a figure and without a full stop.
bool is_title(std::string_view text) {
    constexpr std::size_t longest = 3;  // words
    const std::string said = tidied(text);
    const auto is_figure = [](unsigned char c) { return std::isdigit(c) != 0; };
    return !said.empty() && std::isupper(static_cast<unsigned char>(said.front())) != 0 &&
           words_of(said).size() <= longest && std::ranges::none_of(said, is_figure) &&
           text.find_last_of('.') == std::string_view::npos;
}

class PageReader {
  public:
    PageReader(const check::PrintedPage& typed, Page& page) : page_(page), commas_(has_decimal_comma(typed)) {}

    void run(const check::PrintedPage& typed) {
        page_.solutions.emplace_back();
        for (const check::PrintedLine& line : typed.lines) read(line);
        drop_empty_last();
        mix_for_use();
        drop_leading_dashes();
    }

  private:
    void read(const check::PrintedLine& typed) {
        std::string_view text = typed.text;
        place_ = typed.place;
        const auto has_amounts = [](const Line& line) { return !line.columns.empty(); };
        if (page_.headings.empty() && std::ranges::none_of(page_.lines, has_amounts))
            if (page_.headings = headings_in(text); !page_.headings.empty()) return;
        if (const auto label = label_in(text)) {
            begin(label->solution);
            text = label->rest;
            if (tidied(text).empty()) return;
        }
        if (read_mixture(text)) return;
        const std::string mended = commas_ ? with_points(text) : std::string(text);
        if (is_title(mended) && begin_by_title(mended)) return;
        for (const std::string_view one : run_on(mended)) {
            const std::size_t other = alternative_at(one);
            keep(read_line(one.substr(0, other)));
            if (other != std::string_view::npos) keep(read_line(one.substr(other)));
        }
    }

    bool read_mixture(std::string_view text) {
        auto mixture = mixture_in(text, page_.solutions, {});
        const std::size_t here = page_.solutions.size() - 1;
        Line* const before = last_mixture_of(here);
        if (!mixture && before != nullptr) {
            // `Equal parts of A and B.` `Dilute with 3 parts of water.`
            if (auto diluted = mixture_in(text, page_.solutions, *before->mixture)) {
                before->mixture = std::move(diluted);
                before->text += "; " + tidied(text);
                return true;
            }
        } else if (!mixture) {
            mixture = mixture_in(text, page_.solutions, Mixture{{{here, 1}}, 0});
        }
        if (!mixture) return false;
        Line line;
        line.what = Line::What::mixture;
        line.mixture = std::move(mixture);
        line.text = text;
        keep(std::move(line));
        return true;
    }

    Line* last_mixture_of(std::size_t solution) {
        const auto found = std::ranges::find_if(page_.lines.rbegin(), page_.lines.rend(), [&](const Line& line) {
            return line.mixture && line.solution == solution;
        });
        return found == page_.lines.rend() ? nullptr : &*found;
    }

    /// `Bleach` and `Sulphide bath` over their lines. The first is a label only where there is a second.
    bool begin_by_title(const std::string& text) {
        const std::size_t last = page_.solutions.size() - 1;
        const auto of_last = [last](Line::What what) {
            return [last, what](const Line& line) { return line.solution == last && line.what == what; };
        };
        if (std::ranges::none_of(page_.lines, of_last(Line::What::ingredient))) {
            title_ = tidied(text);
            return false;
        }
        if (std::ranges::none_of(page_.lines, of_last(Line::What::water)) &&
            std::ranges::none_of(page_.lines, of_last(Line::What::water_to_make)))
            return false;
        if (page_.solutions.size() == 1 && page_.solutions.front().label.empty()) name_first();
        page_.solutions.push_back({tidied(text)});
        return true;
    }

    void name_first() {
        if (title_.empty()) return;
        page_.solutions.front().label = title_;
        std::erase_if(page_.lines, [&](const Line& line) { return tidied(line.text) == title_; });
    }

    /// Words behind the last line that no line follows were no title.
    void drop_empty_last() {
        const std::size_t last = page_.solutions.size() - 1;
        const auto has_amount = [last](const Line& line) { return line.solution == last && !line.columns.empty(); };
        if (last == 0 || std::ranges::any_of(page_.lines, has_amount)) return;
        for (Line& line : page_.lines) line.solution = std::min(line.solution, last - 1);
        const std::string label = page_.solutions.back().label;
        page_.solutions.pop_back();
        keep(read_line(label));
    }

    void keep(Line line) {
        line.solution = page_.solutions.size() - 1;
        line.place = place_;
        page_.lines.push_back(std::move(line));
    }

    /// What stands before the first label belongs to it, unless it is a solution already.
    void begin(const Solution& solution) {
        const bool empty = std::ranges::none_of(page_.lines, [&](const Line& line) {
            return line.solution + 1 == page_.solutions.size() && line.what != Line::What::words;
        });
        if (empty)
            page_.solutions.back() = solution;
        else
            page_.solutions.push_back(solution);
    }

    /// A dash that leads to the figures is none of them: it would make a column more than other lines have.
    void drop_leading_dashes() {
        std::size_t columns = 0;
        const auto is_dash = [](const Measure& measure) { return measure.pieces.empty(); };
        for (const Line& line : page_.lines)
            if (std::ranges::none_of(line.columns, is_dash)) columns = std::max(columns, line.columns.size());
        for (Line& line : page_.lines) {
            if (line.columns.size() > columns) std::erase_if(line.columns, is_dash);
            while (line.stated < line.columns.size() && !has_amount(line, line.stated)) ++line.stated;
        }
    }

    /// `Working solution` over lines that name other solutions and water.
    void mix_for_use() {
        if (page_.solutions.size() < 2 || !page_.solutions.back().for_use) return;
        std::vector<Solution> others(page_.solutions.begin(), page_.solutions.end() - 1);
        std::string all;
        for (const Line& line : page_.lines) {
            if (line.solution + 1 < page_.solutions.size() || line.what == Line::What::words) continue;
            all += (all.empty() ? "" : ", ") + line.text;
        }
        auto mixture = mixture_in(all, others, {});
        if (!mixture) return;
        std::erase_if(page_.lines, [&](const Line& line) {
            return line.solution + 1 == page_.solutions.size() && line.what != Line::What::words;
        });
        for (Line& line : page_.lines) line.solution = std::min(line.solution, others.size() - 1);
        page_.solutions = std::move(others);
        Line line;
        line.what = Line::What::mixture;
        line.mixture = std::move(mixture);
        line.text = std::move(all);
        keep(std::move(line));
    }

    Page& page_;
    bool commas_;
    check::Place place_{};
    std::string title_{};  ///< what stood over the first lines
};

}  // namespace

bool has_amount(const Line& line, std::size_t column) {
    return column < line.columns.size() && !line.columns[column].pieces.empty();
}

Page read_page(const check::PrintedPage& typed) {
    Page page;
    page.country = country_in(typed.book);
    page.year = year_in(typed.book);
    page.spelling = spelling_of(typed);
    PageReader(typed, page).run(typed);
    return page;
}

}  // namespace scruple::printed
