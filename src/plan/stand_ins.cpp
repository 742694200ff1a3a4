// SPDX-License-Identifier: MIT
// What does a like thing and is another chemical: named, never taken.
#include <fmt/format.h>

#include <algorithm>
#include <optional>

#include "like_function.hpp"
#include "scruple/plan/figure.hpp"
#include "ways.hpp"

namespace scruple::plan {

namespace {

using check::Chemical;
using check::Id;
using check::Model;

constexpr std::size_t most_named = 4;

class Namer {
  public:
    Namer(const Model& model, const Shelf& shelf, const Amount& wanted)
        : model_(model), shelf_(shelf), wanted_(wanted), asked_(model.chemicals[wanted.ware.chemical]) {}

    std::vector<std::string> names() {
        for (Id id = 0; id < model_.chemicals.size() && names_.size() < most_named; ++id)
            if (id != wanted_.ware.chemical) name(id);
        return std::move(names_);
    }

  private:
    void name(Id id) {
        const Chemical& other = model_.chemicals[id];
        const auto form = form_there(id);
        if (!form) return;
        const Ware ware{id, *form, std::nullopt, false};
        const auto likeness = likeness_of(asked_, other);
        if (!likeness) return;
        switch (likeness->by) {
            case Likeness::By::anion:
                names_.push_back(fmt::format("{} {}, as many moles of {}: like function, test it first",
                                             ware_words(model_, ware),
                                             amount_words(ware, *salt_of(asked_), *salt_of(other)), likeness->word));
                break;
            case Likeness::By::family:
                names_.push_back(fmt::format("{}, {} alkali as well: like function, test it first; no figure follows",
                                             ware_words(model_, ware), likeness->word));
                break;
            case Likeness::By::use:  // too many to name, and too far to offer unasked
                break;
        }
    }

    /// The first form on hand, or the first of all where nothing is known of the shelf.
    [[nodiscard]] std::optional<Id> form_there(Id id) const {
        if (shelf_.stock == nullptr) return Id(0);
        for (const auto& [ware, measure] : shelf_.stock->wares)
            if (ware.chemical == id && measure > 0 && !ware.strength) return ware.form;
        return std::nullopt;
    }

    [[nodiscard]] std::string amount_words(const Ware& ware, const Salt& mine, const Salt& its) const {
        const auto wanted = moles_held(model_, wanted_.ware), held = moles_held(model_, ware);
        if (!wanted || !held) return {};
        return plain_grams(wanted_.measure * *wanted * mine.anions / its.anions / *held).with_unit();
    }

    const Model& model_;
    const Shelf& shelf_;
    const Amount& wanted_;
    const Chemical& asked_;
    std::vector<std::string> names_;
};

}  // namespace

std::vector<std::string> stand_ins(const Model& model, const Shelf& shelf, const Amount& wanted) {
    return Namer(model, shelf, wanted).names();
}

}  // namespace scruple::plan
