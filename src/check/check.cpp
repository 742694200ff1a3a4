// SPDX-License-Identifier: MIT
// The passes, in order.
#include "scruple/check/check.hpp"

#include <algorithm>
#include <atomic>

#include "expected.hpp"
#include "ingredients_of.hpp"
#include "parallel.hpp"
#include "passes.hpp"
#include "scruple/check/packed.hpp"

namespace scruple::check {
namespace {

using diagnostics::Diagnostic;
using SyntaxBlock = syntax::Block;

class Checker {
  public:
    Checker(const Workspace& workspace, unsigned workers)
        : workspace_(workspace),
          workers_(workers == 0 ? text::all_cores() : workers),
          unread_(workspace.trees.size()) {}

    /// Goes on from a model in which the library is checked already; no chemical may be declared after it.
    Checker(const Workspace& workspace, unsigned workers, Checked library)
        : workspace_(workspace),
          workers_(workers == 0 ? text::all_cores() : workers),
          unread_(workspace.trees.size()),
          checked_(std::move(library)),
          first_file_(static_cast<text::FileId>(workspace.built_in)),
          first_section_(static_cast<Id>(checked_.model.sections.size())) {}

    Checked run() {
        look_for_the_hidden();
        blocks_ = define(workspace_, first_file_, model(), out());
        logs_.resize(blocks_.size());
        count_blocks();
        if (first_file_ == 0) read_chemicals();
        pass([this](BlockContext context) { prepare(context); });
        pass([this](BlockContext context) {
            read(context);
            if (--unread_[context.block.file] == 0 && workspace_.done_with) workspace_.done_with(context.block.file);
        });
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

    void look_for_the_hidden() {
        for_each_index(workspace_.sources.size() - first_file_, workers_, out(), [&](std::size_t i, Worker worker) {
            auto of_file = reader(first_file_ + static_cast<text::FileId>(i), worker.out);
            report_hidden_characters(of_file);
        });
    }

    /// Lines of logs are looked at once more, when all of them are known: those trees are never let go.
    void count_blocks() {
        for (const auto& block : blocks_) unread_[block.file] += block.kind == SyntaxBlock::log ? 2 : 1;
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
            case SyntaxBlock::printed:
                with(context, model().printed, read_printed);
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
        report_if_chemical(context, recipe);
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
        auto& section = model().sections[id];
        section.takes_solutions = any_line_takes_solution(section);
        section.had_open_amount = any_amount_is_open(section);
    }

    void gather_logs() {
        for (auto& log : logs_) std::ranges::move(log, std::back_inserter(model().log));
        std::ranges::stable_sort(model().log, {}, &LogEntry::day);
        for (const auto& line : model().log) {
            if (!line.batch) continue;
            auto line_reader = reader(line.place.file, out());
            judge_batch(line_reader, line);
        }
    }

    void judge() {
        judge_circles(model(), out());
        for (const auto& recipe : model().recipes) find_open_amounts(recipe);
        judge_sections();
    }

    void judge_sections() {
        // What one solution holds is kept for all that are made of it, by each worker for itself.
        std::vector<std::vector<ContentsTable>> tables(workers_);
        const Encounters encounters(model());
        std::vector<std::vector<Encounter>> found(model().sections.size());
        for_each_index(model().sections.size() - first_section_, workers_, out(), [&](std::size_t i, Worker worker) {
            const auto id = static_cast<Id>(first_section_ + i);
            judge_section(id, worker, tables[worker.number]);
            found[id] = encounters_in(model(), encounters, id, tables[worker.number]);
        });
        judge_meetings(model(), encounters, found, tables.front(), out());
    }

    void judge_section(Id id, Worker worker, std::vector<ContentsTable>& tables) {
        const auto& section = model().sections[id];
        auto section_reader = reader(section.place.file, worker.out);
        judge_volumes(section_reader, id);
        if (section.kind != SectionKind::conversion) judge_conversions(section_reader, id);
        if (section.kind != SectionKind::conversion) judge_work(section_reader, id, tables);
        judge_expectations(section_reader, id, tables);
        judge_ph(section_reader, id, tables);
    }

    void find_open_amounts(const Recipe& recipe) {
        std::vector<Id> open;
        for (const Id id : recipe.sections)
            if (model().sections[id].had_open_amount) open.push_back(id);
        if (open.empty()) return;
        auto recipe_reader = reader(recipe.place.file, out());
        find_amounts(recipe_reader, model(), recipe.sections, std::move(open));
    }

    const Workspace& workspace_;
    unsigned workers_;
    std::vector<std::atomic<std::uint32_t>> unread_;  ///< blocks, by file
    Checked checked_;
    text::FileId first_file_ = 0;  ///< of those to check
    Id first_section_ = 0;
    std::vector<Block> blocks_;
    std::vector<std::vector<LogEntry>> logs_;  ///< one a block, so that blocks can be read side by side
};

}  // namespace

Checked check(const Workspace& workspace, unsigned workers) {
    return Checker(workspace, workers).run();
}

Checked check_behind(Model library, const Workspace& workspace, unsigned workers) {
    return Checker(workspace, workers, {std::move(library), {}}).run();
}

bool declares_a_chemical(const Workspace& workspace) {
    for (std::size_t file = workspace.built_in; file < workspace.trees.size(); ++file) {
        const auto& tree = workspace.trees[file];
        for (const auto heading : tree.headings)
            if (std::get<syntax::Heading>(tree.statements[heading].node).block == SyntaxBlock::chemical) return true;
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
