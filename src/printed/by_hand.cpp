// SPDX-License-Identifier: MIT
#include "by_hand.hpp"

#include <algorithm>
#include <iterator>

#include "scruple/syntax/normal.hpp"
#include "wording.hpp"

namespace scruple::printed {
namespace {

std::optional<Percent> percent_by_hand(const std::vector<check::ReadingByHand>& by_hand) {
    if (is_said(by_hand, ByHand::by_volume)) return Percent::by_volume;
    if (is_said(by_hand, ByHand::by_weight)) return Percent::by_weight;
    if (is_said(by_hand, ByHand::weight_in_volume)) return Percent::weight_in_volume;
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

}  // namespace

ByHand by_hand_of(std::string_view said) {
    const std::string words = syntax::normal_name(said);
    if (words.ends_with(')')) return ByHand::form;
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

bool is_said(const std::vector<check::ReadingByHand>& by_hand, ByHand what) {
    return std::ranges::any_of(by_hand, [&](const auto& line) { return by_hand_of(line.said) == what; });
}

void keep_to_hand(const check::Model& model, Layout& layout, const std::vector<check::ReadingByHand>& by_hand) {
    for (const auto& line : by_hand)
        if (by_hand_of(line.said) == ByHand::form) keep_form(model, layout, line.said);
    if (const auto percent = percent_by_hand(by_hand))
        for (Known& known : layout.lines)
            if (known.line->percent) {
                for (Way& way : known.ways) way.percent = *percent;
                keep(known, [&](const Way& way) {
                    return std::ranges::find(known.ways, way.form, &Way::form)->other_ounce == way.other_ounce;
                });
            }
}

}  // namespace scruple::printed
