// SPDX-License-Identifier: MIT
#include "workspace.hpp"

#include <algorithm>
#include <deque>

#include "scruple/diagnostics/show.hpp"
#include "terminal.hpp"

namespace scruple::cli {

driver::Loaded& open_workspace(const Call& call, const Asked& asked, driver::Load how) {
    auto loaded = driver::load(call.value("--in").value_or("."), asked.sources(), how);
    if (const auto* trouble = std::get_if<driver::Trouble>(&loaded)) throw Stop{Exit::trouble, trouble->message};
    // Never let go: the system takes a process's memory back at once, and taking a model apart costs more than a card.
    static auto& all = *new std::deque<driver::Loaded>;
    return all.emplace_back(std::move(std::get<driver::Loaded>(loaded)));
}

driver::Loaded& open_for_the_bench(const Call& call, const Asked& asked) {
    driver::Loaded& loaded = open_workspace(call, asked);
    std::vector<diagnostics::Diagnostic> errors;
    for (const diagnostics::Diagnostic& d : loaded.checked.diagnostics)
        if (d.file < loaded.asked && diagnostics::info(d.kind).severity == diagnostics::Severity::error)
            errors.push_back(d);
    if (!errors.empty()) {
        const std::string shown = diagnostics::as_text(errors, loaded.sources, {.colour = wants_colour(Stream::aside)});
        throw Stop{Exit::faults, shown + "Nothing is worked out for the bench until this is put right."};
    }
    settle_asked(loaded);
    return loaded;
}

}  // namespace scruple::cli
