// SPDX-License-Identifier: MIT
// Whether what goes in fits: line by line, with the room of solids, and against the parts it is made of.
#include <algorithm>

#include "ingredients_of.hpp"
#include "passes.hpp"
#include "scruple/check/volumes.hpp"

namespace scruple::check {
namespace {

using diagnostics::Kind;

std::string ml_text(const Exact& ml) {
    return ml >= Exact(10000) ? quantity::significant_text(ml / 1000, 5) + " l"
                              : quantity::significant_text(ml, 5) + " ml";
}

/// Three digits: a sum with an estimate in it is no better.
std::string about_ml(const Exact& ml) {
    return quantity::significant_text(ml, 3) + " ml";
}

std::string name_of(const Model& model, const Addition& addition) {
    if (addition.solution != none) return shown_name(model, addition.solution);
    return shown_name(model.chemicals[addition.chemical], addition.form);
}

class VolumeJudge {
  public:
    VolumeJudge(Reader& reader, Id id) : reader_(reader), id_(id), section_(reader.model.sections[id]) {}

    void run() {
        const auto first = fill(reader_.model, section_, 0);
        if (!section_.broken) judge_pouring(first);
        if (section_.kind == SectionKind::conversion) return;
        if (section_.lines.empty() || section_.by_parts) {
            judge_parts();
            return;
        }
        if (!reported_) judge(first);
        const auto variants = variants_of(reader_.model, section_);
        for (std::size_t variant = 1; variant < variants && !reported_; ++variant)
            judge(fill(reader_.model, section_, variant));
        if (!section_.broken) judge_order();
        judge_parts();
    }

  private:
    void judge(const Filling& filling) {
        if (filling.made_up_at == none) {
            if (section_.broken || unknown_volume()) return;
            const auto name = shown_name(reader_.model, id_);
            reader_.report(Kind::volume_not_stated, section_.place.span, {name, about_ml(filling.made_ml)});
            reported_ = true;
            return;
        }
        judge_room(filling);
        judge_afterwards(filling);
    }

    void judge_pouring(const Filling& filling) {
        if (filling.poured_out_at == none) return;
        const auto& move = std::get<VesselMove>(section_.lines[filling.poured_out_at]);
        report_at(filling.poured_out_at, Kind::poured_out, {move.vessel});
    }

    /// Before the mark, liquids may not pass it; with the solids' room they should not.
    void judge_room(const Filling& filling) {
        for (std::uint32_t i = 0; i < filling.made_up_at; ++i) {
            if (filling.after[i].liquid_ml <= filling.made_ml) continue;
            report_at(i, Kind::more_than_fits, {ml_text(filling.after[i].liquid_ml), ml_text(filling.made_ml)});
            return;
        }
        if (filling.made_up_at == 0) return;
        const auto& before = filling.after[filling.made_up_at - 1];
        if (before.with_room_ml <= filling.made_ml) return;
        report_at(filling.made_up_at, Kind::solids_leave_no_room,
                  {about_ml(before.with_room_ml), ml_text(filling.made_ml)});
    }

    void judge_afterwards(const Filling& filling) {
        for (auto i = filling.made_up_at + 1; i < section_.lines.size(); ++i) {
            const auto* addition = std::get_if<Addition>(&section_.lines[i]);
            const bool liquid = filling.after[i].liquid_ml > filling.after[i - 1].liquid_ml;
            if (addition == nullptr || !liquid || addition->how == Addition::How::about) continue;
            report_at(i, Kind::added_after_make_up, {name_of(reader_.model, *addition), ml_text(filling.made_ml)});
            return;
        }
    }

    [[nodiscard]] bool unknown_volume() const {
        return std::ranges::none_of(section_.lines,
                                    [](const Line& line) { return std::holds_alternative<Addition>(line); });
    }

    /// The first thing in a vessel should be a liquid.
    void judge_order() {
        for (std::uint32_t i = 0; i < section_.lines.size(); ++i) {
            const auto* addition = std::get_if<Addition>(&section_.lines[i]);
            if (addition == nullptr) {
                if (std::holds_alternative<VesselMove>(section_.lines[i])) return;
                continue;
            }
            const bool solid = addition->chemical != none && addition->shares.size() == 1 &&
                               dose_of(reader_.model, *addition, addition->shares.front()).room_estimated;
            if (solid) report_at(i, Kind::nothing_to_dissolve_in, {name_of(reader_.model, *addition)});
            return;
        }
    }

    /// A part's own batch should suffice for what is taken of it here.
    void judge_parts() {
        for (const auto& part : parts_of(section_)) {
            const auto& other = reader_.model.sections[part.solution];
            const bool comparable =
                other.recipe == section_.recipe && !other.by_parts && !section_.by_parts && !other.broken;
            if (!comparable || part.addition->shares.empty()) continue;
            const auto made = made_ml(reader_.model, other, 0);
            const auto& taken = part.addition->shares.front();
            if (made.is_zero() || taken <= made) continue;
            reader_.report(Kind::part_too_small, part.addition->place.span,
                           {shown_name(reader_.model, part.solution), ml_text(made), ml_text(taken)});
        }
    }

    void report_at(std::uint32_t line, Kind kind, std::initializer_list<std::string_view> arguments) {
        const auto place = std::visit([](const auto& l) { return l.place; }, section_.lines[line]);
        reader_.report(kind, place.span, arguments);
        reported_ = true;
    }

    Reader& reader_;
    Id id_;
    const Section& section_;
    bool reported_ = false;  ///< one variant's fault is mostly every variant's
};

}  // namespace

void judge_volumes(Reader& reader, Id section) {
    VolumeJudge(reader, section).run();
}

void judge_circles(const Model& model, const std::vector<Id>& sections, std::vector<diagnostics::Diagnostic>& out) {
    for (const auto& circle : circles(model, sections)) {
        const auto first = shown_name(model, circle.front());
        std::string way = first;
        for (std::size_t i = 1; i < circle.size() && i < 5; ++i) way += " takes " + shown_name(model, circle[i]);
        way += circle.size() > 5 ? " takes … " + first : " takes " + first;
        const auto& place = model.sections[circle.front()].place;
        out.push_back(diagnostics::make(Kind::contains_itself, place.file, place.span, {first, way}));
    }
}

}  // namespace scruple::check
