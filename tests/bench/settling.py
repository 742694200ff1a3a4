#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""What it takes to settle a printed page on which every line is uncertain: its form, its ounce, what gr is, each column's
fluid ounce; and whose pH can be worked out. Whole processes less one that only reads the same file; compare ratios, not milliseconds.

    python3 tests/bench/settling.py build/release/src/scruple
"""
import pathlib
import random
import resource
import statistics
import subprocess
import sys
import tempfile

SALTS = ["Sodium carbonate", "Sodium sulphite", "Hypo", "Borax", "Citric acid", "Sodium phosphate", "Sodium sulphate"]


def page(lines):
    pick = random.Random(lines)
    text = "printed Bittern\n    is a   film developer\n    | Water   40 oz   1000 c.c.   50 oz\n"
    for i in range(lines):
        amount = pick.randint(2, 400)
        unit = "grs" if i % 2 else "oz"
        grams = amount * (0.0648 if i % 2 else 28.35 / 20) / 1.137
        text += f"    | {pick.choice(SALTS)}   {amount} {unit}   {grams:.2g} g   {amount * 1.25:.3g} {unit}\n"
    return text


def milliseconds(folder, *words, times=15):
    """Of the processor, which others at work on the machine disturb less than the clock."""
    taken = []
    for _ in range(times):
        before = resource.getrusage(resource.RUSAGE_CHILDREN)
        subprocess.run([sys.argv[1], *words, "--in", folder], check=True, capture_output=True)
        after = resource.getrusage(resource.RUSAGE_CHILDREN)
        taken.append((after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime) * 1000)
    return statistics.median(taken)


def main():
    for lines in (5, 10, 20, 40, 80):
        with tempfile.TemporaryDirectory() as folder:
            (pathlib.Path(folder) / "page.scruple").write_text(page(lines), encoding="utf-8")
            empty = milliseconds(folder, "check")
            settled = milliseconds(folder, "settle", "Bittern")
            print(f"{lines:3} uncertain lines: {settled - empty:7.2f} ms beside {empty:.1f} ms of reading, {(settled - empty) / lines:.2f} ms a line")


if __name__ == "__main__":
    main()
