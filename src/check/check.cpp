// SPDX-License-Identifier: MIT
// The passes, in order.
#include "scruple/check/check.hpp"

#include <algorithm>

#include "expected.hpp"
#include "ingredients_of.hpp"
#include "parallel.hpp"
#include "passes.hpp"

namespace scruple::check {
namespace {

using diagnostics::Diagnostic;
using SyntaxBlock = syntax::Block;

/// What few sections have, and later passes look for.
struct Notes {
    bool takes_solutions = false, has_open_amount = false;
};

class Checker {
  public:
    Checker(const Workspace& workspace, unsigned workers)
        : workspace_(workspace), workers_(workers == 0 ? text::all_cores() : workers) {}

    Checked run() {
        blocks_ = define(workspace_, model(), out());
        logs_.resize(blocks_.size());
        notes_.resize(model().sections.size());
        read_chemicals();
        pass([this](BlockContext context) { prepare(context); });
        pass([this](BlockContext context) { read(context); });
        gather_logs();
        judge();
        diagnostics::sort_and_settle(out());
        return std::move(checked_);
    }

  private:
    Model& model() { return checked_.model; }
    std::vector<Diagnostic>& out() { return checked_.diagnostics; }

    Reader reader(text::FileId file, std::vector<Diagnostic>& out) {
        return Reader{model(), file, workspace_.sources[file], workspace_.trees[file], out};
    }

    template <class Read>
    void pass(Read read) {
        for_each_index(blocks_.size(), workers_, out(), [&](std::size_t i, Worker worker) {
            auto block_reader = reader(blocks_[i].file, worker.out);
            read(BlockContext{block_reader, blocks_[i]});
        });
    }

