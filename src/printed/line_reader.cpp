// SPDX-License-Identifier: MIT
#include "line_reader.hpp"

#include <algorithm>
#include <array>
#include <cctype>

#include "line_name.hpp"
#include "notation.hpp"
#include "wording.hpp"

namespace scruple::printed {
namespace {

bool is_figure(char c) {
    return c >= '0' && c <= '9';
}

/// What a scan of a page makes of figures: `5O` is 50, `l0` is 10. `mended` says that something was.
std::string with_figures_mended(std::string_view text, bool& mended) {
    std::string all(text);
    for (std::size_t at = 0; at < all.size(); ++at) {
        const bool after = at > 0 && is_figure(all[at - 1]);
        const bool before = at + 1 < all.size() && is_figure(all[at + 1]);
        const bool ends = at + 1 == all.size() || !is_letter(all[at + 1]);
        const bool begins = at == 0 || all[at - 1] == ' ';
        if (all[at] == 'O' && after && (ends || before))
            all[at] = '0';
        else if ((all[at] == 'l' || all[at] == 'I') && before && (begins || after))
            all[at] = '1';
        else
            continue;
        mended = true;
    }
    return all;
}

/// `1. Metol`, `(2) Hypo`, `3) Borax`: the lines are counted.
std::string_view without_count(std::string_view text) {
    std::size_t at = text.starts_with('(') ? 1 : 0;
    const std::size_t begin = at;
    while (at < text.size() && is_figure(text[at])) ++at;
    const bool closed = at < text.size() && (text[at] == ')' || (text[at] == '.' && begin == 0));
    if (at == begin || at > begin + 2 || !closed) return text;
    const std::size_t next = text.find_first_not_of(' ', at + 1);
    return next != text.npos && next > at + 1 && is_letter(text[next]) ? text.substr(next) : text;
}

/// Two points or more, with blanks between or not: they lead to the figures, and none of them belongs to one.
std::size_t leaders_at(std::string_view text) {
    std::size_t points = 0;
    std::size_t end = 0;
    std::size_t last = 0;
    for (std::size_t at = 0; at < text.size() && (text[at] == '.' || (points > 0 && text[at] == ' ')); ++at)
        if (text[at] == '.') {
            ++points;
            last = end;
            end = at + 1;
        }
    // `fort. .880`: the second is the point of a figure.
    const bool of_figure = points == 2 && end > last + 1 && end < text.size() && is_figure(text[end]);
    return points >= 2 && !of_figure ? end : 0;
}

/// What parts columns: bars, tabs, brackets, rows of dots, an equals sign, two blanks, a stroke that stands alone.
std::size_t parting_at(std::string_view text) {
    if (text.starts_with('|') || text.starts_with('\t') || text.starts_with('=') || text.starts_with('(') ||
        text.starts_with(')') || text.starts_with(';'))
        return 1;
    if (text.starts_with("…")) return std::string_view("…").size();
    if (const std::size_t leaders = leaders_at(text); leaders > 0) return leaders;
    if (text.starts_with("  ") || text.starts_with("__") || text.starts_with("--")) return 2;
    return text.starts_with(" / ") ? 3 : 0;
}

/// Of parentheses that belong to the word before them, `iron(III)`, or say whose an ounce is.
std::size_t kept_together(std::string_view text, std::size_t at) {
    if (text[at] != '(') return 0;
    const std::size_t end = text.find(')', at);
    if (end == std::string_view::npos) return 0;
    const std::string_view inside = text.substr(at, end + 1 - at);
    const bool to_word = at > 0 && is_letter(text[at - 1]) && std::ranges::none_of(inside, is_figure);
    return to_word || whose_at(inside).length == inside.size() ? inside.size() : 0;
}

std::vector<std::string_view> columns_of(std::string_view text) {
    std::vector<std::string_view> all;
    std::size_t begin = 0;
    for (std::size_t at = 0; at <= text.size();) {
        if (at < text.size())
            if (const std::size_t kept = kept_together(text, at); kept > 0) {
                at += kept;
                continue;
            }
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

bool says_dilute(std::string_view text) {
    const std::string said = lower(text);
    return said.find("dilut") != std::string::npos;
}

/// `Dilute 1 to 20` is a dilution, `1 to 20 g` a range.
std::string with_ratio_sign(std::string text) {
    if (!says_dilute(text)) return text;
    const std::size_t at = text.find(" to ");
    const bool between =
        at != std::string::npos && at > 0 && at + 4 < text.size() && is_figure(text[at - 1]) && is_figure(text[at + 4]);
    if (between) text.replace(at, 4, " : ");
    return text;
}

/// `--` by itself is how a dash is typed.
std::string with_dashes(std::string text) {
    for (const std::string_view typed : {" --- ", " -- "})
        for (std::size_t at = text.find(typed); at != std::string::npos; at = text.find(typed, at))
            text.replace(at, typed.size(), " – ");
    return text;
}

/// A cell of a column in which a line has none.
bool says_nothing(std::string_view cell) {
    constexpr std::array words{"-", "–", "—", "nil", "none"};
    const std::size_t begin = cell.find_first_not_of(' ');
    if (begin == std::string_view::npos) return false;
    const std::string said = lower(cell.substr(begin, cell.find_last_not_of(' ') + 1 - begin));
    return std::ranges::find(words, said) != words.end();
}

bool is_dash(const Measure& measure) {
    return measure.pieces.empty();
}

class LineReader {
  public:
    explicit LineReader(std::string_view text) { line_.text = text; }

    Line run() {
        bool mended = false;
        const std::string text = with_ratio_sign(with_dashes(with_figures_mended(without_count(line_.text), mended)));
        for (const std::string_view column : columns_of(text)) read_column(column);
        if (std::ranges::all_of(line_.columns, is_dash)) line_.columns.clear();
        if (mended) line_.assumed = "letters that a scan took for figures are read as figures";
        name_line(line_, tidied(name_));
        return std::move(line_);
    }

  private:
    void read_column(std::string_view column) {
        fresh_ = true;
        if (says_nothing(column) && !tidied(name_).empty()) {
            line_.columns.emplace_back();
            return;
        }
        for (std::size_t at = 0; at < column.size();) {
            const bool word_begins = at == 0 || !(is_letter(column[at - 1]) || column[at - 1] == '.' ||
                                                  is_figure(column[at - 1]) || column[at - 1] == '-');
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
        if (!figure || is_a_number_of(column.substr(0, at))) return 0;
        std::size_t length = figure->length;
        std::string_view after = rest.substr(length);
        if (const std::size_t ratio = read_ratio(*figure, after); ratio > 0) return length + ratio;
        const std::size_t blank = after.starts_with(' ') ? 1 : 0;
        after.remove_prefix(blank);
        for (const std::string_view sign : {"%", "per cent.", "per cent", "percent", "p.c.", "pct"})
            if (lower(after).starts_with(sign)) {
                line_.percent = figure->value;
                return length + blank + sign.size();
            }
        // `½ an ounce`
        std::size_t article = 0;
        for (const std::string_view word : {"of an ", "of a ", "an ", "a "})
            if (article == 0 && figure->value < 1 && after.starts_with(word)) article = word.size();
        after.remove_prefix(article);
        const UnitFound unit = unit_at(after);
        if (unit.length == 0 && is_gravity(*figure, column.substr(0, at))) return 0;
        if (unit.length == 0 && (figure->in_words || after.find_first_not_of(" .,") != std::string_view::npos))
            return 0;
        length += unit.length == 0 ? 0 : blank + article + unit.length;
        add(*figure, unit, rest.substr(0, length));
        return length + read_per(rest.substr(length));
    }

    /// ` to the ounce`, ` per pint`
    std::size_t read_per(std::string_view after) {
        for (const std::string_view word :
             {" to the ", " to each ", " per ", " in each ", " to every ", " for each "}) {
            if (!after.starts_with(word)) continue;
            const UnitFound unit = unit_at(after.substr(word.size()));
            if (unit.length == 0) return 0;
            line_.columns.back().per = Piece{1, unit.unit, unit.whose};
            return word.size() + unit.length;
        }
        return 0;
    }

    /// `No. 8` and `sp. gr. .880` are no amounts.
    static bool is_a_number_of(std::string_view before) {
        const std::string said = tidied(lower(before));
        return has_word(said.substr(said.size() - std::min<std::size_t>(said.size(), 3)), "no") ||
               said.ends_with("sp. gr") || said.ends_with("sp.gr") || said.ends_with("s.g") ||
               said.ends_with("gravity");
    }

    /// `Ammonia .880` is known by its density.
    static bool is_gravity(const Figure& figure, std::string_view before) {
        return lower(before).find("ammon") != std::string::npos && figure.value > Exact(85, 100) && figure.value < 1;
    }

    /// ` : 9` behind `1`
    std::size_t read_ratio(const Figure& one, std::string_view after) {
        if (after.starts_with(" in ") && says_dilute(line_.text)) return read_one_in(one, after.substr(4));
        const std::size_t sign = after.find_first_not_of(' ');
        if (sign == std::string_view::npos || (after[sign] != ':' && after[sign] != '+')) return 0;
        const std::size_t second = after.find_first_not_of(' ', sign + 1);
        if (second == std::string_view::npos) return 0;
        const auto other = figure_at(after.substr(second));
        if (!other || one.value == 0 || other->value == 0 || unit_at(after.substr(second + other->length)).length > 0)
            return 0;
        line_.ratio = Ratio{one.value, other->value, after[sign] == '+'};
        return second + other->length;
    }

    /// `1 in 10` is one part and nine.
    std::size_t read_one_in(const Figure& one, std::string_view after) {
        const auto whole = figure_at(after);
        if (!whole || one.value == 0 || whole->value <= one.value) return 0;
        line_.ratio = Ratio{one.value, whole->value - one.value, true};
        return 4 + whole->length;
    }

    void add(const Figure& figure, const UnitFound& unit, std::string_view text) {
        const bool more = !fresh_ && adds_to(line_.columns.back().pieces.back().unit, unit.unit);
        if (!more) line_.columns.emplace_back();
        Measure& measure = line_.columns.back();
        measure.pieces.push_back({figure.value, unit.unit, unit.whose});
        measure.step = figure.step;
        measure.text += (more ? " " : "") + std::string(text);
        fresh_ = false;
    }

    Line line_;
    std::string name_;
    bool fresh_ = true;
};

}  // namespace

Line read_line(std::string_view text) {
    return LineReader(text).run();
}

}  // namespace scruple::printed
