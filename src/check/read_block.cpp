// SPDX-License-Identifier: MIT
#include "read_block.hpp"

#include "expected.hpp"
#include "ingredients_of.hpp"

namespace scruple::check {
namespace {

using SyntaxBlock = syntax::Block;

bool holds_nothing(BlockContext context) {
    const auto& statements = context.reader.tree.statements;
    for (auto i = context.block.begin; i < context.block.end; ++i) {
        if (!std::holds_alternative<syntax::CommentOnly>(statements[i].node)) return false;
    }
    return true;
}

/// Of chemicals, formats and meetings what they lack is told by name.
bool may_be_empty(const Block& block) {
    return block.heading == none || block.kind == SyntaxBlock::chemical || block.kind == SyntaxBlock::format ||
           block.kind == SyntaxBlock::meeting || block.kind == SyntaxBlock::log;
}

void report_if_empty(BlockContext context) {
    if (may_be_empty(context.block) || !holds_nothing(context)) return;
    const auto span = context.reader.tree.statements[context.block.heading].span;
    context.reader.report(diagnostics::Kind::empty_block, span, {"`" + std::string(context.reader.text(span)) + "`"});
}

/// A block whose heading is bad still has its lines read, into something that is thrown away.
template <class T>
void read_into(BlockContext context, std::vector<T>& all, void (*read)(BlockContext, T&)) {
    T nobody;
    read(context, context.block.id == none ? nobody : all[context.block.id]);
}

/// To be called while the lines of the section have just been read: going over all of them once more, by one
/// worker, would wait for memory.
void note(Section& section) {
    section.takes_solutions = any_line_takes_solution(section);
    section.had_open_amount = any_amount_is_open(section);
}

/// A recipe that is called like a chemical could never be an ingredient.
void report_if_chemical(BlockContext context, const Model& model, const Recipe& recipe) {
    const auto found = model.chemical_names.find(recipe.normal);
    if (found == model.chemical_names.end()) return;
    const auto& first = model.chemicals[found->second.first].place;
    auto& twice = context.reader.report(diagnostics::Kind::defined_twice, recipe.place.span, {recipe.name});
    twice.related.push_back({first.file, first.span, "a chemical here"});
}

void read_whole_recipe(BlockContext context, Model& model) {
    auto& recipe = model.recipes[context.block.id];
    report_if_chemical(context, model, recipe);
    const Id first = recipe.sections.empty() ? none : recipe.sections.front();
    const bool whole = first != none && model.sections[first].kind == SectionKind::whole;
    read_recipe(context, recipe, whole ? &model.sections[first] : nullptr);
    if (whole) note(model.sections[first]);
}

void read_solution(BlockContext context, Model& model) {
    Section nobody;
    auto& section = context.block.id == none ? nobody : model.sections[context.block.id];
    read_section(context, section);
    note(section);
}

void read_one_conversion(BlockContext context, Model& model) {
    Conversion nobody_conversion;
    Section nobody;
    const bool known = context.block.id != none;
    auto& conversion = known ? model.conversions[context.block.id] : nobody_conversion;
    auto& section = known ? model.sections[conversion.section] : nobody;
    read_conversion(context, conversion, section);
    note(section);
}

}  // namespace

bool still_meant(const Model& model, const Block& block) {
    const auto& place = block.kind == SyntaxBlock::chemical  ? model.chemicals[block.id].place
                        : block.kind == SyntaxBlock::meeting ? model.meetings[block.id].place
                                                             : model.formats[block.id].place;
    return place.file == block.file && place.statement == block.heading;
}

void prepare_block(BlockContext context, bool has_parts, Model& model) {
    const auto& block = context.block;
    if (!has_parts) report_if_empty(context);
    if (block.id == none) return;
    if (block.kind == SyntaxBlock::format && still_meant(model, block)) read_format(context, model.formats[block.id]);
    if (block.kind == SyntaxBlock::bench) read_bench(context, model.benches[block.id]);
    if (block.kind == SyntaxBlock::recipe) read_variants(context, model.recipes[block.id]);
}

void read_block(BlockContext context, Model& model, std::vector<LogEntry>& log) {
    const auto& block = context.block;
    if (block.heading == none) {
        read_nothing(context);
        return;
    }
    switch (block.kind) {
        case SyntaxBlock::recipe:
            read_whole_recipe(context, model);
            break;
        case SyntaxBlock::part:
        case SyntaxBlock::bath:
        case SyntaxBlock::working:
        case SyntaxBlock::replenisher:
            read_solution(context, model);
            break;
        case SyntaxBlock::conversion:
            read_one_conversion(context, model);
            break;
        case SyntaxBlock::supplier:
            read_into(context, model.suppliers, read_supplier);
            break;
        case SyntaxBlock::process:
            read_into(context, model.processes, read_process);
            break;
        case SyntaxBlock::plan:
            read_into(context, model.plans, read_plan);
            break;
        case SyntaxBlock::meeting:
            if (block.id == none || still_meant(model, block)) read_into(context, model.meetings, read_meeting);
            break;
        case SyntaxBlock::printed:
            read_into(context, model.printed, read_printed);
            break;
        case SyntaxBlock::log:
            read_log(context, log);
            break;
        case SyntaxBlock::chemical:
        case SyntaxBlock::bench:
        case SyntaxBlock::format:
            break;
    }
}

}  // namespace scruple::check
