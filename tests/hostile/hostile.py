# SPDX-License-Identifier: MIT
"""Text that somebody could hand over with a recipe so that it acts somewhere, and a workspace in which it stands in every
place that takes words."""
import os
import unicodedata

from support import Workspace

# What acts, and where. None holds a quote, which ends a name; OPEN has those, for where no quotes are needed.
PAGES = ["<script>alert(1)</script>", "<img src=x onerror=alert(1)>", "'onmouseover='alert(1)", "</style>", "</title>", "</pre>",
         "<!--", "-->", "]]>", "&lt;b&gt;", "&#60;b", "javascript:alert(1)", "<svg onload=alert(1)>", "url(x)", "*/"]
DATA = ["a,b;c", "\\n", "\\u003c", "BEGIN:VEVENT", "END:VCALENDAR", "\\,\\;", "{0}", "{}", "%s%n", "${7*7}", "{{7*7}}"]
SHELLS = ["$(touch pwned)", "`touch pwned`", ";touch pwned", "|touch pwned", "&touch pwned", ">pwned", "~root", "*", "?", "[a-z]",
          "!!", "\\", "$HOME", "-rf"]
MARKDOWN = ["[x](javascript:alert(1))", "![x](//x.invalid/x)", "<http://x.invalid>", "http://x.invalid", "www.x.invalid",
            "**b**", "_b_", "~~b~~", "||", "# b"]
PATHS = ["../../x", "/etc/x", "..", ".", "CON", "NUL", "C:\\x", "file:///x"]
SCRIPTS = ["שלום", "مرحبا", "é" + "\u0301" * 40, "👩\u200d🔬", "☠\ufe0f", "ﷺ", "𝕏"]
FORMULAS = ["=1+1", "+1", "-1+1", "@sum(a1)", "＝1+1", "＋1", "－1", "＠sum"]  # act at the beginning of a cell
ALL = [*PAGES, *DATA, *SHELLS, *MARKDOWN, *PATHS, *SCRIPTS, *FORMULAS]
OPEN = ['"><script>alert(1)</script>', '" onload="alert(1)', '""', '","=1+1']

HARMLESS = "plain words and no more"

WORKSPACE = """\
recipe "{begins}Plover {words}"
    is a       {words}
    source     {words} {open}
    caution    {words} {open}
    note       {words} {open}
    capacity   10 films 135 per 1 l
    water                                    700 ml, "{words}"
    "{begins}salt {words}"   100 g
    do "{words}"
    water to make                            1 l

part "{words}"
    keeps      2 weeks
    water                                    500 ml
    metol                                    1 g
    water to make                            1 l

recipe Dunlin
    keeps      2 weeks
    capacity   10 films 135 per 1 l
    "{begins}Plover {words}"                 500 ml, "{words}"
    water to make                            1 l

chemical "{begins}double {words}"
    form      dry         NaCl
    form      dihydrate   NaCl·2H2O
    note      {words}

chemical "{begins}salt {words}"
    form       crystals NaCl
    hazard     H319 from "{words}"

bench "{begins}bench {words}"
    balance    0.1 g up to 500 g

supplier "{begins}quay {words}"
    note       {words} {open}
    postage    3 EUR
    metol                                    25 g    8.00 EUR
    "{begins}salt {words}"   500 g   6.00 EUR

process "{begins}process {words}"
    Dunlin   5 min

plan "{begins}month {words}"
    note       {words} {open}
    2026-12-01   4 films 135 through "{begins}process {words}"

log
    note       {words} {open}
    2026-11-02 received   "{begins}salt {words}" 20 g from "{begins}quay {words}" 1.00 EUR
    2026-11-03 used       "{begins}salt {words}" 3 g for {words}   # {words} {open}

printed "{begins}page {words}"
    book       {words} {open}
    | Water                   20 oz
    | Metol                   50 grs
"""


def is_unseen(sign):
    """By Python's own tables: controls, formats and separators of lines, but for joiners."""
    return unicodedata.category(sign) in ("Cc", "Cf", "Zl", "Zp") and sign not in "\u200c\u200d"


def unseen_in(text):
    return sorted({f"U+{ord(sign):04X}" for sign in text if sign != "\n" and is_unseen(sign)})


class Hostile(Workspace):
    """The workspace in two folders of this one: `hostile`, and `harmless` with the same lines and other words."""

    def setUp(self):
        super().setUp()
        self.words = " ".join(word for word in ALL if word != "||")
        for folder, words, opened, begins in (("hostile", self.words, " ".join(OPEN), ""), ("harmless", HARMLESS, HARMLESS, "")):
            text = WORKSPACE.format(words=words, open=opened, begins=begins)
            self.put(f"{folder}/all.scruple", text)
            self.put(f"{folder}/.before/all.scruple", text.replace(" 100 g", " 90 g").replace("do ", "do \"x\"\n    do ", 1))
        self.name, self.harmless = f"Plover {self.words}", f"Plover {HARMLESS}"

    def pair(self, *words):
        """The same call in both folders; NAME and BENCH stand for the names there. What was printed."""
        texts = []
        for folder, name in (("hostile", self.words), ("harmless", HARMLESS)):
            told = [word.replace("WORDS", name) for word in words]
            done = self.run_scruple(*told, cwd=self.folder / folder)
            self.assertIn(done.returncode, (0, 1), f"{words} {folder}: {done.stderr.decode()[:2000]}")
            self.assertEqual(unseen_in(done.stderr.decode()), [], words)
            texts.append(done.stdout)
        return texts

    def files(self):
        """Every file below the folder, so that one that comes from somewhere is seen."""
        return sorted(str(path.relative_to(self.folder)) for path in self.folder.rglob("*"))


# Of each command, what shows the most.
CALLS = {
    "check": ["check"],
    "card": ["card", "Plover WORDS"],
    "card of another": ["card", "Dunlin", "--bench", "bench WORDS"],
    "labels": ["labels", "Plover WORDS", "--batch", "WORDS"],
    "scaled": ["scaled", "Plover WORDS", "--make", "2l"],
    "shopping": ["shopping", "month WORDS"],
    "calendar": ["calendar", "month WORDS"],
    "evening": ["evening", "month WORDS", "2026-12-01"],
    "shelf": ["shelf"],
    "chemical": ["chemical", "salt WORDS"],
    "weigh": ["weigh", '3 g "double WORDS" (dry)'],
    "contents": ["contents", "Plover WORDS"],
    "settle": ["settle", "page WORDS"],
    "why": ["why", "Plover WORDS", "salt WORDS"],
    "compare": ["compare", ".before/all.scruple", "all.scruple"],
    "compare lines": ["compare", "--lines", "all.scruple"],
    "help": ["help", "names"],
    "tidy": ["tidy", "--check"],
}
FORMATS = {"compare lines": [], "check": ["html", "json", "sarif", "junit"]}


def formats_of(command):
    return FORMATS.get(command, ["html", "json"])


def environment(**more):
    return {"PATH": os.environ["PATH"], **more}
