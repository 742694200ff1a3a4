# SPDX-License-Identifier: MIT
"""What finished solutions hold, and which are the same. Molar masses by the CIAAW 2021 abridged weights:
Na2CO3 105.988, Na2CO3·H2O 124.003, KBr 119.002, NaOH 39.997, Na2B4O7·10H2O 381.359, NaBO2 65.80, Na2S2O5 190.10,
NaHSO3 104.06, Na 22.990, Br 79.904 g/mol (molar_masses.csv, atomic_weights.csv)."""
from support import HERON, TERN, Workspace

PLAIN = "recipe {}\n    water 700 ml\n    {}\n    water to make 1 l\n"


class Contents(Workspace):
    def sheet(self, *name, **how):
        document = self.json("contents", *name, **how)
        self.assertEqual(len(document["solutions"]), 1)
        return document["solutions"][0]

    def same(self, *name):
        return {one["solution"]: one for one in self.sheet(*name)["same"]}

    def recipes(self, **lines):
        self.put("all.scruple", "\n".join(PLAIN.format(name, "\n    ".join(text.split("; ")))
                                          for name, text in lines.items()))

    def test_grams_moles_and_ions_through_the_parts(self):
        self.put("heron.scruple", HERON)
        sheet = self.sheet("Heron", "working")
        # A quarter of part B, 50 g/l of Na2CO3, is in the working solution: 12.5 g/l.
        carbonate = {one["chemical"]: one for one in sheet["chemicals"]}["sodium carbonate"]
        self.assertEqual(carbonate["g_per_l"], 12.5)
        self.assertAlmostEqual(carbonate["mol_per_l"], 12.5 / 105.988, delta=0.00005)
        species = {one["name"]: one for one in sheet["species"]}
        # Two sodium ions of each mole of carbonate, and of sulfite (126.037 g/mol, 10 g/l).
        sodium = 2 * (12.5 / 105.988 + 10 / 126.037)
        self.assertAlmostEqual(species["Na+"]["mol_per_l"], sodium, delta=0.00005)
        self.assertAlmostEqual(species["Na+"]["g_per_l"], sodium * 22.990, delta=0.005)
        self.assertFalse(species["hydroquinone"]["ion"])

    def test_what_is_taken_in_its_place_is_what_it_holds(self):
        self.put("heron.scruple", "recipe Heron\n    water 800 ml\n    sodium ascorbate 19.81 g\n    water to make 1 l\n")
        plain = self.sheet("Heron")
        made = self.sheet("Heron", "--instead", "sodium ascorbate")
        # 4 % more bicarbonate than the reaction needs stays: 0.04 × 0.1 mol.
        held = {one["chemical"]: one for one in made["chemicals"]}
        self.assertAlmostEqual(held["sodium bicarbonate"]["mol_per_l"], 0.004, delta=0.00002)
        self.assertGreater(held["sodium bicarbonate"]["give_or_take_percent"], 10)
        self.assertAlmostEqual(held["sodium ascorbate"]["mol_per_l"], 0.1, delta=0.0001)
        self.assertEqual([one["chemical"] for one in plain["chemicals"]], ["sodium ascorbate"])
        self.assertLess(plain["ph"]["low"], plain["ph"]["value"])
        self.assertEqual(self.sheet("Heron", "--at", "24C")["ph"]["at"], 24)

    def test_forms_strengths_and_volumes_lead_to_the_same(self):
        self.recipes(Auk="sodium carbonate (anhydrous) 30 g; potassium bromide 1 g",
                     Bunting="sodium carbonate (monohydrate) 35.1 g; potassium bromide (10 % w/v) 10 ml",
                     Crake="sodium carbonate (anhydrous) 31 g; potassium bromide 1 g",
                     Dotterel="sodium carbonate (anhydrous) 30 g")
        self.put("parts.scruple", "recipe Eider\npart A\n    water 400 ml\n    sodium carbonate (anhydrous) 60 g\n"
                 "    water to make 1 l\npart B\n    water 400 ml\n    potassium bromide 2 g\n    water to make 1 l\n"
                 "working\n    use within 1 h\n    mix part A + part B 1+1\n")
        same = self.same("Auk")
        self.assertEqual(set(same), {"Bunting", "Eider working"})
        self.assertTrue(all(one["of_the_same_chemicals"] for one in same.values()))
        # 35.1/124.003 against 30/105.988: 0.003 %.
        self.assertLess(same["Bunting"]["percent_apart"], 0.01)
        self.assertEqual(same["Eider working"]["percent_apart"], 0)
        # 31 g for 30 g is 3.2 % apart.
        self.assertEqual(self.same("Crake"), {})

    def test_other_chemicals_that_come_to_the_same(self):
        self.recipes(Fulmar="potassium bromide 11.9 g; sodium chloride 5.844 g",
                     Gannet="sodium bromide (anhydrous) 10.29 g; potassium chloride 7.455 g",
                     Harrier="sodium metabisulfite 19.01 g", Ibis="sodium bisulfite 20.81 g",
                     Jackdaw="borax (decahydrate) 38.14 g; sodium hydroxide 8 g",
                     Kestrel="sodium metaborate (anhydrous) 26.32 g")
        self.put("salts.scruple", "chemical sodium chloride\n    form crystals NaCl\n    ions Na+ + Cl-\n"
                 "chemical potassium chloride\n    form crystals KCl\n    ions K+ + Cl-\n")
        for one, other in (("Fulmar", "Gannet"), ("Harrier", "Ibis"), ("Jackdaw", "Kestrel")):
            self.assertEqual(set(self.same(one)), {other})
            self.assertFalse(self.same(other)[one]["of_the_same_chemicals"])
        self.assertIn("of other chemicals", self.scruple("contents", "Jackdaw"))

    def test_isomers_and_other_states_are_not_the_same(self):
        self.recipes(Lapwing="ascorbic acid 10 g", Merlin="isoascorbic acid 10 g", Nuthatch="sodium sulfite (anhydrous) 12.6 g",
                     Osprey="sodium sulfate (anhydrous) 14.2 g")
        for name in ("Lapwing", "Nuthatch"):
            self.assertEqual(self.same(name), {})
        self.assertIn("No other solution", self.scruple("contents", "Lapwing"))

    def test_an_acid_with_its_alkali_is_its_salt(self):
        # 17.613 g of the acid (176.12 g/mol) and 4 g of lye are 0.1 mol of the salt, 19.811 g (198.106 g/mol).
        self.recipes(Reeve="ascorbic acid 17.613 g; sodium hydroxide 4 g", Serin="sodium ascorbate 19.811 g",
                     Twite="isoascorbic acid 17.613 g; sodium hydroxide 4 g")
        self.assertEqual(set(self.same("Serin")), {"Reeve"})

    def test_what_a_conversion_makes_is_the_same_as_what_it_replaces(self):
        # The excess of lye that the library's conversion takes is 1 % of 0.2 mol, within the 1 % of all sodium.
        self.recipes(Pipit="sodium metaborate (anhydrous) 20 g, by conversion", Quail="sodium metaborate (anhydrous) 20 g")
        self.assertEqual(set(self.same("Quail")), {"Pipit"})

    def test_variants_and_what_is_left_out(self):
        self.put("avens.scruple", "recipe Avens\n    variants soft, hard\n    water 700 ml\n    metol 3 g soft, 1 g hard\n"
                 "    potassium bromide 1 g, optional\n    water to make 1 l\n" + TERN)
        sheet = self.sheet("Avens", "--variant", "hard")
        self.assertEqual(sheet["variant"], "hard")
        self.assertEqual(sheet["chemicals"][0]["g_per_l"], 1)
        self.assertEqual(sheet["left_out"], ["potassium bromide: optional"])
        self.assertIn("`--variant` with", self.refused("contents", "Avens"))

    def test_every_solution_of_a_recipe_or_a_name_that_is_not_there(self):
        self.put("heron.scruple", HERON)
        self.assertEqual([one["section"] for one in self.json("contents", "heron")["solutions"]],
                         ["part A", "part B", "working"])
        self.assertIn("Heron", self.refused("contents", "Heronn"))
        self.assertIn("</html>", self.scruple("contents", "Heron", "--as", "html"))
