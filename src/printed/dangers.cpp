// SPDX-License-Identifier: MIT
#include "dangers.hpp"

#include <algorithm>
#include <array>

#include "scruple/syntax/normal.hpp"

namespace scruple::printed {
namespace {

struct Danger {
    std::string_view word, about, text;
};
// Common knowledge of the trade's old practice; the hazards are those that data sheets give, recalled.
constexpr std::array dangers{
    Danger{"cyanide", "cyanide", "Cyanides kill, and any acid frees their gas. No darkroom needs one."},
    Danger{"prussic", "cyanide", "Cyanides kill, and any acid frees their gas. No darkroom needs one."},
    Danger{"mercur", "mercury", "Mercury salts poison through the skin and for good. Look for a formula without."},
    Danger{"corrosive sublimate", "mercury",
           "Mercury salts poison through the skin and for good. Look for a formula without."},
    Danger{"calomel", "mercury", "Mercury salts poison through the skin and for good. Look for a formula without."},
    Danger{"taste", "tasting", "Nothing in a darkroom is tasted; a test solution tells what the tongue was to tell."},
    Danger{"tongue", "tasting", "Nothing in a darkroom is tasted; a test solution tells what the tongue was to tell."},
    Danger{"flame", "open flame", "No open flame near solvents, collodion, or gases that come off."},
    Danger{"spirit lamp", "open flame", "No open flame near solvents, collodion, or gases that come off."},
    Danger{"ether", "ether", "Ether takes fire from across a room and forms explosive peroxides."},
    Danger{"uranium", "uranium", "Uranium salts poison the kidneys and are radioactive."},
    Danger{"lead", "lead", "Lead salts build up in the body."},
    Danger{"bichromate", "chromate", "Chromates cause cancer and sensitize the skin."},
    Danger{"dichromate", "chromate", "Chromates cause cancer and sensitize the skin."},
    Danger{"vanadium", "vanadium", "Vanadium salts are toxic."},
    Danger{"liver of sulfur", "sulfides", "Acid frees hydrogen sulfide from it, which kills."}};

constexpr std::array first_aid{"antidote", "first aid", "swallowed", "emetic", "vomit", "poisoning"};

bool begins_a_word(std::string_view text, std::size_t at) {
    return at == 0 || !((text[at - 1] >= 'a' && text[at - 1] <= 'z'));
}

bool has(std::string_view text, std::string_view word) {
    for (std::size_t at = text.find(word); at != std::string_view::npos; at = text.find(word, at + 1))
        if (begins_a_word(text, at)) return true;
    return false;
}

}  // namespace

bool is_first_aid(std::string_view line) {
    const std::string said = syntax::normal_name(line);
    return std::ranges::any_of(first_aid, [&](std::string_view word) { return has(said, word); });
}

std::vector<Warning> dangers_in(const check::PrintedPage& typed) {
    std::vector<Warning> warnings;
    for (const check::PrintedLine& line : typed.lines) {
        if (is_first_aid(line.text)) continue;
        const std::string said = syntax::normal_name(line.text);
        for (const Danger& danger : dangers) {
            const bool told =
                std::ranges::any_of(warnings, [&](const Warning& it) { return it.about == danger.about; });
            if (!told && has(said, danger.word))
                warnings.push_back(
                    {std::string(danger.about),
                     std::string(danger.text) + " Read today's safety data sheet before anything else."});
        }
    }
    return warnings;
}

}  // namespace scruple::printed
