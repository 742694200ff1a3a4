# SPDX-License-Identifier: MIT
"""Where figures come from: the printed lines are read again and done by machine.

Each line `sum = result` is worked out from what stands in it, in Python's own arithmetic; the abridged standard atomic
weights are those of tests/reference/atomic_weights.csv.
"""
import csv
import re
from fractions import Fraction

from support import HERON, ROOT, Workspace

BENCH = """
bench Saltmarsh
    balance    0.1 g up to 500 g
    balance    0.01 g up to 50 g
    graduate   100 ml by 1 ml
"""
PIPIT = """
recipe Pipit
    water                          700 ml at 20 C
    sodium ascorbate               12 g, by conversion
    potassium bromide              30 grains
    sodium carbonate (anhydrous)   0.3 mol
    stir until clear
    water to make                  1 l
"""
HAZEL = """
recipe Hazel

part A
    water                        500 ml
    metol                        0.01 mol
    sodium sulfite (anhydrous)   100 g
    water to make                900 ml

working
    dilute part A 1+4

replenisher
    part A                       400 ml
    water to make                2 l
"""
UNIT = re.compile(r"(?<=[0-9])\u00a0(g/mol|g/l|g|kg|ml|l|mol|drops|%)")


def weights():
    with (ROOT / "tests/reference/atomic_weights.csv").open(encoding="utf-8", newline="") as file:
        return {row["element"]: Fraction(row["abridged_5digit_2021_dimensionless"]) for row in csv.DictReader(file)}


def worked_out(text):
    """Products and quotients from left to right, then their sum."""
    total = Fraction(0)
    for term in text.split(" + "):
        words = UNIT.sub("", term).split()
        value = Fraction(words[0])
        for sign, number in zip(words[1::2], words[2::2]):
            value = value * Fraction(number) if sign == "×" else value / Fraction(number)
        total += value
    return total


def figure(text):
    value = Fraction(UNIT.sub("", text))
    return value * 1000 if re.search(r"\u00a0(kg|l)$", text) else value


