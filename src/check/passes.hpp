// SPDX-License-Identifier: MIT
// The passes over the blocks, in the order in which they run. Each fills in its part of the model
// and reports what is wrong; none reads what a later one writes.
#pragma once

#include <functional>

#include "blocks.hpp"
#include "contents_table.hpp"
#include "encounter.hpp"

namespace scruple::check {

/// What is judged together: of no solution in it may a part be judged elsewhere, or a line of a part be missing.
struct Group {
    std::vector<Id> recipes{}, sections{}, processes{};
};
/// The recipes and the solutions of a file.
void add_file(const Defined& defined, text::FileId file, Group& group);

/// A reader to read a block with, and where to put what it says.
struct BlockContext {
    Reader& reader;
    const Block& block;
};

void read_chemical(BlockContext context, Chemical& chemical);
/// Enters the other names of a chemical, with the forms they imply.
void name_other_names(BlockContext context, Model& model);
/// What `salt of` means, once all names are known.
void read_salt_of(BlockContext context, Model& model);
/// What its `dissolves` lines dissolve it in, once all names are known.
void read_solvents(BlockContext context, Model& model);
/// Puts all that chemicals say of themselves in water into one table; reports equilibria that are not of one acid.
[[nodiscard]] AcidBase gather_acid_base(const Model& model, std::vector<diagnostics::Diagnostic>& out);
void read_format(BlockContext context, FilmFormat& format);
void read_bench(BlockContext context, Bench& bench);

/// The variants that a recipe lists, before any of its lines is read.
void read_variants(BlockContext context, Recipe& recipe);
/// A recipe's facts (`recipe`) and the lines that stand directly under it (`whole`, or null).
void read_recipe(BlockContext context, Recipe& recipe, Section* whole);
void read_section(BlockContext context, Section& section);
void read_conversion(BlockContext context, Conversion& conversion, Section& section);

/// What stands in a file and does not show, the first of each line.
void report_hidden_characters(Reader& reader);

/// What is typed of a page; it is not read for what it means.
void read_printed(BlockContext context, PrintedPage& page);
void read_meeting(BlockContext context, Meeting& meeting);

void read_supplier(BlockContext context, Supplier& supplier);
void read_process(BlockContext context, Process& process);
void read_plan(BlockContext context, Plan& plan);
void read_log(BlockContext context, std::vector<LogEntry>& log);
/// Whether the log, gathered and sorted, put on the shelf what this line of it pours off `of` a day.
void judge_batch(Reader& reader, const LogEntry& discarded);
void read_nothing(BlockContext context);  ///< lines before the first heading

/// After all sections are read: volumes and order of one, and what it takes of others.
void judge_volumes(Reader& reader, Id section);
/// That there is a conversion for each line that says `by conversion`.
void judge_conversions(Reader& reader, Id section);
/// Finds the amounts that are written `?` in the `open` ones of a recipe's sections, and puts them in: from what is
/// expected of their solution, or else from what is expected of one that is made of it.
void find_amounts(Reader& reader, Model& model, const std::vector<Id>& recipe, std::vector<Id> open);
/// What its `expect pH` lines say, and acids that stand where their salts would do better.
void judge_ph(Reader& reader, Id section, std::vector<ContentsTable>& tables);
/// Whether what goes in dissolves, and goes in where it neither spoils the bath nor hurts.
void judge_work(Reader& reader, Id section, std::vector<ContentsTable>& tables);
/// What its `expect` lines say of its contents; `tables` has one a variant, shared by all sections.
void judge_expectations(Reader& reader, Id section, std::vector<ContentsTable>& tables);
/// What must not meet and does in one solution, in the order of its lines, each meeting once.
[[nodiscard]] std::vector<Encounter> encounters_in(const Model& model, const Encounters& encounters, Id section,
                                                   std::vector<ContentsTable>& tables);
/// The same in all of a group, as `found` by its sections, and from bath to bath of each process; gives what is
/// accepted of it, by solution, then by process.
[[nodiscard]] std::vector<Accepted> judge_meetings(const Model& model, const Encounters& encounters, const Group& group,
                                                   const std::vector<std::vector<Encounter>>& found,
                                                   std::vector<ContentsTable>& tables,
                                                   std::vector<diagnostics::Diagnostic>& out);
/// Solutions that go into themselves, each circle once.
void judge_circles(const Model& model, const std::vector<Id>& sections, std::vector<diagnostics::Diagnostic>& out);

}  // namespace scruple::check
