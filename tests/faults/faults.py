# SPDX-License-Identifier: MIT
"""Runs the program with one call to the system going wrong: `faulty.cpp`, between it and the C library."""
import os
import pathlib
import shutil

from support import HERON, Workspace
from support import TERN as PLAIN

FAULTY = os.environ["SCRUPLE_FAULTY"]

TERN = PLAIN.replace("    water ", "    capacity   10 films 135 per 1 l\n    water ", 1)
LOG = """\
log
    2026-11-02 received   sodium sulfite (anhydrous) 500 g
    2026-11-03 used       sodium sulfite (anhydrous) 5 g
"""
PLAN = """\
process film
    Tern   8 min at 20 C

plan December
    2026-12-01   2 films 135 through film
"""
PAGE = """\
printed Bittern
    book       written for this test
    | Water                 20 oz
    | Hypo                  4 oz
"""

# Of every command: what follows `scruple`, and the file that it writes; one call for each thing that is written differently.
WRITERS = {
    "check": (["check", "--as", "sarif"], "out"),
    "card": (["card", "Tern"], "out"),
    "card as pdf": (["card", "Tern", "--as", "pdf"], "out"),
    "labels": (["labels", "Tern", "--as", "html"], "out"),
    "scaled": (["scaled", "Tern", "--make", "2l"], "out"),
    "shopping": (["shopping", "--as", "csv"], "out"),
    "calendar": (["calendar", "--as", "ics"], "out"),
    "evening": (["evening", "2026-12-01"], "out"),
    "shelf": (["shelf", "--as", "json"], "out"),
    "chemical": (["chemical", "metol"], "out"),
    "weigh": (["weigh", "30 g sodium sulfite (anhydrous)"], "out"),
    "react": (["react", "NaOH + HCl -> NaCl + H2O"], "out"),
    "contents": (["contents", "Tern"], "out"),
    "compare": (["compare", "tern.scruple", "heron.scruple"], "out"),
    "settle": (["settle", "Bittern", "--as", "recipe"], "out"),
    "why": (["why", "Tern", "sodium sulfite"], "out"),
    "help": (["help"], "out"),
    "binder": (["binder", "--in", ".small"], "binder"),
    "mixed": (["mixed", "Tern", "1l", "--on", "2026-12-03"], "log.scruple"),
    "enter": (["enter", "used", "sodium sulfite (anhydrous)", "3 g", "--on", "2026-12-03"], "log.scruple"),
    "tidy": (["tidy", "untidy.scruple"], "untidy.scruple"),
}
# Those that change nothing on the disk have no place here: language-server answers an editor, which writes itself.
WRITES_NOTHING = {"language-server"}

CHANGES = {"mkostemp", "write", "fchmod", "rename", "unlink", "mkdir"}  # calls after which the disk may be another


class Faults(Workspace):
    def setUp(self):
        super().setUp()
        self.fill()

    def fill(self):
        for name, text in (("tern.scruple", TERN), ("heron.scruple", HERON), ("log.scruple", LOG), ("plan.scruple", PLAN),
                           ("page.scruple", PAGE), (".small/tern.scruple", TERN), ("untidy.scruple", "bench   Shed\n  balance 0.1 g up to 500 g\n")):
            self.put(name, text)

    def words(self, command):
        words, target = WRITERS[command]
        return [*words, "--out", target] if target in ("out", "binder") else words

    def run_faulty(self, words, at=0, how="", calls=None, writing=False):
        """`writing`: only calls count since something is made on the disk. What comes before differs from run to run
        where fonts are looked for."""
        environment = {"LD_PRELOAD": FAULTY, "PATH": os.environ["PATH"]} | ({"FAULTY_SINCE": "making"} if writing else {})
        if how:
            environment |= {"FAULTY_AT": str(at), "FAULTY_HOW": str(how)}
        if calls:
            environment["FAULTY_CALLS"] = str(calls)
        # With one core there is one thread, and the calls come in the same order each time.
        one = {min(os.sched_getaffinity(0))}
        return self.run_scruple(*words, env=environment, preexec_fn=lambda: os.sched_setaffinity(0, one))

    def calls(self, words, writing=False):
        """The calls of one undisturbed run, in order, each with what it is about; what it wrote is left there."""
        path = pathlib.Path(f"{self.folder}-calls")
        self.addCleanup(path.unlink, missing_ok=True)
        path.write_text("")
        done = self.run_faulty(words, calls=path, writing=writing)
        self.assertEqual((done.returncode, done.stderr), (0, b""), words)
        return [line.split(" ", 1) for line in path.read_text(encoding="utf-8").splitlines()]

    def drafts(self):
        return [path.name for path in self.folder.rglob(".scruple-draft-*")]

    def everything(self):
        """Each file of the folder that is seen, with its bytes."""
        return {str(path.relative_to(self.folder)): path.read_bytes() for path in sorted(self.folder.rglob("*"))
                if path.is_file() and not path.name.startswith(".")}

    def set_back(self, before):
        shutil.rmtree(self.folder / "binder", ignore_errors=True)
        for name in self.everything():
            if name not in before:
                (self.folder / name).unlink()
        for name, content in before.items():
            self.put(name, content)
