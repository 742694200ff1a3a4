# SPDX-License-Identifier: MIT
"""A printed page from the book to the card: what is settled is a recipe like any other, and says what was assumed."""
from support import FINE, Workspace

PAGE = """printed Bittern
    is a     film developer
    book     The Tide Table of Photography, 1907, Great Britain
    | Water                   20 oz        1000 c.c.
    | Metol                   50 grs       5.7 g
    | Sulphite of soda, dry   1 oz         50 g
    | Potass. brom.           10 grs       1.1 g
    | Taste it "once" # to be sure
    note     typed on a wet Sunday
"""

TWO = """printed Bittern
    is a     film developer
    book     The Tide Table of Photography, 1907, Great Britain
    | A
    | Potass. metabisulphite   60 grs
    | Pyro                     1/2 oz
    | Water to                 20 oz
    | Solution B
    | Carbonate of soda        2 oz
    | Water to                 20 oz
    | For use: 1 part A, 1 part B, 2 parts water
"""

BATHS = """printed Bittern
    is a     toner
    book     The Tide Table of Photography, 1907, Great Britain
    | Bleach: Potassium ferricyanide 1 oz
    | Water to 20 oz
    | For use: 1 part with 9 parts of water.
    | Sulphide bath: Sodium sulphide  4 oz
    | Water to  20 oz
    | For use take 3 oz and water to make 20 oz.
"""

HALVES = """printed Bittern
    book     The Tide Table of Photography, 1907, Great Britain
    | A. Hydroquinone 1 oz
    | Water to 20 oz
    | B. Carbonate of potash 2 oz
    | Water to 20 oz
    | Mix equal parts of A and B.
    | Dilute with 2 parts of water.
"""


class Settle(Workspace):
    def test_as_a_recipe_it_has_no_fault_is_tidy_and_its_card_says_what_was_assumed(self):
        self.put("page/bittern.scruple", PAGE)
        self.scruple("settle", "Bittern", "--in", "page", "--as", "recipe", "--out", str(self.folder / "read.scruple"))
        (self.folder / "page/bittern.scruple").unlink()
        self.assertEqual(self.json("check"), [])
        self.assertEqual(self.run_scruple("tidy", "--check").returncode, FINE)
        self.assertIn('note       "typed on a wet Sunday"', self.text("read.scruple"))
        card = self.json("card", "Bittern")
        assumed = " ".join(card["assumed"])
        for words in ("whose fluid ounce in column 1: fl oz imperial", "what gr means: gr grain", "the book is British"):
            self.assertIn(words, assumed)
        self.assertIn("Nothing in a darkroom is tasted", " ".join(it["text"] for it in card["cautions"]))
        amounts = {it["chemical"]: it["amount"]["value"] for it in card["gather"]}
        # `units "50 grain" g`, `units "1 oz" g`: 3.24 and 28.35 g
        self.assertAlmostEqual(amounts["metol"], 3.24, places=2)
        self.assertAlmostEqual(amounts["sodium sulfite"], 28.35, places=1)

    def test_two_solutions_and_what_is_mixed_of_them_are_parts_and_a_working_solution(self):
        self.put("page/bittern.scruple", TWO)
        self.scruple("settle", "Bittern", "--in", "page", "--as", "recipe", "--out", str(self.folder / "read.scruple"))
        (self.folder / "page/bittern.scruple").unlink()
        self.assertEqual([it for it in self.json("check") if it["severity"] == "error"], [])
        self.assertEqual(self.run_scruple("tidy", "--check").returncode, FINE)
        self.assertIn("mix part A + part B + water 1+1+2", " ".join(self.text("read.scruple").split()))
        held = {it["chemical"]: it["g_per_l"] for it in self.json("contents", "Bittern working")["solutions"][0]["chemicals"]}
        # `units "0.5 oz / 20 brfloz / 4" g/l`, `units "2 oz / 20 brfloz / 4" g/l`: 6.24 and 24.9 g/l
        self.assertAlmostEqual(held["pyrogallol"], 6.24, places=2)
        self.assertAlmostEqual(held["sodium carbonate"], 24.94, places=2)

    def test_baths_with_titles_and_parts_of_a_part_are_recipes_too(self):
        for page, mixed in ((BATHS, 'mix "part Sulphide bath" + water 3+17'), (HALVES, "mix part A + part B + water 0.5+0.5+2")):
            self.put("page/bittern.scruple", page)
            self.scruple("settle", "Bittern", "--in", "page", "--as", "recipe", "--out", str(self.folder / "read.scruple"))
            (self.folder / "page/bittern.scruple").unlink()
            self.assertEqual([it for it in self.json("check") if it["severity"] == "error"], [])
            self.assertIn(mixed, " ".join(self.text("read.scruple").split()))

    def test_a_page_is_no_recipe_and_no_card_is_made_of_it(self):
        self.put("bittern.scruple", PAGE)
        self.assertEqual(self.json("check"), [])
        self.assertIn("Bittern", self.refused("card", "Bittern"))

    def test_a_name_that_is_not_there_and_a_format_that_is_none(self):
        self.put("bittern.scruple", PAGE)
        self.assertIn("`Bittern`", self.refused("settle", "Bitern"))
        self.assertIn("and recipe", self.refused("settle", "Bittern", "--as", "pdf"))

    def test_tidying_leaves_the_page_as_it_is(self):
        self.put("bittern.scruple", PAGE)
        self.scruple("tidy")
        for line in PAGE.splitlines()[3:-1]:
            self.assertIn(line.strip(), self.text("bittern.scruple"))
