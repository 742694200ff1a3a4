// SPDX-License-Identifier: MIT
// Recipes and their solutions: the facts, and the lines handed to the LineReader.
#include <algorithm>

#include "expected.hpp"
#include "lines.hpp"
#include "meetings.hpp"
#include "passes.hpp"
#include "scruple/check/volumes.hpp"
#include "uses.hpp"

namespace scruple::check {
namespace {

using diagnostics::Kind;
using quantity::Dimension;

/// Facts and lines of one solution. For the lines directly under `recipe` there is a recipe to take its facts, too.
class SectionReader {
  public:
    SectionReader(BlockContext context, Recipe* recipe, Section* section, Id recipe_id)
        : reader_(context.reader), block_(context.block), recipe_(recipe), section_(section) {
        if (section_ == nullptr) return;
        section_->lines.reserve(block_.end - block_.begin);
        lines_.emplace(reader_, *section_, recipe_id);
    }

    void run() {
        const auto before = reader_.out.size();
        each_statement(reader_, block_, [this](const auto& node) { return take(node); });
        if (!lines_) return;
        section_->broken = any_error_since(before);
        lines_->finish();
        const auto mark = made_up_to(*section_, 0);
        section_->makes_stated = mark.has_value();
        section_->makes_ml = mark ? *mark : fill(reader_.model, *section_, 0).made_ml;
    }

  private:
    bool take(const syntax::Words& words) {
        const auto text = reader_.text(words.text);
        using Of = syntax::Words::Of;
        switch (words.of) {
            case Of::caution:
                (recipe_ != nullptr ? recipe_->cautions : section_->cautions).push_back(text);
                return true;
            case Of::note:
                (recipe_ != nullptr ? recipe_->notes : section_->notes).push_back(text);
                return true;
            case Of::assumed:
                return recipe_ != nullptr && (recipe_->assumed.push_back(text), true);
            case Of::source:
                return recipe_ != nullptr && (recipe_->sources.push_back(text), true);
            case Of::is_a:
                return recipe_ != nullptr && take_once(recipe_->is_a, text, "is a");
            case Of::strength:
                return recipe_ != nullptr && take_once(recipe_->strength, text, "strength");
            case Of::lethal:
            case Of::harmful:
            case Of::book:
            case Of::printed_line:
                return false;
        }
        return false;
    }
    bool take_once(std::string_view& into, std::string_view text, std::string_view keyword) {
        if (!into.empty()) report_twice(keyword);
        into = text;
        return true;
    }
    bool take(const syntax::Variants&) { return recipe_ != nullptr; }  // read before the lines: read_variants

    bool take(const syntax::Accept& line) {
        read_acceptance(reader_, line, recipe_ != nullptr ? recipe_->accepts : section_->accepts);
        return true;
    }

    // Facts of a solution; a recipe of parts alone may state them for all.
    bool take(const syntax::Keeps& line) {
        if (section_ == nullptr) return false;
        for (const auto& item : syntax::Tree::run(reader_.tree.keepings, line.items)) {
            const auto seconds = read_duration(reader_, item.time);
            if (!seconds) continue;
            const text::Span span{item.time.low.number.span.begin, item.time.high.span().end};
            section_->keeps.push_back({*seconds, reader_.text(span), reader_.text(item.when)});
        }
        return true;
    }
    bool take(const syntax::UseWithin& line) {
        if (section_ == nullptr) return false;
        if (section_->use_within) report_twice("use within");
        const auto& quantity = reader_.tree.quantities[line.quantity];
        section_->use_within = read_positive(reader_, quantity, Dimension::time);
        section_->use_within_text = reader_.text(quantity.span());
        return true;
    }
    bool take(const syntax::Expect& line);
    bool take(const syntax::Replenish& line);

    // A recipe states its capacity once, for the solution that is used; read after all sections are named.
    bool take(const syntax::Capacity& line);

    [[nodiscard]] bool any_error_since(std::size_t before) const {
        return std::any_of(reader_.out.begin() + static_cast<std::ptrdiff_t>(before), reader_.out.end(),
                           [](const auto& diagnostic) {
                               return diagnostics::info(diagnostic.kind).severity == diagnostics::Severity::error;
                           });
    }

    /// `metol 2 min` reads like a stage of a process; here a weight was meant.
    bool take(const syntax::ProcessEntry& line) {
        if (!lines_) return false;
        if (resolve(reader_, line.bath, recipe_id(), FormNeed::free)) {
            static_cast<void>(read_as(reader_, reader_.tree.ranges[line.time].high, Dimension::mass));
        }
        return true;
    }

    bool take(const syntax::Ingredient& line) { return forward(line); }
    bool take(const syntax::Step& line) { return forward(line); }
    bool take(const syntax::VesselStep& line) { return forward(line); }
    bool take(const syntax::Mix& line) { return forward(line); }
    bool take(const auto&) { return false; }

    template <class T>
    bool forward(const T& line) {
        if (lines_) lines_->take(line);
        return lines_.has_value();
    }

    void report_twice(std::string_view keyword) {
        reader_.report(Kind::said_twice, reader_.statement_span(), {keyword});
    }
    std::optional<CapacityRule> read_rule(const syntax::CapacityItem& item);
    void read_volume_rule(const syntax::CapacityItem& item, CapacityRule& rule);
    void read_longer(const syntax::CapacityItem& item, CapacityRule& rule);
    [[nodiscard]] Id recipe_id() const { return recipe_ != nullptr ? block_.id : block_.recipe; }

