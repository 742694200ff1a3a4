// SPDX-License-Identifier: MIT
// The cards and labels of whatever solutions a text has, drawn.
#include "scruple/paper/paper.hpp"

#include <chrono>
#include <cstdint>
#include <filesystem>
#include <iterator>
#include <thread>

#include "demand.hpp"
#include "solutions.hpp"

using namespace scruple;

namespace {

constexpr paper::Printing sheets{paper::Medium::pdf, paper::a5, {}};
constexpr paper::Printing picture{paper::Medium::svg, paper::a4, {}};

void draw(const plan::Card& card) {
    const std::string pdf = paper::cards({&card, 1}, sheets), svg = paper::cards({&card, 1}, picture);
    fuzz::demand(pdf.starts_with("%PDF-") && pdf.ends_with("%%EOF\n"), "a document is whole");
    fuzz::demand(svg.find("<svg") != std::string::npos && svg.ends_with("</svg>\n"), "a picture is whole");
}

void draw(const plan::Label& label) {
    const auto drawn = paper::labels({&label, 1}, {}, picture);
    if (const auto* misfit = std::get_if<paper::Misfit>(&drawn))
        fuzz::demand(misfit->height_mm > paper::LabelGrid{}.height_mm, "a larger label would do", misfit->name);
}

std::ptrdiff_t threads() {
    return std::distance(std::filesystem::directory_iterator("/proc/self/task"), {});
}

/// Pango looks for fonts in threads that end a little after the fonts have been let go. What one holds while it ends
/// would be taken for lost.
void wait_for_all_threads_beyond(std::ptrdiff_t these) {
    while (threads() > these) std::this_thread::sleep_for(std::chrono::milliseconds(1));
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    fuzz::Workspace& workspace = fuzz::workspace();
    if (!workspace.take_what_is_right({data, data + size})) return 0;
    const check::Model& model = workspace.model();
    const auto before = threads();
    for (const plan::CardRequest& request : fuzz::requests(model, size)) {
        draw(plan::label_of(model, {request.section, request.variant, {}, request.mixed_on}));
        const auto made = plan::make_card(model, request);
        if (const auto* card = std::get_if<plan::Card>(&made)) draw(*card);
    }
    wait_for_all_threads_beyond(before);
    return 0;
}
