// SPDX-License-Identifier: MIT
#include "ingredients_of.hpp"

#include <algorithm>
#include <unordered_map>

namespace scruple::check {

std::vector<Part> parts_of(const Section& section) {
    std::vector<Part> parts;
    for (const auto& line : section.lines) {
        const auto* addition = std::get_if<Addition>(&line);
        if (addition != nullptr && addition->solution != none) parts.push_back({addition->solution, addition});
    }
    return parts;
}

namespace {

/// One section on the way down, and how many of its parts have been followed.
struct Frame {
    Id section;
    std::vector<Part> parts;
    std::size_t next = 0;
};

}  // namespace

std::vector<Id> made_of(const Model& model, Id section) {
    std::vector<Id> order;
    std::unordered_map<Id, bool> seen{{section, true}};
    std::vector<Frame> way{{section, parts_of(model.sections[section])}};
    while (!way.empty()) {
        auto& frame = way.back();
        if (frame.next == frame.parts.size()) {
            order.push_back(frame.section);
            way.pop_back();
            continue;
        }
        const Id part = frame.parts[frame.next++].solution;
        if (seen.emplace(part, true).second) way.push_back({part, parts_of(model.sections[part])});
    }
    return order;
}

std::vector<Id> circle_from(const Model& model, Id section) {
    std::unordered_map<Id, Id> from;
    std::vector<Id> queue{section};
    for (std::size_t i = 0; i < queue.size(); ++i) {
        for (const auto& part : parts_of(model.sections[queue[i]])) {
            if (part.solution == section) {
                std::vector<Id> circle;
                for (Id at = queue[i]; at != section; at = from[at]) circle.push_back(at);
                circle.push_back(section);
                std::ranges::reverse(circle);
                return circle;
            }
            if (from.emplace(part.solution, queue[i]).second) queue.push_back(part.solution);
        }
    }
    return {};
}

std::vector<bool> on_a_circle(const Model& model) {
    // What is left when every section whose parts are all done has been taken away, and then
    // every section that nothing left takes: the circles, and what lies between two of them.
    const auto count = model.sections.size();
    std::vector<std::vector<Id>> taken_by(count);
    std::vector<std::size_t> open_parts(count), open_takers(count);
    for (Id id = 0; id < count; ++id) {
        for (const auto& part : parts_of(model.sections[id])) {
            taken_by[part.solution].push_back(id);
            ++open_parts[id];
            ++open_takers[part.solution];
        }
    }
    std::vector<bool> left(count, true);
    const auto strip = [&](std::vector<std::size_t>& open, auto neighbours) {
        std::vector<Id> ready;
        for (Id id = 0; id < count; ++id) {
            if (left[id] && open[id] == 0) ready.push_back(id);
        }
        while (!ready.empty()) {
            const Id id = ready.back();
            ready.pop_back();
            left[id] = false;
            neighbours(id, [&](Id next) {
                if (--open[next] == 0 && left[next]) ready.push_back(next);
            });
        }
    };
    strip(open_parts, [&](Id id, auto visit) {
        for (const Id taker : taken_by[id]) visit(taker);
    });
    strip(open_takers, [&](Id id, auto visit) {
        for (const auto& part : parts_of(model.sections[id])) visit(part.solution);
    });
    return left;
}

}  // namespace scruple::check
