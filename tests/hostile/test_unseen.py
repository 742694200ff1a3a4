# SPDX-License-Identifier: MIT
"""Characters that act on a terminal or do not show: told where they stand in a file, refused in a call, and never printed.
Which they are says the Unicode character database, as perl has it (`perldoc perluniprops`)."""
import json
import os
import subprocess

from hostile import unseen_in
from support import FAULTS, FINE, HERON, TERN, TROUBLE, WRONG_CALL, Workspace

SAMPLES = {"escape": "\x1b[31m", "bell": "\x07", "backspace": "\b", "delete": "\x7f", "form feed": "\f", "one control": "\x9b2J",
           "next line": "\x85", "line separator": "\u2028", "right to left": "\u202e", "isolate": "\u2066", "mark": "\u200f",
           "no width": "\u200b", "soft hyphen": "\xad", "filler": "\u3164", "byte order": "\ufeff", "tag": "\U000e0041",
           "word joiner": "\u2060", "annotation": "\ufff9"}

PLACES = """\
recipe Gu{x}ll
recipe Gull
    is a       stop {x}bath
    note       "to{x} the end"
    water                     700 ml{x}
    metol                     5 {x}g
    do "stir{x} it"
    water to make             1 l   # so{x} far
part {x}A
log
    2026-11-02 used   metol 3 g for {x}a test
nothing {x} of all that
"""


# Those properties, but for the joiners and variation selectors that scripts need.
HIDDEN = r"/\p{Cc}|\p{Cf}|\p{Zl}|\p{Zp}|\p{Default_Ignorable_Code_Point}/ && !/\x{200C}|\x{200D}|\p{Variation_Selector}/"
# What perl's tables do not have yet may be anything.
SHOWN = rf"!({HIDDEN}) && !/\p{{Unassigned}}/"


def of_perl(condition):
    script = f'for my $n (0x80..0xD7FF, 0xE000..0x10FFFF) {{ $_ = chr $n; print "$n\\n" if {condition} }}'
    return {int(line) for line in subprocess.run(["perl", "-e", script], capture_output=True, check=True).stdout.split()}


