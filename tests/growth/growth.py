# SPDX-License-Identifier: MIT
"""How the work of a command grows with what it works on, in instructions, which are the same on every machine and however
busy it is. Valgrind counts them.

Three sizes are run: 1, n and 10 n of something. What the one takes is taken off, so that starting, and reading what does
not grow, hides nothing. Of the rest ten times as much may take as many times more as n log n does, and 15 % on top: for
tables that double, and for what 9/(n-1) is short of at the small size. Quadratic work takes 100 times as much; where it is
a fifteenth of all at the small size, it is seen.
"""
import math
import os
import pathlib
import re
import shutil
import subprocess
import tempfile
import unittest

STRIPPED = tempfile.TemporaryDirectory()
# Of the tools that count, the one that does nothing else; and most of its time would go into improving code that runs once.
COUNTING = ["valgrind", "--tool=exp-bbv", "--instr-count-only=yes", "--bb-out-file=/dev/null", "--vgdb=no", "--vex-iropt-level=0",
            "--vex-guest-chase=no", "--vex-iropt-register-updates=unwindregs-at-mem-access", "--smc-check=none"]


def without_names(program):
    """A copy with what it loads: Valgrind reads the names of all functions, each time."""
    of_it = pathlib.Path(program)
    shutil.copy(of_it.with_name("scruple-drawing.so"), STRIPPED.name)
    stripped = pathlib.Path(STRIPPED.name) / of_it.name
    subprocess.run(["strip", "-o", stripped, of_it], check=True)
    return str(stripped)


PROGRAM = without_names(os.environ["SCRUPLE"])
TIMES = 10
SPARE = 1.15


def most_growth(n, times):
    return times * math.log(times * n) / math.log(n) * SPARE


def instructions(words, fed=None, statuses=(0,)):
    """Of a whole process."""
    counted = subprocess.run([*COUNTING, PROGRAM, *words],
                             input=fed, capture_output=True, check=False)
    told = counted.stderr.decode(errors="replace")
    if counted.returncode not in statuses:
        raise AssertionError(f"{' '.join(words)}: status {counted.returncode}\n{told}{counted.stdout.decode(errors='replace')}"[:2000])
    return sum(int(of_thread) for of_thread in re.findall(r"Total instructions: (\d+)", told))


class Growth(unittest.TestCase):
    def grows_little(self, n, make, *words, statuses=(0,), times=TIMES):
        """`make(folder, count)` writes files, and may give what is fed to the program."""
        taken = {count: self.taken(make, count, words, statuses) for count in (1, n, times * n)}
        growth = (taken[times * n] - taken[1]) / (taken[n] - taken[1])
        shown = f"{' '.join(words)}: {n} take {taken[n]:,}, {times * n} {taken[times * n]:,}, beyond {taken[1]:,} of one {growth:.1f} times"
        print(shown, flush=True)
        self.assertLess(growth, most_growth(n, times), shown)

    @staticmethod
    def taken(make, count, words, statuses):
        with tempfile.TemporaryDirectory() as name:
            folder = pathlib.Path(name)
            fed = make(folder, count)
            return instructions([word.replace("FOLDER", name) for word in words] + ([] if fed else ["--in", name]), fed, statuses)
