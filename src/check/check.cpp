// SPDX-License-Identifier: MIT
#include "scruple/check/check.hpp"

#include "checker.hpp"
#include "scruple/check/packed.hpp"

namespace scruple::check {

Checked check(const Workspace& workspace, unsigned workers) {
    return Checker(workspace, workers).run();
}

Checked check_behind(Model library, const Workspace& workspace, unsigned workers) {
    return Checker(workspace, workers, {std::move(library), {}}).run();
}

bool declares_a_chemical(const Workspace& workspace) {
    for (std::size_t file = workspace.built_in; file < workspace.trees.size(); ++file) {
        const auto& tree = *workspace.trees[file];
        for (const auto heading : tree.headings)
            if (std::get<syntax::Heading>(tree.statements[heading].node).block == syntax::Block::chemical) return true;
    }
    return false;
}

// ---- again and again ----

namespace {

template <class T>
void cut(std::vector<T>& all, std::size_t count) {
    all.erase(all.begin() + static_cast<std::ptrdiff_t>(count), all.end());
}

}  // namespace

Rechecker::Rechecker(const Workspace& library) : checked_(check::check(library, 1)) {
    const Model& model = checked_.model;
    sections_ = model.sections.size();
    conversions_ = model.conversions.size();
    formats_ = model.formats;
    meetings_ = model.meetings;
    section_names_ = model.section_names;
    format_names_ = model.format_names;
    meeting_names_ = model.meeting_names;
}

/// Chemicals, and what they are in water, are most of a model, and stay.
void Rechecker::forget_all_but_the_library() {
    checked_.diagnostics.clear();
    Model& model = checked_.model;
    cut(model.sections, sections_);
    cut(model.conversions, conversions_);
    model.recipes.clear();
    model.benches.clear();
    model.suppliers.clear();
    model.log.clear();
    model.processes.clear();
    model.plans.clear();
    model.printed.clear();
    model.accepted.clear();
    model.dropper = none;
    model.formats = formats_;
    model.meetings = meetings_;
    model.section_names = section_names_;
    model.format_names = format_names_;
    model.meeting_names = meeting_names_;
    for (auto* names : {&model.recipe_names, &model.process_names, &model.plan_names, &model.supplier_names,
                        &model.bench_names, &model.printed_names})
        names->clear();
}

Checked& Rechecker::check(const Workspace& workspace, unsigned workers) {
    if (declares_a_chemical(workspace)) {
        with_chemicals_ = check::check(workspace, workers);
        return with_chemicals_;
    }
    forget_all_but_the_library();
    checked_ = Checker(workspace, workers, std::move(checked_)).run();
    return checked_;
}

}  // namespace scruple::check
