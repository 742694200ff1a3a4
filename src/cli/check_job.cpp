// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "jobs.hpp"
#include "present.hpp"
#include "scruple/diagnostics/show.hpp"
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

}  // namespace

Outcome check_job(const Call& call) {
    if (!call.words.empty()) {
        throw Stop{Exit::wrong_call,
                   fmt::format("`scruple check` reads a whole folder; for another one write `--in {}`", call.name())};
    }
    const As as = call.as();
    const driver::Loaded loaded = open_workspace(call);
    Outcome outcome;
    if (diagnostics::any_error(loaded.checked.diagnostics)) outcome.status = Exit::faults;
    if (as == As::json) {
        outcome.text = diagnostics::as_json(loaded.checked.diagnostics, loaded.sources);
    } else if (as == As::html) {
        outcome.text = page("Scruple: check", as_text(loaded, false));
    } else {
        outcome.text = as_text(loaded, !call.has("--out") && wants_colour(Stream::out));
    }
    return outcome;
}

}  // namespace scruple::cli
