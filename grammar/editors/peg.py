# SPDX-License-Identifier: MIT
"""The words and units of grammar/scruple.peg, for whatever colours recipe text."""
import pathlib
import re

GRAMMAR = pathlib.Path(__file__).resolve().parents[1] / "scruple.peg"
RULE = re.compile(r"^(\w+)\s*<-", re.M)
TOKEN = re.compile(r"'[^']*'|\[(?:\\.|[^\]])*\]|\w+|[/()!&?*+.]|\{\d+\}")
WORD = re.compile(r"[A-Za-z][A-Za-z-]*(?: [A-Za-z]+)*$")
BLOCK_RULES = ["title_word", "label_word", "untitled_word", "conversion_word"]
STEP_RULES = ["pause_verb", "temper_verb", "limit_word", "vessel_word"]
UNIT_RULES = ["mass_unit", "volume_unit", "volume_name", "strength_unit", "temperature_unit", "amount_unit", "area_unit",
              "density_unit", "count_unit", "time_unit", "length_unit", "inches", "unit_tail", "loose_unit"]


def read():
    text = "\n".join(line for line in GRAMMAR.read_text(encoding="utf-8").splitlines() if not line.startswith("#"))
    starts = list(RULE.finditer(text))
    ends = [start.start() for start in starts[1:]] + [len(text)]
    return {start[1]: TOKEN.findall(text[start.end():end]) for start, end in zip(starts, ends)}


RULES = read()


def literals(*rules):
    """The words of these rules, in their order, each once."""
    found = [token[1:-1] for rule in rules for token in RULES[rule] if token[0] == "'"]
    return list(dict.fromkeys(word for word in found if WORD.match(word)))


def block_words():
    return literals(*BLOCK_RULES)


def fact_words():
    return literals("fact_word")


def step_words():
    return literals(*STEP_RULES)


def other_words():
    """Words within lines: `to make`, `through`, `at least`."""
    seen = set(block_words()) | set(fact_words()) | set(step_words())
    rest = literals(*(rule for rule in RULES if rule not in UNIT_RULES))
    return [word for word in rest if word not in seen and len(word) > 1 and word[0].islower()]


def weekdays():
    return [word for word in literals(*RULES) if word.endswith("day") and word[0].isupper()]


class Dialect:
    """How an editor writes a regular expression."""
    gap, blanks, edge, either, opened, closed = r"[ \t]+", r"[ \t]*", r"(?=[ \t,)#]|$)", "|", "(?:", ")"

    def literal(self, text):
        return self.gap.join(re.escape(word) for word in text.split(" "))


def expression(rule, dialect):
    """One regular expression for a rule of units, longest words first as the grammar has them."""
    special = {"gap": dialect.gap, "blanks": dialect.blanks, "edge": dialect.edge, "/": dialect.either,
               "(": dialect.opened, ")": dialect.closed}
    out = []
    for token in RULES[rule]:
        if token in special:
            out.append(special[token])
        elif token[0] == "'":
            out.append(dialect.literal(token[1:-1]))
        elif token in RULES:
            out.append(dialect.opened + expression(token, dialect) + dialect.closed)
        else:
            raise ValueError(f"`{token}` in {rule} is more than a unit can be")
    return "".join(out)


def units(dialect):
    rules = ["mass_unit", "volume_unit", "strength_unit", "temperature_unit", "amount_unit", "area_unit", "density_unit",
             "count_unit", "time_unit"]
    return dialect.either.join(expression(rule, dialect) for rule in rules)
