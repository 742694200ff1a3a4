# SPDX-License-Identifier: MIT
"""The grammar for editors that read TextMate's."""
import json

import peg


def words(those):
    longest_first = sorted(those, key=len, reverse=True)
    return "|".join(peg.Dialect().literal(word) for word in longest_first)


def line(those, scope, inside):
    """A line that begins with one of these words."""
    return {"match": rf"^([ \t]*)({words(those)})(?=[ \t#]|$)(.*)$",
            "captures": {"2": {"name": scope}, "3": {"patterns": [{"include": one} for one in inside]}}}


def grammar():
    edge = peg.Dialect.edge
    before = r"(?<![\w.,/:])"
    number = r"[-+−]?(?:[½¼¾⅓⅔⅛⅜⅝⅞]|\d+(?:[½¼¾⅓⅔⅛⅜⅝⅞]|\.\d+|[/⁄]\d+|[ \t]+\d+[/⁄]\d+)?)"
    inside = ["#comment", "#string", "#date", "#measured", "#number", "#form", "#joining"]
    headings = line(peg.block_words(), "keyword.control.block.scruple", ["#comment", "#string", "#title"])
    headings["match"] = headings["match"].replace(r"^([ \t]*)", "^()", 1)
    everything = {
        "$schema": "https://raw.githubusercontent.com/martinring/tmlanguage/master/tmlanguage.json",
        "name": "Scruple",
        "scopeName": "source.scruple",
        "fileTypes": ["scruple"],
        "comment": "SPDX-License-Identifier: MIT. Made from grammar/scruple.peg by grammar/editors/generate.py.",
        "patterns": [{"include": one} for one in ["#heading", "#step", "#fact", *inside]],
        "repository": {
            "heading": headings,
            "fact": line(peg.fact_words(), "keyword.other.fact.scruple", inside),
            "step": line(peg.step_words(), "keyword.operator.step.scruple", inside),
            "comment": {"match": r"(?:^|(?<=[ \t]))#.*$", "name": "comment.line.number-sign.scruple"},
            "string": {"match": r"\"[^\"]*\"", "name": "string.quoted.double.scruple"},
            "title": {"match": r"[^#\"]+?(?=[ \t]*(?:#|\"|$))", "name": "entity.name.type.scruple"},
            "date": {"match": before + r"\d{4}-\d{2}-\d{2}" + edge, "name": "constant.other.date.scruple"},
            "measured": {"match": rf"{before}({number})([ \t]*)({peg.units(peg.Dialect())})",
                         "captures": {"1": {"name": "constant.numeric.scruple"}, "3": {"name": "keyword.other.unit.scruple"}}},
            "number": {"match": rf"{before}{number}(?![\w.])", "name": "constant.numeric.scruple"},
            "form": {"begin": r"\(", "end": r"\)|$", "name": "meta.form.scruple", "patterns": [
                {"include": "#measured"}, {"match": r"[^(),0-9#\" \t][^(),]*", "name": "support.constant.form.scruple"}]},
            "joining": {"match": rf"(?<=[ \t])({words(peg.other_words())}|{words(peg.weekdays())})(?=[ \t,#]|$)",
                        "name": "keyword.other.joining.scruple"},
        },
    }
    del everything["$schema"]
    return json.dumps(everything, indent=2, ensure_ascii=False) + "\n"
