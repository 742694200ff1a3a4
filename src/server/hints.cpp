// SPDX-License-Identifier: MIT
// What stands behind a line without being written: moles, and how full the vessel is then.
#include "requests.hpp"
#include "solution.hpp"

namespace scruple::server {
namespace {

using check::Model;

class Hints {
  public:
    Hints(const Model& model, const Asked& about, text::Span wanted) : model_(model), about_(about), wanted_(wanted) {}

    Json in(text::FileId file) {
        for (const check::Section& section : model_.sections)
            if (section.place.file == file && !section.by_parts && !section.broken) add(section);
        return std::move(all_);
    }

  private:
    void add(const check::Section& section) {
        const auto filling = check::fill(model_, section, 0);
        for (std::size_t i = 0; i < section.lines.size(); ++i) {
            const auto* addition = std::get_if<check::Addition>(&section.lines[i]);
            if (addition == nullptr) continue;
            std::string label = moles_of(model_, *addition);
            const bool known = i < filling.after.size() && addition->how != check::Addition::How::to_make;
            if (known && filling.after[i].with_room_ml > check::Exact(0))
                label += (label.empty() ? "" : ", ") +
                         ("now " + quantity::significant_text(filling.after[i].with_room_ml, 3) + " ml");
            put(addition->place.statement, label);
        }
    }

    void put(std::uint32_t statement, const std::string& label) {
        const auto& statements = about_.file->tree->statements;
        if (label.empty() || statement >= statements.size()) return;
        const std::uint32_t end = statements[statement].span.end;
        if (end < wanted_.begin || end > wanted_.end) return;
        all_.push_back(
            {{"position", to_json(about_.positions.position(end))}, {"label", label}, {"paddingLeft", true}});
    }

    const Model& model_;
    const Asked& about_;
    text::Span wanted_;
    Json all_ = Json::array();
};

}  // namespace

Json inlay_hints(Workspace& workspace, const Json& params) {
    workspace.settle();
    const Asked about = asked(workspace, params);
    View& view = workspace.view_of(about.number);
    return Hints(view.model(), about, about.positions.span(range_of(params.at("range"))))
        .in(view.source_of(about.number));
}

}  // namespace scruple::server
