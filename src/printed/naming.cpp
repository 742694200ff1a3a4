// SPDX-License-Identifier: MIT
#include "naming.hpp"

#include <algorithm>
#include <array>
#include <utility>
#include <vector>

#include "scruple/syntax/normal.hpp"

namespace scruple::printed {
namespace {

using Pair = std::pair<std::string_view, std::string_view>;

/// Bases as old names have them, and words cut short; common practice, no source.
constexpr std::array written_out{Pair{"soda", "sodium"},
                                 Pair{"sodii", "sodium"},
                                 Pair{"sod", "sodium"},
                                 Pair{"potash", "potassium"},
                                 Pair{"potassii", "potassium"},
                                 Pair{"potass", "potassium"},
                                 Pair{"potassa", "potassium"},
                                 Pair{"pot", "potassium"},
                                 Pair{"ammonii", "ammonium"},
                                 Pair{"ammon", "ammonium"},
                                 Pair{"ammonia", "ammonium"},
                                 Pair{"lithia", "lithium"},
                                 Pair{"natrium", "sodium"},
                                 Pair{"kalium", "potassium"},
                                 Pair{"carb", "carbonate"},
                                 Pair{"bicarb", "bicarbonate"},
                                 Pair{"brom", "bromide"},
                                 Pair{"iod", "iodide"},
                                 Pair{"hydroq", "hydroquinone"},
                                 Pair{"hydrochinone", "hydroquinone"},
                                 Pair{"metabisulph", "metabisulfite"},
                                 Pair{"bisulph", "bisulfite"},
                                 Pair{"sulph", "sulfite"},
                                 Pair{"bichromate", "dichromate"},
                                 Pair{"ferridcyanide", "ferricyanide"},
                                 Pair{"boracic", "boric"},
                                 Pair{"hyposulfite", "thiosulfate"},
                                 Pair{"hyposulph", "thiosulfate"},
                                 Pair{"sulfocyanide", "thiocyanate"},
                                 Pair{"sulfocyanate", "thiocyanate"},
                                 Pair{"rhodanide", "thiocyanate"},
                                 Pair{"biborate", "tetraborate"}};

/// Whole names that turn up in old books and are not those of the library; common practice, no source.
constexpr std::array other_names{Pair{"hyposulfite", "hypo"},
                                 Pair{"borate of soda", "borax"},
                                 Pair{"sodium phosphate", "disodium phosphate"},
                                 Pair{"tribasic sodium phosphate", "trisodium phosphate"},
                                 Pair{"sodium monosulfide", "sodium sulfide"},
                                 Pair{"salt", "sodium chloride"},
                                 Pair{"kitchen salt", "sodium chloride"},
                                 Pair{"methylated spirit", "ethanol"},
                                 Pair{"methylated spirits", "ethanol"},
                                 Pair{"rectified spirit", "ethanol"},
                                 Pair{"liquor ammonium", "ammonia"},
                                 Pair{"liq ammonium", "ammonia"},
                                 Pair{"ammonium", "ammonia"},
                                 Pair{"strong ammonia", "ammonia"},
                                 Pair{"liquid ammonia", "ammonia"},
                                 Pair{"acetic", "acetic acid"},
                                 Pair{"potassium neutral oxalate", "potassium oxalate"},
                                 Pair{"iron sulfate", "iron(II) sulfate"},
                                 Pair{"iron chloride", "iron(III) chloride"},
                                 Pair{"gold trichloride", "gold chloride"},
                                 Pair{"caustic sodium", "caustic soda"},
                                 Pair{"caustic potassium", "caustic potash"},
                                 Pair{"sodium caustic", "caustic soda"},
                                 Pair{"potassium caustic", "caustic potash"},
                                 Pair{"paramidophenol", "4-aminophenol hydrochloride"},
                                 Pair{"para-amidophenol", "4-aminophenol hydrochloride"},
                                 Pair{"thiosulfate", "hypo"},
                                 Pair{"sodium prussiate red", "red prussiate"},
                                 Pair{"potassium red prussiate", "red prussiate"},
                                 Pair{"potassium yellow prussiate", "yellow prussiate"}};

Named found(const check::Model& model, std::string_view name) {
    const auto at = model.chemical_names.find(syntax::normal_name(name));
    if (at == model.chemical_names.end()) return {};
    return {at->second.first, at->second.second, model.chemicals[at->second.first].name};
}

bool is_known(const Named& named) {
    return named.chemical != check::none;
}

std::string with_words_written_out(std::string_view name) {
    std::string all;
    for (std::size_t at = 0; at < name.size();) {
        const std::size_t end = std::min(name.find(' ', at), name.size());
        std::string_view word = name.substr(at, end - at);
        while (word.ends_with('.') || word.ends_with(',')) word.remove_suffix(1);
        for (const auto& [printed, whole] : written_out)
            if (word == printed) {
                word = whole;
                break;
            }
        if (!word.empty()) all += (all.empty() ? "" : " ") + std::string(word);
        at = end + 1;
    }
    return all;
}

/// `sulfite of sodium` and `carbonate sodium` turned round; empty where it is no such name.
std::string turned(const std::string& name) {
    const std::size_t of = name.find(" of ");
    if (of != std::string::npos) return name.substr(of + 4) + " " + name.substr(0, of);
    const std::size_t last = name.rfind(' ');
    return last == std::string::npos ? std::string{} : name.substr(last + 1) + " " + name.substr(0, last);
}

/// A name in all its spellings.
Named by_spellings(const check::Model& model, const std::string& name) {
    if (Named it = found(model, name); is_known(it)) return it;
    for (const auto& [printed, meant] : other_names)
        if (name == printed) return found(model, meant);
    const std::string whole = with_words_written_out(name);
    std::string joined = name;
    std::erase(joined, '-');
    for (const std::string& tried :
         {whole, turned(whole), with_words_written_out(joined), turned(with_words_written_out(joined))}) {
        if (tried.empty()) continue;
        Named it = found(model, tried);
        for (const auto& [printed, meant] : other_names)
            if (!is_known(it) && tried == printed) it = found(model, meant);
        if (!is_known(it)) continue;
        return it;
    }
    return {};
}

/// Of an old name that is its crystals' own; none of any other.
check::Id crystals_named(const check::Model& model, std::string_view name, const Named& named) {
    constexpr std::array<std::pair<std::string_view, std::string_view>, 2> old{
        {{"hypo", "sodium thiosulfate"}, {"borax", "borax"}}};
    const auto& forms = model.chemicals[named.chemical].forms;
    for (const auto& [word, chemical] : old) {
        if (named.as != chemical || name.find(word) == std::string_view::npos) continue;
        const auto crystals = std::ranges::find_if(forms, [](const check::Form& form) {
            return std::ranges::find(form.called, "crystals") != form.called.end();
        });
        if (crystals != forms.end()) return static_cast<check::Id>(crystals - forms.begin());
    }
    return check::none;
}

/// Letters to put in, take out or change, and neighbours to exchange, until one is the other.
std::size_t letters_off(std::string_view one, std::string_view other, std::size_t most) {
    if (one.size() > other.size() + most || other.size() > one.size() + most) return most + 1;
    std::vector<std::size_t> before(other.size() + 1);
    std::vector<std::size_t> last(other.size() + 1);
    std::vector<std::size_t> row(other.size() + 1);
    for (std::size_t j = 0; j < row.size(); ++j) last[j] = j;
    for (std::size_t i = 1; i <= one.size(); ++i) {
        row[0] = i;
        for (std::size_t j = 1; j <= other.size(); ++j) {
            row[j] = std::min({last[j] + 1, row[j - 1] + 1, last[j - 1] + (one[i - 1] == other[j - 1] ? 0U : 1U)});
            const bool exchanged = i > 1 && j > 1 && one[i - 1] == other[j - 2] && one[i - 2] == other[j - 1];
            if (exchanged) row[j] = std::min(row[j], before[j - 2] + 1);
        }
        before = std::exchange(last, row);
    }
    return last.back();
}

/// `chlorate` is no misprint of `chloride`: the endings say which salt it is.
bool ends_alike(std::string_view one, std::string_view other) {
    for (const std::string_view ending : {"ate", "ite", "ide", "ic", "ous", "ium", "ol", "ine", "in"})
        if (one.ends_with(ending) != other.ends_with(ending)) return false;
    return one.front() == other.front();
}

/// The only chemical with a name so near; nothing where two have one.
Named nearest(const check::Model& model, const std::string& name) {
    constexpr std::size_t shortest = 6;
    constexpr std::size_t long_name = 12;
    if (name.size() < shortest) return {};
    std::size_t least = name.size() >= long_name ? 2 : 1;
    Named best;
    bool only = false;
    for (const auto& [known, ids] : model.chemical_names) {
        if (known.size() < shortest || !ends_alike(name, known)) continue;
        const std::size_t off = letters_off(name, known, least);
        if (off > least || (off == least && is_known(best) && best.chemical == ids.first)) continue;
        only = off < least || !is_known(best);
        least = off;
        best = {ids.first, ids.second, model.chemicals[ids.first].name};
    }
    if (!only) return {};
    return best;
}

}  // namespace

Named chemical_named(const check::Model& model, std::string_view printed) {
    const std::string name = syntax::normal_name(printed);
    if (Named it = by_spellings(model, name); is_known(it)) {
        if (it.form == check::none) it.form = crystals_named(model, name, it);
        return it;
    }
    // `potassium bromide, solution`: what stands behind a comma is a remark.
    const std::size_t comma = printed.find(',');
    if (comma != std::string_view::npos && comma > 0)
        if (Named it = chemical_named(model, printed.substr(0, comma)); is_known(it)) return it;
    for (const std::string& tried : {name, with_words_written_out(name), turned(with_words_written_out(name))})
        if (Named it = nearest(model, tried); is_known(it)) {
            it.misprint = printed;
            return it;
        }
    return {};
}

}  // namespace scruple::printed
