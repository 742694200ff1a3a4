# SPDX-License-Identifier: MIT
"""Every word that the grammar reads is on the page that explains it.

Words of units are on docs/units.md, all others on docs/language.md, each in backticks or in a sample.
"""
import pathlib
import re
import sys

ROOT = pathlib.Path(__file__).resolve().parents[2]
RULE = re.compile(r"^(\w+)\s*<-", re.M)
LITERAL = re.compile(r"\[[^\]]*\]|'([^']*)'")
WORD = re.compile(r"[A-Za-z][A-Za-z0-9/-]+(?: [a-z]+)*$")
CODE = re.compile(r"^```[^\n]*\n(.*?)^```$|`([^`\n]+)`", re.M | re.S)
OF_UNITS = {"mass_unit", "volume_unit", "volume_name", "strength_unit", "temperature_unit", "amount_unit", "area_unit",
            "density_unit", "count_unit", "time_unit"}
LOOSE = {"unit_tail"}  # read so that the checker can explain it


def rules(grammar):
    text = "\n".join(line for line in grammar.splitlines() if not line.startswith("#"))
    starts = list(RULE.finditer(text))
    for rule, following in zip(starts, starts[1:] + [None]):
        yield rule.group(1), text[rule.end():following.start() if following else len(text)]


def words(body):
    return {literal for literal in LITERAL.findall(body) if WORD.fullmatch(literal)}


def shown_on(page):
    text = (ROOT / "docs" / page).read_text(encoding="utf-8")
    return " ".join(" ".join((sample or inline).split()) for sample, inline in CODE.findall(text))


def is_shown(word, shown):
    return re.search(rf"(?<![\w/-]){re.escape(word)}(?![\w/-])", shown) is not None


def main():
    language, units = shown_on("language.md"), shown_on("units.md")
    grammar = (ROOT / "grammar/scruple.peg").read_text(encoding="utf-8")
    passed, missing = 0, []
    for rule, body in rules(grammar):
        if rule in LOOSE:
            continue
        page, shown = ("units.md", units) if rule in OF_UNITS else ("language.md", language)
        for word in sorted(words(body)):
            if is_shown(word, shown):
                passed += 1
            else:
                missing.append(f"`{word}` ({rule}) is not on docs/{page}")
    print(*missing, f"{passed} passed, {len(missing)} failed", sep="\n")
    return 1 if missing or passed < 100 else 0


sys.exit(main())
