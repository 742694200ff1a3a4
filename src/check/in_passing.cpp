// SPDX-License-Identifier: MIT
#include "in_passing.hpp"

#include "ingredients_of.hpp"
#include "parallel.hpp"
#include "read_block.hpp"
#include "scruple/syntax/parse.hpp"

namespace scruple::check {
namespace {

template <class... Fields>
void empty(Fields&... fields) {
    ((fields = Fields{}), ...);
}

/// All but what others call it by, and may be looking at just now. Named one by one, so that one more does not compile
/// until it is named here.
void let_lines_go(Section& section) {
    auto& [kind, recipe, label, lines, makes_ml, makes_stated, broken, by_parts, takes_solutions, had_open_amount,
           keeps, use_within, use_within_text, capacity, replenish, expects, accepts, cautions, notes, place] = section;
    empty(lines, makes_ml, makes_stated, broken, by_parts, takes_solutions, had_open_amount, keeps, use_within,
          use_within_text, capacity, replenish, expects, accepts, cautions, notes);
}
void let_facts_go(Recipe& recipe) {
    auto& [name, is_a, strength, sources, cautions, notes, assumed, variants, capacity, accepts, sections, normal,
           place, built_in] = recipe;
    empty(is_a, strength, sources, cautions, notes, assumed, variants, capacity, accepts);
}

}  // namespace

InPassing::InPassing(const Workspace& workspace, const Defined& defined, Model& model, unsigned workers)
    : workspace_(workspace), defined_(defined), model_(model), workers_(workers), stays_(workspace.trees.size()) {
    for (text::FileId file = 0; file < workspace.trees.size(); ++file)
        if (workspace.outline(file) != nullptr) files_.push_back(file);
}

void InPassing::run(Judging& judging, std::vector<diagnostics::Diagnostic>& out) {
    if (files_.empty()) return;
    keep_what_others_take();
    std::vector<Hands> hands(workers_);
    for_each_index(
        files_.size(), workers_, out,
        [&](std::size_t i, Worker worker) { pass_by(files_[i], hands[worker.number], judging, worker.out); }, 1);
    read_again(hands, out);
}

/// What is carried over from bath to bath, and what goes into solutions of files with a tree.
void InPassing::keep_what_others_take() {
    for (const auto& process : model_.processes)
        for (const auto& stage : process.stages)
            if (stage.solution != none) keep(stage.solution);
    for (text::FileId file = 0; file < workspace_.trees.size(); ++file)
        if (workspace_.outline(file) == nullptr) keep_parts_of(file);
}

void InPassing::keep_parts_of(text::FileId file) {
    for (auto id = defined_.files[file].section; id < defined_.files[file + 1].section; ++id)
        for (const auto& part : parts_of(model_.sections[id])) keep(part.solution);
}

void InPassing::keep(Id section) {
    stays_[model_.sections[section].place.file] = 1;
}

void InPassing::pass_by(text::FileId file, Hands& hands, Judging& judging, std::vector<diagnostics::Diagnostic>& out) {
    read(file, hands, out);
    if (stays(file) || !is_by_itself(file)) {
        stays_[file] = 1;
        return;
    }
    Group group;
    add_file(defined_, file, group);
    static_cast<void>(judging.judge(group, std::span(&hands.tables, 1), out));
    hands.tables.clear();
    let_go(file);
}

void InPassing::read(text::FileId file, Hands& hands, std::vector<diagnostics::Diagnostic>& out) {
    syntax::parse(workspace_.sources[file], hands.tree);
    const auto each_block = [&](auto take) {
        for (auto i = defined_.files[file].block; i < defined_.files[file + 1].block; ++i) {
            Reader reader{model_, file, workspace_.sources[file], hands.tree, out};
            take(BlockContext{reader, defined_.blocks[i]});
        }
    };
    Reader whole{model_, file, workspace_.sources[file], hands.tree, out};
    report_hidden_characters(whole);
    each_block(
        [&](BlockContext context) { prepare_block(context, has_parts(defined_.blocks, context.block), model_); });
    each_block([&](BlockContext context) { read_block(context, model_, hands.no_log); });
}

/// Whether all that its solutions are made of stands in it too.
bool InPassing::is_by_itself(text::FileId file) const {
    for (auto id = defined_.files[file].section; id < defined_.files[file + 1].section; ++id)
        for (const auto& part : parts_of(model_.sections[id]))
            if (model_.sections[part.solution].place.file != file) return false;
    return true;
}

/// What files that stay take from those that have been let go. What these say once more is told once.
void InPassing::read_again(std::vector<Hands>& hands, std::vector<diagnostics::Diagnostic>& out) {
    std::vector<std::uint8_t> passed(stays_.size());
    for (const auto file : files_) passed[file] = stays(file) ? 0 : 1;
    for (const auto file : files_)
        if (passed[file] == 0) keep_parts_of(file);
    std::vector<text::FileId> missing;
    for (const auto file : files_)
        if (passed[file] != 0 && stays(file)) missing.push_back(file);
    for_each_index(
        missing.size(), workers_, out,
        [&](std::size_t i, Worker worker) { read(missing[i], hands[worker.number], worker.out); }, 1);
}

void InPassing::let_go(text::FileId file) {
    const auto& begin = defined_.files[file];
    const auto& end = defined_.files[file + 1];
    for (auto id = begin.section; id < end.section; ++id) let_lines_go(model_.sections[id]);
    for (auto id = begin.recipe; id < end.recipe; ++id) let_facts_go(model_.recipes[id]);
}

}  // namespace scruple::check
