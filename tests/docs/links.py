# SPDX-License-Identifier: MIT
"""Every link from one page to another leads to a file that is there, and to a heading that is in it."""
import pathlib
import re
import sys

ROOT = pathlib.Path(__file__).resolve().parents[2]
LINK = re.compile(r"\]\(([^)\s]+)\)")
FENCED = re.compile(r"^```.*?^```$", re.M | re.S)
HEADING = re.compile(r"^#+ +(.+)$", re.M)


def pages():
    return sorted([*ROOT.glob("*.md"), *(ROOT / "docs").glob("*.md"), *(ROOT / "tests").rglob("*.md")])


def prose(path):
    return FENCED.sub("", path.read_text(encoding="utf-8"))


def anchors(path):
    plain = (re.sub(r"[^\w\- ]", "", heading.lower()) for heading in HEADING.findall(prose(path)))
    return {heading.strip().replace(" ", "-") for heading in plain}


def fault_of(path, link):
    if re.match(r"[a-z]+:", link):
        return None
    target, _, anchor = link.partition("#")
    file = (path.parent / target).resolve() if target else path
    if not file.exists():
        return f"{path.relative_to(ROOT)}: there is no {link}"
    if anchor and anchor not in anchors(file):
        return f"{path.relative_to(ROOT)}: no heading for {link}"
    return None


def main():
    faults = [fault_of(path, link) for path in pages() for link in LINK.findall(prose(path))]
    wrong = [fault for fault in faults if fault]
    print(*wrong, f"{len(faults) - len(wrong)} passed, {len(wrong)} failed", sep="\n")
    return 1 if wrong or not faults else 0


sys.exit(main())
