// SPDX-License-Identifier: MIT
// What must not meet, in each solution line by line, and from bath to bath of each process.
#include <algorithm>
#include <array>
#include <set>

#include "beakers.hpp"
#include "expected.hpp"
#include "ingredients_of.hpp"
#include "passes.hpp"

namespace scruple::check {
namespace {

using diagnostics::Kind;

// How much of a bath film and paper carry into the next one: our choice, on the cautious side. Common practice, no
// source.
constexpr double carried = 1.0 / 20;
// In the liquid that clings to film and paper two baths mix in every proportion; in the tray, in that one.
constexpr std::array shares_of_next = {0.01, 0.1, 0.5, 1 - carried};

class Judge {
  public:
    Judge(Model& model, std::vector<ContentsTable>& tables, std::vector<diagnostics::Diagnostic>& out)
        : model_(model), tables_(tables), out_(out), encounters_(model), met_(model.sections.size()) {}

    void run() {
        std::set<Id> done;
        for (Id id = 0; id < model_.sections.size(); ++id)
            for (const Id part : made_of(model_, id, [&](Id it) { return done.contains(it); })) {
                judge_solution(part);
                done.insert(part);
            }
        for (Id id = 0; id < model_.processes.size(); ++id) judge_process(id);
        report_idle();
    }

  private:
    using Met = std::set<Id>;  ///< meetings

    ContentsTable& table(std::size_t variant) {
        while (tables_.size() <= variant) tables_.emplace_back(model_, tables_.size());
        return tables_[variant];
    }
    [[nodiscard]] std::size_t variants_of(const Section& section) const {
        if (section.recipe == none) return 1;
        return std::max<std::size_t>(model_.recipes[section.recipe].variants.size(), 1);
    }
    [[nodiscard]] static bool is_whole(const Section& section) { return !section.broken && !has_open_amount(section); }

    // ---- one solution ----

    void judge_solution(Id id) {
        const auto& section = model_.sections[id];
        for (const auto& part : parts_of(section))
            met_[id].insert(met_[part.solution].begin(), met_[part.solution].end());
        if (section.kind == SectionKind::conversion || !is_whole(section)) return;
        for (std::size_t variant = 0; variant < variants_of(section); ++variant) judge_variant(id, variant);
    }

    /// What a part has met by itself is told there.
    void judge_variant(Id id, std::size_t variant) {
        const auto& section = model_.sections[id];
        const auto all = all_that_goes_in(section, variant);
        std::vector<Id> possible;
        for (Id meeting = 0; meeting < model_.meetings.size(); ++meeting)
            if (!met_[id].contains(meeting) && encounters_.possible(model_.meetings[meeting], all))
                possible.push_back(meeting);
        if (possible.empty()) return;
        each_moment(model_, section, variant, table(variant), [&](const Moment& mix, const Place& place) {
            for (const Id meeting : possible) {
                if (met_[id].contains(meeting)) continue;
                const auto what = encounters_.find(model_.meetings[meeting], mix);
                if (!what) continue;
                met_[id].insert(meeting);
                meets_in(id, meeting, *what, place);
            }
        });
    }

    /// Without amounts, which need not be worked out to see that nothing can meet.
    std::vector<Content> all_that_goes_in(const Section& section, std::size_t variant) {
        std::vector<Content> all;
        for (const auto& line : section.lines) {
            const auto* addition = std::get_if<Addition>(&line);
            if (addition == nullptr) continue;
            if (addition->solution != none) {
                const auto& contents = table(variant).of(addition->solution).contents;
                all.insert(all.end(), contents.begin(), contents.end());
            } else if (addition->chemical != none) {
                all.push_back({addition->chemical, addition->form});
            }
        }
        return all;
    }

    void meets_in(Id id, Id meeting, const std::string& what, const Place& place) {
        const auto& section = model_.sections[id];
        const auto* accepted = acceptance(section.accepts, meeting);
        if (accepted == nullptr && section.recipe != none)
            accepted = acceptance(model_.recipes[section.recipe].accepts, meeting);
        if (accepted != nullptr) {
            model_.accepted.push_back({.meeting = meeting, .section = id, .what = what, .reason = accepted->reason});
            return;
        }
        const auto& it = model_.meetings[meeting];
        const auto kind = it.danger == Danger::lethal ? Kind::lethal_meeting : Kind::harmful_meeting;
        report(kind, place, {what, it.comes, how_to_mend(it), it.name});
    }

    static std::string how_to_mend(const Meeting& meeting) {
        return meeting.notes.empty() ? "other amounts, or another order" : std::string(meeting.notes.front());
    }

