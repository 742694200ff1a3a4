# SPDX-License-Identifier: MIT
"""docs/diagnostics.md from the table of diagnostics, and the samples that `scruple help` shows, from the case files:
diagnostics.py says whether they are stale, --write writes them."""
import pathlib
import re
import sys

ROOT = pathlib.Path(__file__).resolve().parents[2]
TABLE = ROOT / "include/scruple/diagnostics/table.inc"
PAGE = ROOT / "docs/diagnostics.md"
CASES = ROOT / "tests/cases/check"
SAMPLES = ROOT / "src/cli/kind_samples.inc"

ENTRY = re.compile(r"^// ---- (.+?) ----$|^SCRUPLE_KIND\((\w+), \"([\w-]+)\", (\w+),(.*?)\)$", re.M | re.S)
PART = re.compile(r'^#include "(scruple/diagnostics/\w+\.inc)"$', re.M)
STRING = re.compile(r'"((?:[^"\\]|\\.)*)"(,?)')

HEAD = """# Diagnostics

Every kind of message that `scruple check` can give, made from
[the table that the program reads](../include/scruple/diagnostics/table.inc) by
`python3 tests/docs/diagnostics.py --write`. The messages are those of the file that each links to; where there is none,
`…` stands for what the message names in your file. `scruple help` with a name from this page shows the same on the
terminal.

An *error* stops the work: nothing is printed for the bench until it is put right. A *warning* is something to look
at before you mix, and the card comes all the same. *Advice* is worth a thought.
"""


def table():
    """The table with its parts in their places."""
    return PART.sub(lambda part: (ROOT / "include" / part[1]).read_text(encoding="utf-8"),
                    TABLE.read_text(encoding="utf-8"))


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


def sample_of(name):
    """Message and proposal of the first diagnostic of this kind that its case file states."""
    case = CASES / f"{name}.scruple"
    if not case.exists():
        return None
    found = re.search(rf"^#> \S+ \w+ {name}\n((?:#>     .*\n?)+)", case.read_text(encoding="utf-8"), re.M)
    lines = [line[len("#>     "):] for line in found[1].splitlines()]
    write = next((line.removeprefix("write  ") for line in lines[1:] if line.startswith("write  ")), "")
    return lines[0], write


def quoted(text):
    return '"' + text.replace("\\", "\\\\").replace('"', '\\"') + '"'


def samples():
    text = "// SPDX-License-Identifier: MIT\n// From tests/cases/check by tests/docs/diagnostics.py --write.\n"
    text += "// clang-format off\n"
    for group, _, name, _, _ in ENTRY.findall(table()):
        if not group and sample_of(name):
            text += f"KindSample{{{', '.join(quoted(part) for part in (name, *sample_of(name)))}}},\n"
    return text + "// clang-format on\n"


def section(name, severity, arguments):
    wording, write, explanation = strings(arguments)
    wording, write = sample_of(name) or (wording, write)
    said = f"> {with_gaps(wording)}\n"
    if write:
        said += f">\n> write {with_gaps(write)}\n"
    return f"\n### {name}\n\n*{severity}*\n\n{said}\n{explanation}\n{case_of(name)}"


def page():
    text = HEAD
    for group, _, name, severity, arguments in ENTRY.findall(table()):
        text += f"\n## {group[0].upper()}{group[1:]}\n" if group else section(name, severity, arguments)
    return text


def main():
    if "--write" in sys.argv[1:]:
        PAGE.write_text(page(), encoding="utf-8")
        SAMPLES.write_text(samples(), encoding="utf-8")
        return 0
    kinds = table().count("\nSCRUPLE_KIND(")
    same = PAGE.read_text(encoding="utf-8") == page() and SAMPLES.read_text(encoding="utf-8") == samples() and page().count("\n### ") == kinds
    print("docs/diagnostics.md and the samples are as the table and the cases have them" if same else
          "docs/diagnostics.md or the samples are stale: python3 tests/docs/diagnostics.py --write")
    return 0 if same and kinds else 1


sys.exit(main())
