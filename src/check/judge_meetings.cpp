// SPDX-License-Identifier: MIT
// What must not meet, in each solution line by line, and from bath to bath of each process.
#include <algorithm>
#include <array>
#include <map>
#include <set>
#include <span>
#include <unordered_set>

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

// Less gas than that is not worth a word: our choice.
constexpr double least_litres = 0.01;

bool is_whole(const Section& section) {
    return !section.broken && !has_open_amount(section);
}

ContentsTable& table(const Model& model, std::vector<ContentsTable>& tables, std::size_t variant) {
    while (tables.size() <= variant) tables.emplace_back(model, tables.size());
    return tables[variant];
}

// ---- one solution ----

/// By itself and for one variant after the other, so that solutions can be looked at side by side.
class Search {
  public:
    Search(const Model& model, const Encounters& encounters, const Section& section, std::vector<ContentsTable>& tables)
        : model_(model), encounters_(encounters), section_(section), tables_(tables) {}

    std::vector<Encounter> run() {
        for (std::size_t variant = 0; variant < variants_of(model_, section_); ++variant)
            look_through(variant, table(model_, tables_, variant));
        return std::move(found_);
    }

  private:
    void look_through(std::size_t variant, ContentsTable& table) {
        auto possible = encounters_.possible(all_that_goes_in(table));
        std::erase_if(possible, [this](Id meeting) { return is_found(meeting); });
        if (possible.empty()) return;
        const auto may_meet = [&](std::span<const Content> contents) {
            return std::ranges::any_of(
                possible, [&](Id meeting) { return encounters_.possible(model_.meetings[meeting], contents); });
        };
        const auto look = [&](const Moment& mix, const Place& place) {
            for (const Id meeting : possible) look_for(meeting, mix, place);
        };
        each_moment(model_, section_, variant, table, {may_meet, look});
    }

    void look_for(Id meeting, const Moment& mix, const Place& place) {
        if (!is_found(meeting))
            if (auto what = encounters_.find(model_.meetings[meeting], mix))
                found_.push_back({meeting, *std::move(what), place});
        if (auto* encounter = found(meeting)) add_gas(*encounter, mix);
    }

    /// The most that there is at any moment: the first of them is only the beginning.
    void add_gas(Encounter& encounter, const Moment& mix) const {
        const double litres = encounters_.litres_of_gas(model_.meetings[encounter.meeting], mix);
        encounter.litres_of_gas = std::max(encounter.litres_of_gas, litres);
    }

    [[nodiscard]] Encounter* found(Id meeting) {
        const auto its = std::ranges::find(found_, meeting, &Encounter::meeting);
        return its == found_.end() ? nullptr : &*its;
    }

    [[nodiscard]] bool is_found(Id meeting) const {
        return std::ranges::find(found_, meeting, &Encounter::meeting) != found_.end();
    }

    /// Without amounts, which need not be worked out to see that nothing can meet.
    std::vector<Content> all_that_goes_in(ContentsTable& table) const {
        std::vector<Content> all;
        all.reserve(section_.lines.size());
        for (const auto& line : section_.lines) {
            const auto* addition = std::get_if<Addition>(&line);
            if (addition == nullptr) continue;
            if (addition->solution != none) {
                const auto& contents = table.of(addition->solution).contents;
                all.insert(all.end(), contents.begin(), contents.end());
            } else if (addition->chemical != none) {
                all.push_back({addition->chemical, addition->form});
            }
        }
        return all;
    }

    const Model& model_;
    const Encounters& encounters_;
    const Section& section_;
    std::vector<ContentsTable>& tables_;
    std::vector<Encounter> found_;
};

// ---- all of them ----

class Judge {
  public:
    Judge(const Model& model, const Encounters& encounters, const Group& group, std::vector<ContentsTable>& tables,
          std::vector<diagnostics::Diagnostic>& out)
        : model_(model), encounters_(encounters), group_(group), tables_(tables), out_(out) {}

