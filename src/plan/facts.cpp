// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "scruple/plan/compare.hpp"

namespace scruple::plan {
namespace {

using Of = Fact::Of;

std::string listed(const std::vector<std::string>& parts) {
    std::string all;
    for (const std::string& part : parts)
        if (!part.empty()) all += (all.empty() ? "" : ", ") + part;
    return all;
}

std::string four_digits(double value) {
    return quantity::significant_text(value, 4);
}

Fact content(const ContentRow& row) {
    const std::string what = row.form.empty() ? row.chemical : fmt::format("{} ({})", row.chemical, row.form);
    return {Of::contents, what, "",
            fmt::format("{}{}g/l, {}{}mol/l", four_digits(row.g_per_l), unit_blank, four_digits(row.mol_per_l),
                        unit_blank)};
}

Fact ph(const PhRow& row) {
    const std::string celsius = quantity::significant_text(row.celsius, 3);
    return {Of::ph, fmt::format("pH at {}{}°C", celsius, unit_blank), "",
            row.value ? row.text : "not given: " + row.text};
}

/// What a wait takes stands in its words already.
Fact step(const Work& work) {
    std::string amount;
    if (work.amount)
        amount = fmt::format("{}{}", work.about ? "about " : work.up_to ? "to make " : "", work.amount->with_unit());
    std::vector<std::string> rest{work.at.empty() ? "" : "at " + work.at, work.optional ? "optional" : ""};
    rest.insert(rest.end(), work.details.begin(), work.details.end());
    const bool aside = !work.vessel.empty() && work.what_to_do != Work::Do::open_vessel;
    const std::string what = aside ? fmt::format("{}, in the vessel {}", work.what, work.vessel) : work.what;
    return {Of::work, what, amount, listed(rest)};
}

void add_keeping(const Card& card, std::vector<Fact>& facts) {
    for (const Life& life : card.keeps) facts.push_back({Of::keeping, "keeps", "", life.text});
    if (!card.use_within.empty()) facts.push_back({Of::keeping, "use within", "", card.use_within});
    for (const std::string& line : card.capacity) facts.push_back({Of::keeping, "capacity", "", line});
}

void add_cautions(const Card& card, std::vector<Fact>& facts) {
    for (const Caution& caution : card.cautions) facts.push_back({Of::cautions, caution.text, "", ""});
    for (const AcceptedMeeting& it : card.accepted)
        facts.push_back({Of::cautions, "accepted: " + it.meeting, "", listed({it.where, it.reason})});
    for (const Warning& warning : card.warnings) facts.push_back({Of::cautions, "found: " + warning.message, "", ""});
    for (const HazardRow& row : card.hazards) {
        if (row.codes.empty() && row.cautioned) continue;
        facts.push_back(
            {Of::cautions, row.chemical, "", row.codes.empty() ? "no caution recorded" : listed(row.codes)});
    }
}

}  // namespace

std::vector<Fact> facts_of(const Card& litre, const std::string& batch) {
    std::vector<Fact> facts;
    for (const ContentRow& row : litre.contents) facts.push_back(content(row));
    if (litre.ph) facts.push_back(ph(*litre.ph));
    for (const std::string& line : litre.checks) facts.push_back({Of::checks, line, "", ""});
    if (!batch.empty()) facts.push_back({Of::batch, "as written", "", batch});
    for (const Work& work : litre.work) facts.push_back(step(work));
    add_keeping(litre, facts);
    add_cautions(litre, facts);
    for (const std::string& note : litre.notes) facts.push_back({Of::notes, note, "", ""});
    for (const std::string& source : litre.sources) facts.push_back({Of::notes, "from " + source, "", ""});
    return facts;
}

}  // namespace scruple::plan
