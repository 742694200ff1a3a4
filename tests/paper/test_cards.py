# SPDX-License-Identifier: MIT
"""Cards on paper. ISO 216 and ANSI/ASME Y14.1 for the sheets."""
import os
import pty
import re
import xml.etree.ElementTree as ElementTree

from PIL import Image

from sheets import BENCH, Sheets, tool
from support import HERON, PROGRAM, ROOT, WRONG_CALL

HOSTILE = '<script>alert(1)</script> \\(x\\) & "q"'
SIZES = {"a4": (210, 297), "a5": (148, 210), "letter": (215.9, 279.4)}


class Cards(Sheets):
    def long_recipe(self, steps):
        lines = "".join(f"    potassium bromide              {n} g\n    wait {n} min, stirring every 1 min\n"
                        for n in range(1, steps + 1))
        self.put("long.scruple", f"recipe Long\n    water    900 ml at 20 C\n{lines}    water to make   2 l\n{BENCH}")

    def test_amounts_have_20_points_and_the_rest_14(self):
        self.put("heron.scruple", HERON + BENCH)
        for sheet in SIZES:
            words = self.words(self.draw("card", "Heron", "part", "A", "--make", "500ml", sheet=sheet))
            self.assertGreaterEqual(min(word.points for word in words), 13.95)
            amounts = [one["amount"] for one in self.json("card", "Heron", "part", "A", "--make", "500ml")["gather"]]
            for amount in amounts[1:]:
                shown = [word for word in words if word.text.startswith(f"{amount['value']}\u00a0{amount['unit']}")
                         or word.text == str(amount["value"])]
                self.assertGreaterEqual(len([word for word in shown if word.points >= 20]), 2, amount)

    def test_a_unit_stands_beside_its_number(self):
        self.put("heron.scruple", HERON + BENCH)
        for sheet in SIZES:
            text = "\n".join(self.pages(self.draw("card", "Heron", "part", "A", sheet=sheet)))
            self.assertEqual(re.findall(r"\d\s*\n\s*(?:g|ml|l|°C)\b", text), [])

    def test_sheets_are_as_large_as_they_should_be(self):
        self.put("heron.scruple", HERON)
        for sheet, (width, height) in SIZES.items():
            path = self.draw("card", "Heron", "part", "A", sheet=sheet)
            found = re.match(r"([\d.]+) x ([\d.]+) pts", self.info(path)["Page size"])
            self.assertAlmostEqual(float(found[1]), width / 25.4 * 72, delta=0.01)
            self.assertAlmostEqual(float(found[2]), height / 25.4 * 72, delta=0.01)
            for word in self.words(path):
                self.assertGreater(word.left, 18, word.text)
                self.assertLess(word.right, width / 25.4 * 72 - 18, word.text)
                self.assertLess(word.bottom, height / 25.4 * 72 - 18, word.text)

    def test_everything_of_the_plan_is_there_in_the_order_of_the_hands(self):
        path = self.draw("card", "Medlar", "part", "B", "--make", "500ml", "--in", str(ROOT / "recipes"))
        card = self.json("card", "Medlar", "part", "B", "--make", "500ml", "--in", str(ROOT / "recipes"))
        text = re.sub(r"\s+", " ", "\n".join(self.pages(path)))
        order = ["Before you open anything", "Put out on the bench", "Mix, in this order", "When it is mixed",
                 "How long and how much", "What is in it", "What was substituted", "What was assumed"]
        places = [text.index(heading) for heading in order]
        self.assertEqual(places, sorted(places))
        plain = text.replace(" ", "").replace("\u00a0", "")
        for step in card["work"]:
            self.assertIn(step["what"].replace(" ", "").replace("\u00a0", ""), plain)
        for caution in card["cautions"]:
            self.assertIn(caution["text"].split(".")[0].replace(" ", "")[:30], plain)

    def test_what_is_accepted_stands_below_the_cautions(self):
        self.put("chough.scruple", "recipe Chough\n    accept acid on sulfide because \"it is mixed outdoors\"\n"
                                   "    water 900 ml\n    sodium sulfide (nonahydrate) 20 g\n"
                                   "    citric acid (monohydrate) 30 g\n    water to make 1 l\n")
        text = re.sub(r"\s+", " ", "\n".join(self.pages(self.draw("card", "Chough"))))
        order = ["Before you open anything", "Accepted although it must not meet", "because it is mixed", "LETHAL",
                 "and local rules", "Put out on the bench"]
        places = [text.index(words) for words in order]
        self.assertEqual(places, sorted(places))

    def test_long_recipes_go_on_with_their_head_and_no_step_is_parted(self):
        self.long_recipe(40)
        pages = self.pages(self.draw("card", "Long", sheet="a5"))
        self.assertGreater(len(pages), 8)
        for number, page in enumerate(pages, 1):
            self.assertIn(f"sheet {number} of {len(pages)}", page)
            self.assertIn("Long", page.split("\n")[0])
        for n in range(1, 41):
            waits = [page for page in pages if f"wait {n} min" in page.replace("\u00a0", " ")]
            self.assertEqual(len(waits), 1)
            below = waits[0].replace("\u00a0", " ").split(f"wait {n} min")[1]
            self.assertIn("started", below.split("potassium bromide")[0])

    def test_black_on_white_and_the_same_by_red_light(self):
        path = self.draw("card", "Damson", "--make", "500ml", "--in", str(ROOT / "recipes"))
        for picture in self.pictures(path):
            red, green, blue = picture.split()
            self.assertEqual(red.tobytes(), green.tobytes())
            self.assertEqual(red.tobytes(), blue.tobytes())
            self.assertEqual(red.getextrema(), (0, 255))

    def test_the_same_bytes_each_time_and_the_date_of_the_input(self):
        self.put("heron.scruple", HERON)
        bytes_of = lambda *more, **how: self.draw("card", "Heron", *more, **how).read_bytes()
        self.assertEqual(bytes_of(), bytes_of())
        self.assertNotIn("CreationDate", self.info(self.draw("card", "Heron")))
        dated = self.info(self.draw("card", "Heron", "--mixed", "2026-12-03"))
        self.assertEqual(dated["CreationDate"][:10], "2026-12-03")
        os.environ["SOURCE_DATE_EPOCH"] = "1796428800"  # 2026-12-05
        self.addCleanup(os.environ.pop, "SOURCE_DATE_EPOCH")
        self.assertEqual(self.info(self.draw("card", "Heron"))["CreationDate"][:10], "2026-12-05")

    def test_a_document_that_other_programs_find_nothing_against(self):
        self.put("heron.scruple", HERON + BENCH)
        path = self.draw("card", "Heron")
        self.assertIn("No syntax or stream encoding errors", tool("qpdf", "--check", str(path)).decode())
        self.assertLess(path.stat().st_size / 3, 60_000)
        fonts = [line.split() for line in tool("pdffonts", str(path)).decode().splitlines()[2:]]
        for font in fonts:
            self.assertRegex(font[0], r"^[A-Z]{6}\+DejaVuSans")  # a subset
            self.assertEqual(font[-5:-3], ["yes", "yes"], font)  # embedded

    def test_names_of_any_kind(self):
        for number, name in enumerate((HOSTILE, "現像液 Проявитель מפתח", "long " * 60, "x" * 400)):
            quoted = name.strip().replace('"', "'")
            self.put("a.scruple", f'recipe "{quoted}"\n    water 500 ml\n    metol 5 g\n    note {name}\n')
            path = self.draw("card", quoted, sheet="a5", name=f"c{number}")
            self.assertEqual(re.sub(r"\s+", " ", self.info(path)["Title"]), quoted)
            for word in self.words(path):
                self.assertLess(word.right, 148 / 25.4 * 72)
            drawing = self.scruple("card", quoted, "--as", "svg")
            self.assertEqual({one.tag.split("}")[1] for one in ElementTree.fromstring(drawing).iter()} -
                             {"svg", "g", "defs", "path", "rect", "use", "symbol", "clipPath", "title"}, set())
        text = self.pages(self.folder / "c1.pdf")[0]
        self.assertIn("現像液", text)
        self.assertIn("Проявитель", text)

    def test_pictures(self):
        self.put("heron.scruple", HERON)
        path = self.folder / "card.png"
        self.scruple("card", "Heron", "part", "A", "--as", "png", "--out", str(path))
        picture = Image.open(path)
        self.assertEqual(picture.width, 1241)  # 210 mm at 150 dots an inch, the last one begun
        self.assertGreater(picture.height, 1754)

    def test_calls_that_cannot_be(self):
        self.put("heron.scruple", HERON)
        self.assertIn("a4, a5 and letter", self.refused("card", "Heron", "--as", "pdf", "--paper", "a3"))
        self.assertIn("goes with", self.refused("card", "Heron", "--paper", "a5"))
        self.assertIn("no format of `check`", self.refused("check", "--as", "pdf"))
        reader, writer = pty.openpty()
        self.addCleanup(os.close, reader)
        with os.fdopen(writer, "wb") as terminal:
            done = self.run_scruple("card", "Heron", "--as", "pdf", capture_output=False, stdout=terminal, stderr=-1)
        self.assertEqual(done.returncode, WRONG_CALL)
        self.assertIn(b"--out card.pdf", done.stderr)
