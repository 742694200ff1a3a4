#!/usr/bin/python3
# SPDX-License-Identifier: MIT
"""Mutation testing, by hand: whether a test notices where something is changed that ought to matter.

    run.py [--sample N [--seed N]] [--built] [RUNG...]

RUNG is quantity, chemistry and check where none is named. It needs Debian's python3-clang-14.

All mutants are built at once (mutate.py), and one is switched on a run. A mutant that no test reaches survives without a run;
else the test programs that reach it are run until one fails, ends badly, or takes five times as long as it should. Test cases
that make thousands of workspaces are left out. --built takes what was built before. Prints how many are killed, and lists the
others in build/mutants/survivors.txt; those that equivalent.txt explains are counted apart.
"""
import argparse
import collections
import concurrent.futures
import json
import os
import pathlib
import random
import shutil
import subprocess
import time

ROOT = pathlib.Path(__file__).resolve().parents[2]
WORK = ROOT / "build/mutants"
TREE = WORK / "tree"
COPIED = ("CMakeLists.txt", "README.md", "DEVELOPERS.md", "docs", "grammar", "include", "recipes", "src", "tests")
PROGRAMS = ("quantity", "chemistry", "syntax", "check", "printed", "plan", "emit", "driver")
LEFT_OUT = ("thousands of spoilt*", "what a diagnostic offers*", "*ten thousand*")


def run(*words, **more):
    subprocess.run(words, check=True, **more)


def configured(source, folder, *options):
    run("cmake", "-S", source, "-B", folder, "-G", "Ninja", "-DCMAKE_CXX_COMPILER=clang++", *options, stdout=subprocess.DEVNULL)


def build(rungs):
    shutil.rmtree(TREE, ignore_errors=True)
    TREE.mkdir(parents=True)
    for name in COPIED:
        # As new files: what was mutated before is to be built anew.
        if (ROOT / name).is_dir():
            shutil.copytree(ROOT / name, TREE / name, copy_function=shutil.copy)
        else:
            shutil.copy(ROOT / name, TREE / name)
    configured(ROOT, WORK / "plain", "-DCMAKE_UNITY_BUILD=OFF", "-DSCRUPLE_TESTS=OFF", "-DCMAKE_BUILD_TYPE=Debug")
    run("/usr/bin/python3", ROOT / "tests/mutants/mutate.py", TREE, WORK / "plain/compile_commands.json", *rungs)
    configured(TREE, WORK / "built", "-DCMAKE_BUILD_TYPE=Release", "-DCMAKE_CXX_FLAGS_RELEASE=-O1",
               f"-DCMAKE_CXX_FLAGS=-std=c++20 -w -include {ROOT}/tests/mutants/mutant.hpp")
    run("ninja", "-C", WORK / "built", *(f"test_{name}" for name in PROGRAMS), stdout=subprocess.DEVNULL)


class Program:
    """A test program, and the places that it comes by."""

    def __init__(self, name):
        self.path = WORK / f"built/tests/test_{name}"
        self.words = [self.path, "--abort-after=1", "--no-intro", "-tce=" + ",".join(LEFT_OUT)]
        reached = WORK / f"reached_{name}"
        begin = time.monotonic()
        done = self.call({"SCRUPLE_MUTANTS_REACHED": str(reached)}, timeout=600)
        assert done.returncode == 0, f"test_{name} fails with nothing changed:\n{done.stdout[-2000:]}"
        self.seconds = time.monotonic() - begin
        self.reached = reached.read_bytes()

    def call(self, environment, *more, timeout):
        return subprocess.run([*self.words, *more], cwd=TREE, env={**os.environ, **environment}, timeout=timeout,
                              capture_output=True, text=True, errors="replace")

    def notices(self, number):
        try:
            return self.call({"SCRUPLE_MUTANT": str(number)}, timeout=5 * self.seconds + 5).returncode != 0
        except subprocess.TimeoutExpired:
            return True


def outcome(mutant, programs):
    reaching = sorted((p for p in programs if p.reached[mutant["id"]]), key=lambda p: p.seconds)
    if not reaching:
        return "not reached"
    return "killed" if any(program.notices(mutant["id"]) for program in reaching) else "survived"


def explained():
    """`file | text of the place | why it is the same` a line."""
    rows = [line.split(" | ") for line in (ROOT / "tests/mutants/equivalent.txt").read_text().splitlines() if " | " in line]
    return {(file, text) for file, text, _ in rows}


def told(mutants, outcomes):
    groups = collections.defaultdict(collections.Counter)
    same = explained()
    with open(WORK / "survivors.txt", "w", encoding="utf-8") as survivors:
        for mutant, what in zip(mutants, outcomes):
            if what != "killed" and (mutant["file"], mutant["text"].strip()) in same:
                what = "same"
            for key in (mutant["file"].split("/")[1], mutant["operator"], "all"):
                groups[key][what] += 1
            if what in ("survived", "not reached"):
                survivors.write(f"{mutant['file']}:{mutant['line']}: {mutant['operator']}: {what}: {mutant['text']}\n")
    print(f"{'':12}{'killed':>8}{'survived':>10}{'not reached':>13}{'same':>6}{'killed of what differs':>25}")
    for key, counts in groups.items():
        share = counts["killed"] / max(1, sum(counts.values()) - counts["same"])
        print(f"{key:12}{counts['killed']:8}{counts['survived']:10}{counts['not reached']:13}{counts['same']:6}{share:24.1%}")


def main():
    parser = argparse.ArgumentParser(description=__doc__.split("\n")[0])
    parser.add_argument("--sample", type=int, default=0, help="so many, spread evenly; all where this is not said")
    parser.add_argument("--seed", type=int, default=20, help="which of them: other numbers, others")  # a scruple has 20 grains
    parser.add_argument("--built", action="store_true", help="as it was built before")
    parser.add_argument("rungs", nargs="*", default=["quantity", "chemistry", "check"])
    asked = parser.parse_args()
    if not asked.built:
        build(asked.rungs or ["quantity", "chemistry", "check"])
    mutants = json.loads((TREE / "mutants.json").read_text())
    if asked.sample:
        random.seed(asked.seed)
        mutants = sorted(random.sample(mutants, min(asked.sample, len(mutants))), key=lambda m: m["id"])
    programs = [Program(name) for name in PROGRAMS]
    print("programs, and the seconds they take:", ", ".join(f"{p.path.name} {p.seconds:.1f}" for p in programs), flush=True)
    with concurrent.futures.ThreadPoolExecutor(os.cpu_count()) as pool:
        outcomes = list(pool.map(lambda mutant: outcome(mutant, programs), mutants))
    told(mutants, outcomes)


if __name__ == "__main__":
    main()