    std::vector<Accepted> run(const std::vector<std::vector<Encounter>>& found) {
        std::map<Id, const std::vector<Encounter>*> by_section;
        for (std::size_t i = 0; i < found.size(); ++i)
            if (!found[i].empty()) by_section.emplace(group_.sections[i], &found[i]);
        if (!by_section.empty()) judge_solutions(by_section);
        for (const Id id : group_.processes) judge_process(id);
        report_idle();
        return std::move(accepted_);
    }

  private:
    using Met = std::set<Id>;  ///< meetings

    /// What a part has met by itself is told there, and so parts come first.
    void judge_solutions(const std::map<Id, const std::vector<Encounter>*>& found) {
        std::unordered_set<Id> done;
        for (const Id id : group_.sections) {
            if (!found.contains(id) && !model_.sections[id].takes_solutions) continue;
            for (const Id solution : made_of(model_, id, [&](Id it) { return done.contains(it); })) {
                take_from_parts(solution);
                if (const auto here = found.find(solution); here != found.end())
                    for (const auto& encounter : *here->second)
                        if (met_[solution].insert(encounter.meeting).second) meets_in(solution, encounter);
                done.insert(solution);
            }
        }
    }

    void take_from_parts(Id solution) {
        for (const auto& part : parts_of(model_.sections[solution])) {
            const auto met = met_.find(part.solution);
            if (met != met_.end()) met_[solution].insert(met->second.begin(), met->second.end());
        }
    }

    [[nodiscard]] Met met_in(Id solution) const {
        const auto met = met_.find(solution);
        return met == met_.end() ? Met{} : met->second;
    }

    void meets_in(Id id, const Encounter& encounter) {
        const auto& [meeting, met, place, litres] = encounter;
        const auto what = met + gas_words(litres);
        const auto& section = model_.sections[id];
        const auto* accepted = acceptance(section.accepts, meeting);
        if (accepted == nullptr && section.recipe != none)
            accepted = acceptance(model_.recipes[section.recipe].accepts, meeting);
        if (accepted != nullptr) {
            accepted_.push_back({.meeting = meeting, .section = id, .what = what, .reason = accepted->reason});
            return;
        }
        const auto& it = model_.meetings[meeting];
        const auto kind = it.danger == Danger::lethal ? Kind::lethal_meeting : Kind::harmful_meeting;
        report(kind, place, {what, it.comes, how_to_mend(it), it.name});
    }

