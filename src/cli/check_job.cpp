// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "jobs.hpp"
#include "scruple/diagnostics/show.hpp"
#include "scruple/emit/emit.hpp"
#include "terminal.hpp"
#include "workspace.hpp"

namespace scruple::cli {
namespace {

std::string counted(std::size_t count, std::string_view one, std::string_view several) {
    return fmt::format("{} {}", count, count == 1 ? one : several);
}

std::size_t checked(const driver::Loaded& loaded) {
    return loaded.sources.size() - loaded.built_in;
}

std::string nothing_wrong(const driver::Loaded& loaded) {
    const std::string recipes = counted(loaded.checked.model.recipes.size(), "recipe", "recipes");
    const std::string files = counted(checked(loaded), "file", "files");
    return fmt::format("{} in {}: nothing to say against them\n", recipes, files);
}

std::string as_text(const driver::Loaded& loaded, bool colour) {
    if (loaded.checked.diagnostics.empty()) return nothing_wrong(loaded);
    return diagnostics::as_text(loaded.checked.diagnostics, loaded.sources,
                                {.colour = colour, .checked = checked(loaded)});
}

/// The forms that forges and build servers read.
enum class Report : std::uint8_t { none, sarif, junit };

Report report_of(const Call& call) {
    const auto format = call.value("--as");
    return format == "sarif" ? Report::sarif : format == "junit" ? Report::junit : Report::none;
}

std::string reported(Report report, const driver::Loaded& loaded) {
    const auto& found = loaded.checked.diagnostics;
    return report == Report::sarif ? diagnostics::as_sarif(found, loaded.sources, SCRUPLE_VERSION)
                                   : diagnostics::as_junit(found, loaded.sources, loaded.built_in);
}

}  // namespace

Outcome check_job(const Call& call) {
    if (!call.words.empty()) {
        throw Stop{Exit::wrong_call,
                   fmt::format("`scruple check` reads a whole folder; for another one write `--in {}`", call.name())};
    }
    const Report report = report_of(call);
    const As as = report == Report::none ? call.as() : As::text;
    const driver::Loaded& loaded = open_workspace(call, {}, driver::Load::in_passing);
    Outcome outcome;
    if (diagnostics::any_error(loaded.checked.diagnostics)) outcome.status = Exit::faults;
    if (report != Report::none) {
        outcome.text = reported(report, loaded);
    } else if (as == As::json) {
        outcome.text = diagnostics::as_json(loaded.checked.diagnostics, loaded.sources);
    } else if (as == As::html) {
        outcome.text = emit::plain_html("Scruple: check", as_text(loaded, false));
    } else {
        outcome.text = as_text(loaded, !call.has("--out") && wants_colour(Stream::out));
    }
    return outcome;
}

}  // namespace scruple::cli
