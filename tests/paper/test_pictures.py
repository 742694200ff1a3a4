# SPDX-License-Identifier: MIT
"""How sheets look: pages of the demo, drawn by poppler (pdftoppm), beside the pictures that somebody has looked at.

SCRUPLE_REFRESH=1 writes them anew; then look at each, at arm's length. Small shifts of type between versions of the
fonts and of poppler are let pass: both pictures are blurred by Pillow before they are compared.
"""
import os
import pathlib

from PIL import Image, ImageChops, ImageFilter, ImageStat

from sheets import Sheets, tool
from support import ROOT

GOLDEN = pathlib.Path(__file__).parent / "golden"
DEMO = ("--in", str(ROOT / "recipes"))
DOTS = 75
MOST_ANYWHERE, MOST_ON_AVERAGE = 64, 1.0  # of 255 levels of grey, once blurred

MEDLAR = ("card", "Medlar", "part", "B", "--make", "500ml", "--mixed", "2026-12-01")
BINDER = ("binder",)
# Name: sheet, page, what is asked for. The two on A4 are in README.md.
PAGES = {
    "card": ("a5", 1, MEDLAR),
    "card-head": ("a4", 1, MEDLAR),
    "card-work": ("a4", 2, MEDLAR),
    "card-with-substitute": ("a5", 1, ("card", "Sloe", "--make", "1l", "--instead", "sodium citrate")),
    "labels": ("a5", 1, ("labels", "Medlar", "--bottles", "500ml", "--mixed", "2026-12-01", "--batch", "7")),
    "binder-contents": ("a5", 1, BINDER),
    "binder-page": ("a5", 3, BINDER),
    "shopping": ("a5", 1, ("shopping", "December")),
    "shelf": ("a5", 4, ("shelf", "--on", "2026-12-01")),
    "evening": ("a4", 1, ("evening", "2026-12-01", "--from", "18:00")),
}


def apart(one, other):
    """The largest and the mean difference of two blurred pictures; None where they are not of one size."""
    if one.size != other.size:
        return None
    blur = ImageFilter.GaussianBlur(2)
    statistics = ImageStat.Stat(ImageChops.difference(one.filter(blur), other.filter(blur)))
    return statistics.extrema[0][1], statistics.mean[0]


def alike(one, other):
    difference = apart(one, other)
    return difference is not None and difference[0] <= MOST_ANYWHERE and difference[1] <= MOST_ON_AVERAGE


class Pictures(Sheets):
    def sheets(self, name, sheet, words):
        if words != BINDER:
            return self.draw(*words, *DEMO, sheet=sheet, name=name)
        self.scruple(*words, *DEMO, "--paper", sheet, "--out", str(self.folder / name))
        return self.folder / name / "binder.pdf"

    def page(self, name, sheet, number, words):
        path = self.sheets(name, sheet, words)
        stem = self.folder / name
        tool("pdftoppm", "-r", str(DOTS), "-gray", "-png", "-f", str(number), "-singlefile", str(path), str(stem))
        return Image.open(f"{stem}.png").convert("L")

    def test_pages_look_as_they_did(self):
        for name, asked in PAGES.items():
            with self.subTest(name):
                drawn, golden = self.page(name, *asked), GOLDEN / f"{name}.png"
                if os.environ.get("SCRUPLE_REFRESH"):
                    drawn.save(golden, optimize=True)
                self.assertTrue(alike(drawn, Image.open(golden)), apart(drawn, Image.open(golden)))

    def test_the_comparison_sees_what_an_eye_sees(self):
        golden = Image.open(GOLDEN / "card.png")
        without_a_word = golden.copy()
        without_a_word.paste(255, (40, 40, 120, 60))
        self.assertFalse(alike(golden, without_a_word))
        self.assertFalse(alike(golden, ImageChops.offset(golden, 0, 12)))
        self.assertFalse(alike(golden, golden.resize((golden.width, golden.height - 1))))
        self.assertTrue(alike(golden, golden))
