// SPDX-License-Identifier: MIT
#include "solution.hpp"

#include <fmt/format.h>

namespace scruple::server {

using check::Addition;
using check::Model;
using check::Section;

std::optional<LineOf> line_at(const Model& model, text::FileId file, std::uint32_t statement) {
    for (check::Id id = 0; id < model.sections.size(); ++id) {
        if (model.sections[id].place.file != file) continue;
        const auto& lines = model.sections[id].lines;
        for (std::uint32_t i = 0; i < lines.size(); ++i)
            if (std::visit([&](const auto& line) { return line.place.statement == statement; }, lines[i]))
                return LineOf{id, i};
    }
    return std::nullopt;
}

std::string moles_of(const Model& model, const Addition& addition) {
    const bool known = addition.how == Addition::How::exactly || addition.how == Addition::How::part_now ||
                       addition.how == Addition::How::about;
    if (!known || addition.chemical == check::none || addition.chemical == model.water || addition.parts ||
        addition.shares.size() != 1)
        return {};
    const double mol = check::dose(model, addition, 0).mol;
    return mol > 0 ? quantity::significant_text(mol, 4) + " mol" : "";
}

namespace {

/// Of a divided weighing, only what has gone in yet.
bool as_gone_in(Addition& addition) {
    if (addition.how == Addition::How::the_rest || addition.how == Addition::How::unknown) return false;
    if (addition.how != Addition::How::part_now) return true;
    if (!addition.now) return false;
    addition.how = Addition::How::exactly;
    addition.shares = {*addition.now};
    return true;
}

bool has_the_rest(const Section& section) {
    for (const check::Line& line : section.lines)
        if (const auto* addition = std::get_if<Addition>(&line); addition && addition->how == Addition::How::the_rest)
            return true;
    return false;
}

}  // namespace

std::optional<Section> so_far(const Model& model, const LineOf& at) {
    const Section& whole = model.sections[at.section];
    if (whole.by_parts || whole.broken) return std::nullopt;
    const auto filling = check::fill(model, whole, 0);
    if (at.line >= filling.after.size()) return std::nullopt;
    Section some = whole;
    some.lines.resize(at.line + 1);
    if (!has_the_rest(some))
        std::erase_if(some.lines, [](check::Line& line) {
            auto* addition = std::get_if<Addition>(&line);
            return addition != nullptr && !as_gone_in(*addition);
        });
    some.makes_ml = filling.after[at.line].with_room_ml;
    some.makes_stated = false;
    if (some.makes_ml <= check::Exact(0)) return std::nullopt;
    return some;
}

std::string ph_words(const Model& model, const std::vector<check::Content>& contents) {
    const auto found = check::ph_of(model, contents, check::usual_celsius);
    if (const auto* none = std::get_if<check::NoPh>(&found)) return "no pH: " + none->why;
    const auto& ph = std::get<check::Ph>(found);
    return fmt::format("pH {} ({} to {}) at 20 °C", check::shown(ph.value, ph), check::shown(ph.low, ph),
                       check::shown(ph.high, ph));
}

}  // namespace scruple::server