    /// Chemicals first and alone: every other line is read by their names and forms.
    void read_chemicals() {
        const auto each = [this](auto take) {
            for (const auto& block : blocks_) {
                if (block.kind != SyntaxBlock::chemical || block.id == none || !still_meant(block)) continue;
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

    /// Whether a block of the library has not been overridden by one of the user's.
    bool still_meant(const Block& block) {
        const auto& place = block.kind == SyntaxBlock::chemical  ? model().chemicals[block.id].place
                            : block.kind == SyntaxBlock::meeting ? model().meetings[block.id].place
                                                                 : model().formats[block.id].place;
        return place.file == block.file && place.statement == block.heading;
    }

    /// What lines of other blocks depend on.
    void prepare(BlockContext context) {
        const auto& block = context.block;
        report_if_empty(context);
        if (block.id == none) return;
        if (block.kind == SyntaxBlock::format && still_meant(block)) read_format(context, model().formats[block.id]);
        if (block.kind == SyntaxBlock::bench) read_bench(context, model().benches[block.id]);
        if (block.kind == SyntaxBlock::recipe) read_variants(context, model().recipes[block.id]);
    }

    void report_if_empty(BlockContext context) {
        const auto& block = context.block;
        if (block.heading == none || block.kind == SyntaxBlock::chemical || block.kind == SyntaxBlock::format ||
            block.kind == SyntaxBlock::meeting)
            return;
        const auto& statements = context.reader.tree.statements;
        for (auto i = block.begin; i < block.end; ++i) {
            if (!std::holds_alternative<syntax::CommentOnly>(statements[i].node)) return;
        }
        // A recipe may be nothing but its parts.
        const auto* next = &block + 1;
        const bool has_parts = block.kind == SyntaxBlock::recipe && block.id != none &&
                               next != blocks_.data() + blocks_.size() && next->recipe == block.id;
        if (has_parts || block.kind == SyntaxBlock::log) return;
        const auto span = statements[block.heading].span;
        context.reader.report(diagnostics::Kind::empty_block, span,
                              {"`" + std::string(context.reader.text(span)) + "`"});
    }

    void read(BlockContext context) {
        const auto& block = context.block;
        if (block.heading == none) {
            read_nothing(context);
            return;
        }
        switch (block.kind) {
            case SyntaxBlock::recipe:
                read_whole_recipe(context);
                break;
            case SyntaxBlock::part:
            case SyntaxBlock::bath:
            case SyntaxBlock::working:
            case SyntaxBlock::replenisher:
                read_solution(context);
                break;
            case SyntaxBlock::conversion:
                read_one_conversion(context);
                break;
            case SyntaxBlock::supplier:
                with(context, model().suppliers, read_supplier);
                break;
            case SyntaxBlock::process:
                with(context, model().processes, read_process);
                break;
            case SyntaxBlock::plan:
                with(context, model().plans, read_plan);
                break;
            case SyntaxBlock::meeting:
                if (block.id == none || still_meant(block)) with(context, model().meetings, read_meeting);
                break;
            case SyntaxBlock::log:
                read_log(context, logs_[static_cast<std::size_t>(&block - blocks_.data())]);
                break;
            case SyntaxBlock::chemical:
            case SyntaxBlock::bench:
            case SyntaxBlock::format:
                break;
        }
    }

    /// A block whose heading is bad still has its lines read, into something that is thrown away.
    template <class T>
    void with(BlockContext context, std::vector<T>& all, void (*read_into)(BlockContext, T&)) {
        T nobody;
        read_into(context, context.block.id == none ? nobody : all[context.block.id]);
    }

    void read_whole_recipe(BlockContext context) {
        auto& recipe = model().recipes[context.block.id];
        const Id first = recipe.sections.empty() ? none : recipe.sections.front();
        const bool whole = first != none && model().sections[first].kind == SectionKind::whole;
        read_recipe(context, recipe, whole ? &model().sections[first] : nullptr);
        if (whole) note(first);
    }

    /// A recipe that is called like a chemical could never be an ingredient.
    void report_if_chemical(BlockContext context, const Recipe& recipe) {
        const auto found = model().chemical_names.find(recipe.normal);
        if (found == model().chemical_names.end()) return;
        const auto& first = model().chemicals[found->second.first].place;
        auto& twice = context.reader.report(diagnostics::Kind::defined_twice, recipe.place.span, {recipe.name});
        twice.related.push_back({first.file, first.span, "a chemical here"});
    }

    void read_solution(BlockContext context) {
        Section nobody;
        read_section(context, context.block.id == none ? nobody : model().sections[context.block.id]);
        if (context.block.id != none) note(context.block.id);
    }

    void read_one_conversion(BlockContext context) {
        Conversion nobody_conversion;
        Section nobody;
        const bool known = context.block.id != none;
        auto& conversion = known ? model().conversions[context.block.id] : nobody_conversion;
        read_conversion(context, conversion, known ? model().sections[conversion.section] : nobody);
        if (known) note(conversion.section);
    }

    /// To be called while the lines of the section have just been read: going over all of them once more, by one
    /// worker, would wait for memory.
    void note(Id id) {
        const auto& section = model().sections[id];
        notes_[id] = {takes_solutions(section), has_open_amount(section)};
    }

    void gather_logs() {
        for (auto& log : logs_) std::ranges::move(log, std::back_inserter(model().log));
        std::ranges::stable_sort(model().log, {}, &LogEntry::day);
    }

    void judge() {
        judge_circles(
            model(), [this](Id id) { return notes_[id].takes_solutions; }, out());
        for (const auto& recipe : model().recipes) find_open_amounts(recipe);
        // What one solution holds is kept for all that are made of it, by each worker for itself.
        std::vector<std::vector<ContentsTable>> tables(workers_);
        const Encounters encounters(model());
        std::vector<std::vector<Encounter>> found(model().sections.size());
        for_each_index(model().sections.size(), workers_, out(), [&](std::size_t i, Worker worker) {
            const auto id = static_cast<Id>(i);
            const auto& section = model().sections[id];
            auto section_reader = reader(section.place.file, worker.out);
            judge_volumes(section_reader, id);
            if (section.kind != SectionKind::conversion) judge_conversions(section_reader, id);
            if (section.kind != SectionKind::conversion) judge_work(section_reader, id, tables[worker.number]);
            judge_expectations(section_reader, id, tables[worker.number]);
            judge_ph(section_reader, id, tables[worker.number]);
            found[i] = encounters_in(model(), encounters, id, tables[worker.number]);
        });
        judge_meetings(model(), encounters, found, tables.front(), out());
    }

    void find_open_amounts(const Recipe& recipe) {
        std::vector<Id> open;
        for (const Id id : recipe.sections)
            if (notes_[id].has_open_amount) open.push_back(id);
        if (open.empty()) return;
        auto recipe_reader = reader(recipe.place.file, out());
        find_amounts(recipe_reader, model(), recipe.sections, std::move(open));
    }

    const Workspace& workspace_;
    unsigned workers_;
    Checked checked_;
    std::vector<Block> blocks_;
    std::vector<std::vector<LogEntry>> logs_;  ///< one a block, so that blocks can be read side by side
    std::vector<Notes> notes_;                 ///< one a section
};

}  // namespace

Checked check(const Workspace& workspace, unsigned workers) {
    return Checker(workspace, workers).run();
}

}  // namespace scruple::check
