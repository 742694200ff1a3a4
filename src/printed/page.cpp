// SPDX-License-Identifier: MIT
#include "scruple/printed/page.hpp"

#include <algorithm>
#include <array>
#include <cctype>

#include "notation.hpp"

namespace scruple::printed {
namespace {

std::string lower(std::string_view text) {
    std::string all(text);
    std::ranges::transform(all, all.begin(), [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return all;
}

bool is_letter(char c) {
    return std::isalpha(static_cast<unsigned char>(c)) != 0 || static_cast<unsigned char>(c) >= 0x80;
}

/// What parts columns: bars, tabs, brackets, rows of dots, an equals sign, two blanks, a stroke that stands alone.
std::size_t parting_at(std::string_view text) {
    if (text.starts_with('|') || text.starts_with('\t') || text.starts_with('=') || text.starts_with('(') ||
        text.starts_with(')') || text.starts_with(';'))
        return 1;
    if (text.starts_with("  ") || text.starts_with("..")) return 2;
    return text.starts_with(" / ") ? 3 : 0;
}

std::vector<std::string_view> columns_of(std::string_view text) {
    std::vector<std::string_view> all;
    std::size_t begin = 0;
    for (std::size_t at = 0; at <= text.size();) {
        const std::size_t parting = at == text.size() ? 1 : parting_at(text.substr(at));
        if (parting == 0) {
            ++at;
            continue;
        }
        if (at > begin) all.push_back(text.substr(begin, at - begin));
        begin = at += parting;
    }
    return all;
}

/// In grains, whatever system, only to tell the larger of two from the smaller.
int rank(UnitWord unit) {
    constexpr std::array order{UnitWord::minim,  UnitWord::grain,        UnitWord::grain_or_gram, UnitWord::scruple,
                               UnitWord::drachm, UnitWord::fluid_drachm, UnitWord::ounce,         UnitWord::fluid_ounce,
                               UnitWord::pound,  UnitWord::pint,         UnitWord::quart,         UnitWord::gallon};
    return static_cast<int>(std::ranges::find(order, unit) - order.begin());
}

/// `9 oz. 55 m.`: the second adds to the first.
bool adds_to(UnitWord first, UnitWord second) {
    return first != UnitWord::none && second != UnitWord::none && !is_metric(first) && !is_metric(second) &&
           rank(second) < rank(first);
}

class LineReader {
  public:
    explicit LineReader(const check::PrintedLine& typed) : typed_(typed) { line_.place = typed.place; }

    Line run() {
        for (const std::string_view column : columns_of(typed_.text)) read_column(column);
        settle_name();
        return std::move(line_);
    }

  private:
    void read_column(std::string_view column) {
        fresh_ = true;
        for (std::size_t at = 0; at < column.size();) {
            const bool word_begins = at == 0 || !(is_letter(column[at - 1]) || column[at - 1] == '.');
            const std::size_t read = word_begins ? read_measure(column, at) : 0;
            if (read > 0) {
                at += read;
                continue;
            }
            name_ += column[at++];
        }
        name_ += ' ';
    }

    /// How many bytes are an amount; 0 where none stands here.
    std::size_t read_measure(std::string_view column, std::size_t at) {
        const std::string_view rest = column.substr(at);
        const auto figure = figure_at(rest);
        if (!figure) return 0;
        std::size_t length = figure->length;
        std::string_view after = rest.substr(length);
        if (const std::size_t ratio = read_ratio(*figure, after); ratio > 0) return length + ratio;
        const std::size_t blank = after.starts_with(' ') ? 1 : 0;
        after.remove_prefix(blank);
        for (const std::string_view sign : {"%", "per cent.", "per cent", "percent"})
            if (lower(after).starts_with(sign)) {
                line_.percent = figure->value;
                return length + blank + sign.size();
            }
        const UnitFound unit = unit_at(after);
        if (unit.length == 0 && after.find_first_not_of(" .,") != std::string_view::npos) return 0;
        length += unit.length == 0 ? 0 : blank + unit.length;
        add(*figure, unit.unit, rest.substr(0, length));
        return length;
    }

    /// ` : 9` behind `1`
    std::size_t read_ratio(const Figure& one, std::string_view after) {
        const std::size_t sign = after.find_first_not_of(' ');
        if (sign == std::string_view::npos || after[sign] != ':') return 0;
        const std::size_t second = after.find_first_not_of(' ', sign + 1);
        if (second == std::string_view::npos) return 0;
        const auto other = figure_at(after.substr(second));
        if (!other || one.value == 0 || other->value == 0) return 0;
        line_.ratio = Ratio{one.value, other->value};
        return second + other->length;
    }

    void add(const Figure& figure, UnitWord unit, std::string_view text) {
        const bool more = !fresh_ && adds_to(line_.columns.back().pieces.back().unit, unit);
        if (!more) line_.columns.emplace_back();
        Measure& measure = line_.columns.back();
        measure.pieces.push_back({figure.value, unit});
        measure.step = figure.step;
        measure.text += (more ? " " : "") + std::string(text);
        fresh_ = false;
    }

    // ---- the name ----

    void settle_name() {
        tidy_name();
        const std::string said = lower(name_);
        const bool of_water = has_word(said, "water") || has_word(said, "aqua") || said.empty();
        const bool makes_up = said.starts_with("ad ") || said == "ad" || said.ends_with(" ad") ||
                              said.find("to make") != said.npos || said.find("make up") != said.npos ||
                              said.ends_with(" to") || said.find("up to") != said.npos || said.starts_with("q.s") ||
                              said.find("total") != said.npos;
        line_.name = name_;
        if (line_.ratio && line_.columns.empty())
            line_.what = Line::What::dilution;
        else if (line_.columns.empty())
            line_.what = Line::What::words;
        else if (makes_up && (of_water || said.starts_with("to make") || said.starts_with("make")))
            line_.what = Line::What::water_to_make;
        else if (of_water && !said.empty())
            line_.what = Line::What::water;
        else
            line_.what = said.empty() ? Line::What::words : Line::What::ingredient;
        if (line_.what == Line::What::ingredient) take_form();
    }

    static bool has_word(std::string_view text, std::string_view word) {
        const std::size_t at = text.find(word);
        return at != std::string_view::npos && (at == 0 || !is_letter(text[at - 1])) &&
               (at + word.size() == text.size() || !is_letter(text[at + word.size()]));
    }

    /// Runs of blanks and the points and commas at the ends go; `2 oz of borax` leaves `of borax`.
    void tidy_name() {
        std::string tidy;
        for (const char c : name_)
            if (c != ' ' || (!tidy.empty() && tidy.back() != ' ')) tidy += c;
        const std::size_t begin = tidy.find_first_not_of(" .,:-–");
        const std::size_t end = tidy.find_last_not_of(" ,:-–.");
        name_ = begin == std::string::npos ? "" : tidy.substr(begin, end - begin + 1);
        for (const std::string_view word : {"of ", "Of "})
            if (name_.starts_with(word)) name_.erase(0, word.size());
    }

    /// Words for a form stand behind the name in formularies.
    void take_form() {
        constexpr std::array words{"crystallised", "crystallized", "crystals",    "crystal", "cryst",
                                   "anhydrous",    "anhyd",        "desiccated",  "dry",     "dried",
                                   "monohydrate",  "pentahydrate", "decahydrate", "glacial"};
        for (const std::string_view word : words) {
            const std::string said = lower(line_.name);
            const std::size_t at = said.rfind(word);
            if (at == std::string::npos || (at > 0 && is_letter(said[at - 1])) ||
                (at + word.size() < said.size() && is_letter(said[at + word.size()])) || at == 0)
                continue;
            line_.form = word;
            name_ = line_.name.substr(0, at) + line_.name.substr(std::min(at + word.size() + 1, line_.name.size()));
            tidy_name();
            line_.name = name_;
            return;
        }
    }

    const check::PrintedLine& typed_;
    Line line_;
    std::string name_;
    bool fresh_ = true;
};

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

}  // namespace

Page read_page(const check::PrintedPage& typed) {
    Page page{country_in(typed.book), year_in(typed.book), {}};
    for (const check::PrintedLine& line : typed.lines) page.lines.push_back(LineReader(line).run());
    return page;
}

}  // namespace scruple::printed
