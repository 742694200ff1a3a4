# SPDX-License-Identifier: MIT
"""Holds the #include lines to the ladder.

The edges are those of src/CMakeLists.txt (`scruple_rung(check RUNGS chemistry syntax …)`). They
may only point down the ladder, and a rung may include only itself and what it stands on.
"""
import pathlib
import re
import sys

ROOT = pathlib.Path(__file__).resolve().parents[2]
LADDER = ["text", "diagnostics", "quantity", "chemistry", "syntax", "check", "printed", "plan", "emit", "paper", "driver", "server", "cli"]

# Some things have one home: (what an #include line names, the folders under ROOT that may name it).
ONE_HOME = [
    (re.compile(r"<CLI/"), ["src/cli"]),
    (re.compile(r"<tao/pegtl"), ["src/syntax", "grammar", "tests"]),
    (re.compile(r'"grammar/'), ["src/syntax", "grammar", "tests"]),
    (re.compile(r"<(cairo|pango)"), ["src/paper"]),
    (re.compile(r"<iostream>"), ["src/cli", "tests"]),
]

RUNG_LINE = re.compile(r"^\s*scruple_rung\((\w+)([^)]*)\)", re.M)
INCLUDE = re.compile(r'^\s*#\s*include\s+(["<][^">]+[">])', re.M)
RUNG_HEADER = re.compile(r'"scruple/(\w+)/')


def edges():
    text = (ROOT / "src/CMakeLists.txt").read_text(encoding="utf-8")
    found = {}
    for name, rest in RUNG_LINE.findall(text):
        rungs = re.search(r"\bRUNGS\s+([a-z\s]+)", rest)
        found[name] = rungs.group(1).split() if rungs else []
    found["cli"] = ["driver", "server", "paper"]  # the program, which is no library
    return found


def everything_below(rung, direct):
    below = set()
    for lower in direct.get(rung, []):
        below |= {lower} | everything_below(lower, direct)
    return below


def wrong_edges(direct):
    for rung, lowers in direct.items():
        for lower in lowers:
            if LADDER.index(lower) >= LADDER.index(rung):
                yield f"src/CMakeLists.txt: {rung} links {lower}, which is not below it"


def sources(*folders):
    for folder in folders:
        for path in sorted((ROOT / folder).rglob("*")):
            if path.suffix in {".cpp", ".hpp", ".inc"}:
                yield path, INCLUDE.findall(path.read_text(encoding="utf-8"))


def wrong_includes(rung, allowed):
    for path, names in sources(f"src/{rung}", f"include/scruple/{rung}"):
        for name in names:
            header = RUNG_HEADER.match(name)
            if header and header.group(1) != rung and header.group(1) not in allowed:
                yield f"{path.relative_to(ROOT)}: {rung} may not include {name}"
            if "../" in name:
                yield f"{path.relative_to(ROOT)}: {name} climbs out of its folder"


def strays():
    for path, names in sources("src", "include", "grammar", "tests"):
        place = str(path.relative_to(ROOT))
        for what, homes in ONE_HOME:
            if not any(place.startswith(home + "/") for home in homes):
                yield from (f"{place}: {name} belongs in {homes[0]}" for name in names if what.match(name))


# Back ends: src/emit/<what>_<form>.cpp and .hpp, with the form last; what they share has another name.
FORM = re.compile(r"_(text|html|json)\.[ch]pp$")


def back_ends_together():
    for path, names in sources("src/emit"):
        own = FORM.search(path.name)
        for name in names:
            other = FORM.search(name.strip('"'))
            own_header = other and name.strip('"') == path.with_suffix(".hpp").name
            if own and other and not own_header:
                yield f"{path.relative_to(ROOT)}: a back end includes another, {name}"


def main():
    direct = edges()
    faults = list(wrong_edges(direct))
    unknown = [f.name for f in (ROOT / "include/scruple").iterdir() if f.is_dir() and f.name not in LADDER]
    faults += [f"include/scruple/{name}: no rung of the ladder" for name in unknown]
    if not faults:
        for rung in direct:
            faults += wrong_includes(rung, everything_below(rung, direct))
    faults += strays()
    faults += back_ends_together()
    print(f"{len(direct)} rungs, {len(faults)} faults", *faults, sep="\n")
    return 1 if faults or len(direct) < 3 else 0


sys.exit(main())
