// SPDX-License-Identifier: MIT
#include "names.hpp"

#include <algorithm>

#include "scruple/syntax/normal.hpp"

namespace scruple::server {
namespace {

using namespace syntax;  // NOLINT(google-build-using-namespace): the nodes of the tree, all of them

constexpr std::string_view section_words[] = {"part ", "bath ", "working", "replenisher", "stock"};

bool is_section(std::string_view normal) {
    return std::ranges::any_of(section_words, [&](std::string_view word) { return normal.starts_with(word); });
}

bool is_global(Block block) {
    return block == Block::chemical || block == Block::conversion || block == Block::bench || block == Block::format ||
           block == Block::meeting;
}

class Gatherer {
  public:
    Gatherer(const text::Source& source, const Tree& tree) : source_(source), tree_(tree) {}

    Names all() {
        for (std::uint32_t i = 0; i < tree_.statements.size(); ++i) {
            statement_ = i;
            std::visit([this](const auto& node) { see(node); }, tree_.statements[i].node);
        }
        return std::move(names_);
    }

  private:
    // ---- what defines ----

    void see(const Heading& heading) {
        block_ = heading.block;
        names_.global = names_.global || is_global(block_);
        if (heading.bad) return;
        const Name& name = heading.title.name;
        switch (block_) {
            case Block::recipe:
                recipe_ = key(Space::substance, name);
                recipe_shown_ = source_.at(name.span);
                return define(name.span, recipe_);
            case Block::part:
                return section("part ", name);
            case Block::bath:
                return section("bath ", name);
            case Block::working:
                return section("working", name);
            case Block::replenisher:
                return section("replenisher", name);
            case Block::chemical:
                chemical_ = key(Space::substance, name);
                return define(name.span, chemical_);
            case Block::conversion:
                return mention(heading.title);
            case Block::bench:
                return define(name.span, key(Space::bench, name));
            case Block::supplier:
                return define(name.span, key(Space::supplier, name));
            case Block::process:
                return define(name.span, key(Space::process, name));
            case Block::plan:
                return define(name.span, key(Space::plan, name));
            case Block::format:
                return define(name.span, key(Space::format, name));
            case Block::meeting:
                return define(name.span, key(Space::meeting, name));
            case Block::printed:
                return define(name.span, key(Space::printed, name));
            case Block::log:
                return;
        }
    }

    void section(std::string_view word, const Name& label) {
        if (recipe_.empty()) return;
        std::string words(word);
        if (!label.span.empty())
            words += (word.ends_with(' ') ? "" : " ") + syntax::normal_name(source_.at(label.span));
        const text::Span whole = tree_.statements[statement_].span;
        define(label.span.empty() ? whole : label.span, recipe_ + " " + words);
        names_.all.back().shown = recipe_shown_ + " " + std::string(source_.at(whole));
    }

    void see(const Also& also) {
        if (block_ != Block::chemical || chemical_.empty()) return;
        for (const Substance& it : Tree::run(tree_.substances, also.names)) {
            define(it.name.span, key(Space::substance, it.name));
            names_.all.back().other_name = true;
            names_.all.back().of = chemical_;
        }
    }

    // ---- what mentions ----

    void see(const Ingredient& it) {
        mention(it.what);
        mention(it.per_substance);
        for (const Detail& detail : Tree::run(tree_.details, it.details))
            if (detail.what == Detail::What::by_conversion) mention(detail.words);
    }
    void see(const Bare& it) { mention(it.what); }
    void see(const Mix& it) {
        for (const Name& name : Tree::run(tree_.names, it.what)) mention(name);
    }
    void see(const Capacity& it) {
        for (const CapacityItem& item : Tree::run(tree_.capacity_items, it.items)) mention(item.of);
    }
    void see(const Expect& it) { mention(it.of); }
    void see(const Excess& it) { mention(it.of); }
    void see(const SaltOf& it) { mention(it.acid); }
    void see(const Reaction& it) {
        for (const Slice side : {it.left, it.right})
            for (const Term& term : Tree::run(tree_.terms, side)) mention(term.substance);
    }
    void see(const Dissolves& it) { mention(Name{it.solvent, false}); }
    void see(const Meets& it) {
        for (const Met& met : Tree::run(tree_.met, it.any))
            if (!met.role) mention(met.what);
    }
    void see(const Accept& it) { mention(it.meeting, Space::meeting); }
    void see(const LogEntry& it) {
        mention(it.of);
        if (it.what == LogEntry::What::processed) mention(it.in_or_from);
        if (it.what == LogEntry::What::received) mention(it.in_or_from, Space::supplier);
    }
    void see(const PriceEntry& it) { mention(it.of); }
    void see(const ProcessEntry& it) { mention(it.bath); }
    void see(const PlanEntry& it) { mention(it.process, Space::process); }
    template <class Other>
    void see(const Other& /*no name stands in it*/) {}

    void mention(const Substance& it) {
        mention(it.name);
        if (it.form != nowhere && !tree_.forms[it.form].solvent.empty())
            mention(Name{tree_.forms[it.form].solvent, false});
    }

    void mention(const Name& name, Space space = Space::substance) {
        if (name.span.empty()) return;
        const std::string normal = syntax::normal_name(source_.at(name.span));
        const bool local = space == Space::substance && is_section(normal) && in_a_recipe();
        add({name.span, local ? recipe_ + " " + normal : key_of(space, source_.at(name.span))});
        const bool plain_list = block_ == Block::log || block_ == Block::plan || block_ == Block::supplier;
        names_.all.back().by_name_only = plain_list;
    }

    [[nodiscard]] bool in_a_recipe() const {
        const bool of_recipe = block_ == Block::recipe || block_ == Block::part || block_ == Block::bath ||
                               block_ == Block::working || block_ == Block::replenisher;
        return of_recipe && !recipe_.empty();
    }

    [[nodiscard]] std::string key(Space space, const Name& name) const { return key_of(space, source_.at(name.span)); }

    void define(text::Span span, std::string key) {
        add({span, std::move(key)});
        names_.all.back().defines = true;
        names_.all.back().block = block_;
        names_.all.back().shown = source_.at(span);
    }

    void add(Occurrence it) {
        it.statement = statement_;
        names_.all.push_back(std::move(it));
    }

    const text::Source& source_;
    const Tree& tree_;
    Names names_;
    Block block_ = Block::log;
    std::string recipe_, recipe_shown_, chemical_;
    std::uint32_t statement_ = 0;
};

}  // namespace

Names names_of(const text::Source& source, const Tree& tree) {
    return Gatherer(source, tree).all();
}

std::string key_of(Space space, std::string_view written) {
    return static_cast<char>('0' + static_cast<int>(space)) + syntax::normal_name(written);
}

std::vector<std::string> meanings_of(const std::string& key) {
    std::vector<std::string> all{key};
    for (std::size_t blank = key.find(' '); blank != std::string::npos; blank = key.find(' ', blank + 1))
        if (is_section(std::string_view(key).substr(blank + 1))) all.push_back(key.substr(0, blank));
    return all;
}

}  // namespace scruple::server