    static std::string gas_words(double litres) {
        return litres < least_litres ? "" : ", with about " + quantity::significant_text(litres, 2) + " l of gas";
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

    [[nodiscard]] std::size_t variants_of_both(const Stage& before, const Stage& next) const {
        return std::max(variants_of(model_, model_.sections[before.solution]),
                        variants_of(model_, model_.sections[next.solution]));
    }

    void judge_pair(Id process, const Stage& before, const Stage& next) {
        const auto variants = variants_of_both(before, next);
        auto met = met_in(before.solution);
        met.merge(met_in(next.solution));
        for (std::size_t variant = 0; variant < variants; ++variant) {
            const auto carried_in = table(model_, tables_, variant).of(before.solution);
            const auto there = table(model_, tables_, variant).of(next.solution);
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
                                                        const std::vector<Content>& next, const Stage& stage,
                                                        Certainty certainty = Certainty::by_value) const {
        auto both = before;
        both.insert(both.end(), next.begin(), next.end());
        if (!encounters_.possible(meeting, both)) return std::nullopt;
        for (const double share : shares_of_next) {
            if (meeting.danger != Danger::lethal && share != shares_of_next.back()) continue;
            Moment mix;
            if (stage.celsius) mix.celsius = stage.celsius->high.to_double();
            for (auto content : before) mix.contents.push_back(thinned(content, 1 - share));
            for (auto content : next) mix.contents.push_back(thinned(content, share));
            if (auto what = encounters_.find(meeting, mix, certainty)) return what;
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
            accepted_.push_back({.meeting = meeting,
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
        for (const Id id : group_.sections) report_idle(model_.sections[id].accepts, std::span(&id, 1));
        for (const Id id : group_.recipes)
            report_idle(model_.recipes[id].accepts, std::span(model_.recipes[id].sections));
        for (const Id id : group_.processes) {
            const auto& process = model_.processes[id];
            report_idle(process.accepts, [&](Id meeting) { return may_carry_over(process, meeting); });
        }
    }
    void report_idle(const std::vector<Acceptance>& all, std::span<const Id> solutions) {
        if (all.empty()) return;
        if (std::ranges::all_of(solutions, [&](Id id) { return is_whole(model_.sections[id]); }))
            report_idle(all, [&](Id meeting) {
                return std::ranges::any_of(solutions, [&](Id id) { return may_meet(model_.sections[id], meeting); });
            });
    }
    template <class InDoubt>
    void report_idle(const std::vector<Acceptance>& all, const InDoubt& in_doubt) {
        for (const auto& acceptance : all)
            if (!used_.contains({&all, acceptance.meeting}) && !in_doubt(acceptance.meeting))
                report(Kind::nothing_to_accept, acceptance.place, {model_.meetings[acceptance.meeting].name});
    }

    /// Where an end of the pH's range is past the limit, though its value is not.
    [[nodiscard]] bool may_meet(const Section& section, Id meeting) {
        bool may = false;
        const auto& it = model_.meetings[meeting];
        const MomentViewer viewer{
            [&](std::span<const Content> contents) { return !may && encounters_.possible(it, contents); },
            [&](const Moment& mix, const Place&) { may = may || encounters_.find(it, mix, Certainty::by_range); }};
        for (std::size_t variant = 0; variant < variants_of(model_, section); ++variant)
            each_moment(model_, section, variant, table(model_, tables_, variant), viewer);
        return may;
    }
    [[nodiscard]] bool may_carry_over(const Process& process, Id meeting) {
        for (std::size_t i = 1; i < process.stages.size(); ++i) {
            const auto& before = process.stages[i - 1];
            const auto& next = process.stages[i];
            if (before.solution != none && next.solution != none && may_carry_over(before, next, meeting)) return true;
        }
        return false;
    }
    [[nodiscard]] bool may_carry_over(const Stage& before, const Stage& next, Id meeting) {
        for (std::size_t variant = 0; variant < variants_of_both(before, next); ++variant) {
            const auto carried_in = table(model_, tables_, variant).of(before.solution);
            const auto there = table(model_, tables_, variant).of(next.solution);
            if (carry_over(model_.meetings[meeting], carried_in.contents, there.contents, next, Certainty::by_range))
                return true;
        }
        return false;
    }

    void report(Kind kind, const Place& place, std::initializer_list<std::string_view> arguments) {
        out_.push_back(diagnostics::make(kind, place.file, place.span, arguments));
    }

    const Model& model_;
    const Encounters& encounters_;
    const Group& group_;
    std::vector<ContentsTable>& tables_;
    std::vector<diagnostics::Diagnostic>& out_;
    std::vector<Accepted> accepted_;
    std::map<Id, Met> met_;  ///< by section: what meets in it or in its parts
    std::set<std::pair<const std::vector<Acceptance>*, Id>> used_;
};

}  // namespace

std::vector<Encounter> encounters_in(const Model& model, const Encounters& encounters, Id section,
                                     std::vector<ContentsTable>& tables) {
    const auto& solution = model.sections[section];
    if (solution.kind == SectionKind::conversion || !is_whole(solution)) return {};
    return Search(model, encounters, solution, tables).run();
}

std::vector<Accepted> judge_meetings(const Model& model, const Encounters& encounters, const Group& group,
                                     const std::vector<std::vector<Encounter>>& found,
                                     std::vector<ContentsTable>& tables, std::vector<diagnostics::Diagnostic>& out) {
    return Judge(model, encounters, group, tables, out).run(found);
}

}  // namespace scruple::check
