// SPDX-License-Identifier: MIT
// Whether the pH is what the author expects, and acids that stand where their salts would do better.
#include <algorithm>

#include "expected.hpp"
#include "passes.hpp"
#include "scruple/check/ph.hpp"

namespace scruple::check {
namespace {

using diagnostics::Kind;
using quantity::Unit;

// Below it a developer hardly works; common practice, no source.
constexpr double developer_works_from = 8;

std::string with_range(const Ph& ph) {
    return shown(ph.value, ph) + " (" + shown(ph.low, ph) + " to " + shown(ph.high, ph) + ")";
}

class PhJudge {
  public:
    PhJudge(Reader& reader, Id section, const std::vector<Content>& contents)
        : reader_(reader), section_(reader.model.sections[section]), contents_(contents) {}

    /// Whether something was reported: one variant's fault is mostly every variant's.
    bool run() {
        for (const auto& expectation : section_.expects)
            if (expectation.ph) judge(expectation);
        if (is_used_developer(reader_.model, section_)) judge_acids();
        return reported_;
    }

    /// What goes to film or paper as it is. A part may well be sour.
    [[nodiscard]] static bool is_used_developer(const Model& model, const Section& section) {
        if (section.recipe == none || section.kind == SectionKind::part || section.kind == SectionKind::replenisher)
            return false;
        return model.recipes[section.recipe].is_a.find("developer") != std::string_view::npos;
    }

  private:
    const std::variant<Ph, NoPh>& found() {
        if (!found_) found_ = ph_of(reader_.model, contents_, usual_celsius);
        return *found_;
    }

    void judge(const Expectation& expectation) {
        if (const auto* none = std::get_if<NoPh>(&found()))
            return report(Kind::ph_not_known, expectation.place.span, {none->why});
        const auto& ph = std::get<Ph>(found());
        const double low = expectation.range.low.to_double();
        const double high = expectation.range.high.to_double();
        const bool apart = ph.high < low || ph.low > high;
        const bool inside = ph.low >= low && ph.high <= high;
        const bool one_value = expectation.range.low == expectation.range.high;
        if (inside || (one_value && !apart)) return;
        const auto wanted = "pH " + range_text(expectation.range, Unit::none);
        const auto celsius = quantity::significant_text(ph.celsius, 2) + " °C";
        if (apart) return report(Kind::ph_missed, expectation.place.span, {with_range(ph), wanted, celsius});
        const auto why = ph.widened_by.empty() ? std::string() : "; the range is wide by " + ph.widened_by.front();
        report(Kind::ph_in_doubt, expectation.place.span, {with_range(ph), wanted, celsius, why});
    }

    // ---- an acid in the place of its salt ----

    void judge_acids() {
        for (const auto& content : contents_) {
            const auto salt = salt_of(content.chemical);
            if (salt == none) continue;
            const auto* ph = std::get_if<Ph>(&found());
            if (ph == nullptr || ph->high >= developer_works_from) return;
            if (const auto better = with_salt(content, salt); better && *better >= ph->value + 1)
                report(Kind::acid_for_salt, place_of(content.chemical),
                       {name(content.chemical), shown(ph->value, *ph), name(salt), shown(*better, *ph)});
        }
    }

    [[nodiscard]] std::string name(Id chemical) const { return std::string(reader_.model.chemicals[chemical].name); }

    /// Of a developing agent, the chemical that brings it as an ion with less H+ than this one does.
    [[nodiscard]] Id salt_of(Id acid) const {
        const auto salt = reader_.model.acid_base.chemicals[acid].salt;
        const auto is_agent = [](std::string_view word) { return word == "developing agent"; };
        return salt != none && std::ranges::any_of(reader_.model.chemicals[acid].acts_as, is_agent) ? salt : none;
    }

    [[nodiscard]] std::optional<double> with_salt(const Content& acid, Id salt) const {
        auto contents = contents_;
        const auto at = std::ranges::find(contents, acid.chemical, &Content::chemical);
        const double g_per_mol = reader_.model.chemicals[salt].forms.front().molar_mass.to_double();
        *at = {salt, 0, acid.mol_per_l * g_per_mol, acid.mol_per_l};
        return ph_value_of(reader_.model, contents, usual_celsius);
    }

    [[nodiscard]] text::Span place_of(Id chemical) const {
        for (const auto& line : section_.lines)
            if (const auto* addition = std::get_if<Addition>(&line); addition && addition->chemical == chemical)
                return addition->place.span;
        return section_.place.span;
    }

    void report(Kind kind, text::Span span, std::initializer_list<std::string_view> arguments) {
        reader_.report(kind, span, arguments);
        reported_ = true;
    }

    Reader& reader_;
    const Section& section_;
    const std::vector<Content>& contents_;
    std::optional<std::variant<Ph, NoPh>> found_;
    bool reported_ = false;
};

}  // namespace

void judge_ph(Reader& reader, Id section, std::vector<ContentsTable>& tables) {
    const auto& solution = reader.model.sections[section];
    const bool asked = std::ranges::any_of(solution.expects, &Expectation::ph);
    if (!asked && !PhJudge::is_used_developer(reader.model, solution)) return;
    if (has_open_amount(solution)) return;
    for (std::size_t variant = 0; variant < variants_of(reader.model, solution); ++variant) {
        if (variant == tables.size()) tables.emplace_back(reader.model, variant);
        const auto& known = tables[variant].of(section);
        if (!known.whole || PhJudge(reader, section, known.contents).run()) return;
    }
}

}  // namespace scruple::check
