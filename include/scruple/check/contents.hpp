// SPDX-License-Identifier: MIT
// How much of what: doses in grams, millilitres and moles, and what a finished solution holds.
#pragma once

#include <map>
#include <memory>

#include "scruple/check/model.hpp"

namespace scruple::check {

/// One addition in numbers, for one variant and the batch as written. A divided weighing is one dose: the
/// line that divides it (part_now) stands for the whole, and the line that adds `the rest` for nothing.
struct Dose {
    Exact grams;    ///< of the stated form, without the water or solvent of a percent solution
    Exact ml;       ///< as measured out; 0 for a solid
    Exact room_ml;  ///< what it adds to the volume, solids by estimate
    bool room_estimated = false;
    double mol = 0;  ///< of the formula of the form; 0 for another solution
};

/// `variant` indexes the recipe's variants (0 where it has none). The amount must be known
/// (not `unknown`, not `to_make`: the caller knows how much is wanting).
[[nodiscard]] Dose dose(const Model& model, const Addition& addition, std::size_t variant);
/// The same for a given measure (g, ml, mol or drops by addition.by), as after scaling.
[[nodiscard]] Dose dose_of(const Model& model, const Addition& addition, const Exact& measure);

/// The share of a form, as sold, that is the substance: 0.995 for a 99.5 % w/w acid.
[[nodiscard]] Exact purity(const Form& form);
/// The share of an addition's grams (Dose::grams) that is the substance; all of them where its strength is said.
[[nodiscard]] Exact purity(const Model& model, const Addition& addition);
/// How strong a chemical in solution (addition.strength) is, whatever its strength is said in: the percentage by weight
/// or by volume, or else the grams in 100 ml.
[[nodiscard]] Exact parts_in_a_hundred(const Model& model, const Addition& addition);

/// What a dissolved gram of a solid takes up, in ml. An estimate, good to a few tenths of a ml a gram: what the
/// chemical's `takes up` says, else 18.0 ml a mole of water of crystallisation (its volume as water), and for
/// the rest 0.30 ml a gram of a salt (a chemical with `ions`) and 0.75 ml a gram of anything else: the middle
/// of apparent molar volumes at 25 °C in handbooks (Millero, Chem. Rev. 71 (1971) 147, recalled).
[[nodiscard]] Exact room_of_gram(const Chemical& chemical, const Form& form);

/// Density that applies to an addition: of its form as sold, or of its strength; nullopt where unknown.
[[nodiscard]] std::optional<Exact> density_of(const Chemical& chemical, Id form,
                                              const std::optional<Strength>& strength);

/// Whether grams can be known without a density.
enum class DensityNeed : std::uint8_t { nothing, of_form, of_solution };
[[nodiscard]] DensityNeed density_need(const Chemical& chemical, const std::optional<Strength>& strength,
                                       bool by_volume);
/// `; known are those of …`: the strengths and forms whose densities are known; nothing where there are none.
[[nodiscard]] std::string known_densities(const Chemical& chemical);

/// What an addition puts into its vessel when its line comes: for a divided weighing the piece of now (a
/// pinch counts as nothing) or the rest, else the whole. g, ml, mol or drops by addition.by.
[[nodiscard]] Exact measure_now(const Addition& addition, std::size_t variant);

/// One chemical in a finished solution.
struct Content {
    Id chemical = none, form = none;
    double g_per_l = 0;  ///< of that form
    double mol_per_l = 0;
    double give_or_take = 0.01;  ///< how far the amount may be off, as a share of it
};

/// Everything in a section's solution but water, through the parts it is made of, in the order it goes in; with what
/// the conversions of it leave beside their products.
/// Optional and unknown amounts are left out; `about` counts as written. A section that (wrongly)
/// contains itself gives what is not recursive. `batch` is how much of the section is made, as a share of what is
/// written: the smaller, the farther its weighings may be off.
[[nodiscard]] std::vector<Content> contents(const Model& model, Id section, std::size_t variant,
                                            const Exact& batch = 1);

class ContentsTable;

/// The same of many sections, while nothing in the model changes: what they share is worked out once.
class KnownContents {
  public:
    explicit KnownContents(const Model& model);
    ~KnownContents();
    KnownContents(const KnownContents&) = delete;
    KnownContents& operator=(const KnownContents&) = delete;

    [[nodiscard]] std::vector<Content> of(Id section, std::size_t variant, const Exact& batch = 1);
    [[nodiscard]] const Model& model() const { return model_; }

  private:
    const Model& model_;
    std::map<std::size_t, std::unique_ptr<ContentsTable>> tables_;  ///< one a variant
};

/// How one gram of `from` is weighed as another form of the same chemical: grams of `to` with the same moles.
[[nodiscard]] Exact as_form(const Form& from, const Form& to, const Exact& grams);

}  // namespace scruple::check
