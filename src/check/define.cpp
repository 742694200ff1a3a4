// SPDX-License-Identifier: MIT
// First pass: which blocks there are, and which names they define.
#include <algorithm>

#include "blocks.hpp"
#include "scruple/syntax/normal.hpp"

namespace scruple::check {
namespace {

using diagnostics::Kind;
using SyntaxBlock = syntax::Block;

class Definer {
  public:
    Definer(const Workspace& workspace, text::FileId first, Model& model, std::vector<diagnostics::Diagnostic>& out)
        : workspace_(workspace), first_(first), model_(model), out_(out) {}

    std::vector<Block> run() {
        reserve();
        for (text::FileId file = first_; file < workspace_.trees.size(); ++file) cut(file);
        for (const Id id : with_short_names_) name_whole(model_.recipes[id]);
        model_.water = chemical_called("water");
        return std::move(blocks_);
    }

  private:
    /// Growing these by and by would move and hash again what is in them.
    void reserve() {
        std::size_t headings = 0;
        for (const auto& tree : workspace_.trees) headings += tree.headings.size();
        blocks_.reserve(headings + workspace_.trees.size());
        model_.sections.reserve(headings);
        // Most files hold one recipe. With twice the room in a table few names share a place there.
        model_.section_names.reserve(2 * headings);
        model_.recipes.reserve(workspace_.trees.size());
        model_.recipe_names.reserve(2 * workspace_.trees.size());
    }

    // ---- cutting ----

    void cut(text::FileId file) {
        file_ = file;
        const auto& statements = workspace_.trees[file].statements;
        Block block{.file = file};
        for (const auto i : workspace_.trees[file].headings) {
            const auto& heading = std::get<syntax::Heading>(statements[i].node);
            close(block, i);
            block = Block{.file = file, .heading = i, .begin = i + 1, .kind = heading.block};
            open(block, heading, statements[i].span);
        }
        close(block, static_cast<std::uint32_t>(statements.size()));
        leave_recipe();
    }

    void leave_recipe() {
        if (recipe_ != none && has_short_names(model_.recipes[recipe_])) with_short_names_.push_back(recipe_);
        recipe_ = none;
    }

    void close(Block& block, std::uint32_t end) {
        block.end = end;
        if (block.kind == SyntaxBlock::recipe && block.id != none && mixes_something(block)) {
            const auto& place = model_.recipes[block.id].place;
            add_section({.kind = SectionKind::whole, .recipe = block.id, .place = place});
        }
        blocks_.push_back(block);
    }

    /// A recipe with lines of its own, before any part, is a solution itself.
    [[nodiscard]] bool mixes_something(const Block& block) const {
        const auto& statements = workspace_.trees[block.file].statements;
        for (std::uint32_t i = block.begin; i < block.end; ++i) {
            const auto& node = statements[i].node;
            if (std::holds_alternative<syntax::Ingredient>(node) || std::holds_alternative<syntax::Mix>(node))
                return true;
        }
        return false;
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

    void open(Block& block, const syntax::Heading& heading, text::Span span) {
        place_ = {file_, span, block.heading};
        const bool nested = heading.block == SyntaxBlock::part || heading.block == SyntaxBlock::bath ||
                            heading.block == SyntaxBlock::working || heading.block == SyntaxBlock::replenisher;
        if (!nested) leave_recipe();
        block.recipe = recipe_;
        const auto title = text(heading.title.name.span);
        if (!heading.size.empty()) {
            report(Kind::heading_with_amount, heading.size, {text(heading.size), keyword(span), title});
        } else if (heading.bad) {
            report(Kind::bad_title, span, {keyword(span)});
            if (heading.block == SyntaxBlock::recipe) open_recipe(block, {}, {});
            return;
        }
        syntax::normal_name(title, normal_);
        open_named(block, heading, title);
    }

    void open_named(Block& block, const syntax::Heading& heading, std::string_view title) {
        switch (heading.block) {
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
    std::vector<Block> blocks_;
    std::vector<Id> with_short_names_;  ///< of recipes
    text::FileId file_ = 0;
    Id recipe_ = none;
    Place place_;
    std::string normal_, key_;  // of the heading at hand; kept for their room
};

}  // namespace

std::vector<Block> define(const Workspace& workspace, text::FileId first, Model& model,
                          std::vector<diagnostics::Diagnostic>& out) {
    return Definer(workspace, first, model, out).run();
}

}  // namespace scruple::check
