// SPDX-License-Identifier: MIT
#include "jobs.hpp"
#include "reaction.hpp"
#include "scruple/emit/emit.hpp"
#include "terminal.hpp"
#include "workspace.hpp"

namespace scruple::cli {

Outcome react_job(const Call& call) {
    const As as = call.as();
    const TypedReaction typed(call.name(), call.value("--with"));
    const driver::Loaded& loaded = open_for_the_bench(call, typed.asked());
    auto made = plan::react(loaded.checked.model, typed.reaction(loaded), typed.taken(loaded));
    if (const auto* refusal = std::get_if<plan::Refusal>(&made)) throw Stop{Exit::wrong_call, refusal->message};
    const auto& reacted = std::get<plan::Reacted>(made);
    switch (as) {
        case As::text:
            return {Exit::fine, emit::react_text(reacted, {width_of(Stream::out)}), {}};
        case As::html:
            return {Exit::fine, emit::react_html(reacted), {}};
        case As::json:
            return {Exit::fine, emit::react_json(reacted), {}};
    }
    return {};
}

}  // namespace scruple::cli
