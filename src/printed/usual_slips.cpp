// SPDX-License-Identifier: MIT
#include "usual_slips.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace scruple::printed {
namespace {

constexpr double unusual = 0.47;  ///< outside the usual range: 1.6 times too much, or too little
constexpr double nearly = 0.30;   ///< what a slip explains may come out a little outside itself

/// `times` is what the printed amount has to be multiplied with.
struct Slip {
    double times;
    std::string_view words;
    bool metric, old;  ///< in which columns it happens
};
constexpr std::array slips{
    Slip{10, "the point has slipped, or a figure has dropped out", true, false},
    Slip{0.1, "the point has slipped, or a nought is too much", true, false},
    Slip{100, "the point has slipped by two places", true, false},
    Slip{0.01, "the point has slipped by two places", true, false},
    Slip{0.001, "grams are printed where milligrams belong", true, false},
    Slip{1000, "milligrams are printed where grams belong", true, false},
    Slip{15.4324, "grains are printed where grams belong", false, true},
    Slip{1 / 15.4324, "grams are printed where grains belong", true, false},
    Slip{7.29, "drachms are printed where ounces belong", false, true},
    Slip{1 / 7.29, "ounces are printed where drachms belong", false, true},
    Slip{60, "grains are printed where drachms belong", false, true},
    Slip{1.0 / 60, "drachms are printed where grains belong", false, true},
    Slip{437.5, "grains are printed where ounces belong", false, true},
    Slip{1 / 437.5, "ounces are printed where grains belong", false, true},
    Slip{10, "a figure has dropped out", false, true},
    Slip{0.1, "a nought is too much", false, true},
    Slip{16, "ounces are printed where pounds belong", false, true},
    Slip{1.0 / 16, "pounds are printed where ounces belong", false, true},
};

bool happens_to(const Slip& slip, const Measure& measure, bool metric) {
    if (metric ? !slip.metric : !slip.old) return false;
    const auto printed = [&](std::string_view unit) { return slip.words.starts_with(unit); };
    const auto has = [&](std::initializer_list<UnitWord> units) {
        return std::ranges::any_of(units, [&](UnitWord unit) { return is_in(measure, unit); });
    };
    if (printed("grains")) return has({UnitWord::grain, UnitWord::grain_or_gram});
    if (printed("drachms")) return has({UnitWord::drachm, UnitWord::fluid_drachm});
    if (printed("ounces")) return has({UnitWord::ounce, UnitWord::fluid_ounce});
    if (printed("pounds")) return has({UnitWord::pound});
    if (printed("milligrams")) return has({UnitWord::milligram});
    if (printed("grams")) return !is_in(measure, UnitWord::milligram);
    return true;
}

std::string shown(double value) {
    return quantity::significant_text(value, value < 10 ? 2 : 3);
}

/// All that would make the figure a usual one, those that do so best first, three at most.
std::string slips_for(const Range& range, double grams, const Known& known, bool metric) {
    std::vector<std::pair<double, std::string>> all;
    const Measure& measure = known.line->columns[known.line->stated];
    for (const Slip& slip : slips) {
        if (!happens_to(slip, measure, metric)) continue;
        const double off = std::abs(outside(range, grams * slip.times));
        if (off < nearly)
            all.emplace_back(off, fmt::format("{}: it would be {} g/l", slip.words, shown(grams * slip.times)));
    }
    const bool fraction = measure.pieces.size() == 1 && measure.pieces.front().value < 1 && !metric;
    if (fraction && grams < range.least)
        all.emplace_back(0, fmt::format("a whole number before the fraction has dropped out of `{}`", measure.text));
    std::ranges::stable_sort(all, {}, &std::pair<double, std::string>::first);
    std::string words;
    for (std::size_t i = 0; i < std::min<std::size_t>(all.size(), 3); ++i)
        words += (i == 0 ? "" : "; or ") + all[i].second;
    return words;
}

}  // namespace

void tell_unusual(const Judge& judge, const Known& known, std::size_t line, const Way& way, const Shared& shared,
                  LineRead& read) {
    if (!read.fault.empty()) return;
    if (read.by_volume && known.what.chemical != check::none && !known.liquid) {
        read.fault =
            fmt::format("`{}` is a volume, and {} is a solid", known.line->columns[known.line->stated].text, read.name);
        read.slip =
            "millilitres are printed where grams belong, fluid measures where weights do, or a solution of it is "
            "meant";
        return;
    }
    const auto range = judge.usual(line, way.form);
    const double grams = range ? judge.substance(line, way, shared) : 0;
    if (grams <= 0 || std::abs(outside(*range, grams)) < unusual) return;
    const auto [stronger, may_be_stronger] = judge.strength(known.line->solution);
    if (may_be_stronger && grams > range->most) return;
    const std::string at = stronger > 1 ? fmt::format(" when {} times as strong as in use", shown(stronger)) : "";
    read.fault = fmt::format("{} g/l is {} than {} usually hold{}: {} to {} g/l (common practice)", shown(grams),
                             grams < range->least ? "less" : "more", in_plural(judge.role()), at, shown(range->least),
                             shown(range->most));
    const Piece& piece = known.line->columns[known.line->stated].pieces.front();
    const bool metric = piece.unit == UnitWord::none || is_metric(piece.unit) || piece.unit == UnitWord::part;
    read.slip = slips_for(*range, grams, known, metric);
}

std::string unusual_column(const Judge& judge, std::size_t line, const Compared& compared, const Way& way,
                           const Shared& shared) {
    const auto range = judge.usual(line, way.form);
    if (!range || !compared.same_kind) return {};
    const double here = judge.substance(line, compared.against, way, shared);
    const double there = judge.substance(line, compared.column, way, shared);
    if (here <= 0 || there <= 0) return {};
    const bool here_is = outside(*range, here) == 0;
    const bool there_is = outside(*range, there) == 0;
    if (here_is == there_is) return {};
    return fmt::format("column {} is within what {} usually hold ({} to {} g/l), column {} is not",
                       (here_is ? compared.against : compared.column) + 1, in_plural(judge.role()), shown(range->least),
                       shown(range->most), (here_is ? compared.column : compared.against) + 1);
}

}  // namespace scruple::printed