    // ---- from bath to bath ----

    void judge_process(Id id) {
        const auto& stages = model_.processes[id].stages;
        for (std::size_t i = 1; i < stages.size(); ++i)
            if (stages[i - 1].solution != none && stages[i].solution != none) judge_pair(id, stages[i - 1], stages[i]);
    }

    void judge_pair(Id process, const Stage& before, const Stage& next) {
        const auto variants =
            std::max(variants_of(model_.sections[before.solution]), variants_of(model_.sections[next.solution]));
        auto met = met_[before.solution];
        met.insert(met_[next.solution].begin(), met_[next.solution].end());
        for (std::size_t variant = 0; variant < variants; ++variant) {
            const auto carried_in = table(variant).of(before.solution);
            const auto there = table(variant).of(next.solution);
            if (!carried_in.whole || !there.whole) return;
            for (Id meeting = 0; meeting < model_.meetings.size(); ++meeting) {
                if (met.contains(meeting)) continue;
                const auto what = carry_over(model_.meetings[meeting], carried_in.contents, there.contents, next);
                if (!what) continue;
                met.insert(meeting);
                meets_between(process, meeting, *what, before, next);
            }
        }
    }

    [[nodiscard]] std::optional<std::string> carry_over(const Meeting& meeting, const std::vector<Content>& before,
                                                        const std::vector<Content>& next, const Stage& stage) const {
        auto both = before;
        both.insert(both.end(), next.begin(), next.end());
        if (!encounters_.possible(meeting, both)) return std::nullopt;
        for (const double share : shares_of_next) {
            if (meeting.danger != Danger::lethal && share != shares_of_next.back()) continue;
            Moment mix;
            if (stage.celsius) mix.celsius = stage.celsius->high.to_double();
            for (auto content : before) mix.contents.push_back(thinned(content, 1 - share));
            for (auto content : next) mix.contents.push_back(thinned(content, share));
            if (auto what = encounters_.find(meeting, mix)) return what;
        }
        return std::nullopt;
    }

    static Content thinned(Content content, double share) {
        content.g_per_l *= share;
        content.mol_per_l *= share;
        return content;
    }

    void meets_between(Id process, Id meeting, const std::string& what, const Stage& before, const Stage& next) {
        if (const auto* accepted = acceptance(model_.processes[process].accepts, meeting)) {
            model_.accepted.push_back({.meeting = meeting,
                                       .process = process,
                                       .bath = before.solution,
                                       .next = next.solution,
                                       .what = what,
                                       .reason = accepted->reason});
            return;
        }
        const auto& it = model_.meetings[meeting];
        const auto kind = it.danger == Danger::lethal ? Kind::lethal_carry_over : Kind::harmful_carry_over;
        report(kind, next.place, {before.text, next.text, what, it.comes, it.name});
    }

    // ---- what is accepted ----

    const Acceptance* acceptance(const std::vector<Acceptance>& all, Id meeting) {
        const auto found = std::ranges::find(all, meeting, &Acceptance::meeting);
        if (found == all.end()) return nullptr;
        used_.insert({&all, meeting});
        return &*found;
    }

    void report_idle() {
        for (const auto& section : model_.sections)
            if (is_whole(section)) report_idle(section.accepts);
        for (const auto& recipe : model_.recipes)
            if (std::ranges::all_of(recipe.sections, [&](Id id) { return is_whole(model_.sections[id]); }))
                report_idle(recipe.accepts);
        for (const auto& process : model_.processes) report_idle(process.accepts);
    }
    void report_idle(const std::vector<Acceptance>& all) {
        for (const auto& acceptance : all)
            if (!used_.contains({&all, acceptance.meeting}))
                report(Kind::nothing_to_accept, acceptance.place, {model_.meetings[acceptance.meeting].name});
    }

    void report(Kind kind, const Place& place, std::initializer_list<std::string_view> arguments) {
        out_.push_back(diagnostics::make(kind, place.file, place.span, arguments));
    }

    Model& model_;
    std::vector<ContentsTable>& tables_;
    std::vector<diagnostics::Diagnostic>& out_;
    Encounters encounters_;
    std::vector<Met> met_;  ///< by section: what meets in it or in its parts
    std::set<std::pair<const std::vector<Acceptance>*, Id>> used_;
};

}  // namespace

void judge_meetings(Model& model, std::vector<ContentsTable>& tables, std::vector<diagnostics::Diagnostic>& out) {
    Judge(model, tables, out).run();
}

}  // namespace scruple::check
