# SPDX-License-Identifier: MIT
"""A card's page on paper (chromium prints it, poppler reads it back): as good as the sheets that the program draws itself."""
import re

from driven import A4, A5, LETTER, Driven
from pages import RECIPES

BODY, AMOUNT = 14, 20  # points: guides for large print; what is read at arm's length
NUMBERS_LEFT_OF = 50  # points: the column of the numbers of steps
CLOSE = 0.15  # of a point: what the printer rounds
DEMO = [("Damson",), ("Medlar", "part", "B"), ("Sloe",), ("Mulberry", "bath", "tone"), ("Damson", "--make", "2l")]
# The page names the columns of a list; forms have one of their own where the sheet has brackets.
ONLY_ON_THE_PAGE = {"what", "amount", "form"}


def plain(words):
    return {word.text.replace("(", "").replace(")", "") for word in words if not word.text.isdigit()}


class Print(Driven):
    def printed(self, *words, size=A4):
        return self.print_out(self.open(self.folder / self.card(*words)), size)

    def sheets(self, path):
        return [sheet.replace("\u00a0", " ") for sheet in self.pages(path)]

    def drawn(self, *words):
        return self.draw("card", *words, "--in", str(RECIPES))

    def test_body_and_amounts_are_large_enough(self):
        found = self.words(self.printed("Medlar", "part", "B"))
        self.assertGreater(len(found), 200)
        self.assertGreaterEqual(min(word.points for word in found), BODY - CLOSE)
        amounts = [word for word in found if re.fullmatch(r"(40\.57|8\.6|957)(\u00a0m?[gl])?", word.text)]
        self.assertEqual(len(amounts), 6)  # three put out, two of them used, one again in the words on what was substituted
        self.assertGreaterEqual(min(word.points for word in amounts[:5]), AMOUNT)

    def test_no_step_is_split_across_sheets_of_any_size(self):
        for size in (A4, LETTER, A5):
            with self.subTest(size=size):
                found = self.words(self.printed("Medlar", "part", "B", size=size))
                numbers = sorted((word.page, word.top) for word in found if word.left < NUMBERS_LEFT_OF and word.text.isdigit())
                self.assertEqual(len(numbers), 14)
                first_page, last_page = numbers[0][0], numbers[-1][0]
                self.assertGreater(last_page, first_page)
                for page in range(first_page + 1, last_page + 1):
                    below_head = sorted(word.top for word in found if word.page == page)
                    number = min(top for other, top in numbers if other == page)
                    above = [top for top in below_head if top < number - BODY / 2]
                    self.assertLessEqual(len(above), len("Medlar, part B – 1000 ml".split()), f"sheet {page} begins within a step")

    def test_every_sheet_repeats_the_head_and_says_which_it_is(self):
        sheets = self.sheets(self.printed("Medlar", "part", "B"))
        for number, sheet in enumerate(sheets, start=1):
            self.assertTrue(sheet.startswith("Medlar, part B – 1000 ml"), sheet[:60])
            self.assertTrue(sheet.rstrip().endswith(f"sheet {number} of {len(sheets)}"), sheet[-60:])

    def test_the_page_prints_the_words_of_the_drawn_sheets_on_no_more_sheets(self):
        for words in DEMO:
            with self.subTest(words=words):
                page, sheet = self.printed(*words), self.drawn(*words)
                here, there = plain(self.words(page)), plain(self.words(sheet))
                self.assertEqual((there - here, here - there - ONLY_ON_THE_PAGE), (set(), set()))
                self.assertLessEqual(int(self.info(page)["Pages"]), int(self.info(sheet)["Pages"]))

    def test_another_volume_prints_as_it_stands_there(self):
        browser = self.open(self.folder / self.card("Medlar", "part", "B"))
        field = browser.find_element("css selector", "input")
        field.clear()
        field.send_keys("2 l")
        sheets = self.sheets(self.print_out(browser))
        for sheet in sheets:
            self.assertTrue(sheet.startswith("Medlar, part B – 2000 ml"), sheet[:60])
        self.assertIn("makes 2000 ml", sheets[0])

    def test_what_is_for_fingers_does_not_print(self):
        text = " ".join(word.text for word in self.words(self.printed("Medlar", "part", "B")))
        for control in ("another volume", "the clock", "Start"):
            self.assertNotIn(control, text)
        self.assertIn("started", text)
