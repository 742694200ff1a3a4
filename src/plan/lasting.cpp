// SPDX-License-Identifier: MIT
#include "lasting.hpp"

#include "scruple/plan/calendar.hpp"

namespace scruple::plan {

using check::Exact;
using check::Keeping;
using check::Section;

namespace {

const Keeping* shortest(const Section& section, std::string_view when) {
    const Keeping* found = nullptr;
    for (const Keeping& keeping : section.keeps)
        if (keeping.when == when && (found == nullptr || keeping.seconds.low < found->seconds.low)) found = &keeping;
    return found;
}

/// Where only the other state has a time: that of a full bottle says nothing of one that is half empty, that of a half
/// full one holds all the more for a full one.
const Keeping* holding_for(const Section& section, bool full) {
    const Keeping* always = shortest(section, "");
    const Keeping* own = full ? shortest(section, "full") : nullptr;
    if (own == nullptr) own = shortest(section, "half full");
    if (own == nullptr || (always != nullptr && always->seconds.low < own->seconds.low)) return always;
    return own;
}

std::string words_of(const Keeping& keeping) {
    return std::string(keeping.text) + (keeping.when.empty() ? "" : " " + std::string(keeping.when));
}

std::string why_no_day(const Section& section) {
    if (section.keeps.empty()) return "its recipe does not say how long it keeps";
    std::string all;
    for (const Keeping& keeping : section.keeps) all += (all.empty() ? "" : ", ") + words_of(keeping);
    return "its recipe says " + all;
}

}  // namespace

UseBy use_by(const Section& section, check::Day mixed_on, const Exact& fill) {
    const Keeping* keeping = holding_for(section, fill >= Exact(9, 10));
    if (keeping != nullptr) return {last_day(mixed_on, keeping->seconds.low, keeping->text), words_of(*keeping)};
    if (section.use_within)
        return {last_day(mixed_on, *section.use_within, section.use_within_text),
                "within " + std::string(section.use_within_text)};
    return {std::nullopt, why_no_day(section)};
}

}  // namespace scruple::plan
