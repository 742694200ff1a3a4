// SPDX-License-Identifier: MIT
// Cards from recipe text, for the tests of the card: more chemicals, a bench, and short ways to ask.
#pragma once

#include <string>
#include <vector>

#include "plan/shopping_workspace.hpp"
#include "scruple/plan/card.hpp"

namespace scruple::test {

/// Solubilities and densities are invented round numbers, formulas are what the names say.
inline const std::string card_shelf = R"(
chemical ascorbic acid
    form       powder          C6H8O6

chemical sodium bicarbonate
    form       powder          NaHCO3

chemical sodium ascorbate
    form       powder          C6H7NaO6

chemical carbon dioxide
    form       gas             CO2

chemical benzotriazole
    form       powder          C6H5N3
    dissolves  2 g in 100 g water at 20 C
    hazard     H302, H319 from "an invented sheet"
    caution    "Dust: no draught."

chemical phenidone
    form       powder          C9H10N2O
    dissolves  0.05 g in 100 g water at 20 C
    dissolves  8 g in 100 g propylene glycol at 20 C

chemical sodium thiosulfate
    form       pentahydrate    Na2S2O3·5H2O

bench Reedbank
    balance    0.1 g up to 500 g
    balance    0.01 g up to 50 g
    graduate   10 ml by 0.2 ml
    graduate   100 ml by 1 ml
    syringe    5 ml by 0.1 ml
    jug        2 l by 50 ml
    dropper    20 drops per 1 ml water
)";

inline const std::string coarse_bench = R"(
bench Coarse
    balance    1 g up to 1 kg
    graduate   100 ml by 1 ml
    jug        1 l by 10 ml
)";

class CardDesk {
  public:
    explicit CardDesk(const std::string& recipes, const std::string& library = "")
        : workspace_(card_shelf + recipes, library) {}

    [[nodiscard]] const check::Model& model() const { return workspace_.model(); }

    [[nodiscard]] plan::CardRequest request(const std::string& section, plan::HowMuch how_much = {}) const {
        plan::CardRequest request;
        request.section = workspace_.solution(section);
        request.how_much = std::move(how_much);
        return request;
    }

    [[nodiscard]] check::Id bench(const std::string& normal) const { return model().bench_names.at(normal); }
    [[nodiscard]] check::Id chemical(const std::string& normal) const {
        return model().chemical_names.at(normal).first;
    }

    [[nodiscard]] plan::Card card(const plan::CardRequest& request) const {
        auto made = plan::make_card(model(), request);
        const auto* refusal = std::get_if<plan::Refusal>(&made);
        REQUIRE_MESSAGE(refusal == nullptr, refusal->message);
        return std::get<plan::Card>(std::move(made));
    }

    /// As written or by volume, on no bench.
    [[nodiscard]] plan::Card card(const std::string& section, plan::HowMuch how_much = {}) const {
        return card(request(section, std::move(how_much)));
    }

    [[nodiscard]] plan::Card card_on(const std::string& bench_name, const std::string& section,
                                     plan::HowMuch how_much = {}) const {
        plan::CardRequest asked = request(section, std::move(how_much));
        asked.bench = bench(bench_name);
        return card(asked);
    }

    [[nodiscard]] std::string refusal(const plan::CardRequest& request) const {
        auto made = plan::make_card(model(), request);
        REQUIRE(std::holds_alternative<plan::Refusal>(made));
        return plain_blanks(std::get<plan::Refusal>(made).message);
    }

  private:
    Workspace workspace_;
};

/// The first line of work that is about this.
inline const plan::Work& work_of(const plan::Card& card, const std::string& what) {
    for (const plan::Work& work : card.work)
        if (plain_blanks(work.what) == what) return work;
    std::string all;
    for (const plan::Work& work : card.work) all += "\n" + work.what;
    FAIL("no line of work `", what, "` among:", all);
    return card.work.front();
}

inline const plan::Gathered& gathered(const plan::Card& card, const std::string& chemical,
                                      const std::string& form = "") {
    for (const plan::Gathered& row : card.gather)
        if (row.chemical == chemical && plain_blanks(row.form) == form) return row;
    FAIL("no ", chemical, " (", form, ") to gather");
    return card.gather.front();
}

inline std::string amount(const plan::Work& work) {
    return work.amount ? shown(*work.amount) : "";
}
inline std::string running(const plan::Work& work) {
    return work.running ? shown(*work.running) : "";
}

inline bool says(const std::vector<std::string>& sentences, const std::string& words) {
    return warns(sentences, words);
}

}  // namespace scruple::test
