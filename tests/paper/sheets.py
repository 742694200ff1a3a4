# SPDX-License-Identifier: MIT
"""Sheets read back by general-purpose programs: poppler (pdftotext, pdfinfo, pdffonts, pdftoppm), qpdf, Pillow."""
import html
import re
import subprocess

from PIL import Image

from support import Workspace

BENCH = """
bench Saltmarsh
    balance    0.01 g up to 200 g
    graduate   10 ml by 0.2 ml
    graduate   1 l by 10 ml
"""
# Ascent and descent of DejaVu Sans, in ems: what poppler gives as the height of a word.
EMS_HIGH = 0.928 + 0.236


def tool(*words):
    return subprocess.run(words, check=True, capture_output=True).stdout


class Word:
    def __init__(self, found, page):
        self.left, self.top, self.right, self.bottom = (float(found[i]) for i in (1, 2, 3, 4))
        self.text = html.unescape(found[5])
        self.page = page

    @property
    def points(self):
        return (self.bottom - self.top) / EMS_HIGH

    def covers(self, other):
        """By more than a point each way: boxes of neighbours may touch."""
        across = min(self.right, other.right) - max(self.left, other.left)
        down = min(self.bottom, other.bottom) - max(self.top, other.top)
        return across > 1 and down > 1


class Sheets(Workspace):
    def draw(self, *words, sheet="a4", name="card"):
        path = self.folder / f"{name}.pdf"
        self.assertEqual(self.scruple(*words, "--as", "pdf", "--paper", sheet, "--out", str(path)), "")
        return path

    @staticmethod
    def info(path):
        text = tool("pdfinfo", "-isodates", str(path)).decode()
        return dict(re.match(r"([^:]+):\s*(.*)", line).groups() for line in text.splitlines() if ":" in line)

    @staticmethod
    def pages(path):
        return tool("pdftotext", "-layout", str(path), "-").decode().split("\f")[:-1]

    @staticmethod
    def words(path):
        text = tool("pdftotext", "-bbox", str(path), "-").decode()
        pattern = re.compile(r'<word xMin="([\d.]+)" yMin="([\d.]+)" xMax="([\d.]+)" yMax="([\d.]+)">(.*)</word>')
        return [Word(found, number) for number, page in enumerate(text.split("<page ")[1:])
                for found in pattern.finditer(page)]

    def pictures(self, path, dots=60):
        stem = self.folder / f"{path.stem}-dots"
        tool("pdftoppm", "-r", str(dots), "-png", str(path), str(stem))
        return [Image.open(one).convert("RGB") for one in sorted(self.folder.glob(f"{stem.name}*.png"))]
