# SPDX-License-Identifier: MIT
"""The field for the volume: every text of the work must be that of the compiler's own card of that volume."""
import json
import random

from pages import RECIPES, Pages, pieces_of

DEMO = [("Damson",), ("Medlar", "part", "B"), ("Sloe",), ("Mulberry", "bath", "tone")]

COARSE = """
bench Saltmarsh
    balance    0.1 g up to 50 g
    balance    5 g up to 300 g
    syringe    1 ml by 0.02 ml
    graduate   250 ml by 2.5 ml
    jug        1 l by 50 ml
    dropper    23 drops per 1 ml water
"""

# Two vessels, divided weighings, drops, moles, solutions, ounces, something optional.
BUSY = """
recipe Heron
    is a    paper developer
    water                          700 ml at 40 C
    sodium sulfite (anhydrous)     41.7 g, a pinch now
    hydroquinone                   10 g, 3 g now, stirring
    sodium sulfite (anhydrous)     the rest
    hydroquinone                   the rest
    apart lye
    water                          120 ml
    sodium hydroxide               7.3 g, slowly
    potassium bromide (10 % w/v)   50 ml
    pour in half of lye, slowly
    pour in 11 ml of lye
    wait 5 min
    pour in the rest of lye
    glycerol                       30 drops
    sodium carbonate (anhydrous)   1 oz av
    ascorbic acid                  0.05 mol
    potassium bromide              4 g, optional "for old paper"
    stir until clear
    stand 10 min
    water to make                  1 l
"""


def volumes(seed):
    """The ordinary range by steps, and others of every size and number of digits."""
    draw = random.Random(seed)
    usual = [f"{ml} ml" for ml in range(250, 5001, 250)] + ["0.5 l", "1.25 l", "10 l", "12.5 l", "33.3 l"]
    sizes = [round(draw.uniform(1, 10) * 10 ** draw.choice([1, 2, 2, 3, 3, 3, 4]), draw.choice([0, 1, 2, 3])) for _ in range(185)]
    return usual + [f"{size:.3f} ml" for size in sizes]


class Rescaling(Pages):
    def rescaled(self, page, typed):
        return self.tell(page, f"""
          return {json.dumps(typed)}.map((typed) => {{
            type(cards[0].querySelector("input"), typed);
            return {{refused: cards[0].classList.contains("refused"), said: cards[0].querySelector("[role=status]").textContent,
                     pieces: pieces(cards[0])}};
          }});""")

    def compiled(self, words, volume, folder):
        return self.scruple("card", *words, "--make", volume.replace(" ", ""), "--as", "html", "--in", str(folder))

    def compare(self, words, folder=RECIPES, seed=1):
        typed = volumes(seed)
        shown = self.rescaled(self.card(*words, folder=folder), typed)
        self.assertEqual(len(shown), len(typed))
        worked = 0
        for volume, told in zip(typed, shown):
            page = self.compiled(words, volume, folder)
            with self.subTest(words=words, volume=volume):
                advised = "the balance" in page and "cannot weigh" in page or "only to within" in page or "cannot measure" in page
                self.assertEqual(told["refused"], advised, told["said"])
                if told["refused"]:
                    self.assertRegex(told["said"], r"well on this bench. Print the card of that volume")
                    continue
                worked += 1
                self.assertEqual(told["pieces"], pieces_of(page))
        return worked

    def test_demo_cards_equal_the_compilers(self):
        for seed, words in enumerate(DEMO):
            worked = self.compare(words, seed=seed)
            self.assertGreater(worked, 100, words)

    def test_a_coarse_bench(self):
        self.put("dark/bench.scruple", COARSE)
        self.put("dark/heron.scruple", BUSY)
        self.assertGreater(self.compare(("Heron",), self.folder / "dark", seed=7), 40)

    def test_without_a_bench(self):
        self.put("dark/heron.scruple", BUSY.replace("30 drops", "2 ml"))
        self.assertGreater(self.compare(("Heron",), self.folder / "dark", seed=8), 200)

    def test_the_ordinary_range_works_on_the_demos_cards(self):
        for words in DEMO:
            shown = self.rescaled(self.card(*words), ["250 ml", "500 ml", "1 l", "2 l", "5 l"])
            self.assertEqual([told["said"] for told in shown if told["refused"]], [], words)

    def test_what_is_no_volume_is_answered_in_words(self):
        typed = ["", "0 ml", "-1 l", "99999999 l", "1,5 l", "500", "20 fl oz us", "500ml", "1.5l", "soon"]
        shown = self.rescaled(self.card("Damson"), typed)
        said = {word: told["said"] for word, told in zip(typed, shown)}
        expected = {"": "Write a volume", "0 ml": "Nothing is made", "-1 l": "Nothing is made", "99999999 l": "more than",
                    "1,5 l": "point", "500": "Of what", "20 fl oz us": "takes ml and l", "500ml": "500\u00a0ml",
                    "1.5l": "1.5\u00a0l", "soon": "no volume"}
        for word, part in expected.items():
            self.assertIn(part, said[word])
        self.assertEqual([told["refused"] for told in shown], [True] * 7 + [False, False, True])

    def test_the_card_as_printed_comes_back(self):
        page = self.card("Damson")
        before, after = self.tell(page, """
          const before = pieces(cards[0]);
          const field = cards[0].querySelector("input"), own = field.value;
          for (const typed of ["333 ml", "", own]) type(field, typed);
          return [before, pieces(cards[0])];""")
        self.assertEqual(before, after)
        self.assertEqual(before, pieces_of(self.text(page)))
