# SPDX-License-Identifier: MIT
"""The recipe text of a page, checked by the program.

    ```scruple                           a file of its own; nothing is wrong with it
    ```scruple lines                     lines of a recipe, under `recipe Sample` and some water
    ```scruple file bench.scruple        a file of the page's own folder, where it stays; a later one takes its place
    ```scruple-refused KIND …            the same three, with just these kinds of errors and warnings

Files are checked when their turn comes, everything else together with the files that the page ends up with.
"""
import json
import subprocess

WRAPPED = "recipe Sample\nwater 500 ml\n"


def is_sample(block):
    return bool(block.said) and block.said[0] in ("scruple", "scruple-refused")


def file_of(block):
    """The file that a block is to be, or none."""
    return block.said[block.said.index("file") + 1] if "file" in block.said else None


def kinds_of(block):
    if block.said[0] != "scruple-refused":
        return set()
    rest = block.said[1:]
    if "file" in rest:
        del rest[rest.index("file"):rest.index("file") + 2]
    return {word for word in rest if word != "lines"}


def found_in(scruple, folder, name):
    ran = subprocess.run([scruple, "check", "--as", "json"], cwd=folder, capture_output=True, text=True, timeout=60)
    if ran.returncode not in (0, 1):
        raise RuntimeError(f"scruple check: status {ran.returncode}\n{ran.stderr}")
    return [d for d in json.loads(ran.stdout) if d["severity"] != "advice" and (name is None or d["file"] == name)]


def fault_of(scruple, folder, block):
    """Writes the block into the folder and says what is not as the page has it; none where all is."""
    name = file_of(block) or "sample.scruple"
    path = folder / name
    path.write_text((WRAPPED if "lines" in block.said else "") + block.text, encoding="utf-8")
    found = found_in(scruple, folder, name)
    if file_of(block) is None:
        path.unlink()
    if {d["kind"] for d in found} == kinds_of(block):
        return None
    wanted = ", ".join(sorted(kinds_of(block))) or "nothing"
    heard = "".join(f"\n    line {d['line']}: {d['message']} [{d['kind']}]" for d in found) or " nothing"
    return f"{block.place}: the page says {wanted}, and the program{heard}"
