// SPDX-License-Identifier: MIT
// First pass: which blocks there are, and which names they define.
#include <algorithm>

#include "blocks.hpp"
#include "scruple/syntax/normal.hpp"

namespace scruple::check {
namespace {

using diagnostics::Kind;
using SyntaxBlock = syntax::Block;
using syntax::is_of_recipe;

class Definer {
  public:
    Definer(const Workspace& workspace, text::FileId first, Model& model, std::vector<diagnostics::Diagnostic>& out)
        : workspace_(workspace), first_(first), model_(model), out_(out) {}

    Defined run() {
        const auto files = static_cast<text::FileId>(workspace_.trees.size());
        reserve();
        for (text::FileId file = first_; file < files; ++file) take(file);
        for (const Id id : with_short_names_) name_whole(model_.recipes[id]);
        model_.water = chemical_called("water");
        defined_.files.push_back(here());
        return std::move(defined_);
    }

  private:
    struct Room {
        std::size_t blocks = 0, recipes = 0, sections = 0;

        void add(SyntaxBlock block, bool may_mix) {
            ++blocks;
            if (block == SyntaxBlock::recipe) ++recipes;
            if (may_mix || is_of_recipe(block) || block == SyntaxBlock::conversion) ++sections;
        }
    };

    /// Growing these by and by would move and hash again what is in them.
    void reserve() {
        Room room;
        for (auto file = first_; file < workspace_.trees.size(); ++file) add_room(file, room);
        defined_.blocks.reserve(room.blocks + workspace_.trees.size());
        defined_.files.reserve(workspace_.trees.size() + 1);
        model_.sections.reserve(model_.sections.size() + room.sections);
        model_.recipes.reserve(model_.recipes.size() + room.recipes);
        // With twice the room in a table few names share a place there.
        model_.section_names.reserve(model_.section_names.size() + 2 * room.blocks);
        model_.recipe_names.reserve(model_.recipe_names.size() + 2 * room.recipes);
    }

    void add_room(text::FileId file, Room& room) const {
        if (const auto* outline = workspace_.outline(file)) {
            for (const auto& block : outline->blocks) room.add(block.block, block.mixes);
            return;
        }
        const auto& tree = *workspace_.trees[file];
        for (const auto heading : tree.headings) {
            const auto block = std::get<syntax::Heading>(tree.statements[heading].node).block;
            room.add(block, block == SyntaxBlock::recipe);
        }
    }

    // ---- cutting ----

    void take(text::FileId file) {
        file_ = file;
        defined_.files.resize(file, here());
        defined_.files.push_back(here());
        if (const auto* outline = workspace_.outline(file))
            cut(*outline);
        else
            cut(syntax::outline_of(*workspace_.trees[file]));
    }

    [[nodiscard]] FileBegin here() const {
        return {static_cast<std::uint32_t>(defined_.blocks.size()), static_cast<Id>(model_.recipes.size()),
                static_cast<Id>(model_.sections.size())};
    }

    void cut(const syntax::Outline& outline) {
        defined_.blocks.push_back({.file = file_, .end = outline.before});
        for (const auto& outlined : outline.blocks) {
            Block block{.file = file_,
                        .heading = outlined.statement,
                        .begin = outlined.statement + 1,
                        .end = outlined.end,
                        .kind = outlined.block};
            open(block, outlined);
            // A recipe with lines of its own, before any part, is a solution itself.
            if (outlined.mixes && block.id != none)
                add_section({.kind = SectionKind::whole, .recipe = block.id, .place = model_.recipes[block.id].place});
            defined_.blocks.push_back(block);
        }
        leave_recipe();
    }

    void leave_recipe() {
        if (recipe_ != none && has_short_names(model_.recipes[recipe_])) with_short_names_.push_back(recipe_);
        recipe_ = none;
    }

    // ---- short names: a recipe's own name for its only solution, `stock` for its own lines ----

    /// Judged while the recipe is at hand, and named after all files, since names that are written out come first.
    /// A `working` without a label is called so already.
    [[nodiscard]] bool has_short_names(const Recipe& recipe) const {
        const auto is_short = [this](Id id) {
            const auto& section = model_.sections[id];
            return section.kind == SectionKind::whole ||
                   (section.kind == SectionKind::working && !section.label.empty());
        };
        return !recipe.normal.empty() &&
               (recipe.sections.size() == 1 || std::ranges::any_of(recipe.sections, is_short));
    }

    void name_whole(const Recipe& recipe) {
        const Id first = recipe.sections.front();
        if (model_.sections[first].kind == SectionKind::whole) {
            model_.section_names.try_emplace(recipe.normal, first);
            model_.section_names.try_emplace(key(recipe.normal, "stock"), first);
        } else if (recipe.sections.size() == 1) {
            model_.section_names.try_emplace(recipe.normal, first);
        }
        name_only_working(recipe);
    }

