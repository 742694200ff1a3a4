# SPDX-License-Identifier: MIT
"""Holds the pages to the program: pages.py SCRUPLE [--write]

Recipe text is checked (samples.py), commands are run (sessions.py). With --write, what the commands give
now is written into the pages, but for what a page shows only in part.
"""
import pathlib
import shutil
import sys
import tempfile

import samples
import sessions
from blocks import blocks_of

ROOT = pathlib.Path(__file__).resolve().parents[2]
PAGES = ["README.md", "docs/tutorial.md", "docs/month.md", "docs/language.md", "docs/output.md"]
BEGINS_WITH_THE_DEMO = {"docs/month.md"}


def is_session(block):
    return block.said[:1] == ["console"]


def faults_in(scruple, blocks, folder):
    """Of files and commands as they come; then of the samples, with all files in place."""
    for block in blocks:
        if samples.is_sample(block) and samples.file_of(block):
            yield samples.fault_of(scruple, folder, block)
        elif is_session(block):
            yield sessions.fault_of(scruple, folder, block)
    for block in blocks:
        if samples.is_sample(block) and not samples.file_of(block):
            yield samples.fault_of(scruple, folder, block)


def in_new_folder(page, work):
    with tempfile.TemporaryDirectory(prefix="scruple-page-") as name:
        folder = pathlib.Path(name)
        if page in BEGINS_WITH_THE_DEMO:
            for file in (ROOT / "recipes").glob("*.scruple"):
                shutil.copy(file, folder)
        return work(folder)


def refresh(scruple, path, blocks, folder):
    lines = path.read_text(encoding="utf-8").splitlines()
    moved = 0
    for block in blocks:
        if samples.is_sample(block) and samples.file_of(block):
            samples.fault_of(scruple, folder, block)
        elif is_session(block):
            new = sessions.rewritten(scruple, folder, block)
            start = block.line + moved
            lines[start:start + len(block.lines)] = new
            moved += len(new) - len(block.lines)
    path.write_text("\n".join(lines) + "\n", encoding="utf-8")


def main():
    scruple = str(pathlib.Path(sys.argv[1]).resolve())
    passed = failed = 0
    for page in PAGES:
        path = ROOT / page
        blocks = blocks_of(page, path.read_text(encoding="utf-8"))
        if "--write" in sys.argv[2:]:
            in_new_folder(page, lambda folder: refresh(scruple, path, blocks, folder))
            continue
        for fault in in_new_folder(page, lambda folder: list(faults_in(scruple, blocks, folder))):
            passed, failed = (passed + 1, failed) if fault is None else (passed, failed + 1)
            if fault:
                print(fault)
    print(f"{passed} passed, {failed} failed")
    return 1 if failed or not passed else 0


sys.exit(main())
