# SPDX-License-Identifier: MIT
"""Counts the test cases of a JUnit file that ctest wrote: prints PASSED FAILED.

A program that says how many cases it ran, as doctest's programs do or in a line `N passed, N failed`,
counts with that many; any other program counts as one. A program that failed without saying how
(it crashed, or ran too long) has one failed case.
"""
import re
import sys
import xml.etree.ElementTree as ElementTree

SUMMARIES = [
    re.compile(r"^\[doctest\] test cases: +\d+ \| +(\d+) passed \| +(\d+) failed", re.M),
    re.compile(r"^(\d+) passed, (\d+) failed$", re.M),
]


def said(output):
    for summary in SUMMARIES:
        found = summary.findall(output)
        if found:
            return sum(int(p) for p, _ in found), sum(int(f) for _, f in found)
    return None


def counts(case):
    went_well = case.get("status") == "run"
    output = case.findtext("system-out") or ""
    passed, failed = said(output) or (int(went_well), int(not went_well))
    if not went_well and failed == 0:
        failed = 1
    return passed, failed


def main(path):
    cases = ElementTree.parse(path).getroot().findall("testcase")
    if not cases:
        sys.exit(f"{path} holds no tests")
    totals = [sum(column) for column in zip(*map(counts, cases))]
    print(*totals)


main(sys.argv[1])
