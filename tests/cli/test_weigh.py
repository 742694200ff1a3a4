# SPDX-License-Identifier: MIT
"""One thing weighed for another, against tests/reference/equivalence_factors.csv, molar masses by the CIAAW 2021 abridged
weights, and the densities that the library names a source for."""
import csv

from support import ROOT, Workspace

FORMS = ("anhydrous", "monohydrate", "tetrahydrate", "pentahydrate", "heptahydrate", "nonahydrate", "decahydrate",
         "trihydrate")
LIKE = {"sodium bromide", "potassium carbonate anhydrous", "sodium hydroxide", "borax decahydrate"}


def written(name):
    """`borax decahydrate` as a recipe has it; what has one form alone has its name alone."""
    *words, form = name.split()
    return f"{' '.join(words)} ({form})" if form in FORMS else name


def rows():
    with (ROOT / "tests/reference/equivalence_factors.csv").open(encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


class Weighings(Workspace):
    def weigh(self, called, there):
        found = self.json("weigh", called, "--as-form", there)["as"]
        self.assertEqual(len(found), 1)
        return found[0]

    def kinship(self, row):
        called, there = row["formula_calls_for"], row["you_have"]
        if called == "sodium metabisulfite":
            return "same solution"
        return "like function" if called in LIKE and not there.startswith("borax") else "same species"

    def test_every_row_both_ways(self):
        seen = 0
        for row in rows():
            called, there = written(row["formula_calls_for"]), written(row["you_have"])
            called = called.replace("sodium bromide", "sodium bromide (anhydrous)")
            with self.subTest(f"{called} from {there}"):
                one = self.weigh(f"10 g {called}", there)
                exact = float(row["multiply_mass_by_exact_g_per_g"])
                self.assertAlmostEqual(one["factor"], exact, delta=0.0001)
                self.assertAlmostEqual(one["amount"]["value"], 10 * exact, delta=0.006)
                published = float(row["multiply_mass_by_published_g_per_g"])
                self.assertAlmostEqual(one["factor"] / published, 1, delta=0.01)
                self.assertEqual(one["kinship"], self.kinship(row))
                back = self.weigh(f"10 g {there}", called)
                self.assertAlmostEqual(back["factor"] * one["factor"], 1, delta=0.00001)
                self.assertEqual(back["kinship"], one["kinship"])
                seen += 1
        self.assertEqual(seen, 14)

    def test_the_row_printed_the_wrong_way_round(self):
        # The book has 0.72 for potassium hydroxide in place of sodium hydroxide; 56.105 ÷ 39.997 is 1.40.
        self.assertGreater(self.weigh("10 g sodium hydroxide", "potassium hydroxide")["amount"]["value"], 14)

    def test_like_function_says_so(self):
        text = self.scruple("weigh", "10 g potassium carbonate", "--as-form", "sodium carbonate (anhydrous)")
        self.assertIn("like function, test it first", text)
        # 105.988 ÷ 138.204
        self.assertAlmostEqual(self.weigh("10 g potassium carbonate", "sodium carbonate (anhydrous)")["amount"]["value"],
                               7.669, delta=0.001)
        self.assertNotIn("test it first", self.scruple("weigh", "10 g borax (decahydrate)"))
        self.assertIn("no use in common", self.refused("weigh", "10 g metol", "--as-form", "sodium hydroxide"))

    def test_an_alkali_stands_for_one_of_its_family_alone(self):
        # Common practice, no source: carbonate for caustic is another developer, and not another amount.
        said = self.refused("weigh", "10 g sodium carbonate (anhydrous)", "--as-form", "sodium hydroxide")
        self.assertIn("a carbonate alkali and sodium hydroxide a caustic one", said)
        self.assertIn("no weight of the one", said)
        # 56.105 ÷ 39.997
        self.assertAlmostEqual(self.weigh("10 g sodium hydroxide", "potassium hydroxide")["factor"], 1.4027, delta=0.0001)

    def test_metaborate_stands_for_borax_with_lye(self):
        # The row: 0.210 g of sodium hydroxide a gram of borax besides.
        note = next(r["note"] for r in rows() if r["formula_calls_for"] == "borax decahydrate")
        self.assertIn("0.210 g NaOH", note)
        lines = " ".join(self.weigh("10 g borax (decahydrate)", "sodium metaborate (tetrahydrate)")["lines"])
        self.assertIn("2.098\u00a0g of sodium hydroxide", lines)
        lines = " ".join(self.weigh("14.46 g sodium metaborate (tetrahydrate)", "borax (decahydrate)")["lines"])
        self.assertIn("with 2.098\u00a0g of sodium hydroxide", lines)

    def test_percent_solutions_both_ways(self):
        one = self.weigh("5 g potassium bromide", "10 % w/v")
        self.assertEqual(one["amount"], {"value": 50, "unit": "ml"})
        self.assertEqual(self.weigh("50 ml potassium bromide (10 % w/v)", "crystals")["amount"], {"value": 5, "unit": "g"})
        # 20 g of the dry salt are 23.40 g of the monohydrate: 117 ml of 20 % w/v of that.
        one = self.weigh("20 g sodium carbonate (anhydrous)", "sodium carbonate (monohydrate, 20 % w/v)")
        self.assertAlmostEqual(one["amount"]["value"], 20 * 124.003 / 105.988 / 0.2, delta=0.05)
        # A strength alone is of the form that is called for.
        self.assertEqual(self.weigh("20 g sodium carbonate (anhydrous)", "20 % w/v")["amount"]["value"], 100)
        # 0.5 mol/l of 39.997 g/mol
        self.assertAlmostEqual(self.weigh("4 g sodium hydroxide", "0.5 mol/l")["amount"]["value"], 4 / 39.997 / 0.0005,
                               delta=0.05)

    def test_liquids_by_weight_with_their_density(self):
        # 10 g of 60 % w/w are 16.67 g; ml by the density that the library records for that strength.
        one = self.weigh("10 g ammonium thiosulfate", "60 % w/w")
        self.assertAlmostEqual(one["amount"]["value"], 16.67, delta=0.005)
        density = {d["of"] if "of" in d else str(d): d for d in self.json("chemical", "ammonium thiosulfate")["densities"]}
        self.assertTrue(density)
        self.assertEqual(one["measured"]["unit"], "ml")
        back = self.weigh(f"{one['measured']['value']} ml ammonium thiosulfate (60 % w/w)", "crystals")
        self.assertAlmostEqual(back["amount"]["value"], 10, delta=0.01)
        # Harvey, Analytical Chemistry 2.1, Appendix F: sodium hydroxide 50 % w/w is 1.53 g/ml.
        self.assertAlmostEqual(self.weigh("20 g sodium hydroxide", "50 % w/w")["measured"]["value"], 40 / 1.53, delta=0.01)

    def test_the_assay_of_what_is_on_the_shelf(self):
        # 56.1 g of hydroxide are 66 g of pellets of 85 %.
        self.assertEqual(self.weigh("56.1 g potassium hydroxide", "85 % w/w")["amount"], {"value": 66, "unit": "g"})
        self.assertEqual(self.weigh("66 g potassium hydroxide (85 % w/w)", "pellets")["amount"], {"value": 56.1, "unit": "g"})
        # Glacial acid is sold with 99.5 % w/w: 10 g hold 9.95 g.
        one = self.weigh("10 g acetic acid (glacial)", "28 % w/w")
        self.assertAlmostEqual(one["amount"]["value"], 9.95 / 0.28, delta=0.005)

    def test_what_is_not_there_is_refused(self):
        for there, says in (("dodecahydrate", "`decahydrate`"), ("sodum carbonate (dry)", "unknown"), ("20 %", "bare-percent"),
                            ("sodium bromide", "form-not-stated"), ("", "weigh")):
            with self.subTest(there):
                self.assertTrue(self.refused("weigh", "30 g sodium carbonate (anhydrous)", "--as-form", there))
