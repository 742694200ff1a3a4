# SPDX-License-Identifier: MIT
"""Runs the built program (environment: SCRUPLE) in folders of their own."""
import json
import os
import pathlib
import subprocess
import tempfile
import unittest

PROGRAM = os.environ["SCRUPLE"]
ROOT = pathlib.Path(__file__).resolve().parents[2]

FINE, FAULTS, WRONG_CALL, TROUBLE = 0, 1, 2, 3

HERON = """\
recipe Heron
    is a       paper developer
    # the shed is cold in winter

part A
    water                          700 ml at 40 C
    sodium sulfite (anhydrous)     40 g
    hydroquinone                   10 g
    stir until clear
    water to make                  1 l

part B
    water                          700 ml at 40 C
    sodium carbonate (anhydrous)   50 g
    stir until clear
    water to make                  1 l

working
    capacity                       4 films 135 per 1 l
    mix part A + part B + water    1+1+2
"""

TERN = """\
recipe Tern
    water                          700 ml at 40 C
    sodium sulfite (anhydrous)     30 g   # by the open window
    stir until clear
    water to make                  1 l
"""

FAULTY = TERN.replace("30 g", "30 oz")


class Workspace(unittest.TestCase):
    def setUp(self):
        self.place = tempfile.TemporaryDirectory()
        self.addCleanup(self.place.cleanup)
        self.folder = pathlib.Path(self.place.name)

    def put(self, name, content):
        path = self.folder / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_bytes(content.encode() if isinstance(content, str) else content)
        return path

    def text(self, name):
        return (self.folder / name).read_text(encoding="utf-8")

    def run_scruple(self, *words, program=PROGRAM, **how):
        how = {"cwd": self.folder, "capture_output": True, "timeout": 120} | how
        return subprocess.run([program, *words], check=False, **how)

    def scruple(self, *words, status=FINE, **how):
        """What was printed; the other stream must be empty, and the exit status must be this one."""
        done = self.run_scruple(*words, **how)
        out, err = done.stdout.decode(), done.stderr.decode()
        self.assertEqual(done.returncode, status, f"{words}: {out}{err}")
        if status == FINE:
            self.assertEqual(err, "")
        return out

    def refused(self, *words, status=WRONG_CALL, **how):
        """The message; nothing may come out on standard output."""
        done = self.run_scruple(*words, **how)
        self.assertEqual(done.returncode, status, f"{words}: {done.stdout}{done.stderr}")
        self.assertEqual(done.stdout, b"")
        return done.stderr.decode()

    def json(self, *words, **how):
        return json.loads(self.scruple(*words, "--as", "json", **how))

    def names(self):
        return sorted(path.name for path in self.folder.iterdir())
