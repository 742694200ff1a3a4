// SPDX-License-Identifier: MIT
#include "commands.hpp"

#include <algorithm>
#include <array>

namespace scruple::cli {
namespace {

constexpr std::array option_table{
    OptionInfo{"--make", "VOLUME", 1, false, "--make 500ml", "how much to make"},
    OptionInfo{"--films", "NUMBER FORMAT", 2, true, "--films 6 135",
               "enough for these films; may be said several times"},
    OptionInfo{"--sheets", "NUMBER FORMAT", 2, true, "--sheets 24 \"8x10 in\"",
               "enough for these sheets; may be said several times"},
    OptionInfo{"--area", "AREA", 1, false, "--area \"0.5 m2\"", "enough for this area of film or paper"},
    OptionInfo{"--with", "AMOUNT", 1, false, "--with \"metol 43 g\"",
               "what there is of a chemical: as much as it allows; for `react` several, with commas between them; "
               "for `shopping` work besides the plan, such as `40 films 135 through roll film`"},
    OptionInfo{"--without", "DAY or PROCESS", 1, true, "--without 2026-12-05",
               "a day of the plan, or a process, that comes to nothing; may be said several times"},
    OptionInfo{"--against", "PLAN", 1, false, "--against January", "another plan, to say what is otherwise"},
    OptionInfo{"--instead", "CHEMICAL", 1, true, "--instead \"sodium ascorbate\"",
               "what is not there, to be come by in another way; may be said several times"},
    OptionInfo{"--from-shelf", "", 0, false, "--from-shelf",
               "come by in another way whatever the log does not have enough of"},
    OptionInfo{"--variant", "NAME", 1, false, "--variant soft", "which variant of the recipe"},
    OptionInfo{"--bench", "NAME", 1, false, "--bench Saltmarsh", "whose instruments the amounts are rounded to"},
    OptionInfo{"--mixed", "DATE", 1, false, "--mixed 2026-12-03", "the day of mixing; fills in the use-by dates"},
    OptionInfo{"--on", "DATE", 1, false, "--on 2026-12-03",
               "the day that is meant; otherwise today, for `shelf` the last day of the log"},
    OptionInfo{"--note", "WORDS", 1, false, "--note \"for the club\"", "a comment behind the line"},
    OptionInfo{"--log", "FILE", 1, false, "--log autumn.scruple", "which file's log, where several have one"},
    OptionInfo{"--from", "TIME", 1, false, "--from 18:00",
               "when the evening begins; otherwise minutes are counted from the start"},
    OptionInfo{"--vessels", "NUMBER", 1, false, "--vessels 3",
               "how many vessels there are to mix in; otherwise as many as it takes"},
    OptionInfo{"--at", "TEMPERATURE", 1, false, "--at 24C", "how warm it is for the pH; 20 C otherwise"},
    OptionInfo{"--as-form", "FORM", 1, false, "--as-form monohydrate",
               "the form, strength or like chemical there is; without it, every form is shown"},
    OptionInfo{"--check", "", 0, false, "--check", "change nothing, and list the files that would change"},
    OptionInfo{"--lines", "", 0, false, "--lines", "of one only: the facts that a comparison goes by, one a line"},
    OptionInfo{"--git", "", 0, false, "--git",
               "called by git, with the words that it gives to a program that compares"},
    OptionInfo{"--in", "FOLDER", 1, false, "--in recipes", "where the recipes are; the current folder otherwise"},
    OptionInfo{"--bottles", "NUMBERxVOLUME", 1, true, "--bottles 2x500ml",
               "one label for each bottle; may be said several times"},
    OptionInfo{"--batch", "WORDS", 1, false, "--batch 7", "the batch that is in it"},
    OptionInfo{"--label", "WIDTHxHEIGHT", 1, false, "--label 98x68",
               "how large a label is in millimetres; from 74x52 on it has the hazard statements"},
    OptionInfo{"--grid", "COLUMNSxROWS", 1, false, "--grid 2x4", "how many labels are on a sheet"},
    OptionInfo{"--first", "LEFTxTOP", 1, false, "--first 9x12.5",
               "millimetres to the first label; otherwise they stand in the middle of the sheet"},
    OptionInfo{"--between", "ACROSSxDOWN", 1, false, "--between 2.5x0",
               "millimetres between labels; without it, a line to cut along"},
    OptionInfo{"--paper", "SHEET", 1, false, "--paper a5", "a4, a5 or letter, for pdf, svg and png; a4 otherwise"},
    OptionInfo{"--as", "FORMAT", 1, false, "--as html",
               "text, html or json; for cards, labels, shopping, calendar, shelf and evening pdf, svg and png too, for "
               "shopping csv, for "
               "the calendar ics, for check sarif and junit, for settle recipe; text otherwise"},
    OptionInfo{"--out", "FILE", 1, false, "--out card.html", "write there, whole or not at all; for `binder` a folder"},
};

using Options = std::string_view[];
using Examples = Example[];

constexpr std::string_view usual_options[] = {"--in", "--as", "--out"};

constexpr Examples check_examples = {
    {"scruple check", "the recipes of the current folder and all folders in it"},
    {"scruple check --in recipes --as json", "the same of the folder `recipes`, for another program"},
};
constexpr CommandInfo check_command{
    "check",
    "",
    "read all recipes of a folder and say what is wrong with them",
    "All faults come out in one go, each with its place and what to write instead. Nothing is changed.",
    usual_options,
    check_examples};

constexpr Options card_options = {"--make",    "--films",      "--sheets",  "--area",  "--with",
                                  "--instead", "--from-shelf", "--variant", "--bench", "--mixed",
                                  "--at",      "--paper",      "--in",      "--as",    "--out"};
constexpr Examples card_examples = {
    {"scruple card Heron part A --make 500ml", "half a litre of part A"},
    {"scruple card Heron working --films 6 135", "as much as six films take"},
    {"scruple card Heron part B --instead \"sodium carbonate (anhydrous)\"",
     "another form of it from the shelf, or made at the bench; the card says which way, and why"},
    {"scruple card Heron --as pdf --paper a5 --out heron.pdf", "every solution of Heron on sheets to print"},
};
constexpr CommandInfo card_command{
    "card",
    "RECIPE [SECTION]",
    "print the mixing card of a recipe, or of one of its solutions",
    "RECIPE is the name of a recipe, and SECTION one of its solutions, such as `part A`, `working` or `bath B`; names "
    "need no quotes, and letter case does not matter. The card has everything to gather, then every step in order, "
    "with the "
    "amounts worked out and rounded to the instruments of your bench. Without SECTION, every solution of the recipe "
    "gets its card, one after the other.",
    card_options,
    card_examples};

constexpr Options binder_options = {"--bench", "--paper", "--in", "--out"};
constexpr Examples binder_examples = {
    {"scruple binder --out binder", "the cards of the current folder's recipes, on A4"},
    {"scruple binder --in recipes --paper a5 --out binder", "the same of the folder `recipes`, on small sheets"},
};
constexpr CommandInfo binder_command{
    "binder",
    "",
    "write the cards of all recipes into a folder: sheets to print, and pages to read",
    "`binder.pdf` has a card for each solution of each recipe, in the amount that the recipe is written for, with "
    "contents in front and a number on every page. `index.html` leads to the same cards as pages, and finds them by "
    "name, purpose or chemical; nothing of it needs a network. What else is in the folder stays as it is.",
    binder_options,
    binder_examples};

constexpr Options labels_options = {"--bottles", "--mixed",   "--batch", "--variant", "--label", "--grid",
                                    "--first",   "--between", "--paper", "--in",      "--as",    "--out"};
constexpr Examples labels_examples = {
    {"scruple labels Heron part A --bottles 2x500ml --mixed 2026-12-03 --as pdf --out heron-labels.pdf",
     "two labels, with the dates filled in"},
    {"scruple labels Heron --label 60x30 --grid 3x9 --as pdf --out small.pdf", "small ones, without hazard statements"},
};
constexpr CommandInfo labels_command{"labels",
                                     "RECIPE [SECTION]",
                                     "print bottle labels for a recipe, or for one of its solutions",
                                     "Name and part, how to use it, what is known of dates, batch and volume, and "
                                     "lines to write the rest on. The hazard "
                                     "statements are those recorded for each chemical in it; nobody has classified the "
                                     "mixture, so check the safety data "
                                     "sheets. The square code carries the same, and which version of the recipe it is.",
                                     labels_options,
                                     labels_examples};

constexpr Options scaled_options = {"--make",       "--films",   "--sheets", "--area", "--with", "--instead",
                                    "--from-shelf", "--variant", "--in",     "--as",   "--out"};
constexpr Examples scaled_examples = {
    {"scruple scaled Heron part A --make 250ml", "Heron, with everything to suit a quarter litre of part A"},
    {"scruple scaled Heron --instead \"sodium carbonate (anhydrous)\"",
     "Heron as it stands, with the carbonate that there is"},
};
constexpr CommandInfo scaled_command{
    "scaled",
    "RECIPE [SECTION]",
    "print a recipe again as recipe text, for another volume or with what there is",
    "What comes out is recipe text, with your comments in place: the whole recipe, every amount multiplied exactly. "
    "SECTION says whose volume is meant where the solutions of a recipe differ. With `--instead` or `--from-shelf` the "
    "lines that change are written anew, each with a comment on what it replaces.",
    scaled_options,
    scaled_examples};

constexpr Options shopping_options = {"--with", "--without", "--against", "--paper", "--in", "--as", "--out"};
constexpr Examples shopping_examples = {
    {"scruple shopping December", "the list for the plan called December"},
    {"scruple shopping December --with \"40 films 135 through roll film\"",
     "what forty films more would take and cost"},
    {"scruple shopping December --as csv --out december.csv", "the same as rows for a spreadsheet"},
    {"scruple shopping December --as pdf --paper a5 --out december.pdf", "the same on sheets to take along"},
};
constexpr CommandInfo shopping_command{
    "shopping",
    "[PLAN]",
    "say what has to be mixed and bought for a plan",
    "Counts from the films and sheets of the plan through its processes to chemicals, less what the log says is on "
    "hand, and chooses the packs with which goods and postage together cost the least. The only plan there is need not "
    "be named.",
    shopping_options,
    shopping_examples};

constexpr Options shelf_options = {"--on", "--paper", "--in", "--as", "--out"};
constexpr Examples shelf_examples = {
    {"scruple shelf", "what is there by the last line of the log"},
    {"scruple shelf --on 2026-12-01", "what was, or will be, there on that day, and what is past its date then"},
};
constexpr CommandInfo shelf_command{
    "shelf",
    "",
    "say what is on the shelf by the log: jars, bottles, their age, and what does not add up",
    "Chemicals jar by jar, then solutions bottle by bottle: when each is to be used by as full as it is now, how much "
    "of "
    "its capacity is gone, what it cost, and which jars it was mixed from. The oldest is taken first. What was counted "
    "differently from what the log comes to, and lines that take more than there was, stand at the end.",
    shelf_options,
    shelf_examples};

constexpr Options mixed_options = {"--on", "--note", "--log", "--in", "--as", "--out"};
constexpr Examples mixed_examples = {
    {"scruple mixed Heron part A 1l", "a litre, today"},
    {"scruple mixed Heron part A 1l --on 2026-12-03 --note \"for the club\"", "on another day, with a comment"},
};
constexpr CommandInfo mixed_command{
    "mixed",
    "RECIPE [SECTION] VOLUME",
    "write into the log that a solution was mixed, and say what that took from which jar",
    "The line is put at the end of the log with the latest line, laid out like the line before it. The file is whole "
    "or as it was, and two people may write at once: each waits for the other. Nothing is written while there are "
    "errors in the recipes.",
    mixed_options,
    mixed_examples};

constexpr Examples enter_examples = {
    {"scruple enter processed 4 films 135 in Heron working", "what went through a bath, today"},
    {"scruple enter received \"sodium sulfite (anhydrous)\" 500 g from Tidewater 8.90 EUR", "a new jar"},
    {"scruple enter on shelf metol 18 g --on 2026-12-03", "what was counted, and how far the log was off"},
};
constexpr CommandInfo enter_command{
    "enter",
    "WHAT WORDS",
    "write any other line into the log, and say what it took or corrected",
    "WHAT is `received`, `processed`, `used`, `replenished`, `on shelf` or `discarded`, and WORDS are what follows it "
    "in "
    "a log; `scruple help log` shows such lines. It is written as `scruple mixed` writes.",
    mixed_options,
    enter_examples};

constexpr Options calendar_options = {"--bench", "--paper", "--in", "--as", "--out"};
constexpr Examples calendar_examples = {
    {"scruple calendar December", "which solution to mix on which day of the plan, and into which bottles"},
    {"scruple calendar December --as ics --out december.ics", "the same as events for a calendar program"},
    {"scruple calendar December --as pdf --paper a5 --out calendar.pdf", "the same on sheets for the wall"},
};
constexpr CommandInfo calendar_command{
    "calendar",
    "[PLAN]",
    "say on which days of a plan to mix what",
    "Nothing is used past its keeping time. Of all ways to do that, the one with the fewest days of weighing, then the "
    "fewest mixings. What is made of other solutions and water alone is diluted on the day of its use. The only plan "
    "there is need not be named.",
    calendar_options,
    calendar_examples};

constexpr Options evening_options = {"--from", "--vessels", "--bench", "--paper", "--in", "--as", "--out"};
constexpr Examples evening_examples = {
    {"scruple evening December 2026-12-01 --from 18:00", "what to begin when, by the clock"},
    {"scruple evening December 2026-12-01 --vessels 2", "the same where there are but two vessels to mix in"},
    {"scruple evening December 2026-12-01 --from 18:00 --as pdf --out evening.pdf", "on a sheet, with a picture of it"},
};
constexpr CommandInfo evening_command{
    "evening",
    "[PLAN] DATE",
    "lay out all that is to be mixed on a day as one timeline for one person",
    "What the mixing calendar of the plan has on that day, step by step in the order in which one pair of hands is "
    "done "
    "soonest: while one solution cools, another is weighed. Each recipe's order is kept, what is warmed is used warm, "
    "and each solution has a vessel of its own until it is bottled. How long a step takes is assumed where the recipe "
    "does not say; what is assumed stands at the end.",
    evening_options,
    evening_examples};

constexpr Options tidy_options = {"--check", "--in", "--as", "--out"};
constexpr Examples tidy_examples = {
    {"scruple tidy", "all recipe files of the current folder"},
    {"scruple tidy --check heron.scruple", "would this file change?"},
};
constexpr CommandInfo tidy_command{
    "tidy",
    "[FILE ...]",
    "lay recipe files out in the one usual way",
    "Only blanks and blank lines change, never what a line says. A file with a line that cannot be read is left as it "
    "is. Without FILE, all recipe files of the folder are done.",
    tidy_options,
    tidy_examples};

constexpr Examples chemical_examples = {
    {"scruple chemical washing soda", "by one of its other names"},
};
constexpr CommandInfo chemical_command{
    "chemical",
    "NAME",
    "show what is known of a chemical: forms, formulas, hazards",
    "Looks in the library that is built in and in your own recipes. Any of its names will do.",
    usual_options,
    chemical_examples};

constexpr Options weigh_options = {"--as-form", "--in", "--as", "--out"};
constexpr Examples weigh_examples = {
    {"scruple weigh \"30 g sodium carbonate (anhydrous)\" --as-form monohydrate",
     "the recipe asks for one, the jar holds the other"},
    {"scruple weigh \"1.5 g potassium bromide\" --as-form \"10 % w/v\"", "from the bottle of solution"},
    {"scruple weigh \"20 g potassium hydroxide\" --as-form \"85 % w/w\"", "by the assay on the jar"},
    {"scruple weigh \"10 g potassium carbonate\" --as-form \"sodium carbonate (anhydrous)\"",
     "a like chemical, mole for mole: to be tested first"},
};
constexpr CommandInfo weigh_command{
    "weigh",
    "AMOUNT",
    "say how much of one form, strength or like chemical to take in place of another",
    "Forms, strengths and assays of one chemical are exact: both amounts hold as many moles of it. Another chemical is "
    "exact where the same solution comes of it; otherwise it is one of like function, and is to be tested first.",
    weigh_options,
    weigh_examples};

constexpr Options react_options = {"--with", "--in", "--as", "--out"};
constexpr Examples react_examples = {
    {"scruple react \"Na2CO3 + HCl -> NaCl + H2O + CO2\"", "which numbers balance it, and what a mole of it weighs"},
    {"scruple react \"ascorbic acid + sodium bicarbonate -> sodium ascorbate + water + carbon dioxide\" --with \"10 g "
     "ascorbic acid, 4 g sodium bicarbonate\"",
     "which of them is too little, what they make, and what is left"},
};
constexpr CommandInfo react_command{
    "react",
    "REACTION",
    "balance a reaction, and say what limits it, what it makes and what is left",
    "REACTION has substances with ` + ` between them and an arrow `->`, each a chemical with its form as in a recipe, "
    "or "
    "a formula. Without any numbers the ones that balance it are found; with numbers they must balance. The masses are "
    "those of the reaction run to its end.",
    react_options,
    react_examples};

constexpr Options contents_options = {"--at", "--instead", "--from-shelf", "--variant", "--in", "--as", "--out"};
constexpr Examples contents_examples = {
    {"scruple contents Heron working", "what is in the bath, and which other recipe makes the same"},
};
constexpr CommandInfo contents_command{
    "contents",
    "RECIPE [SECTION]",
    "say what a finished solution holds, and which other solutions are the same",
    "Grams and moles a litre of each chemical, through everything the solution is made of; then its ions, every salt "
    "taken apart whole. Other solutions of the workspace that hold the same to within 1 % are named, also where they "
    "come to it from other forms or other chemicals.",
    contents_options,
    contents_examples};

constexpr Examples settle_examples = {
    {"scruple settle Bittern", "what the page means, and how sure that is"},
    {"scruple settle Bittern --as recipe --out bittern-read.scruple", "the same as a recipe"},
};
constexpr CommandInfo settle_command{
    "settle",
    "PAGE",
    "find out what a formula as it stands in a book means",
    "Every reading of a `printed` block is weighed: whose ounce, whose fluid ounce, which salt, what gr is. The best "
    "is "
    "told with what speaks for it, the others with what they would change, and lines that no reading explains with the "
    "likely slip.",
    usual_options,
    settle_examples};

constexpr Options compare_options = {"--lines", "--git", "--in", "--as", "--out"};
constexpr Examples compare_examples = {
    {"scruple compare main~3", "what has changed since, in the current folder"},
    {"scruple compare heron.scruple heron-2.scruple", "two versions that lie side by side"},
    {"scruple compare v1:recipes v2:recipes", "a folder at two revisions"},
};
constexpr CommandInfo compare_command{
    "compare",
    "OLD [NEW]",
    "say what has changed between two versions, as chemistry and not as text",
    "OLD and NEW are files, folders, or revisions that git knows, such as `main~3` or `HEAD:recipes`; without NEW, it "
    "is "
    "the folder as it stands. Solutions are compared by a litre of each: what they hold, pH, order, temperatures, "
    "waits, "
    "cautions. What is the same solution written otherwise is told as such. A file is read together with the others of "
    "the folder.",
    compare_options,
    compare_examples};

constexpr Options why_options = {"--make",       "--films",   "--sheets", "--area", "--with", "--instead",
                                 "--from-shelf", "--variant", "--bench",  "--in",   "--as",   "--out"};
constexpr Examples why_examples = {
    {"scruple why Heron part A hydroquinone --make 500ml", "from the line of the recipe to the figure on the card"},
};
constexpr CommandInfo why_command{"why",
                                  "RECIPE [SECTION] CHEMICAL",
                                  "show where an amount on a card comes from, line by line",
                                  "Every step from the recipe's line to what the balance reads: units, scaling, molar "
                                  "masses, the reaction where it is made "
                                  "by one, rounding; each with who says so. Each sum can be done again on paper.",
                                  why_options,
                                  why_examples};

constexpr Examples language_server_examples = {
    {"scruple language-server", "for an editor to start; docs/editors.md says how"},
};
constexpr CommandInfo language_server_command{
    "language-server",
    "",
    "answer an editor that speaks the Language Server Protocol",
    "Speaks version 3.17 of the protocol on the standard streams, about the folder that the editor names: what is "
    "wrong as "
    "it is typed, and edits that mend it; what a line holds; names, forms and units to complete; where a name stands.",
    {},
    language_server_examples};

constexpr Examples help_examples = {
    {"scruple help form-not-stated", "what that message means, and what to do"},
    {"scruple help bench", "how a bench is written"},
};
constexpr CommandInfo help_command{
    "help",
    "[TOPIC]",
    "explain a command, a block of the language, or a kind of fault",
    "TOPIC is a command (`card`), a block (`recipe`), or what stands in brackets behind a message (`form-not-stated`). "
    "Without one, all topics are listed. `scruple help names` lists the names in your recipes, and `recipes`, `plans`, "
    "`pages`, `chemicals` or `benches` after it only those.",
    usual_options,
    help_examples};

constexpr std::array command_table{check_command,    card_command,     binder_command,   labels_command,
                                   scaled_command,   shopping_command, calendar_command, evening_command,
                                   shelf_command,    mixed_command,    enter_command,    tidy_command,
                                   chemical_command, weigh_command,    react_command,    contents_command,
                                   compare_command,  settle_command,   why_command,      language_server_command,
                                   help_command};

}  // namespace

std::span<const OptionInfo> all_options() {
    return option_table;
}

const OptionInfo& option(std::string_view name) {
    return *std::find_if(option_table.begin(), option_table.end(), [&](const auto& o) { return o.name == name; });
}

std::span<const CommandInfo> all_commands() {
    return command_table;
}

const CommandInfo* find_command(std::string_view name) {
    for (const CommandInfo& command : command_table)
        if (command.name == name) return &command;
    return nullptr;
}

}  // namespace scruple::cli
