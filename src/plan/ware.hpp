// SPDX-License-Identifier: MIT
// What stands on a shelf or in a shop: a chemical in a form, or a percent solution of it.
#pragma once

#include <compare>
#include <optional>
#include <string>

#include "scruple/check/model.hpp"

namespace scruple::plan {

/// One kind of thing that is counted together. Amounts of it are in ml where `by_volume`, else in g.
struct Ware {
    check::Id chemical = check::none;
    check::Id form = 0;
    std::optional<check::Strength> strength;  ///< of a percent solution
    bool by_volume = false;

    friend bool operator==(const Ware&, const Ware&) = default;
    friend std::strong_ordering operator<=>(const Ware& a, const Ware& b);
};

struct Amount {
    Ware ware;
    check::Exact measure;  ///< g or ml, as the ware says
};

/// A measure brought to the unit in which its ware is counted: a liquid of known density in ml, however it was
/// written, anything else as it stands.
[[nodiscard]] Amount counted(const check::Model& model, Ware ware, const check::Exact& measure);

/// The same by an addition of a recipe: moles and drops become g and ml, a saturated solution what it holds.
[[nodiscard]] Amount counted(const check::Model& model, const check::Addition& addition, const check::Exact& measure);

/// The same by a line of the log or of a price list, which has grams or ml; nullopt where it has neither.
[[nodiscard]] std::optional<Amount> counted(const check::Model& model, check::Id chemical, check::Id form,
                                            const std::optional<check::Strength>& strength,
                                            const std::optional<check::Exact>& grams,
                                            const std::optional<check::Exact>& ml);

/// Grams of the stated form in one g or ml of a ware; nullopt where a density is wanting.
[[nodiscard]] std::optional<check::Exact> grams_held(const check::Model& model, const Ware& ware);

/// Moles in one g or ml of a ware, what is sold less than pure counted with what it holds; nullopt where a density is
/// wanting.
[[nodiscard]] std::optional<check::Exact> moles_held(const check::Model& model, const Ware& ware);

/// A percent solution as the grams of the chemical in it; where that is not known, as it is.
[[nodiscard]] Amount as_pure(const check::Model& model, const Amount& amount);

/// How much of `from` holds as many moles as one g or ml of `asked`, whatever its strength. Nullopt for another
/// chemical, or where a density is not known.
[[nodiscard]] std::optional<check::Exact> moles_for_moles(const check::Model& model, const Ware& asked,
                                                          const Ware& from);

/// The same where it is not known whether there is room for more water: not for a weaker solution.
[[nodiscard]] std::optional<check::Exact> in_place_of(const check::Model& model, const Ware& asked, const Ware& from);

/// `anhydrous`, `28 % v/v`, `anhydrous, 20 % w/v`; empty for the only form of a chemical.
[[nodiscard]] std::string form_words(const check::Model& model, const Ware& ware);

/// `sodium sulfite (anhydrous)`
[[nodiscard]] std::string ware_words(const check::Model& model, const Ware& ware);

}  // namespace scruple::plan