class Unseen(Workspace):
    def hidden(self):
        done = self.run_scruple("check", "--as", "json")
        return [d for d in json.loads(done.stdout) if d["kind"] == "hidden-character"]

    def test_the_characters_are_those_of_unicode(self):
        expected, shown = of_perl(HIDDEN), sorted(of_perl(SHOWN))
        self.assertGreater(len(expected), 3900)
        self.assertGreater(len(shown), 250_000)
        lines = ["# x" + "".join(map(chr, shown[i:i + 1000])) for i in range(0, len(shown), 1000)]
        self.put("a.scruple", "\n".join(lines) + "\n")
        self.assertEqual([(d["line"], d["message"]) for d in self.hidden()], [])
        self.put("a.scruple", "\n".join(f"# x{chr(c)}" for c in sorted(expected)) + "\n")
        self.assertEqual({int(d["message"].split("U+")[1], 16) for d in self.hidden()}, expected)

    def test_each_place_of_a_file(self):
        for name, x in SAMPLES.items():
            with self.subTest(name):
                self.put("a.scruple", PLACES.format(x=x))
                lines = [i for i, line in enumerate(PLACES.splitlines(), 1) if "{x}" in line]
                self.assertEqual([d["line"] for d in self.hidden()], lines)

    def test_no_command_prints_one_whatever_is_wrong(self):
        text = "".join(PLACES.format(x=x).replace("Gull", f"Gull {i}") for i, x in enumerate(SAMPLES.values()))
        self.put("a.scruple", text + f"printed Page{SAMPLES['escape']}\n    | Water   20 {SAMPLES['right to left']}oz\n")
        for words in (["check"], ["check", "--as", "json"], ["check", "--as", "html"], ["check", "--as", "sarif"],
                      ["check", "--as", "junit"], ["help", "names"], ["help", "names", "--as", "json"], ["card", "Gull 1"],
                      ["chemical", "metol"], ["shelf"], ["tidy", "--check"], ["compare", "a.scruple", "a.scruple"],
                      ["compare", "--lines", "a.scruple"], ["settle", "Page"], ["weigh", "3 g metol"]):
            with self.subTest(words):
                done = self.run_scruple(*words)
                self.assertEqual(unseen_in(done.stdout.decode()) + unseen_in(done.stderr.decode()), [])
                self.assertIn(done.returncode, (FINE, FAULTS, WRONG_CALL))

    def test_a_page_is_settled_without_them(self):
        for name, x in SAMPLES.items():
            self.put("a.scruple", f"printed Page\n    is a   film{x} developer\n    book   The Tide{x} Table, 1907\n    note   \"on a wet{x} Sunday\"\n"
                     f"    | {x}Water   20 {x}oz\n    | Metol{x}   50 grs\n    | Marsh{x} salt   5 grs\n    | Part{x} B\n    | Hypo   2 oz{x}\n")
            for form in ("text", "html", "json", "recipe"):
                with self.subTest(f"{name} {form}"):
                    done = self.run_scruple("settle", "Page", "--as", form)
                    self.assertEqual(unseen_in(done.stdout.decode()) + unseen_in(done.stderr.decode()), [])
                    self.assertIn(done.returncode, (FINE, FAULTS))
                    self.assertIn(b"etol", done.stdout)

    def test_the_bench_gets_nothing_of_such_a_file(self):
        for x in SAMPLES.values():
            self.put("tern.scruple", TERN.replace("by the open window", f"by the {x}open window"))
            for words in (["card", "Tern"], ["scaled", "Tern", "--make", "2l"], ["shelf"]):
                self.assertIn("hidden-character", self.refused(*words, status=FAULTS))

    def test_what_is_typed_is_refused_and_told_as_it_is(self):
        self.put("heron.scruple", HERON)
        self.put("log.scruple", "log\n    2026-11-02 received   metol 25 g\n")
        before = self.text("log.scruple")
        for x in [*SAMPLES.values(), "\n", "\r", "\t"]:
            for words in (["card", f"Her{x}on"], ["card", "Heron", "--make", f"5{x}00ml"], ["labels", "Heron", "--batch", f"7{x}"],
                          ["mixed", f"Heron part A{x} 1l"], ["enter", f"used metol 3 g for {x}that"],
                          ["enter", "used metol 3 g", "--note", f"so{x}\n    2020-01-01 discarded metol"],
                          ["chemical", x], ["help", f"x{x}"], ["react", f"H2{x}O"], [f"ca{x}rd"], ["card", f"--ma{x}ke", "1l"]):
                done = self.run_scruple(*words)
                self.assertEqual((done.returncode, done.stdout), (WRONG_CALL, b""), words)
                self.assertEqual(unseen_in(done.stderr.decode()), [], words)
        self.assertEqual(self.text("log.scruple"), before)

    def test_names_of_files_and_folders(self):
        for n, x in enumerate([*SAMPLES.values(), "\n", "\r"]):
            self.put(f"in {x}ner/a{x}b.scruple", TERN.replace("Tern", f"Tern {n}").replace("30 g", "30 oz"))
        for form in ("text", "json", "html", "sarif", "junit"):
            done = self.run_scruple("check", "--as", form)
            self.assertEqual((done.returncode, unseen_in(done.stdout.decode())), (FAULTS, []), form)
        (found,) = {len(json.loads(self.run_scruple("check", "--as", "json").stdout))}
        self.assertEqual(found, len(SAMPLES) + 2)
        self.assertEqual(json.loads(self.run_scruple("check", "--as", "json").stdout)[0]["file"].count("/"), 1)
        for words in (["check", "--in", "no\x1b[31mwhere"], ["check", "--out", "no\x1b[31mwhere/x"], ["tidy", "no\u202ewhere"],
                      ["compare", "no\x1bwhere", "x"], ["mixed", "Tern 1 1 l", "--log", "no\x1bwhere"]):
            done = self.run_scruple(*words)
            self.assertIn(done.returncode, (FAULTS, WRONG_CALL, TROUBLE))
            self.assertEqual(unseen_in(done.stderr.decode()), [], words)

    def test_a_line_of_the_log_that_was_written_by_hand(self):
        self.put("a.scruple", TERN + "log\n    2026-11-02 mixed   Tern 1 l   # \x1b]0;title\x07\n")
        for words in (["shelf"], ["mixed", "Tern", "1l"], ["enter", "discarded", "Tern"]):
            self.assertIn("U+001B", self.refused(*words, status=FAULTS))

    def test_joiners_and_selectors_stay(self):
        self.put("a.scruple", TERN.replace("Tern", "\u0646\u0645\u06cc\u200c\u062e \U0001f469\u200d\U0001f52c \u2620\ufe0f"))
        self.assertEqual(self.json("check"), [])
        self.assertIn("\u200d", self.scruple("help", "names", "recipes"))

    def test_the_environment_says_nothing_on_the_page(self):
        self.put("tern.scruple", TERN)
        plain = self.scruple("card", "Tern", "--as", "json")
        odd = {"LC_ALL": "\x1b[31m", "LANG": "x" * 5000, "TZ": "\x1b", "COLUMNS": "-1", "TERM": "\x1b[2J", "SOURCE_DATE_EPOCH": "\x1b"}
        self.assertEqual(self.scruple("card", "Tern", "--as", "json", env={"PATH": os.environ["PATH"]} | odd), plain)