    Reader& reader_;
    const Block& block_;
    Recipe* recipe_;
    Section* section_;
    std::optional<LineReader> lines_;
};

bool SectionReader::take(const syntax::Expect& line) {
    if (section_ == nullptr) return false;
    if (auto expectation = read_expectation(reader_, line)) section_->expects.push_back(*std::move(expectation));
    return true;
}

bool SectionReader::take(const syntax::Replenish& line) {
    if (section_ == nullptr) return false;
    if (section_->replenish) report_twice("replenish");
    const auto ml = read_positive(reader_, reader_.tree.quantities[line.quantity], Dimension::volume);
    const auto per = read_per(reader_, line.per);
    if (!ml || !per) return true;
    section_->replenish = Replenishment{*ml, *per, {}, {}};
    if (line.at_most != syntax::nowhere) {
        section_->replenish->at_most_ml =
            read_positive(reader_, reader_.tree.quantities[line.at_most], Dimension::volume);
        if (const auto most = read_per(reader_, line.at_most_per)) section_->replenish->at_most_per_ml = most->ml;
    }
    if (recipe_id() == none) return true;
    const auto& sections = reader_.model.recipes[recipe_id()].sections;
    const auto is_replenisher = [&](Id id) { return reader_.model.sections[id].kind == SectionKind::replenisher; };
    if (std::ranges::none_of(sections, is_replenisher)) reader_.report(Kind::no_replenisher, reader_.statement_span());
    return true;
}

bool SectionReader::take(const syntax::Capacity& line) {
    auto& rules = section_ != nullptr && recipe_ == nullptr ? section_->capacity : recipe_->capacity;
    for (const auto& item : syntax::Tree::run(reader_.tree.capacity_items, line.items)) {
        if (auto rule = read_rule(item)) rules.push_back(std::move(*rule));
    }
    return true;
}

std::optional<CapacityRule> SectionReader::read_rule(const syntax::CapacityItem& item) {
    using What = syntax::CapacityItem::What;
    CapacityRule rule{.what = CapacityRule::What::one_shot, .at_least = item.at_least, .of = none};
    switch (item.what) {
        case What::one_shot:
            return rule;
        case What::reused:
            rule.what = CapacityRule::What::reused;
            return rule;
        case What::from:
            rule.what = CapacityRule::What::source;
            rule.text = reader_.text(item.source);
            return rule;
        case What::volume_per:
        case What::carried:
            read_volume_rule(item, rule);
            break;
        case What::longer:
            read_longer(item, rule);
            break;
        case What::items_per: {
            rule.what = CapacityRule::What::items_per;
            const auto use = read_use(reader_, item.item);
            if (!use) return std::nullopt;
            rule.count = use->count;
            rule.item = use->text;
            rule.item_area_cm2 = use->area_cm2;
            break;
        }
    }
    auto per = read_per(reader_, item.per);
    const bool figure = item.what == What::items_per || rule.ml > 0 || rule.percent > 0 || rule.seconds > 0;
    if (!per || !figure) return std::nullopt;
    rule.per = std::move(*per);
    return rule;
}

void SectionReader::read_volume_rule(const syntax::CapacityItem& item, CapacityRule& rule) {
    using What = syntax::CapacityItem::What;
    rule.what = item.what == What::carried ? CapacityRule::What::carried : CapacityRule::What::volume_per;
    const auto ml = read_positive(reader_, reader_.tree.quantities[item.quantity], Dimension::volume);
    if (ml) rule.ml = *ml;
    if (!item.of.span.empty()) rule.of = resolve_solution(reader_, item.of, recipe_id());
}

/// `10 % longer`, which is no strength and so a loose quantity, or `30 s longer`.
void SectionReader::read_longer(const syntax::CapacityItem& item, CapacityRule& rule) {
    rule.what = CapacityRule::What::longer;
    const auto& by = reader_.tree.quantities[item.quantity];
    rule.text = reader_.text(by.span());
    if (by.unit == quantity::Unit::none && reader_.text(by.unit_span) == "%") {
        if (const auto percent = read_positive(reader_, by.number)) rule.percent = *percent;
        return;
    }
    if (const auto seconds = read_positive(reader_, by, Dimension::time)) rule.seconds = *seconds;
}

}  // namespace

void read_variants(BlockContext context, Recipe& recipe) {
    auto& reader = context.reader;
    const auto& block = context.block;
    for (std::uint32_t i = block.begin; i < block.end; ++i) {
        const auto* variants = std::get_if<syntax::Variants>(&reader.tree.statements[i].node);
        if (variants == nullptr) continue;
        reader.statement = i;
        if (!recipe.variants.empty()) reader.report(Kind::said_twice, reader.statement_span(), {"variants"});
        for (const auto& name : syntax::Tree::run(reader.tree.names, variants->names)) {
            const auto text = reader.text(name);
            if (std::ranges::count(recipe.variants, text) > 0) reader.report(Kind::said_twice, name.span, {text});
            recipe.variants.push_back(text);
        }
    }
}

void read_recipe(BlockContext context, Recipe& recipe, Section* whole) {
    SectionReader(context, &recipe, whole, context.block.id).run();
}

void read_section(BlockContext context, Section& section) {
    SectionReader(context, nullptr, &section, context.block.recipe).run();
}

}  // namespace scruple::check
