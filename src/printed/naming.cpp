// SPDX-License-Identifier: MIT
#include "naming.hpp"

#include <array>
#include <utility>

#include "scruple/syntax/normal.hpp"

namespace scruple::printed {
namespace {

using Pair = std::pair<std::string_view, std::string_view>;

/// `carbonate of soda` is sodium carbonate.
constexpr std::array bases{Pair{"soda", "sodium"},         Pair{"sodium", "sodium"},    Pair{"potash", "potassium"},
                           Pair{"potassium", "potassium"}, Pair{"ammonia", "ammonium"}, Pair{"ammonium", "ammonium"},
                           Pair{"lithia", "lithium"},      Pair{"silver", "silver"},    Pair{"iron", "iron"}};
constexpr std::array abbreviations{Pair{"potass", "potassium"},
                                   Pair{"pot", "potassium"},
                                   Pair{"sod", "sodium"},
                                   Pair{"ammon", "ammonium"},
                                   Pair{"carb", "carbonate"},
                                   Pair{"brom", "bromide"},
                                   Pair{"hydrochinone", "hydroquinone"},
                                   Pair{"hydrokinone", "hydroquinone"},
                                   Pair{"soda", "sodium"},
                                   Pair{"potash", "potassium"}};

Named found(const check::Model& model, const std::string& name) {
    const auto at = model.chemical_names.find(syntax::normal_name(name));
    if (at == model.chemical_names.end()) return {};
    return {at->second.first, at->second.second, model.chemicals[at->second.first].name};
}

std::string with_words_written_out(std::string_view name) {
    std::string all;
    for (std::size_t at = 0; at < name.size();) {
        const std::size_t end = std::min(name.find(' ', at), name.size());
        std::string_view word = name.substr(at, end - at);
        if (word.ends_with('.')) word.remove_suffix(1);
        for (const auto& [printed, whole] : abbreviations)
            if (word == printed) word = whole;
        all += (all.empty() ? "" : " ") + std::string(word);
        at = end + 1;
    }
    return all;
}

/// `sulfite of soda` turned round; empty where it is no such name.
std::string turned(const std::string& name) {
    const std::size_t of = name.find(" of ");
    if (of == std::string::npos) return {};
    const std::string_view base = std::string_view(name).substr(of + 4);
    for (const auto& [printed, whole] : bases)
        if (base == printed) return std::string(whole) + " " + name.substr(0, of);
    return {};
}

}  // namespace

Named chemical_named(const check::Model& model, std::string_view printed) {
    const std::string name = syntax::normal_name(printed);
    if (Named as_it_stands = found(model, name); as_it_stands.chemical != check::none) return as_it_stands;
    if (const std::string other = turned(name); !other.empty())
        if (Named by_turn = found(model, other); by_turn.chemical != check::none) return by_turn;
    if (Named written_out = found(model, with_words_written_out(name)); written_out.chemical != check::none)
        return written_out;
    // `potassium bromide, solution`: what stands behind a comma is a remark.
    const std::size_t comma = printed.find(',');
    return comma == std::string_view::npos ? Named{} : chemical_named(model, printed.substr(0, comma));
}

}  // namespace scruple::printed
