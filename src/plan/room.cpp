// SPDX-License-Identifier: MIT
#include "room.hpp"

#include "script.hpp"
#include "scruple/check/contents.hpp"

namespace scruple::plan {

using check::Addition;
using check::Exact;
using check::Model;
using check::Section;
using check::VesselMove;

Exact room_of_lines(const Model& model, const Section& section, std::size_t variant) {
    Exact room;
    for (const check::Line& line : section.lines) {
        const auto* addition = std::get_if<Addition>(&line);
        if (addition == nullptr || addition->how == Addition::How::to_make || addition->how == Addition::How::unknown ||
            addition->how == Addition::How::the_rest || addition->optional || addition->shares.empty())
            continue;
        if (addition->chemical == check::none && addition->solution == check::none) continue;
        room += check::dose_of(model, *addition, share_for(*addition, variant)).room_ml;
    }
    return room;
}

std::optional<Exact> mark_after(const Section& section, std::size_t line, std::size_t variant) {
    std::optional<Exact> mark;
    bool apart = false;
    for (std::size_t i = 0; i < section.lines.size(); ++i) {
        if (const auto* move = std::get_if<VesselMove>(&section.lines[i]))
            apart = move->what == VesselMove::What::apart;
        const auto* addition = std::get_if<Addition>(&section.lines[i]);
        if (addition != nullptr && addition->how == Addition::How::to_make && !apart && i > line)
            mark = share_for(*addition, variant);
    }
    return mark;
}

}  // namespace scruple::plan
