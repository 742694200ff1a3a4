#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""What it takes to draw: one card and a binder of the demo as whole processes, beside a browser that prints the card's
page (Debian's chromium) and an empty call of the program. Medians of one run; compare ratios, not milliseconds.

    python3 tests/bench/drawing.py build/release/src/scruple
"""
import pathlib
import shutil
import statistics
import subprocess
import sys
import tempfile
import time

ROOT = pathlib.Path(__file__).resolve().parents[2]
RECIPES = ROOT / "recipes"
CARD = ("card", "Medlar", "part", "B", "--make", "500ml", "--in", str(RECIPES))


def milliseconds(times, *words):
    taken = []
    for _ in range(times):
        begun = time.perf_counter()
        subprocess.run(words, check=True, capture_output=True)
        taken.append((time.perf_counter() - begun) * 1000)
    return statistics.median(taken)


def pages_of(path):
    told = subprocess.run(["pdfinfo", str(path)], check=True, capture_output=True, text=True).stdout
    return int(next(line.split()[1] for line in told.splitlines() if line.startswith("Pages:")))


def print_by_browser(folder, program):
    browser = shutil.which("chromium")
    if browser is None:
        return None
    page = folder / "card.html"
    subprocess.run([program, *CARD, "--as", "html", "--out", str(page)], check=True)
    return milliseconds(5, browser, "--headless", "--no-sandbox", "--disable-gpu", "--no-pdf-header-footer",
                        f"--user-data-dir={folder}/browser", f"--print-to-pdf={folder}/browser.pdf", page.as_uri())


def main(program):
    with tempfile.TemporaryDirectory() as place:
        folder = pathlib.Path(place)
        card_pdf, binder = folder / "card.pdf", folder / "binder"
        text = milliseconds(20, program, *CARD)
        card = milliseconds(20, program, *CARD, "--as", "pdf", "--out", str(card_pdf))
        whole = milliseconds(10, program, "binder", "--in", str(RECIPES), "--out", str(binder))
        pages = pages_of(binder / "binder.pdf")
        rows = [("a card as text, whole process", text), (f"a card as PDF ({pages_of(card_pdf)} sheets), whole process", card),
                (f"a binder of {pages} pages and its web pages, whole process", whole),
                ("a further page of the binder", (whole - card) / (pages - pages_of(card_pdf)))]
        browser = print_by_browser(folder, program)
        if browser is not None:
            rows.append(("the card's page printed by chromium", browser))
        for what, taken in rows:
            print(f"{what:62}{taken:9.2f} ms{taken / card:9.2f} of a card")


main(sys.argv[1])
