# SPDX-License-Identifier: MIT
"""Reactions on the command line, against tests/reference/worked_examples.csv and textbook stoichiometry."""
import csv
import re

from support import ROOT, Workspace

ASCORBATE = "ascorbic acid + sodium bicarbonate -> sodium ascorbate + water + carbon dioxide (gas)"


def row(beginning):
    with (ROOT / "tests/reference/worked_examples.csv").open(encoding="utf-8", newline="") as file:
        found = [r for r in csv.DictReader(file) if r["question"].startswith(beginning)]
    assert len(found) == 1, beginning
    return found[0]["expected_answer_with_unit"]


def figures(answer):
    return [float(figure) for figure in re.findall(r"\d+\.\d+", answer)]


class Reactions(Workspace):
    def react(self, reaction, *amounts):
        document = self.json("react", reaction, *(["--with", ", ".join(amounts)] if amounts else []))
        return document, {one["name"]: one for one in document["reagents"] + document["products"]}

    def test_bicarbonate_limits(self):
        # NaHCO3 limits (0.04762 mol); 9.43 g sodium ascorbate; 1.16 L CO2; 1.61 g ascorbic acid left
        mol, ascorbate, litres, left = figures(row("10 g ascorbic acid + 4.0 g NaHCO3"))
        _, one = self.react(ASCORBATE, "10 g ascorbic acid", "4.0 g sodium bicarbonate")
        self.assertTrue(one["sodium bicarbonate"]["limits"])
        self.assertFalse(one["ascorbic acid"]["limits"])
        self.assertAlmostEqual(one["sodium bicarbonate"]["mol"], mol, delta=0.000005)
        self.assertAlmostEqual(one["sodium ascorbate"]["made"]["value"], ascorbate, delta=0.005)
        # 24.465 l a mole (the gas constant of CODATA 2018): 1.165, which the row cuts to 1.16.
        self.assertAlmostEqual(one["carbon dioxide"]["gas"]["value"], litres, delta=0.0075)
        self.assertAlmostEqual(one["ascorbic acid"]["left_over"][0]["amount"]["value"], left, delta=0.005)

    def test_why_says_how_often_the_reaction_goes(self):
        # 4.0 g over 84.006 g/mol (22.990 + 1.008 + 12.011 + 3 × 15.999) are 0.047616 mol, and 10 g over 176.12 are 0.0568.
        lines = self.react(ASCORBATE, "10 g ascorbic acid", "4.0 g sodium bicarbonate")[0]["lines"]
        self.assertEqual(len(lines), 2 + 1 + 3)
        self.assertRegex(lines[2], r"sodium bicarbonate: 0\.047616.mol of the reaction as written")

    def test_lye_limits_and_the_crystals_are_reckoned_by_mole(self):
        # NaOH limits (0.5000 mol vs 0.5244 mol needed); 1.000 mol = 137.9 g NaBO2.4H2O
        mol, needed, made_mol, made = figures(row("100 g borax decahydrate + 20 g NaOH"))[:4]
        document, one = self.react("borax (decahydrate) + sodium hydroxide + water -> sodium metaborate (tetrahydrate)",
                                   "100 g borax (decahydrate)", "20 g sodium hydroxide")
        self.assertEqual(document["reaction"], "borax (decahydrate) + 2 sodium hydroxide + 5 water -> "
                                               "4 sodium metaborate (tetrahydrate)")
        self.assertTrue(document["numbers_found"])
        self.assertTrue(one["sodium hydroxide"]["limits"])
        # The row has 0.5000 mol: 20 g over 39.997 is 0.50004.
        self.assertAlmostEqual(one["sodium hydroxide"]["mol"], mol, delta=0.0001)
        made_row = one["sodium metaborate (tetrahydrate)"]
        self.assertAlmostEqual(made_row["mol"], made_mol, delta=0.0005)
        self.assertAlmostEqual(made_row["made"]["value"], made, delta=0.05)
        left = one["borax (decahydrate)"]["left_over"][0]["amount"]["value"]
        self.assertAlmostEqual(left, 100 * (1 - mol / needed), delta=0.02)

    def test_the_same_by_dry_borax_as_formulas(self):
        _, one = self.react("Na2B4O7 + 2 NaOH -> 4 NaBO2 + H2O", "100 g borax (decahydrate)", "20 g NaOH")
        self.assertTrue(one["NaOH"]["limits"])
        self.assertAlmostEqual(one["NaBO2"]["made"]["value"], 2 * 20 / 39.997 * 65.80, delta=0.02)
        self.assertEqual(one["Na2B4O7"]["left_over"][0]["name"], "borax (decahydrate)")
        self.assertAlmostEqual(one["Na2B4O7"]["left_over"][0]["amount"]["value"], 4.66, delta=0.02)

    def test_ascorbic_acid_with_bicarbonate_to_spare(self):
        # Common practice, no source: 1.2 g of the acid and 0.7 g of bicarbonate give about 1.3 g of ascorbate.
        _, one = self.react(ASCORBATE, "1.2 g ascorbic acid", "0.7 g sodium bicarbonate")
        self.assertTrue(one["ascorbic acid"]["limits"])
        self.assertTrue(1.25 <= one["sodium ascorbate"]["made"]["value"] <= 1.35)
        self.assertGreater(one["sodium bicarbonate"]["excess"]["value"], 0)

    def test_printed_equations_balance(self):
        for beginning in ("ferricyanide", "fixing", "carbonate + metabisulfite"):
            printed = re.sub(r" \(1:.*", "", row(beginning))
            with self.subTest(printed):
                self.assertFalse(self.react(printed)[0]["numbers_found"])
                bare = re.sub(r"(^|[+>] )\d+ ", r"\1", printed)
                # The bleach has one of each, and so balances without a number.
                self.assertEqual(self.react(bare)[0]["numbers_found"], beginning != "ferricyanide")
        # One of each balances as printed. Turned to dioxide alone, the atoms leave the proportion open.
        printed = row("thiosulfate + acid")
        self.assertFalse(self.react(printed)[0]["numbers_found"])
        self.assertIn("2 independent ways", self.refused("react", "KMnO4 + H2O2 + H2SO4 -> K2SO4 + MnSO4 + H2O + O2"))

    def test_a_liquid_with_its_strength_and_one_with_its_assay(self):
        # 50 ml of 1 mol/l are 0.05 mol; half of it is used by 0.025 mol of acid, 1.5013 g.
        _, one = self.react("CH3COOH + NaOH -> CH3COONa + H2O", "50 ml sodium hydroxide (1 mol/l)", "0.025 mol CH3COOH")
        self.assertEqual(one["NaOH"]["left_over"][0]["amount"], {"value": 25, "unit": "ml"})
        # Glacial acid of 99.5 % w/w: 10 g hold 9.95 g, 9.95/60.052 mol.
        _, one = self.react("acetic acid + sodium hydroxide -> CH3COONa + H2O", "10 g acetic acid (glacial)")
        self.assertAlmostEqual(one["CH3COONa"]["mol"], 9.95 / 60.052, delta=0.00005)

    def test_exactly_enough_of_both_limits_both(self):
        document, one = self.react("HCl + NaOH -> NaCl + H2O", "0.5 mol HCl", "0.5 mol NaOH")
        self.assertTrue(one["HCl"]["limits"] and one["NaOH"]["limits"])
        self.assertEqual(one["NaCl"]["made"], {"value": 29.22, "unit": "g"})  # 0.5 × 58.440
        self.assertIn("limit: nothing is left of them", self.scruple("react", "HCl + NaOH -> NaCl + H2O", "--with",
                                                                     "0.5 mol HCl, 0.5 mol NaOH"))

    def test_water_of_crystallisation_counts_for_nothing_but_weight(self):
        _, dry = self.react("Na2CO3 + 2 HCl -> 2 NaCl + H2O + CO2", "10.5988 g sodium carbonate (anhydrous)")
        _, wet = self.react("Na2CO3 + 2 HCl -> 2 NaCl + H2O + CO2", "28.6138 g sodium carbonate (decahydrate)")
        self.assertEqual(dry["NaCl"]["made"], wet["NaCl"]["made"])

    def test_cautions_of_what_is_named_and_of_a_formula_that_only_one_chemical_has(self):
        text = self.scruple("react", "HCl + NaOH -> NaCl + H2O")
        self.assertIn("Burns skin and eyes", text)
        self.assertIn("check the safety data sheet", text)
        self.assertIn("is given off", self.scruple("react", ASCORBATE))

    def test_gases_among_bare_formulas_are_given_off_with_their_litres_and_cautions(self):
        # An ideal gas at 25 °C and 1 atm: 24.465 l a mole (the gas constant of CODATA 2018).
        for reaction, gas, hazard in (
            ("2 HCl + NaClO -> Cl2 + NaCl + H2O", "Cl2", "H331"),
            ("Na2S + 2 HCl -> 2 NaCl + H2S", "H2S", "H330"),
            ("Na2SO3 + 2 HCl -> 2 NaCl + H2O + SO2", "SO2", "H331"),
            ("NaHCO3 + HCl -> NaCl + H2O + CO2", "CO2", None),
            ("NH4Cl + NaOH -> NaCl + H2O + NH3", "NH3", "H331"),
            ("KCN + HCl -> KCl + HCN", "HCN", "H330"),
            ("Cu + 4 HNO3 -> CuN2O6 + 2 H2O + 2 NO2", "NO2", "H330"),
            ("Zn + 2 HCl -> ZnCl2 + H2", "H2", "H220"),
            ("NH3 + NaClO -> NH2Cl + NaOH", "NH2Cl", "H330"),
        ):
            with self.subTest(reaction):
                document, one = self.react(reaction)
                self.assertAlmostEqual(one[gas]["gas"]["value"] / one[gas]["mol"], 24.465, delta=0.1)
                row = [row for row in document["hazards"] if row["chemical"] == gas][0]
                self.assertIn(hazard, row["codes"] if hazard else [None])
                self.assertEqual([one["name"] for one in document["products"] if one["gas"] is not None], [gas])
        text = self.scruple("react", "2 HCl + NaClO -> Cl2 + NaCl + H2O")
        self.assertIn("poisons the air", text)
        self.assertNotIn("Cl2: no caution", text)

    def test_a_formula_without_its_water_of_crystallisation_has_the_cautions_of_its_chemical(self):
        document, _ = self.react("CuSO4 + 2 NaOH -> CuO2H2 + Na2SO4")
        row = [row for row in document["hazards"] if row["chemical"] == "CuSO4"][0]
        self.assertTrue(row["codes"])

    def test_what_cannot_be_worked_out_says_what_to_write(self):
        for call, says in (
            (["Na2CO3 + 3 HCl -> 2 NaCl + H2O + CO2"], "`Na2CO3 + 2 HCl -> 2 NaCl + H2O + CO2`"),
            (["NaCl + AgNO3"], "no arrow"),
            (["NaCl -> KCl"], "no numbers balance these"),
            (["CO32- + H+ -> HCO3-"], "charge-both-ways"),
            (["NaXx3 + H2O -> NaCl"], "no element"),
            (["sodum carbonate + HCl -> NaCl"], "`sodium carbonate`"),
            (["sodium carbonate + HCl -> NaCl + H2O + CO2"], "form-not-stated"),
            (["HCl + NaOH -> NaCl + H2O", "--with", "5 g KOH"], "takes no part"),
            (["HCl + NaOH -> NaCl + H2O", "--with", "5 ml HCl"], "grams or moles"),
            (["HCl + NaOH -> NaCl + H2O", "--with", "5 oz sodium hydroxide"], "ambiguous-unit"),
            (["NaCl ->"], "a substance is missing"),
            (["0 HCl + NaOH -> NaCl + H2O"], "no number"),
            ([""], "no arrow"),
            ([" + ".join(["H2O"] * 30) + " -> H2O"], "too many"),
        ):
            with self.subTest(call[0]):
                self.assertIn(says, self.refused("react", *call))
