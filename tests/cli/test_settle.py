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

    def test_what_acts_on_a_terminal_comes_as_its_picture_in_the_recipe(self):
        self.put("bittern.scruple", PAGE.replace("Potass. brom.", "Potass.\x1b[2Jbrom.").replace("developer", "dev\x0eeloper"))
        recipe = self.scruple("settle", "Bittern", "--as", "recipe")
        self.assertIn("\u241b[2J", recipe)
        self.assertNotRegex(recipe, "[\x00-\x09\x0b-\x1f]")

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