    void name_only_working(const Recipe& recipe) {
        Id working = none;
        for (const Id id : recipe.sections) {
            if (model_.sections[id].kind != SectionKind::working) continue;
            if (working != none) return;
            working = id;
        }
        if (working != none) model_.section_names.try_emplace(key(recipe.normal, "working"), working);
    }

    // ---- opening: one entry in the model a block ----

    void open(Block& block, const syntax::OutlinedBlock& heading) {
        place_ = {file_, heading.span, block.heading};
        if (!is_of_recipe(heading.block)) leave_recipe();
        block.recipe = recipe_;
        const auto title = text(heading.title);
        if (!heading.size.empty()) {
            report(Kind::heading_with_amount, heading.size, {text(heading.size), keyword(heading.span), title});
        } else if (heading.bad) {
            report(Kind::bad_title, heading.span, {keyword(heading.span)});
            if (heading.block == SyntaxBlock::recipe) open_recipe(block, {}, {});
            return;
        }
        syntax::normal_name(title, normal_);
        open_named(block, title);
    }

    void open_named(Block& block, std::string_view title) {
        switch (block.kind) {
            case SyntaxBlock::recipe:
                open_recipe(block, title, normal_);
                break;
            case SyntaxBlock::part:
                open_section(block, SectionKind::part, title);
                break;
            case SyntaxBlock::bath:
                open_section(block, SectionKind::bath, title);
                break;
            case SyntaxBlock::working:
                open_section(block, SectionKind::working, title);
                break;
            case SyntaxBlock::replenisher:
                open_section(block, SectionKind::replenisher, title);
                break;
            case SyntaxBlock::chemical:
                open_chemical(block, title);
                break;
            case SyntaxBlock::conversion:
                open_conversion(block);
                break;
            case SyntaxBlock::bench:
                block.id = enter(model_.benches, model_.bench_names, title);
                break;
            case SyntaxBlock::supplier:
                block.id = enter(model_.suppliers, model_.supplier_names, title);
                break;
            case SyntaxBlock::log:
                break;
            case SyntaxBlock::process:
                block.id = enter(model_.processes, model_.process_names, title);
                break;
            case SyntaxBlock::plan:
                block.id = enter(model_.plans, model_.plan_names, title);
                break;
            case SyntaxBlock::format:
                open_in_place(block, model_.formats, model_.format_names, title);
                break;
            case SyntaxBlock::meeting:
                open_in_place(block, model_.meetings, model_.meeting_names, title);
                break;
            case SyntaxBlock::printed:
                block.id = enter(model_.printed, model_.printed_names, title);
                break;
        }
    }

    template <class T>
    Id enter(std::vector<T>& all, std::unordered_map<std::string, Id>& names, std::string_view title) {
        const Id id = static_cast<Id>(all.size());
        all.push_back({});
        all.back().name = title;
        all.back().place = place_;
        if (const auto [at, fresh] = names.try_emplace(normal_, id); !fresh) report_twice(title, all[at->second].place);
        return id;
    }

    void open_recipe(Block& block, std::string_view title, const std::string& normal) {
        recipe_ = block.id = static_cast<Id>(model_.recipes.size());
        model_.recipes.push_back({.name = title, .normal = normal, .place = place_, .built_in = built_in()});
        if (normal.empty()) return;
        if (const auto [at, fresh] = model_.recipe_names.try_emplace(normal, block.id); !fresh) {
            report_twice(title, model_.recipes[at->second].place);
        }
    }

    void open_section(Block& block, SectionKind kind, std::string_view label) {
        if (recipe_ == none) {
            report(Kind::line_out_of_place, place_.span,
                   {"a `" + keyword(place_.span) + "` heading", "a file before any `recipe`",
                    "a `recipe` heading above it"});
            return;
        }
        const auto id = static_cast<Id>(model_.sections.size());
        Section section{.kind = kind, .recipe = recipe_, .label = label, .place = place_};
        if (const auto& recipe = model_.recipes[recipe_]; !recipe.normal.empty()) {
            syntax::normal_name(section_words(section), normal_);
            const auto [at, fresh] = model_.section_names.try_emplace(key(recipe.normal, normal_), id);
            if (!fresh && model_.sections[at->second].recipe == recipe_) {
                report_repeated_section(section, model_.sections[at->second]);
                return;
            }
        }
        block.id = add_section(std::move(section));
    }

    /// Good until the next call.
    const std::string& key(const std::string& recipe, std::string_view words) {
        key_ = recipe;
        key_ += ' ';
        key_ += words;
        return key_;
    }