class Derivations(Workspace):
    def lines(self, *words):
        return [line for one in self.json("why", *words)["figures"] for line in one["lines"]]

    def do_again(self, line):
        """True where the line is a sum that was done; each is right to the digits that are printed."""
        if line["result"] is None:
            return False
        rounding = re.fullmatch(r"(.*) to the nearest (.*)", line["sum"])
        if rounding:
            exact, division = figure(rounding[1]), figure(rounding[2])
            self.assertLessEqual(abs(figure(line["result"]) - exact), division * Fraction(501, 1000), line)
            self.assertEqual((figure(line["result"]) / division).denominator, 1, line)
            return True
        found = worked_out(line["sum"].split(": ")[-1])
        self.assertAlmostEqual(float(figure(line["result"]) / found), 1, delta=0.0001, msg=line)
        return True

    def test_every_sum_of_a_conversion_is_right_and_leads_to_the_card(self):
        self.put("a.scruple", PIPIT + BENCH)
        document = self.json("why", "Pipit", "sodium bicarbonate", "--make", "500 ml")["figures"]
        self.assertEqual(len(document), 1)
        lines = document[0]["lines"]
        self.assertGreaterEqual(sum(self.do_again(line) for line in lines), 8)
        self.assertTrue(all(line["source"] for line in lines))
        # Each sum begins with what an earlier line came to, so that nothing enters from nowhere.
        results = {line["result"] for line in lines}
        for line in lines[4:]:
            if "×" in line["sum"] and ":" not in line["sum"]:
                self.assertIn(re.match(r"[0-9.]+\u00a0\w+", line["sum"])[0], results, line)
        # 6 g of C6H7NaO6 (198.106), mole for mole NaHCO3 (84.006), and 4 % more: 2.646 g.
        self.assertAlmostEqual(float(figure(lines[-1]["result"])), 6 / 198.106 * 84.006 * 1.04, delta=0.005)
        card = self.json("card", "Pipit", "--make", "500 ml")
        weighed = [one["amount"] for one in card["gather"] if one["chemical"] == "sodium bicarbonate"]
        self.assertEqual(weighed, [document[0]["amount"]])

    def test_molar_masses_are_of_the_formula(self):
        self.put("a.scruple", PIPIT)
        table = weights()
        line = next(line for line in self.lines("Pipit", "sodium bicarbonate") if "NaHCO3:" in line["sum"])
        counted = sum(table[symbol] * count
                      for symbol, count in (("Na", 1), ("H", 1), ("C", 1), ("O", 3)))
        self.assertAlmostEqual(float(figure(line["result"])), float(counted), delta=0.0006)
        self.assertIn("CIAAW", line["source"])

    def test_amounts_as_written_in_other_units_and_in_moles(self):
        self.put("a.scruple", PIPIT + BENCH)
        lines = self.lines("Pipit", "potassium bromide")
        self.assertEqual(lines[0]["source"], "a.scruple, line 5")
        # A grain is 0.06479891 g (NIST Handbook 44, appendix C): 1.9440 g.
        self.assertIn("30 grains is 1.944\u00a0g", [line["sum"] for line in lines])
        self.assertEqual(lines[-1]["result"], "1.94\u00a0g")
        lines = self.lines("Pipit", "sodium carbonate")
        self.assertTrue(all(self.do_again(line) for line in lines if line["result"]))
        self.assertEqual(lines[-1]["result"], "31.8\u00a0g")  # 0.3 × 105.988 = 31.796

    def test_what_is_taken_in_its_place_begins_with_the_recipes_line(self):
        self.put("a.scruple", PIPIT.replace("0.3 mol", "40 g") + BENCH +
                 "log\n    2026-11-05 received sodium carbonate (monohydrate) 200 g\n")
        asked = ("Pipit", "sodium carbonate", "--instead", "sodium carbonate (anhydrous)", "--make", "500 ml")
        lines = self.lines(*asked)
        self.assertEqual(lines[0]["sum"], "sodium carbonate (anhydrous): 40 g for 1000\u00a0ml")
        self.assertGreaterEqual(sum(self.do_again(line) for line in lines), 6)
        # 20 g ÷ 105.988 × 124.003 g/mol (tests/reference/molar_masses.csv) = 23.40 g
        self.assertEqual(lines[-1]["result"], "23.4\u00a0g")
        gather = self.json("card", "Pipit", *asked[2:])["gather"]
        weighed = [one["amount"] for one in gather if one["chemical"] == "sodium carbonate"]
        self.assertEqual(weighed, [{"value": 23.4, "unit": "g"}])

    def test_names_need_no_quotes_and_every_solution_is_looked_through(self):
        self.put("a.scruple", HERON)
        for words in (["Heron", "part", "A", "hydroquinone"], ["Heron part A", "hydroquinone"], ["heron", "hydroquinone"]):
            found = self.json("why", *words)["figures"]
            self.assertEqual([one["solution"] for one in found], ["Heron part A"])
            self.assertEqual(found[0]["amount"], {"value": 10, "unit": "g"})
        text = self.scruple("why", "Heron part B", "sodium carbonate", "--make", "250ml")
        self.assertIn("12.5\u00a0g", text)
        self.assertIn("[arithmetic]", text)
        self.assertIn("</html>", self.scruple("why", "Heron", "hydroquinone", "--as", "html"))

    def test_a_dilution_is_followed_to_what_its_stock_weighs(self):
        self.put("a.scruple", HAZEL + BENCH)
        for words, per_litre in (
            (("Hazel working", "sodium sulfite"), 100 / 5),
            (("Hazel working", "sodium sulfite", "--make", "2.5l"), 100 / 5),
            (("Hazel working", "metol"), 0.01 * 344.382 / 0.9 / 5),  # tests/reference/molar_masses.csv
            (("Hazel replenisher", "sodium sulfite"), 100 * 400 / 900 / 2),
        ):
            with self.subTest(words):
                found = self.json("why", *words)["figures"]
                self.assertEqual(len(found), 1)
                self.assertGreaterEqual(sum(self.do_again(line) for line in found[0]["lines"]), 3)
                self.assertTrue(all(line["source"] for line in found[0]["lines"]))
                factor = 1 / 0.9 if words[1] == "sodium sulfite" and words[0] == "Hazel working" else 1
                self.assertAlmostEqual(found[0]["amount"]["value"], per_litre * factor, delta=0.01)
                held = self.json("card", *words[:1])["contents"]
                of_it = [one["g_per_l"] for one in held if one["chemical"] == words[1]]
                self.assertAlmostEqual(of_it[0], found[0]["amount"]["value"], delta=0.01)
        # Of the whole recipe: where it is weighed.
        found = self.json("why", "Hazel", "sodium sulfite")["figures"]
        self.assertEqual([one["solution"] for one in found], ["Hazel part A"])

    def test_an_amount_that_was_found_says_from_what_and_can_be_put_to_the_test(self):
        self.put("a.scruple", """
recipe Siskin
    water                        500 ml
    sodium sulfite (anhydrous)   ?
    water to make                800 ml
    expect                       sodium sulfite (anhydrous) 25 g/l
""" + BENCH)
        lines = self.lines("Siskin", "sodium sulfite", "--make", "400 ml")
        self.assertIn("expected: sodium sulfite (anhydrous) 25\u00a0g/l", [line["sum"] for line in lines])
        self.assertGreaterEqual(sum(self.do_again(line) for line in lines if "?" not in line["sum"]), 4)
        self.assertIn("25\u00a0g/l", [line["result"] for line in lines])
        self.assertEqual(lines[-1]["result"], "10\u00a0g")  # 25 g/l × 0.4 l

    def test_what_is_not_in_it(self):
        self.put("a.scruple", HERON)
        self.assertIn("takes no metol", self.refused("why", "Heron part A", "metol"))
        self.assertIn("takes no metol", self.refused("why", "Heron working", "metol"))
        self.assertIn("why what?", self.refused("why", "Heron"))
        self.assertIn("no recipe", self.refused("why", "Hron", "metol"))
        self.assertIn("no chemical", self.refused("why", "Heron", "mtol"))
