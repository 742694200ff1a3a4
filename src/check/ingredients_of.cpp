// SPDX-License-Identifier: MIT
#include "ingredients_of.hpp"

#include <algorithm>
#include <unordered_map>
#include <unordered_set>

namespace scruple::check {

namespace {

const Addition* taking_solution(const Line& line) {
    const auto* addition = std::get_if<Addition>(&line);
    return addition != nullptr && addition->solution != none ? addition : nullptr;
}

}  // namespace

std::vector<Part> parts_of(const Section& section) {
    std::vector<Part> parts;
    if (!section.takes_solutions) return parts;
    for (const auto& line : section.lines) {
        if (const auto* addition = taking_solution(line)) parts.push_back({addition->solution, addition});
    }
    return parts;
}

bool any_line_takes_solution(const Section& section) {
    return std::ranges::any_of(section.lines, [](const Line& line) { return taking_solution(line) != nullptr; });
}

namespace {

/// One section on the way down, and how many of its parts have been followed.
struct Frame {
    Id section;
    std::vector<Part> parts;
    std::size_t next = 0;
};

/// Tarjan's strongly connected components (SIAM J. Comput. 1 (1972) 146), with a stack of its own instead of recursion.
class Knots {
  public:
    explicit Knots(const Model& model) : model_(model) {}

    std::vector<std::vector<Id>> run(const std::vector<Id>& sections) {
        for (const Id id : sections) {
            if (may_go_round(id) && !seen_.contains(id)) explore(id);
        }
        return std::move(knots_);
    }

  private:
    struct Seen {
        Id index, lowest;
        bool on_stack;
    };

    /// Few solutions are made of what is made of solutions itself.
    [[nodiscard]] bool may_go_round(Id id) const {
        const auto& section = model_.sections[id];
        return section.takes_solutions && std::ranges::any_of(section.lines, [this](const Line& line) {
                   const auto* addition = taking_solution(line);
                   return addition != nullptr && model_.sections[addition->solution].takes_solutions;
               });
    }

    void explore(Id start) {
        enter(start);
        while (!way_.empty()) {
            auto& frame = way_.back();
            if (frame.next == frame.parts.size()) {
                leave(frame.section);
                continue;
            }
            const Id part = frame.parts[frame.next++].solution;
            if (!model_.sections[part].takes_solutions) continue;
            const auto known = seen_.find(part);
            if (known == seen_.end()) {
                enter(part);
            } else if (known->second.on_stack) {
                lower(frame.section, known->second.index);
            }
        }
    }

    void enter(Id id) {
        const auto index = static_cast<Id>(seen_.size());
        seen_.emplace(id, Seen{index, index, true});
        stack_.push_back(id);
        way_.push_back({id, parts_of(model_.sections[id])});
    }

    void leave(Id id) {
        const bool takes_itself = std::ranges::find(way_.back().parts, id, &Part::solution) != way_.back().parts.end();
        way_.pop_back();
        const auto& [index, lowest, on_stack] = seen_.at(id);
        if (!way_.empty()) lower(way_.back().section, lowest);
        if (lowest != index) return;
        std::vector<Id> knot;
        for (Id member = none; member != id;) {
            member = stack_.back();
            stack_.pop_back();
            seen_.at(member).on_stack = false;
            knot.push_back(member);
        }
        if (knot.size() > 1 || takes_itself) knots_.push_back(std::move(knot));
    }

    void lower(Id id, Id to) {
        auto& lowest = seen_.at(id).lowest;
        lowest = std::min(lowest, to);
    }

    const Model& model_;
    std::unordered_map<Id, Seen> seen_;
    std::vector<Id> stack_;
    std::vector<Frame> way_;
    std::vector<std::vector<Id>> knots_;
};

/// The shortest way from a section back to itself inside its knot, or nothing.
std::vector<Id> way_round(const Model& model, const std::vector<Id>& knot, Id start) {
    const std::unordered_set<Id> inside(knot.begin(), knot.end());
    std::unordered_map<Id, Id> from;
    std::vector<Id> queue{start};
    for (std::size_t i = 0; i < queue.size(); ++i) {
        for (const auto& part : parts_of(model.sections[queue[i]])) {
            if (part.solution == start) {
                std::vector<Id> circle;
                for (Id at = queue[i]; at != start; at = from[at]) circle.push_back(at);
                circle.push_back(start);
                std::ranges::reverse(circle);
                return circle;
            }
            if (inside.contains(part.solution) && from.emplace(part.solution, queue[i]).second)
                queue.push_back(part.solution);
        }
    }
    return {};
}

}  // namespace

std::vector<Id> made_of(const Model& model, Id section, const std::function<bool(Id)>& done) {
    std::vector<Id> order;
    if (done(section)) return order;
    if (!model.sections[section].takes_solutions) return {section};
    std::unordered_set<Id> seen{section};
    std::vector<Frame> way{{section, parts_of(model.sections[section])}};
    while (!way.empty()) {
        auto& frame = way.back();
        if (frame.next == frame.parts.size()) {
            order.push_back(frame.section);
            way.pop_back();
            continue;
        }
        const Id part = frame.parts[frame.next++].solution;
        if (!done(part) && seen.insert(part).second) way.push_back({part, parts_of(model.sections[part])});
    }
    return order;
}

std::vector<std::vector<Id>> circles(const Model& model, const std::vector<Id>& sections) {
    std::vector<std::vector<Id>> all;
    for (const auto& knot : Knots(model).run(sections)) {
        auto circle = way_round(model, knot, *std::ranges::min_element(knot));
        if (!circle.empty()) all.push_back(std::move(circle));
    }
    return all;
}

}  // namespace scruple::check
