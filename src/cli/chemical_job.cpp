// SPDX-License-Identifier: MIT
#include "jobs.hpp"
#include "names.hpp"
#include "scruple/emit/emit.hpp"
#include "terminal.hpp"
#include "workspace.hpp"

namespace scruple::cli {

Outcome chemical_job(const Call& call) {
    const As as = call.as();
    const driver::Loaded& loaded = open_workspace(call);
    const check::Chemical& chemical = loaded.checked.model.chemicals[find_chemical(loaded, call.name())];
    switch (as) {
        case As::text:
            return {Exit::fine, emit::chemical_text(chemical, {width_of(Stream::out)}), {}};
        case As::html:
            return {Exit::fine, emit::chemical_html(chemical), {}};
        case As::json:
            return {Exit::fine, emit::chemical_json(chemical), {}};
    }
    return {};
}

}  // namespace scruple::cli
