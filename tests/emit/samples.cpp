// SPDX-License-Identifier: MIT
#include "samples.hpp"

namespace samples {

using scruple::check::none;
using scruple::plan::Card;
using scruple::plan::Figure;
using scruple::plan::Work;
using scruple::quantity::Exact;

Figure figure(Exact value, std::string unit) {
    return {value, value, scruple::quantity::exact_text(value), std::move(unit), "", 0};
}

namespace {

Figure measured(Exact value, std::string unit, std::string instrument, double error_percent = 0) {
    Figure it = figure(value, std::move(unit));
    it.instrument = std::move(instrument);
    it.error_percent = error_percent;
    return it;
}

Work added(std::string what, Figure amount, Exact running) {
    Work line;
    line.what = std::move(what);
    line.amount = std::move(amount);
    line.running = figure(running, "ml");
    line.running_estimated = true;
    line.weighed_box = true;
    return line;
}

Work done(Work::Do what, std::string words) {
    Work line;
    line.what_to_do = what;
    line.what = std::move(words);
    return line;
}

std::vector<Work> steps_of_part_a() {
    std::vector<Work> work;
    work.push_back(done(Work::Do::water, "water"));
    work.back().amount = measured(350, "ml", "graduate 500 ml");
    work.back().at = "45 to 50\u00A0°C";
    work.back().running = figure(350, "ml");
    work.push_back(added("sodium sulfite (anhydrous), a pinch for now", measured({1, 2}, "g", "balance 0.1 g"), 350));
    work.back().details = {"a pinch of the 45 g"};
    work.push_back(added("metol", measured({5, 2}, "g", "balance 0.1 g"), 352));
    work.push_back(done(Work::Do::stir, "stir until clear"));
    work.back().clear_box = true;
    work.push_back(added("sodium sulfite (anhydrous), the rest", measured({89, 2}, "g", "balance 0.1 g"), 364));
    work.back().clear_box = true;
    work.push_back(added("phenidone", measured({1, 10}, "g", "balance 0.1 g", 14.3), 364));
    work.back().clear_box = true;
    work.back().optional = true;
    work.back().details = {"optional: for old paper"};
    work.back().advice = {"The balance cannot weigh this well: dissolve 1 g of it in 100 ml and measure 8.5 ml."};
    work.push_back(done(Work::Do::wait, "wait 15 min, stirring every 5 min"));
    work.back().seconds = 900;
    work.push_back(done(Work::Do::open_vessel, "take a second vessel: lye"));
    work.push_back(added("sodium hydroxide", measured({19, 10}, "g", "balance 0.1 g"), 40));
    work.back().vessel = "lye";
    work.push_back(done(Work::Do::pour_in, "pour in lye, slowly, stirring"));
    work.push_back(added("acetic acid (28 % v/v)", measured(3, "ml", "graduate 10 ml"), 407));
    work.back().about = true;
    work.back().details = {"until pH 5.0"};
    work.push_back(done(Work::Do::cool, "cool to 20\u00A0°C"));
    work.push_back(done(Work::Do::make_up, "water, to make"));
    work.back().amount = measured(500, "ml", "graduate 500 ml");
    work.back().up_to = true;
    work.back().running = figure(500, "ml");
    for (std::size_t i = 0; i < work.size(); ++i) work[i].n = static_cast<int>(i) + 1;
    return work;
}

void add_what_is_said(Card& card) {
    card.checks = {"pH 11.2 to 11.6"};
    card.keeps = {{"6 months full", 20595}, {"2 months half full", {}}};
    card.use_within = "2 h";
    card.capacity = {"at least 12 ml part A per film 135"};
    card.cautions = {
        {"Gloves. Sensitises skin on repeated contact.", "the recipe"},
        {"Lye: goggles and gloves; it heats as it dissolves; add it to the water, a little at a time.", ""}};
    card.hazards = {{"metol", {"H302", "H317", "H373", "H410"}, "a register of the substances, 2024-05"},
                    {"sodium sulfite", {}, ""}};
    card.accepted = {{"acid on sulfite",
                      false,
                      "Lantern part A",
                      "sodium sulfite and acetic acid meet at pH 4.1",
                      "SO2 gas, which chokes",
                      "the fan is on & the lid stays near",
                      {"Fan on, and no face over the vessel."},
                      {"a page on darkroom safety"}}};
    card.substituted = {{"sodium sulfite (heptahydrate) 90 g",
                         "sodium sulfite (anhydrous) 45 g",
                         "same species, exact by mole; the water of its crystals counts",
                         "it is on hand, and enough",
                         {"potassium sulfite 56.5 g, as many moles of SO3-2: like function, test it first"}}};
    card.assumed = {"Figures are for the bench Saltmarsh.",
                    "What solids take up in the solution is estimated, so volumes between are near, not exact."};
    card.sources = {"invented for this example"};
    card.notes = {"Rinse the jug between the parts."};
    card.warnings = {{scruple::diagnostics::all_kinds().front().kind, "A thing to look at before you begin."}};
    card.mixed_on = 20410;
}

}  // namespace

Card part_a() {
    Card card;
    card.recipe = "Lantern";
    card.section = "part A";
    card.is_a = "film developer";
    card.strength = "stock";
    card.makes = figure(500, "ml");
    card.gather = {{"water", "", figure(350, "ml"), 0, false, false, "and to make up"},
                   {"sodium sulfite", "anhydrous", figure(45, "g"), 0.35703, false, false, "in two pieces"},
                   {"metol", "", figure({5, 2}, "g"), 0.0072593, false, false, ""},
                   {"phenidone", "", figure({1, 10}, "g"), 0.00061654, false, true, ""},
                   {"Heron part B", "", figure({25, 2}, "ml"), 0, true, false, ""}};
    card.work = steps_of_part_a();
    card.contents = {{"sodium sulfite", "anhydrous", 90.0 / 1.0, 0.714056, 0.0051},
                     {"metol", "", 5.0, 0.0145186, 0.011}};
    card.ph = {8.93, 8.81, 9.05, 24, "8.9 (8.8 to 9.1)", {"how well `HSO3- -> SO3-2 + H+` of sulfur dioxide is known"}};
    add_what_is_said(card);
    return card;
}

Card bare() {
    Card card;
    card.recipe = "Plain water";
    card.makes = figure(1, "l");
    Work line = done(Work::Do::make_up, "water");
    line.n = 1;
    line.amount = figure(1, "l");
    line.up_to = true;
    card.work = {line};
    return card;
}

Card hostile() {
    Card card;
    card.recipe = card.section = card.is_a = card.strength = card.variant = card.makes_for = hostile_text;
    card.makes = figure(1, "l");
    card.gather = {{hostile_text, hostile_text, figure(1, "g"), 0.1, false, true, hostile_text}};
    Work line = done(Work::Do::act, hostile_text);
    line.n = 1;
    line.at = line.vessel = hostile_text;
    line.details = line.advice = {hostile_text};
    line.amount = measured(1, "g", hostile_text, 3);
    card.work = {line};
    card.contents = {{hostile_text, hostile_text, 1, 2}};
    card.ph = {{}, 0, 0, 20, hostile_text, {hostile_text}};
    card.checks = card.capacity = card.assumed = card.sources = card.notes = {hostile_text};
    card.substituted = {{hostile_text, hostile_text, hostile_text, hostile_text, {hostile_text}}};
    card.keeps = {{hostile_text, {}}};
    card.use_within = hostile_text;
    card.cautions = {{hostile_text, hostile_text}};
    card.accepted = {
        {hostile_text, true, hostile_text, hostile_text, hostile_text, hostile_text, {hostile_text}, {hostile_text}}};
    card.hazards = {{hostile_text, {hostile_text}, hostile_text}};
    card.warnings = {{scruple::diagnostics::all_kinds().front().kind, hostile_text}};
    return card;
}

scruple::plan::ShoppingList december() {
    scruple::plan::ShoppingList list;
    list.plan = "December";
    list.first_day = "2026-12-03";
    list.last_day = "2026-12-31";
    list.solutions = {{0,
                       "Lantern part A",
                       figure({12, 5}, "l"),
                       figure(1, "l"),
                       figure({7, 5}, "l"),
                       {"6 films 135 on 2026-12-03: 6 × 250 ml", "4 films 120 on 2026-12-10: 4 × 225 ml"}}};
    scruple::plan::ChemicalNeed sulfite{0,
                                        0,
                                        "sodium sulfite",
                                        "anhydrous",
                                        figure(900, "g"),
                                        figure(180, "g"),
                                        figure(720, "g"),
                                        "heptahydrate",
                                        figure(1440, "g"),
                                        "Tidewater",
                                        "500 g",
                                        3,
                                        {267, 10},
                                        "EUR",
                                        figure(60, "g"),
                                        {"Lantern part A 1.4 l: 126 g"}};
    scruple::plan::ChemicalNeed metol = sulfite;
    metol.name = "metol";
    metol.form_name = metol.buy_form = metol.supplier = metol.pack = "";
    metol.packs = 0;
    scruple::plan::ChemicalNeed bromide = metol;
    bromide.name = "potassium bromide";
    bromide.to_buy = figure(0, "g");
    list.chemicals = {sulfite, metol, bromide};
    list.postage = {{"Tidewater", {13, 2}, "EUR"}};
    list.totals = {{"EUR", {332, 10}}};
    list.warnings = {"Nobody sells metol."};
    return list;
}

namespace {

// `date -d "1970-01-01 +20790 days"` (GNU date).
constexpr scruple::check::Day third_of_december = 20790;

scruple::plan::StockLine line_of(scruple::check::Day days_before, const std::string& where) {
    return {{}, third_of_december - days_before, where};
}

scruple::plan::StockShare sulfite_share() {
    return {figure(81, "g"), "sodium sulfite (anhydrous)", "jar of 2026-11-02 from Tidewater",
            line_of(31, "log.scruple:2")};
}

scruple::plan::StockLot jar(scruple::check::Day days_before, std::int64_t grams) {
    scruple::plan::StockLot lot;
    lot.line = line_of(days_before, "log.scruple:2");
    lot.supplier = "Tidewater";
    lot.left = lot.made = figure(grams, "g");
    lot.days_old = days_before;
    lot.cost.sums = {{"EUR", {89, 10}}};
    return lot;
}

scruple::plan::StockLot old_batch() {
    scruple::plan::StockLot lot;
    lot.how = scruple::plan::StockLot::How::mixed;
    lot.line = line_of(28, "log.scruple:3");
    lot.left = figure(400, "ml");
    lot.made = figure(1000, "ml");
    lot.days_old = 28;
    lot.cost = {{{"EUR", {1, 1000}}}, {"metol"}};
    lot.use_by = third_of_december - 7;
    lot.use_by_because = "3 weeks half full";
    lot.percent_full = 40;
    lot.percent_used = scruple::quantity::Exact(1125, 10);
    lot.through = {"8 films 135", "1 film 120"};
    lot.from = {sulfite_share()};
    lot.warnings = {"past its use-by date of 2026-11-26 by 7 days", "its capacity is used up, and more"};
    return lot;
}

scruple::plan::StockFault shortage(bool settled) {
    return {line_of(20, "log.scruple:4"), "metol", figure(5, "g"),
            "the log's line `2026-11-13 used metol 20 g` takes 5 g more metol than there was", settled};
}

}  // namespace

scruple::plan::StockSheet shelf() {
    scruple::plan::StockSheet sheet;
    sheet.on = third_of_december;
    sheet.lines_after = 2;
    scruple::plan::StockItem sulfite;
    sulfite.name = "sodium sulfite";
    sulfite.form_name = "anhydrous";
    sulfite.on_hand = figure(1300, "g");
    sulfite.moves.received = 1500;
    sulfite.moves.on_hand = 1300;
    sulfite.moves.used = 200;
    sulfite.lots = {jar(31, 500), jar(3, 1000)};
    sulfite.lots[0].left = figure(300, "g");
    sulfite.lots[1].cost = {{}, {"sodium sulfite (anhydrous)"}};
    scruple::plan::StockItem metol;
    metol.name = "metol";
    metol.on_hand = figure(0, "g");
    metol.moves.received = 15;
    metol.moves.wanting = 5;
    metol.moves.used = 20;
    scruple::plan::StockItem lantern;
    lantern.name = "Lantern part A";
    lantern.by_volume = true;
    lantern.on_hand = figure(400, "ml");
    lantern.moves.mixed = 1000;
    lantern.moves.on_hand = 400;
    lantern.moves.discarded = 600;
    lantern.lots = {old_batch()};
    sheet.chemicals = {metol, sulfite};
    sheet.solutions = {lantern};
    sheet.corrections = {
        {line_of(31, "log.scruple:1"), "borax (decahydrate)", figure(0, "g"), figure(180, "g"), figure(180, "g"), true},
        {line_of(2, "log.scruple:9"), "borax (decahydrate)", figure({1754, 10}, "g"), figure(170, "g"),
         figure({-54, 10}, "g"), false}};
    sheet.faults = {shortage(false), shortage(true)};
    return sheet;
}

scruple::plan::StockEntry log_line() {
    return {line_of(0, "log.scruple:12"),
            "    2026-12-03 mixed      Lantern part A 1 l   # for <the> club",
            {sulfite_share()},
            {},
            {shortage(false)}};
}

std::vector<scruple::plan::Weighing> weighings() {
    using scruple::plan::Kinship;
    // 124.003 / 105.988 and 138.204 / 105.988: molar masses as CIAAW 2021 abridged weights give them.
    return {{"sodium carbonate",
             "anhydrous",
             figure(30, "g"),
             "sodium carbonate",
             "monohydrate",
             Kinship::same_species,
             figure({351, 10}, "g"),
             {},
             {124003, 105988},
             0.283051,
             {"124.003 ÷ 105.988 = 1.17", "30 g × 1.17 = 35.1 g"}},
            {"sodium carbonate",
             "anhydrous",
             figure(30, "g"),
             "potassium carbonate",
             "50 % w/w",
             Kinship::like_function,
             figure({7824, 100}, "g"),
             figure({508, 10}, "ml"),
             {276408, 105988},
             0.283051,
             {}}};
}

scruple::plan::Reacted reacted() {
    // Half a mole of lye with two moles of acid to three; molar masses as CIAAW 2021 abridged weights give them.
    const scruple::plan::Substance lye{"sodium hydroxide", "NaOH", {}, 0, 0}, acid{"H2X", "H2X", {}, none, none};
    const scruple::plan::Substance salt{"NaHX", "NaHX", {}, none, none}, gas{"carbon dioxide", "CO2", {}, 1, 0};
    scruple::plan::Reacted reacted;
    reacted.reaction = "2 sodium hydroxide + 3 H2X -> 2 NaHX + carbon dioxide";
    reacted.numbers_found = true;
    reacted.reagents = {{lye, 2, true, true, figure({1, 2}, "mol"), figure(20, "g"), {}, {}, {}},
                        {acid,
                         3,
                         true,
                         false,
                         figure({3, 4}, "mol"),
                         figure(72, "g"),
                         {figure({245, 10}, "ml")},
                         {"H2X (10 % w/v)"},
                         figure({34, 10}, "%")},
                        {lye, 1, false, false, figure({1, 4}, "mol"), figure(10, "g"), {}, {}, {}}};
    reacted.products = {{salt, 2, figure({1, 2}, "mol"), figure({1205, 10}, "g"), {}},
                        {gas, 1, figure({1, 4}, "mol"), figure(11, "g"), figure({612, 100}, "l")}};
    reacted.lines = {"sodium hydroxide, NaOH: 20 g ÷ 39.997 g/mol = 0.50004 mol"};
    reacted.cautions = {{"Goggles & gloves.", "sodium hydroxide, the library"}};
    reacted.hazards = {{"sodium hydroxide", {"H314"}, "a register of the substances, 2024-05", true},
                       {"H2X", {}, "", false}};
    return reacted;
}

std::vector<scruple::plan::ContentsSheet> contents() {
    return {{"Lantern",
             "part B",
             "soft",
             {{"sodium carbonate", "anhydrous", 10.5988, 0.1, 0.0051}, {"metol", "", 5, 0.02904}},
             scruple::plan::PhRow{11.3, 11.21, 11.39, 24, "11.30 (11.21 to 11.39)", {"its strength"}},
             {{"Na+", true, 4.598, 0.2}, {"CO3-2", true, 6.0009, 0.1}, {"metol", false, 5, 0.02904}},
             {{"Heron working, variant hard", 0.312, true}, {"<Tern>", 0, false}},
             {"potassium bromide: optional"}},
            {"Tern", "", "", {}, {}, {}, {}, {}}};
}

std::vector<scruple::plan::Why> whys() {
    return {{"Lantern part B",
             "sodium bicarbonate",
             "sodium ascorbate by conversion",
             figure({265, 100}, "g"),
             {{"sodium ascorbate: 12 g for 1000 ml", "", "lantern.scruple, line 4", {}},
              {"12 g × 0.5", "6 g", "arithmetic", {}},
              {"2.6461 g to the nearest 0.01 g", "2.65 g", "balance 0.01 g", {}}}},
            {"Lantern part B", "metol", "", figure(5, "g"), {{"metol: 5 g for 1000 ml", "", "<lantern>, line 5", {}}}}};
}

scruple::check::Chemical carbonate() {
    scruple::check::Chemical it;
    it.name = "sodium carbonate";
    it.also = {{"soda ash", 0}, {"washing soda", none}};
    // Molar masses as CIAAW 2021 abridged weights give them.
    it.forms = {{"anhydrous", {"dry"}, "Na2CO3", {}, {105988, 1000}, {}, {}},
                {"decahydrate",
                 {},
                 "Na2CO3·10H2O",
                 {},
                 {286138, 1000},
                 {{Exact(99), scruple::quantity::Unit::percent_w_w}},
                 {}}};
    it.grades = {"technical"};
    it.ions = {{2, "Na+", {}}, {1, "CO3-2", {}}};
    it.acts_as = {"alkali"};
    it.densities = {
        {{115, 100}, none, {{Exact(15), scruple::quantity::Unit::percent_w_w}}, {{20, 20}}, "a made-up table"}};
    it.solubilities = {{{43, 2}, 0, 100, "water", {{20, 25}}, "a made-up table"}};
    it.hazards = {"H319"};
    it.hazard_source = "a register of the substances, 2024-05";
    it.cautions = {"Eye protection."};
    it.sources = {"invented for this example"};
    it.cas = "497-19-8";
    return it;
}

}  // namespace samples
