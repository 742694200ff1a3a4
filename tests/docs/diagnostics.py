# SPDX-License-Identifier: MIT
"""docs/diagnostics.md from the table of diagnostics: diagnostics.py says whether it is stale, --write writes it."""
import pathlib
import re
import sys

ROOT = pathlib.Path(__file__).resolve().parents[2]
TABLE = ROOT / "include/scruple/diagnostics/table.inc"
PAGE = ROOT / "docs/diagnostics.md"
CASES = ROOT / "tests/cases/check"

ENTRY = re.compile(r"^// ---- (.+?) ----$|^SCRUPLE_KIND\((\w+), \"([\w-]+)\", (\w+),(.*?)\)$", re.M | re.S)
STRING = re.compile(r'"((?:[^"\\]|\\.)*)"(,?)')

HEAD = """# Diagnostics

Every kind of message that `scruple check` can give, made from
[the table that the program reads](../include/scruple/diagnostics/table.inc) by
`python3 tests/docs/diagnostics.py --write`. `…` stands for what the message names in your file. `scruple help`
with a name from this page shows the same on the terminal.

An *error* stops the work: nothing is printed for the bench until it is put right. A *warning* is something to look
at before you mix, and the card comes all the same. *Advice* is worth a thought.
"""


def strings(arguments):
    """The table's string arguments; adjacent literals are one."""
    found, current = [], ""
    for text, comma in STRING.findall(arguments):
        current += text.replace('\\"', '"')
        if comma:
            found.append(current)
            current = ""
    return [*found, current]


def with_gaps(wording):
    return re.sub(r"\{\d\}", "…", wording)


def case_of(name):
    case = CASES / f"{name}.scruple"
    return f"\n[A file with it](../tests/cases/check/{case.name})\n" if case.exists() else ""


def section(name, severity, arguments):
    wording, write, explanation = strings(arguments)
    said = f"> {with_gaps(wording)}\n"
    if write:
        said += f">\n> write {with_gaps(write)}\n"
    return f"\n### {name}\n\n*{severity}*\n\n{said}\n{explanation}\n{case_of(name)}"


def page():
    text = HEAD
    for group, _, name, severity, arguments in ENTRY.findall(TABLE.read_text(encoding="utf-8")):
        text += f"\n## {group[0].upper()}{group[1:]}\n" if group else section(name, severity, arguments)
    return text


def main():
    if "--write" in sys.argv[1:]:
        PAGE.write_text(page(), encoding="utf-8")
        return 0
    kinds = TABLE.read_text(encoding="utf-8").count("\nSCRUPLE_KIND(")
    same = PAGE.read_text(encoding="utf-8") == page() and page().count("\n### ") == kinds
    print("docs/diagnostics.md is as the table has it" if same else
          "docs/diagnostics.md is stale: python3 tests/docs/diagnostics.py --write")
    return 0 if same and kinds else 1


sys.exit(main())
