#!/usr/bin/python3
# SPDX-License-Identifier: MIT
"""Molar masses against python3-periodictable and Open Babel, for every formula that each of them can read.

usage: molar_masses.py TOOL SOURCE_FOLDER

TOOL prints the molar mass of each formula on its standard input. The formulas are those of
tests/reference/molar_masses.csv and of every `form` line in the project's recipe text.

The other programs use unabridged weights of other years. The widest gap is sulfur's: 32.06 abridged,
32.065 in tables before 2009, 1.6 parts in 10 000. So a result passes within 2 parts in 10 000; one atom of
hydrogen too many shows up to 5000 g/mol, far past any formula of the trade. Zinc alone is given more: its
standard weight went from 65.409 to 65.38 in 2007, and periodictable 1.6 has the old one.
"""
import csv
import pathlib
import re
import subprocess
import sys

import periodictable

TOLERANCE = 2e-4
ZINC_TOLERANCE = 5e-4
FORM_LINE = re.compile(r"^\s*form\s+(?:\S+\s+)+?(?P<formula>[A-Z(\[][^\s,\"]*)\s*(?:,|#|$)")
SUBSCRIPTS = str.maketrans("₀₁₂₃₄₅₆₇₈₉", "0123456789")


def table_rows(source):
    with open(source / "tests/reference/molar_masses.csv", encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


def library_formulas(source):
    for folder in ("src", "recipes"):
        for path in sorted((source / folder).rglob("*.scruple")):
            for line in path.read_text(encoding="utf-8").splitlines():
                if found := FORM_LINE.match(line):
                    yield found["formula"]


def own_masses(tool, formulas):
    answer = subprocess.run([tool], input="\n".join(formulas) + "\n", capture_output=True, text=True, check=True)
    return dict(zip(formulas, answer.stdout.splitlines(), strict=True))


def multiplied(part):
    """(times, formula) of one piece between hydrate dots."""
    times, formula = re.fullmatch(r"(\d+\.\d+|\d+/\d+|\d*½|\d*)(.+)", part).groups()
    if "/" in times:
        above, below = times.split("/")
        return int(above) / int(below), formula
    if times.endswith("½"):
        return float(times[:-1] or 0) + 0.5, formula
    return float(times or 1), formula


def by_periodictable(formula):
    """The sum over the pieces between hydrate dots, of which periodictable reads each."""
    plain = formula.translate(SUBSCRIPTS).replace("[", "(").replace("]", ")")
    pieces = re.split(r"[·*]|(?<!\d)\.|\.(?=\d+[A-Z(])", plain)
    return sum(times * periodictable.formula(piece).mass for times, piece in map(multiplied, pieces))


def by_open_babel(structures):
    """Mass by SMILES, for many at once."""
    lines = "".join(f"{smiles}\t{i}\n" for i, smiles in enumerate(structures))
    answer = subprocess.run(["obabel", "-ismi", "-otxt", "--append", "MW"], input=lines, capture_output=True,
                            text=True, check=True)
    rows = [line.split() for line in answer.stdout.splitlines()]
    return {structures[int(number)]: float(mass) for number, mass in rows}


class Checks:
    def __init__(self):
        self.done, self.faults = 0, []

    def compare(self, what, ours, theirs, tolerance=TOLERANCE):
        self.done += 1
        if abs(float(ours) - theirs) > tolerance * theirs:
            self.faults.append(f"{what}: {ours} and not {theirs:.4f}")


def check_elements(checks, tool):
    ours = own_masses(tool, [element.symbol for element in periodictable.elements if element.symbol != "n"])
    known = {symbol: mass for symbol, mass in ours.items() if mass != "?"}
    for symbol, mass in known.items():
        tolerance = ZINC_TOLERANCE if symbol == "Zn" else TOLERANCE
        checks.compare(f"{symbol} (periodictable)", mass, periodictable.elements.symbol(symbol).mass, tolerance)
    return len(known)


def check_formulas(checks, tool, formulas):
    for formula, mass in own_masses(tool, formulas).items():
        if mass == "?":
            checks.faults.append(f"{formula}: not read")
        else:
            checks.compare(f"{formula} (periodictable)", mass, by_periodictable(formula))


def check_structures(checks, tool, rows):
    drawn = [row for row in rows if row["smiles"]]
    ours = own_masses(tool, [row["formula"] for row in drawn])
    theirs = by_open_babel([row["smiles"] for row in drawn])
    for row in drawn:
        checks.compare(f"{row['compound']} (Open Babel)", ours[row["formula"]], theirs[row["smiles"]])
    return len(drawn)


def main():
    tool, source = sys.argv[1], pathlib.Path(sys.argv[2])
    rows = table_rows(source)
    formulas = sorted({row["formula"] for row in rows} | set(library_formulas(source)))
    checks = Checks()
    elements = check_elements(checks, tool)
    check_formulas(checks, tool, formulas)
    structures = check_structures(checks, tool, rows)
    print(f"{elements} elements, {len(formulas)} formulas, {structures} structures compared")
    for fault in checks.faults:
        print(fault)
    return 1 if checks.faults or checks.done < 100 else 0


if __name__ == "__main__":
    sys.exit(main())
