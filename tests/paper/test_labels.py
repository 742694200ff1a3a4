# SPDX-License-Identifier: MIT
"""Labels, and their codes read by zbar (zbarimg). Sizes and the least height of an x, 1.2 mm: Regulation (EC)
No 1272/2008, annex I, table 1.3, and the guidance on labelling that goes with it."""
import hashlib
import json
import re
import subprocess

from PIL import Image

from sheets import BENCH, Sheets, tool
from support import HERON, ROOT

DEMO = ("--in", str(ROOT / "recipes"))
X_OF_AN_EM = 0.547  # DejaVu Sans: 1120 of 2048 units


class Labels(Sheets):
    def labels(self, *words):
        return self.json("labels", *words)["labels"]

    def codes(self, path):
        stem = self.folder / "dots"
        tool("pdftoppm", "-r", "300", "-gray", "-png", str(path), str(stem))
        found = []
        for page in sorted(self.folder.glob("dots*.png")):
            text = subprocess.run(["zbarimg", "-q", "--raw", str(page)], capture_output=True, check=True).stdout.decode()
            found += re.findall(r"(.*?recipe sha256 [0-9a-f]{64})\n", text, re.S)
        return found

    def test_codes_carry_what_is_in_the_bottle(self):
        asked = ("Medlar", "--bottles", "500ml", "--mixed", "2026-12-03", "--batch", "7", *DEMO)
        codes = self.codes(self.draw("labels", *asked))
        self.assertEqual(sorted(codes), sorted(label["code"] for label in self.labels(*asked)))
        self.assertEqual(len(codes), 3)
        first = self.labels(*asked)[0]
        self.assertIn("Medlar part A\nbatch 7\nvolume 500 ml\nmixed 2026-12-03\nuse by 2027-05-03", first["code"])

    def test_the_digest_is_that_of_the_recipes_text(self):
        self.put("heron.scruple", HERON + BENCH)
        lines = [line.rstrip() for line in HERON.splitlines()]
        # The blank line before the next block belongs to what stands before it.
        wanted = hashlib.sha256("".join(line + "\n" for line in lines + [""]).encode()).hexdigest()
        self.assertEqual({label["digest"] for label in self.labels("Heron")}, {wanted})
        self.put("heron.scruple", (HERON + BENCH).replace("\n", " \r\n"))
        self.assertEqual({label["digest"] for label in self.labels("Heron")}, {wanted})
        self.put("heron.scruple", HERON.replace("10 g", "11 g"))
        self.assertNotEqual({label["digest"] for label in self.labels("Heron")}, {wanted})

    def test_dates_strength_and_use(self):
        a, b, working = self.labels("Heron", *self.heron("--mixed", "2026-12-03"))
        self.assertEqual((a["strength"], b["strength"], working["strength"]), ("STOCK", "STOCK", "WORKING"))
        self.assertEqual(a["uses"], ["part A 1 + part B 1 + water 2"])
        self.assertEqual(working["uses"], [])
        self.assertTrue(working["tally"])
        self.put("tern.scruple", "recipe Tern\n    strength stock\n    keeps 6 months full, 2 months half full\n"
                 "    water 700 ml\n    borax (decahydrate) 5 g\n    water to make 1 l\nworking\n    dilute Tern 1+3\n")
        stock = self.labels("Tern", "--mixed", "2026-12-31")[0]
        self.assertEqual((stock["strength"], stock["uses"]), ("STOCK", ["1+3"]))
        # The last day of the sixth month, and of the second, as people count months.
        self.assertEqual([life["use_by"] for life in stock["keeps"]], ["2027-06-30", "2027-02-28"])

    def heron(self, *more):
        self.put("heron.scruple", HERON)
        return more

    def test_bottles_are_counted_and_laid_out_on_a_grid(self):
        path = self.draw("labels", "Heron", "part", "A", *self.heron("--bottles", "5x250ml", "--bottles", "1 l"),
                         "--label", "90x60", "--grid", "2x2", "--first", "10x15", "--between", "3x2")
        self.assertEqual(int(self.info(path)["Pages"]), 2)
        names = [(word.page, round(word.left / 72 * 25.4 - 7 / 72 * 25.4), round(word.top / 72 * 25.4 - 7 / 72 * 25.4))
                 for word in self.words(path) if word.text == "Heron"]
        self.assertEqual([(page, left) for page, left, _ in names], [(0, 10), (0, 103), (0, 10), (0, 103), (1, 10), (1, 103)])
        self.assertEqual(names[2][2] - names[0][2], 62)
        text = "".join(self.pages(path)).replace("\u00a0", " ")
        self.assertEqual((text.count("volume 250 ml"), text.count("volume 1000 ml")), (5, 1))

    def test_nothing_leaves_its_label_and_the_least_type_is_read(self):
        for asked, width, height in ((("Medlar", "part", "A"), 98, 95), (("Sloe",), 74, 58), (("Damson", "working"), 98, 142)):
            path = self.draw("labels", *asked, "--label", f"{width}x{height}", "--grid", "1x1", "--first", "20x30", *DEMO)
            for word in self.words(path):
                self.assertGreaterEqual(word.left, 20 / 25.4 * 72)
                self.assertLessEqual(word.right, (20 + width) / 25.4 * 72)
                self.assertLessEqual(word.bottom, (30 + height) / 25.4 * 72)
                self.assertGreaterEqual(word.points * X_OF_AN_EM / 72 * 25.4, 1.2)

    def test_hazard_statements_are_of_the_chemicals_and_from_74_by_52_mm(self):
        label = self.labels("Heron", "part", "A", *self.heron())[0]
        hydroquinone = next(one for one in label["hazards"] if one["chemical"] == "hydroquinone")
        self.assertEqual(hydroquinone["signal"], "Danger")
        self.assertIn("H318 causes serious eye damage", hydroquinone["statements"])
        wide = re.sub(r"\s+", " ", "".join(self.pages(self.draw("labels", "Heron", "part", "A"))))
        self.assertIn("not of the mixture", wide)
        self.assertIn("check the safety data sheets", wide)
        small = "".join(self.pages(self.draw("labels", "Heron", "part", "A", "--label", "60x32")))
        self.assertNotIn("H318", small)
        self.assertIn("Read the data sheets", small)

    def test_what_may_meet_is_said_on_labels_of_every_size(self):
        self.put("chough.scruple", "recipe Chough\n    accept acid on sulfide because \"it is mixed outdoors\"\n"
                                   "    water 900 ml\n    sodium sulfide (nonahydrate) 20 g\n"
                                   "    citric acid (monohydrate) 30 g\n    water to make 1 l\n")
        for size in ("98x68", "60x32"):
            said = re.sub(r"\s+", " ", "".join(self.pages(self.draw("labels", "Chough", "--label", size))))
            self.assertIn("LETHAL if they meet: acid on sulfide. Read the card.", said)

    def test_every_statement_of_the_library_has_its_words(self):
        codes = set()
        for path in (ROOT / "src/library").glob("*.scruple"):
            for line in path.read_text(encoding="utf-8").splitlines():
                if line.strip().startswith("hazard "):
                    codes |= set(re.findall(r"\b(?:EUH|H)\d{3}[A-Za-z]*", line))
        self.assertGreater(len(codes), 30)
        table = (ROOT / "include/scruple/plan/hazard_statements.inc").read_text(encoding="utf-8")
        self.assertEqual(codes - set(re.findall(r'"((?:EUH|H)\w+)"', table)), set())

    def test_black_on_white_and_the_same_bytes(self):
        path = self.draw("labels", "Heron", *self.heron())
        for picture in self.pictures(path):
            red, green, blue = picture.split()
            self.assertEqual(red.tobytes(), green.tobytes())
            self.assertEqual(red.tobytes(), blue.tobytes())
        self.assertEqual(path.read_bytes(), self.draw("labels", "Heron", name="again").read_bytes())
        self.assertIn("No syntax or stream encoding errors", tool("qpdf", "--check", str(path)).decode())

    def test_names_that_mean_harm_are_only_names(self):
        name = "<b>\\(x\\) & 現像液"
        self.put("a.scruple", f'recipe "{name}"\n    water 500 ml\n    potassium bromide 5 g\n')
        path = self.draw("labels", name)
        self.assertEqual(self.codes(path)[0].split("\n")[0], name)
        self.assertIn("&lt;b&gt;", self.scruple("labels", name, "--as", "html"))
        self.assertEqual(json.loads(self.scruple("labels", name, "--as", "json"))["labels"][0]["recipe"], name)

    def test_calls_that_cannot_be(self):
        self.heron()
        self.assertIn("`--label 60x", self.refused("labels", "Heron", "part", "A", "--label", "60x25", "--as", "svg"))
        self.assertIn("98x68", self.refused("labels", "Heron", "--label", "large", "--as", "svg"))
        self.assertIn("the sheet has", self.refused("labels", "Heron", "--grid", "3x9", "--as", "svg"))
        self.assertIn("2x500ml", self.refused("labels", "Heron", "--bottles", "0x500ml"))
        self.assertIn("NUMBERxVOLUME", self.refused("labels", "Heron", "--bottles", "2x500g"))

    def test_the_text_of_a_label(self):
        text = self.scruple("labels", "Heron", "part", "A", *self.heron("--bottles", "2x500ml", "--batch", "7"))
        self.assertEqual(text.count("STOCK: "), 2)
        self.assertIn("mixed on   ", text)
        self.assertEqual(Image.open(self.png()).mode, "RGB")

    def png(self):
        path = self.folder / "label.png"
        self.scruple("labels", "Heron", "part", "A", "--as", "png", "--out", str(path))
        return path
