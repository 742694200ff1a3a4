// SPDX-License-Identifier: MIT
#include "checker.hpp"

#include <algorithm>
#include <iterator>

#include "in_passing.hpp"
#include "parallel.hpp"
#include "read_block.hpp"

namespace scruple::check {

Checker::Checker(const Workspace& workspace, unsigned workers)
    : workspace_(workspace), workers_(workers == 0 ? text::all_cores() : workers) {}

Checker::Checker(const Workspace& workspace, unsigned workers, Checked library)
    : workspace_(workspace),
      workers_(workers == 0 ? text::all_cores() : workers),
      checked_(std::move(library)),
      first_file_(static_cast<text::FileId>(workspace.built_in)) {}

Checked Checker::run() {
    look_for_the_hidden();
    define_all();
    if (first_file_ == 0) read_chemicals();
    pass([this](BlockContext context, std::size_t) {
        prepare_block(context, has_parts(defined_.blocks, context.block), model());
    });
    pass([this](BlockContext context, std::size_t i) { read_block(context, model(), logs_[i]); });
    gather_logs();
    judge();
    diagnostics::sort_and_settle(out());
    return std::move(checked_);
}

Reader Checker::reader(text::FileId file, std::vector<diagnostics::Diagnostic>& out) {
    return Reader{model(), file, workspace_.sources[file], *workspace_.trees[file], out};
}

void Checker::look_for_the_hidden() {
    for_each_index(workspace_.sources.size() - first_file_, workers_, out(), [&](std::size_t i, Worker worker) {
        auto of_file = reader(first_file_ + static_cast<text::FileId>(i), worker.out);
        report_hidden_characters(of_file);
    });
}

void Checker::define_all() {
    defined_ = define(workspace_, first_file_, model(), out());
    for (std::uint32_t i = 0; i < defined_.blocks.size(); ++i)
        if (has_tree(defined_.blocks[i].file)) blocks_.push_back(i);
    logs_.resize(blocks_.size());
}

/// Chemicals first and alone: every other line is read by their names and forms.
void Checker::read_chemicals() {
    const auto each = [this](auto take) {
        for (const auto i : blocks_) {
            const auto& block = defined_.blocks[i];
            if (block.kind != syntax::Block::chemical || block.id == none || !still_meant(model(), block)) continue;
            auto block_reader = reader(block.file, out());
            take(BlockContext{block_reader, block});
        }
    };
    each([this](BlockContext context) { read_chemical(context, model().chemicals[context.block.id]); });
    each([this](BlockContext context) { name_other_names(context, model()); });
    each([this](BlockContext context) { read_salt_of(context, model()); });
    each([this](BlockContext context) { read_solvents(context, model()); });
    model().acid_base = gather_acid_base(model(), out());
}

/// Over all blocks of files with a tree.
template <class Read>
void Checker::pass(Read read) {
    for_each_index(blocks_.size(), workers_, out(), [&](std::size_t i, Worker worker) {
        const auto& block = defined_.blocks[blocks_[i]];
        auto block_reader = reader(block.file, worker.out);
        read(BlockContext{block_reader, block}, i);
    });
}

void Checker::gather_logs() {
    for (auto& log : logs_) std::ranges::move(log, std::back_inserter(model().log));
    std::ranges::stable_sort(model().log, {}, &LogEntry::day);
    for (const auto& line : model().log) {
        if (!line.batch) continue;
        auto line_reader = reader(line.place.file, out());
        judge_batch(line_reader, line);
    }
}

void Checker::judge() {
    Judging judging(model(), workspace_);
    InPassing passing(workspace_, defined_, model(), workers_);
    passing.run(judging, out());
    Group rest;
    for (auto file = first_file_; file < workspace_.trees.size(); ++file)
        if (has_tree(file) || passing.stays(file)) add_file(defined_, file, rest);
    for (Id id = 0; id < model().processes.size(); ++id) rest.processes.push_back(id);
    std::vector<std::vector<ContentsTable>> tables(workers_);
    model().accepted = judging.judge(rest, tables, out());
}

}  // namespace scruple::check
