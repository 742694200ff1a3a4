# SPDX-License-Identifier: MIT
"""Every source file says its licence in its first line, or in its second after `#!`."""
import pathlib
import sys

ROOT = pathlib.Path(__file__).resolve().parents[2]
FOLDERS = ["src", "include", "grammar", "tests", "recipes", ".ci"]
SUFFIXES = {".cpp", ".hpp", ".inc", ".in", ".py", ".sh", ".cmake", ".peg"}
NAMES = {"CMakeLists.txt", "run"}
LINE = "SPDX-License-Identifier: MIT"


def is_source(path):
    return path.is_file() and (path.suffix in SUFFIXES or path.name in NAMES)


def has_line(path):
    with path.open(encoding="utf-8") as file:
        return any(line.strip().endswith(LINE) for line in (file.readline(), file.readline()))


def main():
    files = [ROOT / "CMakeLists.txt"]
    for folder in FOLDERS:
        files += filter(is_source, (ROOT / folder).rglob("*"))
    lacking = sorted(str(path.relative_to(ROOT)) for path in files if not has_line(path))
    print(f"{len(files)} source files, {len(lacking)} without the line `{LINE}`:", *lacking, sep="\n")
    return 1 if lacking or len(files) < 10 else 0


sys.exit(main())
