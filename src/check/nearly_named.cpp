// SPDX-License-Identifier: MIT
#include "nearly_named.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "listed.hpp"

namespace scruple::check {
namespace {

std::string by_formula(const Model& model, std::string_view written) {
    for (const Chemical& chemical : model.chemicals)
        for (Id form = 0; form < chemical.forms.size(); ++form)
            if (chemical.forms[form].formula_text == written) return quoted(shown_name(chemical, form));
    return {};
}

std::string form_behind(const Chemical& chemical, const std::string& words) {
    for (Id form = 0; form < chemical.forms.size(); ++form)
        if (std::ranges::find(chemical.forms[form].called, words) != chemical.forms[form].called.end())
            return quoted(shown_name(chemical, form));
    return {};
}

/// `28%`, `28 %`
std::string strength_behind(const Chemical& chemical, std::string words) {
    const auto digits = words.find_first_not_of("0123456789.");
    if (digits == 0 || digits == std::string::npos || words.find_first_not_of("% ", digits) != std::string::npos)
        return {};
    words.resize(digits);
    return fmt::format("`{} ({} % w/w)`, or `w/v` or `v/v`: whichever is meant", chemical.name, words);
}

}  // namespace

std::string nearly_named(Reader& reader, std::string_view written) {
    const Model& model = reader.model;
    if (auto name = by_formula(model, written); !name.empty()) return name;
    for (auto blank = written.find(' '); blank != std::string_view::npos; blank = written.find(' ', blank + 1)) {
        const auto found = model.chemical_names.find(reader.normal(written.substr(0, blank)));
        if (found == model.chemical_names.end()) continue;
        const Chemical& chemical = model.chemicals[found->second.first];
        const std::string tail = reader.normal(written.substr(blank + 1));
        if (auto text = form_behind(chemical, tail); !text.empty()) return text;
        if (auto text = strength_behind(chemical, tail); !text.empty()) return text;
    }
    return {};
}

}  // namespace scruple::check
