# SPDX-License-Identifier: MIT
"""A card's page on paper (chromium prints it, poppler reads it back): sizes as on the sheets the program draws itself."""
import re

from pages import Pages

BODY, AMOUNT = 14, 20  # points: guides for large print; what is read at arm's length
NUMBERS_LEFT_OF = 50  # points: the column of the numbers of steps
CLOSE = 0.15  # of a point: what the printer rounds


class Print(Pages):
    def printed(self, *words):
        page = self.folder / self.card(*words)
        sheet = self.folder / "page.pdf"
        self.browse("--no-pdf-header-footer", f"--print-to-pdf={sheet}", page.as_uri())
        return self.words(sheet)

    def setUp(self):
        super().setUp()
        self.found = self.printed("Medlar", "part", "B")

    def test_body_and_amounts_are_large_enough(self):
        self.assertGreater(len(self.found), 200)
        self.assertGreaterEqual(min(word.points for word in self.found), BODY - CLOSE)
        amounts = [word for word in self.found if re.fullmatch(r"(40\.57|8\.6|957)(\u00a0m?[gl])?", word.text)]
        self.assertEqual(len(amounts), 6)  # three put out, two of them used, one again in the words on what was substituted
        self.assertGreaterEqual(min(word.points for word in amounts[:5]), AMOUNT)

    def test_no_step_is_split_across_sheets(self):
        numbers = sorted((word.page, word.top) for word in self.found if word.left < NUMBERS_LEFT_OF and word.text.isdigit())
        self.assertEqual(len(numbers), 14)
        first_page, last_page = numbers[0][0], numbers[-1][0]
        self.assertGreater(last_page, first_page)
        for page in range(first_page + 1, last_page + 1):
            highest = min(word.top for word in self.found if word.page == page)
            number = min(top for other, top in numbers if other == page)
            self.assertLess(number - highest, BODY, f"sheet {page} begins within a step")

    def test_what_is_for_fingers_does_not_print(self):
        text = " ".join(word.text for word in self.found)
        for control in ("another volume", "the clock", "Start"):
            self.assertNotIn(control, text)
        self.assertIn("started", text)
