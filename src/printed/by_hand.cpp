// SPDX-License-Identifier: MIT
#include "by_hand.hpp"

#include <algorithm>
#include <iterator>

#include "scruple/syntax/normal.hpp"
#include "wording.hpp"

namespace scruple::printed {
namespace {

std::optional<Percent> percent_said(ByHand what) {
    switch (what) {
        case ByHand::by_volume:
            return Percent::by_volume;
        case ByHand::by_weight:
            return Percent::by_weight;
        case ByHand::weight_in_volume:
            return Percent::weight_in_volume;
        default:
            return std::nullopt;
    }
}

std::optional<Ounce> ounce_said(ByHand what) {
    if (what == ByHand::avoirdupois) return Ounce::avoirdupois;
    if (what == ByHand::apothecaries) return Ounce::apothecaries;
    return std::nullopt;
}

/// What remains of the ways; all of them where none would.
template <class Keep>
void keep(Known& known, Keep keeps) {
    std::vector<Way> kept;
    std::ranges::copy_if(known.ways, std::back_inserter(kept), keeps);
    if (!kept.empty()) known.ways = std::move(kept);
}

void keep_form(const check::Model& model, Layout& layout, std::string_view said) {
    const std::string words = syntax::normal_name(said);
    const std::size_t open = words.find(" (");
    if (open == std::string::npos) return;
    const Named named = chemical_named(model, words.substr(0, open));
    if (named.chemical == check::none) return;
    const std::string form = words.substr(open + 2, words.size() - open - 3);
    for (Known& known : layout.lines)
        if (known.what.chemical == named.chemical)
            keep(known, [&](const Way& way) {
                return way.form < model.chemicals[named.chemical].forms.size() &&
                       is_called(model.chemicals[named.chemical].forms[way.form], form);
            });
}

void keep_percent(Known& known, Percent percent) {
    for (Way& way : known.ways) way.percent = percent;
    keep(known, [&](const Way& way) {
        return std::ranges::find(known.ways, way.form, &Way::form)->other_ounce == way.other_ounce;
    });
}

void keep_ounce(Known& known, Ounce ounce) {
    known.ounce = ounce;
    keep(known, [](const Way& way) { return !way.other_ounce; });
}

/// Where ` of acetic acid` or ` in column 2` begins in what is said; its end where neither stands there.
std::size_t narrows_at(std::string_view words) {
    return std::min({words.find(" of "), words.find(" in column "), words.size()});
}

}  // namespace

Narrowed narrowed(std::string_view said) {
    const std::string words = syntax::normal_name(said);
    Narrowed all;
    if (words.ends_with(')')) return all;
    const std::string_view rest = std::string_view(words).substr(narrows_at(words));
    if (rest.starts_with(" of ")) all.chemical = rest.substr(4);
    constexpr std::string_view in_column = " in column ";
    if (rest.size() == in_column.size() + 1 && rest.back() > '0' && rest.back() <= '9')
        all.column = static_cast<std::size_t>(rest.back() - '1');
    return all;
}

bool is_about(const check::Model& model, const check::ReadingByHand& line, check::Id chemical) {
    const std::string about = narrowed(line.said).chemical;
    return about.empty() || (chemical != check::none && chemical_named(model, about).chemical == chemical);
}

namespace {

/// An ounce of the whole page is no matter of its lines.
void keep_to_line(Known& known, const check::ReadingByHand& line, ByHand what) {
    if (const auto percent = percent_said(what); percent && known.line->percent) keep_percent(known, *percent);
    if (const auto ounce = ounce_said(what); ounce && !narrowed(line.said).chemical.empty()) keep_ounce(known, *ounce);
}

}  // namespace

ByHand by_hand_of(std::string_view said) {
    std::string words = syntax::normal_name(said);
    if (words.ends_with(')')) return ByHand::form;
    words.resize(narrows_at(words));
    if (has_word(words, "imperial") || has_word(words, "uk")) return ByHand::imperial;
    if (has_word(words, "us")) return ByHand::us;
    if (has_word(words, "avoirdupois") || words == "oz av") return ByHand::avoirdupois;
    if (has_word(words, "apothecaries") || words == "oz ap") return ByHand::apothecaries;
    if (words == "% v/v") return ByHand::by_volume;
    if (words == "% w/w") return ByHand::by_weight;
    if (words == "% w/v") return ByHand::weight_in_volume;
    if (words == "gr grain" || words == "grs grain" || words == "gr grains") return ByHand::grain;
    if (words == "gr gram" || words == "grs gram" || words == "gr grams") return ByHand::gram;
    const std::size_t plus = words.find('+');
    const bool parts = plus != std::string::npos && plus > 0 && plus + 1 < words.size() &&
                       words.find_first_not_of("0123456789.+ ") == std::string::npos;
    return parts ? ByHand::one_and : ByHand::nothing;
}

bool is_said(const std::vector<check::ReadingByHand>& by_hand, ByHand what, std::size_t column) {
    return std::ranges::any_of(by_hand, [&](const auto& line) {
        const Narrowed to = narrowed(line.said);
        return by_hand_of(line.said) == what && to.chemical.empty() && to.column.value_or(column) == column;
    });
}

void keep_to_hand(const check::Model& model, Layout& layout, const std::vector<check::ReadingByHand>& by_hand) {
    for (const auto& line : by_hand) {
        const ByHand what = by_hand_of(line.said);
        if (what == ByHand::form) keep_form(model, layout, line.said);
        for (Known& known : layout.lines)
            if (is_about(model, line, known.what.chemical)) keep_to_line(known, line, what);
    }
}

}  // namespace scruple::printed
