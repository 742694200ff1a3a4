#!/usr/bin/python3
# SPDX-License-Identifier: MIT
"""Mutation testing, by hand: whether a test notices where something is changed that ought to matter.

    run.py [--sample N [--seed N]] [--built] [RUNG...]

RUNG is quantity, chemistry and check where none is named; plan is worth it, too. It needs Debian's python3-clang-14.

All mutants are built at once (mutate.py), and one is switched on a run. The test programs that reach it, then those suites of
the whole program that look most at it, are run until one fails, ends badly, or takes five times the processor's
time that it should, whatever else the machine does. Test cases that make thousands of workspaces are left out. --built takes
what was built before. Prints how many are killed, and lists the others in build/mutants/survivors.txt; those that
equivalent.txt explains are counted apart.
"""
import argparse
import collections
import concurrent.futures
import json
import os
import pathlib
import random
import resource
import shutil
import subprocess

ROOT = pathlib.Path(__file__).resolve().parents[2]
WORK = ROOT / "build/mutants"
TREE = WORK / "tree"
COPIED = ("CMakeLists.txt", "README.md", "DEVELOPERS.md", "docs", "grammar", "include", "recipes", "src", "tests")
PROGRAMS = ("quantity", "chemistry", "syntax", "check", "printed", "plan", "emit", "driver")
SUITES = {"results", "meetings", "contents", "why", "json", "inputs", "compare"}
SUITES_OF_PLANS = {"calendar", "evening", "mixed", "packs", "shelf", "weigh", "react", "what_if"}
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
    configured(TREE, WORK / "built", "-DCMAKE_BUILD_TYPE=Release", "-DCMAKE_CXX_FLAGS_RELEASE=-O1 -D_GLIBCXX_ASSERTIONS",
               f"-DCMAKE_CXX_FLAGS=-std=c++20 -w -include {ROOT}/tests/mutants/mutant.hpp")
    run("ninja", "-C", WORK / "built", "scruple", *(f"test_{name}" for name in PROGRAMS), stdout=subprocess.DEVNULL)


def processor_time():
    """Of all programs that have ended."""
    ended = resource.getrusage(resource.RUSAGE_CHILDREN)
    return ended.ru_utime + ended.ru_stime


class Tests:
    """Some of the tests; of a program, `reached` has a byte a place, not nought where it is come by."""

    def __init__(self, name, words, environment=None):
        self.name, self.words, self.environment = name, words, environment or {}
        self.reached = b""
        before = processor_time()
        done = self.call(seconds=600)
        assert done.returncode == 0, f"{name} fails with nothing changed:\n{done.stdout[-2000:]}"
        self.seconds = processor_time() - before

    def call(self, seconds, **environment):
        """At most so many seconds of the processor, and of the clock, where it waits for ever, many more."""
        return subprocess.run(["prlimit", f"--cpu={round(seconds)}", *self.words], cwd=TREE, timeout=20 * seconds,
                              env={**os.environ, **self.environment, **environment}, capture_output=True, text=True,
                              errors="replace")

    def notice(self, number):
        try:
            return self.call(5 * self.seconds + 5, SCRUPLE_MUTANT=str(number)).returncode != 0
        except subprocess.TimeoutExpired:
            return True


def of_program(name):
    reached = WORK / f"reached_{name}"
    reached.unlink(missing_ok=True)
    tests = Tests(name, [WORK / f"built/tests/test_{name}", "--abort-after=1", "--no-intro", "-tce=" + ",".join(LEFT_OUT)],
                  {"SCRUPLE_MUTANTS_REACHED": str(reached)})
    tests.environment = {}
    # A program in which nothing of these rungs is linked writes nothing.
    tests.reached = reached.read_bytes() if reached.exists() else b""
    return tests


def of_suite(name):
    return Tests(f"cli_{name}", ["/usr/bin/python3", "tests/cli/run.py", "tests/cli", f"test_{name}.py"],
                 {"SCRUPLE": str(WORK / "built/src/scruple")})


def outcome(mutant, programs, suites):
    """The programs first: they are faster."""
    reaching = sorted((tests for tests in programs if any(tests.reached[mutant["id"]:mutant["id"] + 1])),
                      key=lambda tests: tests.seconds)
    if any(tests.notice(mutant["id"]) for tests in [*reaching, *suites]):
        return "killed"
    return "survived" if reaching else "not reached"


def explained():
    """`file | operator | text of the place | why it is the same` a line."""
    rows = [line.split(" | ") for line in (ROOT / "tests/mutants/equivalent.txt").read_text().splitlines() if line and not line.startswith("#")]
    return {(file, operator, text) for file, operator, text, _ in rows}


def told(mutants, outcomes):
    groups = collections.defaultdict(collections.Counter)
    same = explained()
    with open(WORK / "survivors.txt", "w", encoding="utf-8") as survivors:
        for mutant, what in zip(mutants, outcomes):
            if what != "killed" and (mutant["file"], mutant["operator"], mutant["text"].strip()) in same:
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
    parser.add_argument("--sample", type=int, default=0, help="so many, by lot; all where this is not said")
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
    names = SUITES | SUITES_OF_PLANS if "plan" in asked.rungs else SUITES
    programs, suites = [of_program(name) for name in PROGRAMS], [of_suite(name) for name in sorted(names)]
    print("tests, and the seconds they take:", ", ".join(f"{t.name} {t.seconds:.1f}" for t in [*programs, *suites]), flush=True)
    with concurrent.futures.ThreadPoolExecutor(os.cpu_count()) as pool:
        outcomes = list(pool.map(lambda mutant: outcome(mutant, programs, suites), mutants))
    told(mutants, outcomes)


if __name__ == "__main__":
    main()