    /// `part A` below `working` is mostly an ingredient whose amount was forgotten.
    void report_repeated_section(const Section& section, const Section& first) {
        const auto words = section_words(section);
        const bool ingredient = section.kind == SectionKind::part && used_working();
        const Kind kind = ingredient ? Kind::forgotten_amount : Kind::defined_twice;
        report(kind, place_.span, {words});
        out_.back().related.push_back({first.place.file, first.place.span, "first here"});
    }

    [[nodiscard]] bool used_working() const {
        for (const Id id : model_.recipes[recipe_].sections) {
            if (model_.sections[id].kind == SectionKind::working) return true;
        }
        return false;
    }

    Id add_section(Section&& section) {
        const Id id = static_cast<Id>(model_.sections.size());
        model_.recipes[section.recipe].sections.push_back(id);
        model_.sections.push_back(std::move(section));
        return id;
    }

    // ---- chemicals: several names each, and a user's block takes the library's place ----

    void open_chemical(Block& block, std::string_view title) {
        const auto found = model_.chemical_names.find(normal_);
        const bool overrides =
            found != model_.chemical_names.end() && model_.chemicals[found->second.first].built_in && !built_in();
        block.id = overrides ? found->second.first : static_cast<Id>(model_.chemicals.size());
        if (!overrides) model_.chemicals.push_back({});
        model_.chemicals[block.id] = Chemical{.name = title, .place = place_, .built_in = built_in()};
        name_chemical(title, normal_, block.id);
    }

    void name_chemical(std::string_view title, const std::string& normal, Id id) {
        const auto [at, fresh] = model_.chemical_names.try_emplace(normal, id, none);
        if (fresh || at->second.first == id) return;
        const auto& other = model_.chemicals[at->second.first];
        if (other.built_in && !built_in()) {
            at->second = {id, none};
        } else {
            report_twice(title, other.place);
        }
    }

    void open_conversion(Block& block) {
        block.id = static_cast<Id>(model_.conversions.size());
        model_.conversions.push_back(
            {.section = static_cast<Id>(model_.sections.size()), .place = place_, .built_in = built_in()});
        model_.sections.push_back({.kind = SectionKind::conversion, .place = place_});
    }

    /// A block of the user's takes the place of one in the library.
    template <class T>
    void open_in_place(Block& block, std::vector<T>& all, std::unordered_map<std::string, Id>& names,
                       std::string_view title) {
        const auto found = names.find(normal_);
        if (found == names.end() || !all[found->second].built_in || built_in()) {
            block.id = enter(all, names, title);
        } else {
            block.id = found->second;
            all[block.id] = {};
            all[block.id].name = title;
            all[block.id].place = place_;
        }
        all[block.id].built_in = built_in();
    }

    // ---- helpers ----

    [[nodiscard]] Id chemical_called(const std::string& normal) const {
        const auto found = model_.chemical_names.find(normal);
        return found == model_.chemical_names.end() ? none : found->second.first;
    }

    [[nodiscard]] bool built_in() const { return file_ < workspace_.built_in; }
    [[nodiscard]] std::string_view text(text::Span span) const { return workspace_.sources[file_].at(span); }

    [[nodiscard]] std::string keyword(text::Span span) const {
        const auto line = text(span);
        if (line.starts_with("conversion")) return "conversion of";
        return std::string(line.substr(0, line.find_first_of(" \t")));
    }

    void report(Kind kind, text::Span span, std::initializer_list<std::string_view> arguments) {
        out_.push_back(diagnostics::make(kind, file_, span, arguments));
    }

    void report_twice(std::string_view title, const Place& first) {
        report(Kind::defined_twice, place_.span, {title});
        out_.back().related.push_back({first.file, first.span, "first here"});
    }

    const Workspace& workspace_;
    text::FileId first_;
    Model& model_;
    std::vector<diagnostics::Diagnostic>& out_;
    Defined defined_;
    std::vector<Id> with_short_names_;  ///< of recipes
    text::FileId file_ = 0;
    Id recipe_ = none;
    Place place_;
    std::string normal_, key_;  // of the heading at hand; kept for their room
};

}  // namespace

Defined define(const Workspace& workspace, text::FileId first, Model& model,
               std::vector<diagnostics::Diagnostic>& out) {
    return Definer(workspace, first, model, out).run();
}

bool has_parts(const std::vector<Block>& all, const Block& block) {
    const auto* next = &block + 1;
    return block.kind == SyntaxBlock::recipe && block.id != none && next != all.data() + all.size() &&
           next->recipe == block.id;
}

}  // namespace scruple::check
