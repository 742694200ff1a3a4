// SPDX-License-Identifier: MIT
#include "ingredients.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "room.hpp"
#include "words.hpp"

namespace scruple::plan {

using check::Addition;
using check::Exact;
using check::Id;
using check::Model;
using check::Section;

namespace {

// A plan names a bath and not a variant of its recipe.
constexpr std::size_t variant = 0;

const Exact& share_of(const Addition& addition) {
    return addition.shares.size() > variant ? addition.shares[variant] : addition.shares.front();
}

/// One section's lines, for a share of the batch as written.
class Lines {
  public:
    Lines(const Model& model, const Section& section, const Exact& ml, const Shelf& shelf)
        : model_(model), section_(section), scale_(ml / section.makes_ml), shelf_(shelf) {}

    Ingredients read() {
        for (const auto& line : section_.lines)
            if (const auto* addition = std::get_if<Addition>(&line); addition && counts(*addition)) add(*addition);
        say_variant();
        return std::move(result_);
    }

  private:
    void say(const std::string& sentence) { say_once(result_.warnings, sentence); }

    [[nodiscard]] std::string name_of(const Addition& addition) const {
        if (addition.solution != check::none) return check::shown_name(model_, addition.solution);
        return check::shown_name(model_.chemicals[addition.chemical], addition.form);
    }

    [[nodiscard]] std::string here() const {
        return section_.recipe == check::none ? std::string("a conversion")
                                              : std::string(model_.recipes[section_.recipe].name);
    }

    bool counts(const Addition& addition) {
        if (addition.chemical == check::none && addition.solution == check::none) return false;
        if (is_water(model_, addition) && addition.grade.empty()) return false;
        if (addition.how == Addition::How::the_rest) return false;  // The first piece stands for the whole weighing.
        if (addition.optional) {
            say(fmt::format("{} is optional in {} and is not counted", name_of(addition), here()));
            return false;
        }
        if (addition.how == Addition::How::unknown || addition.shares.empty()) {
            say(fmt::format("how much {} goes into {} is not known, and it is not counted", name_of(addition), here()));
            return false;
        }
        return true;
    }

    [[nodiscard]] Exact measure_of(const Addition& addition) const {
        if (addition.how != Addition::How::to_make) return share_of(addition) * scale_;
        const Exact wanting = share_of(addition) - room_of_lines(model_, section_, variant);
        return std::max(wanting, Exact()) * scale_;
    }

    void add(const Addition& addition) {
        const Exact measure = measure_of(addition);
        if (addition.solution != check::none) {
            result_.list.push_back({addition.solution, measure, {}, {}, {}});
            return;
        }
        if (!addition.solvent.empty())
            say(fmt::format("the {} in which {} is dissolved is not counted", addition.solvent, name_of(addition)));
        const Amount amount = counted(model_, addition, measure);
        if (addition.by_conversion && convert(addition, amount)) return;
        result_.list.push_back({check::none, {}, amount, addition.grade, {}});
    }

    bool convert(const Addition& addition, const Amount& product) {
        const std::string name = ware_words(model_, product.ware);
        for (const Way& way : conversions_to(model_, shelf_, product)) {
            if (!is_allowed(model_, addition, way)) continue;
            for (const Amount& reagent : way.reagents)
                result_.list.push_back({check::none, {}, reagent, {}, " for " + name});
            return true;
        }
        say(fmt::format("no conversion gives {}, and it is counted itself", name));
        return false;
    }

    void say_variant() {
        if (section_.recipe == check::none) return;
        const auto& recipe = model_.recipes[section_.recipe];
        if (recipe.variants.empty()) return;
        const bool varies = std::ranges::any_of(section_.lines, [](const check::Line& line) {
            const auto* addition = std::get_if<Addition>(&line);
            return addition != nullptr && addition->shares.size() > 1;
        });
        if (varies) say(fmt::format("{} has variants, and {} is counted", recipe.name, recipe.variants.front()));
    }

    const Model& model_;
    const Section& section_;
    Exact scale_;
    const Shelf& shelf_;
    Ingredients result_;
};

/// One section on the way down, and the lines of it that are still to be followed, from the last to the first.
struct Frame {
    Id section;
    std::size_t lines_left;
};

/// Backwards, since what is finished last comes first. With a list of its own: chains of recipes may be long.
void visit(const Model& model, Id first, std::set<Id>& seen, std::vector<Id>& finished) {
    if (!seen.insert(first).second) return;
    std::vector<Frame> way{{first, model.sections[first].lines.size()}};
    while (!way.empty()) {
        auto& [section, lines_left] = way.back();
        if (lines_left == 0) {
            finished.push_back(section);
            way.pop_back();
            continue;
        }
        const auto* addition = std::get_if<Addition>(&model.sections[section].lines[--lines_left]);
        if (addition == nullptr || addition->solution == check::none || !seen.insert(addition->solution).second)
            continue;
        way.push_back({addition->solution, model.sections[addition->solution].lines.size()});
    }
}

}  // namespace

void say_once(std::vector<std::string>& said, const std::string& sentence) {
    if (std::ranges::find(said, sentence) == said.end()) said.push_back(sentence);
}

Ingredients ingredients_of(const Model& model, Id section, const Exact& ml, const Shelf& shelf) {
    const Section& batch = model.sections[section];
    if (batch.makes_ml <= 0) {
        return {{},
                {fmt::format("how much {} its lines make is not known, and they are not counted",
                             check::shown_name(model, section))}};
    }
    return Lines(model, batch, ml, shelf).read();
}

std::map<Id, Exact> shares_of(const Model& model, Id section) {
    std::map<Id, Exact> shares{{section, 1}};
    for (const Id made : in_order_of_making(model, {section})) {
        const Exact share = shares[made];
        for (const auto& ingredient : ingredients_of(model, made, share).list)
            if (ingredient.solution != check::none) shares[ingredient.solution] += ingredient.ml;
    }
    return shares;
}

std::vector<Id> in_order_of_making(const Model& model, const std::vector<Id>& sections) {
    std::set<Id> seen;
    std::vector<Id> finished;
    std::for_each(sections.rbegin(), sections.rend(), [&](Id section) { visit(model, section, seen, finished); });
    std::ranges::reverse(finished);
    return finished;
}

}  // namespace scruple::plan
