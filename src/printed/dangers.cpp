// SPDX-License-Identifier: MIT
#include "dangers.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "scruple/syntax/normal.hpp"

namespace scruple::printed {
namespace {

struct Danger {
    std::string_view word, about, text;
};
constexpr std::string_view mercury_text =
    "Mercury salts poison through the skin and for good. Look for a formula without.";
constexpr std::string_view tasting_text =
    "Nothing in a darkroom is tasted; a test solution tells what the tongue was to tell.";
constexpr std::string_view flame_text = "No open flame near solvents, collodion, or gases that come off.";
constexpr std::string_view smell_text = "What comes off is not for the nose: fan on, or outdoors.";
constexpr std::string_view cyanide_text = "Cyanides kill, and any acid frees their gas. No darkroom needs one.";
constexpr std::string_view lead_text = "Lead salts build up in the body.";
constexpr std::string_view chromate_text = "Chromates cause cancer and sensitize the skin.";
constexpr std::string_view sulfide_text = "Acid frees hydrogen sulfide from sulfides, which kills.";
constexpr std::string_view hands_text = "Bare hands belong in no bath: tongs, or gloves.";
// Common knowledge of the trade's old practice; the hazards are those that data sheets give, recalled.
constexpr std::array dangers{
    Danger{"cyanide", "cyanide", cyanide_text},
    Danger{"prussic", "cyanide", cyanide_text},
    Danger{"mercur", "mercury", mercury_text},
    Danger{"corrosive sublimate", "mercury", mercury_text},
    Danger{"calomel", "mercury", mercury_text},
    Danger{"taste", "tasting", tasting_text},
    Danger{"tasting", "tasting", tasting_text},
    Danger{"tongue", "tasting", tasting_text},
    Danger{"flame", "open flame", flame_text},
    Danger{"spirit lamp", "open flame", flame_text},
    Danger{"naked light", "open flame", flame_text},
    Danger{"candle", "open flame", flame_text},
    Danger{"gas ring", "open flame", flame_text},
    Danger{"gas jet", "open flame", flame_text},
    Danger{"bunsen", "open flame", flame_text},
    Danger{"over the fire", "open flame", flame_text},
    Danger{"fumes", "fumes", smell_text},
    Danger{"fuming", "fumes", smell_text},
    Danger{"vapour", "fumes", smell_text},
    Danger{"vapor", "fumes", smell_text},
    Danger{"smell", "fumes", smell_text},
    Danger{"odour", "fumes", smell_text},
    Danger{"inhal", "fumes", smell_text},
    Danger{"finger", "bare hands", hands_text},
    Danger{"bare hand", "bare hands", hands_text},
    Danger{"ether", "ether", "Ether takes fire from across a room and forms explosive peroxides."},
    Danger{"collodion", "collodion", "Collodion is ether, alcohol and guncotton: it burns at once."},
    Danger{"benzol", "benzene", "Benzene causes cancer."},
    Danger{"benzine", "benzine", "Benzine vapour creeps along the floor to the next flame."},
    Danger{"carbon tetrachloride", "carbon tetrachloride", "It harms the liver and may cause cancer."},
    Danger{"arsen", "arsenic", "Arsenic compounds kill and cause cancer."},
    Danger{"hydrofluoric", "hydrofluoric acid", "It goes through the skin to the bone. No darkroom needs it."},
    Danger{"uranium", "uranium", "Uranium salts poison the kidneys and are radioactive."},
    Danger{"of lead", "lead", lead_text},
    Danger{"lead acetate", "lead", lead_text},
    Danger{"lead nitrate", "lead", lead_text},
    Danger{"bichromate", "chromate", chromate_text},
    Danger{"dichromate", "chromate", chromate_text},
    Danger{"chromic acid", "chromate", chromate_text},
    Danger{"vanadium", "vanadium", "Vanadium salts are toxic."},
    Danger{"cadmium", "cadmium", "Cadmium salts poison and cause cancer."},
    Danger{"picric", "picric acid", "Picric acid explodes when it is dry."},
    Danger{"flash powder", "flash powder", "Flash powder explodes."},
    Danger{"liver of sulfur", "sulfides", sulfide_text},
    Danger{"sulfuretted hydrogen", "sulfides", sulfide_text}};

constexpr std::array first_aid{"antidote", "first aid", "swallowed", "emetic",
                               "vomit",    "poisoning", "stomach",   "white of egg"};

bool begins_a_word(std::string_view text, std::size_t at) {
    return at == 0 || !((text[at - 1] >= 'a' && text[at - 1] <= 'z'));
}

bool has(std::string_view text, std::string_view word) {
    for (std::size_t at = text.find(word); at != std::string_view::npos; at = text.find(word, at + 1))
        if (begins_a_word(text, at)) return true;
    return false;
}

/// What the library's hazard statements say of the worst; statements of the EU's CLP regulation.
std::string_view worst_of(const check::Chemical& chemical) {
    const auto says = [&](std::string_view code) {
        return std::ranges::any_of(chemical.hazards, [&](std::string_view it) { return it.starts_with(code); });
    };
    if (says("H300") || says("H310") || says("H330")) return "can kill in small amounts";
    if (says("H350")) return "can cause cancer";
    if (says("H340")) return "can cause genetic defects";
    if (says("EUH031") && says("H314")) return "burns, and frees a toxic gas with any acid";
    return "";
}

constexpr std::string_view read_the_sheet = "Read today's safety data sheet before anything else.";

void warn(std::vector<Warning>& warnings, std::string about, std::string text) {
    if (std::ranges::find(warnings, about, &Warning::about) == warnings.end())
        warnings.push_back({std::move(about), std::move(text)});
}

void warn_of(const check::Chemical& chemical, std::vector<Warning>& warnings) {
    const std::string_view worst = worst_of(chemical);
    if (worst.empty()) return;
    std::string codes;
    for (const std::string_view code : chemical.hazards) codes += (codes.empty() ? "" : ", ") + std::string(code);
    std::string text = fmt::format("It {} ({}: {}).", worst, codes, chemical.hazard_source);
    for (const std::string_view caution : chemical.cautions) text += fmt::format(" {}", caution);
    warn(warnings, std::string(chemical.name), fmt::format("{} {}", text, read_the_sheet));
}

}  // namespace

bool is_first_aid(std::string_view line) {
    const std::string said = syntax::normal_name(line);
    return std::ranges::any_of(first_aid, [&](std::string_view word) { return has(said, word); });
}

std::vector<Warning> dangers_in(const check::Model& model, const check::PrintedPage& typed, const Layout& layout) {
    std::vector<Warning> warnings;
    for (const Known& known : layout.lines)
        if (known.what.chemical != check::none) warn_of(model.chemicals[known.what.chemical], warnings);
    // `mercury` says no more than `mercury(II) chloride` did.
    const auto is_told = [&](const Danger& danger) {
        return std::ranges::any_of(warnings,
                                   [&](const Warning& it) { return it.about.find(danger.about) != std::string::npos; });
    };
    for (const check::PrintedLine& line : typed.lines) {
        if (is_first_aid(line.text)) continue;
        const std::string said = syntax::normal_name(line.text);
        for (const Danger& danger : dangers)
            if (has(said, danger.word) && !is_told(danger))
                warnings.push_back({std::string(danger.about), fmt::format("{} {}", danger.text, read_the_sheet)});
    }
    return warnings;
}

}  // namespace scruple::printed
