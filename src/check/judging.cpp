// SPDX-License-Identifier: MIT
#include "judging.hpp"

#include "parallel.hpp"

namespace scruple::check {

void add_file(const Defined& defined, text::FileId file, Group& group) {
    const auto& begin = defined.files[file];
    const auto& end = defined.files[file + 1];
    for (auto id = begin.recipe; id < end.recipe; ++id) group.recipes.push_back(id);
    for (auto id = begin.section; id < end.section; ++id) group.sections.push_back(id);
}

std::vector<Accepted> Judging::judge(const Group& group, std::span<std::vector<ContentsTable>> tables,
                                     std::vector<diagnostics::Diagnostic>& out) {
    judge_circles(model_, group.sections, out);
    for (const Id id : group.recipes) find_open_amounts(model_.recipes[id], out);
    std::vector<std::vector<Encounter>> found(group.sections.size());
    for_each_index(group.sections.size(), static_cast<unsigned>(tables.size()), out, [&](std::size_t i, Worker worker) {
        auto& mine = tables[worker.number];
        judge_section(group.sections[i], mine, worker.out);
        found[i] = encounters_in(model_, encounters_, group.sections[i], mine);
    });
    return judge_meetings(model_, encounters_, group, found, tables.front(), out);
}

Reader Judging::reader(text::FileId file, std::vector<diagnostics::Diagnostic>& out) const {
    return Reader{model_, file, workspace_.sources[file], *workspace_.trees[file], out};
}

void Judging::find_open_amounts(const Recipe& recipe, std::vector<diagnostics::Diagnostic>& out) {
    std::vector<Id> open;
    for (const Id id : recipe.sections)
        if (model_.sections[id].had_open_amount) open.push_back(id);
    if (open.empty()) return;
    auto recipe_reader = reader(recipe.place.file, out);
    find_amounts(recipe_reader, model_, recipe.sections, std::move(open));
}

void Judging::judge_section(Id id, std::vector<ContentsTable>& tables,
                            std::vector<diagnostics::Diagnostic>& out) const {
    const auto& section = model_.sections[id];
    auto section_reader = reader(section.place.file, out);
    judge_volumes(section_reader, id);
    if (section.kind != SectionKind::conversion) judge_conversions(section_reader, id);
    if (section.kind != SectionKind::conversion) judge_work(section_reader, id, tables);
    judge_expectations(section_reader, id, tables);
    judge_ph(section_reader, id, tables);
}

}  // namespace scruple::check
