#!/usr/bin/python3
# SPDX-License-Identifier: MIT
"""Each promise of docs/threats.md names a test that is there."""
import pathlib
import re
import sys

ROOT = pathlib.Path(__file__).resolve().parents[2]


def main():
    text = (ROOT / "docs/threats.md").read_text(encoding="utf-8")
    rows = [line for line in text.split("## What is promised")[1].split("## What is not")[0].splitlines()
            if line.startswith("| ") and not line.startswith("| promise")]
    faults = []
    for row in rows:
        found = re.fullmatch(r"\| .+ \| `(tests/[a-z_/]+\.py)` `(test_\w+)` \|", row)
        if not found:
            faults.append(f"names no test: {row}")
        elif not (ROOT / found[1]).exists() or f"def {found[2]}(self)" not in (ROOT / found[1]).read_text(encoding="utf-8"):
            faults.append(f"{found[1]} has no {found[2]}")
    print(*faults, f"{len(rows)} promises, {len(faults)} faults", sep="\n")
    return 1 if faults or not rows else 0


if __name__ == "__main__":
    sys.exit(main())
