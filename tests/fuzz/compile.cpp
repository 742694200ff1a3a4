// SPDX-License-Identifier: MIT
// From any text to messages, the same in passing, and from what is right of it to the cards, labels and contents of its
// solutions.
#include <cstdint>

#include "demand.hpp"
#include "scruple/diagnostics/fix.hpp"
#include "scruple/diagnostics/show.hpp"
#include "scruple/emit/emit.hpp"
#include "scruple/plan/why.hpp"
#include "solutions.hpp"

using namespace scruple;
using fuzz::Loaded;

namespace {

void show_messages(const Loaded& loaded) {
    const auto& all = loaded.checked.diagnostics;
    if (!all.empty()) fuzz::demand_text("messages are text", diagnostics::as_text(all, loaded.sources));
    fuzz::demand_json("messages are JSON", diagnostics::as_json(all, loaded.sources));
    fuzz::demand_json("messages are SARIF", diagnostics::as_sarif(all, loaded.sources, "1"));
    fuzz::demand_text("messages are XML", diagnostics::as_junit(all, loaded.sources, loaded.built_in));
}

void make_fixes(const Loaded& loaded) {
    for (const diagnostics::Diagnostic& d : loaded.checked.diagnostics) {
        const text::Source& source = loaded.sources[d.file];
        for (const diagnostics::Fix& fix : diagnostics::fixes_of(d, source)) {
            fuzz::demand(fix.span.begin <= fix.span.end && fix.span.end <= source.bytes.size(), "a fix is in the text");
            std::string text = source.bytes;
            text.replace(fix.span.begin, fix.span.end - fix.span.begin, fix.text);
            fuzz::demand(text::first_invalid_byte(text) == std::string::npos, "a fix leaves text", text);
            static_cast<void>(diagnostics::words_of(fix, source));
        }
    }
}

void print_card(const Loaded& loaded, const plan::CardRequest& request) {
    auto made = plan::make_card(loaded.checked.model, request);
    auto* card = std::get_if<plan::Card>(&made);
    if (card == nullptr) return;
    card->warnings = driver::warnings_for(loaded, request.section);
    card->notes = driver::notes_for(loaded, request.section);
    fuzz::demand_text("a card is text", emit::card_text(*card, {80}));
    fuzz::demand_text("a narrow card is text", emit::card_text(*card, {40}));
    fuzz::demand_page("a card is a page", emit::card_html({card, 1}));
    fuzz::demand_json("a card is JSON", emit::card_json({card, 1}));
}

void print_contents(const check::Model& model, const plan::CardRequest& request) {
    const auto made = plan::contents_sheet(model, request);
    const auto* sheet = std::get_if<plan::ContentsSheet>(&made);
    if (sheet == nullptr) return;
    fuzz::demand_text("contents are text", emit::contents_text({sheet, 1}, {80}));
    fuzz::demand_page("contents are a page", emit::contents_html({sheet, 1}));
    fuzz::demand_json("contents are JSON", emit::contents_json({sheet, 1}));
}

void print_label(const Loaded& loaded, const plan::CardRequest& request) {
    plan::LabelRequest wanted{request.section, request.variant, {}, request.mixed_on};
    wanted.digest = driver::digest_of(loaded, loaded.checked.model.sections[request.section].recipe);
    const plan::Label label = plan::label_of(loaded.checked.model, wanted);
    fuzz::demand_text("a label is text", emit::labels_text({&label, 1}, {80}));
    fuzz::demand_page("a label is a page", emit::labels_html({&label, 1}));
    fuzz::demand_json("a label is JSON", emit::labels_json({&label, 1}));
}

/// Where the figures of everything that stands in the solution come from.
void print_why(const check::Model& model, const plan::CardRequest& request) {
    for (const check::Line& line : model.sections[request.section].lines) {
        const auto* addition = std::get_if<check::Addition>(&line);
        if (addition == nullptr || addition->chemical == check::none) continue;
        const auto found = plan::why(model, request, addition->chemical);
        const auto* whys = std::get_if<std::vector<plan::Why>>(&found);
        if (whys == nullptr) continue;
        fuzz::demand_text("why is text", emit::why_text(*whys, {80}));
        fuzz::demand_page("why is a page", emit::why_html(*whys));
        fuzz::demand_json("why is JSON", emit::why_json(*whys));
        return;
    }
}

void print_chemicals(const check::Model& model) {
    for (const check::Chemical& chemical : model.chemicals) {
        if (chemical.built_in) continue;
        fuzz::demand_text("a chemical is text", emit::chemical_text(chemical, {80}));
        fuzz::demand_page("a chemical is a page", emit::chemical_html(chemical));
        fuzz::demand_json("a chemical is JSON", emit::chemical_json(chemical));
    }
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    fuzz::Workspace& workspace = fuzz::workspace();
    const Loaded& loaded = workspace.loaded();
    workspace.take({data, data + size});
    show_messages(loaded);
    make_fixes(loaded);
    fuzz::demand(workspace.is_same_in_passing(), "in passing the same is found");
    if (!workspace.take_what_is_right({data, data + size})) return 0;
    print_chemicals(loaded.checked.model);
    for (const plan::CardRequest& request : fuzz::requests(loaded.checked.model, size)) {
        workspace.model().dropper = request.bench;
        print_card(loaded, request);
        print_contents(loaded.checked.model, request);
        print_label(loaded, request);
        print_why(loaded.checked.model, request);
    }
    return 0;
}
