#!/usr/bin/python3
# SPDX-License-Identifier: MIT
"""What whole processes take, beside the least that they could take. Compare within a run, not milliseconds.

    starting.py SCRUPLE

`check` of the demo beside empty programs, one that loads what Scruple loads and one that loads nothing; 10 000 files beside
opening and reading them; 100 000 recipes on one core and on all; a card and a shopping list beside a script that only does
their sums, with pint (Debian's python3-pint), and beside a sheet that does, worked out by LibreOffice without a window
(libreoffice-calc); each is left out where it is not there. The files have been read before: it is the
start that is cold, and not the disk.
"""
import os
import pathlib
import shlex
import shutil
import statistics
import subprocess
import sys
import tempfile
import time

ROOT = pathlib.Path(__file__).resolve().parents[2]
RECIPES = str(ROOT / "recipes")
sys.path.insert(0, str(ROOT / "tests/growth"))
os.environ.setdefault("SCRUPLE", sys.argv[1])
import workspaces  # noqa: E402

EMPTY = "int main() { return 0; }\n"
READER = """\
#include <fcntl.h>
#include <unistd.h>
int main(int count, char** names) {
    static char room[1 << 20];
    for (int i = 1; i < count; ++i) {
        int file = open(names[i], O_RDONLY);
        if (file < 0 || read(file, room, sizeof room) < 0) return 1;
        close(file);
    }
    return 0;
}
"""
# What the demo's December asks of half a litre: each line scaled, rounded to the balance, summed up.
SUMS = """\
import pint
unit = pint.UnitRegistry()
lines = [("sodium sulfite", 78 * unit.g), ("metol", 4.2 * unit.g), ("hydroquinone", 5.5 * unit.g), ("water", 700 * unit.ml)]
for name, amount in lines:
    print(name, round((amount * (500 * unit.ml / (1 * unit.l)).to("").magnitude).to(amount.units), 2))
print(sum((amount for name, amount in lines[:3]), 0 * unit.g).to(unit.kg))
"""
# The same sums as a sheet, in the one-file form of OpenDocument 1.2.
SHEET = """\
<?xml version="1.0" encoding="UTF-8"?>
<office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0"
 xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0"
 xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2" office:version="1.2" office:mimetype="application/vnd.oasis.opendocument.spreadsheet">
<office:body><office:spreadsheet><table:table table:name="half a litre">{rows}</table:table></office:spreadsheet></office:body>
</office:document>
"""
AMOUNTS = {"sodium sulfite": 78, "metol": 4.2, "hydroquinone": 5.5, "water": 700}


def sheet():
    def number(value):
        return f'<table:table-cell office:value-type="float" office:value="{value}"/>'

    def worked_out(formula):
        return f'<table:table-cell table:formula="of:={formula}" office:value-type="float"/>'

    rows = [f'<table:table-row><table:table-cell office:value-type="string"><text:p>{name}</text:p></table:table-cell>'
            f'{number(amount)}{worked_out(f"ROUND([.B{i}]*500/1000;2)")}</table:table-row>'
            for i, (name, amount) in enumerate(AMOUNTS.items(), 1)]
    total = f'<table:table-row><table:table-cell/><table:table-cell/>{worked_out("SUM([.B1:.B3])/1000")}</table:table-row>'
    return SHEET.format(rows="".join([*rows, total]))


def built(folder, name, source, *options):
    (folder / f"{name}.cpp").write_text(source, encoding="utf-8")
    program = folder / name
    subprocess.run(["c++", "-O2", str(folder / f"{name}.cpp"), "-o", str(program), *options], check=True)
    return str(program)


def milliseconds(words, cores=None):
    begun = time.perf_counter()
    held = (lambda: os.sched_setaffinity(0, cores)) if cores else None
    subprocess.run(words, stdout=subprocess.DEVNULL, check=True, preexec_fn=held) if held else run(words)
    return (time.perf_counter() - begun) * 1000


def run(words):
    """As directly as it goes: what Python does for a process of its own takes longer than some of these."""
    quiet = [(os.POSIX_SPAWN_OPEN, stream, os.devnull, os.O_WRONLY, 0) for stream in (1, 2)]
    _, status = os.waitpid(os.posix_spawn(words[0], words, os.environ, file_actions=quiet), 0)
    if status != 0:
        raise subprocess.CalledProcessError(status, shlex.join(words))


def side_by_side(times, **programs):
    """Least and median of each, run in turn, and the least over the first one's."""
    taken = {name: [] for name in programs}
    for _ in range(times):
        for name, words in programs.items():
            taken[name].append(milliseconds(words))
    first = min(next(iter(taken.values())))
    for name, all_times in taken.items():
        print(f"{name.replace('_', ' '):42} least {min(all_times):8.2f} ms, median {statistics.median(all_times):8.2f} ms, {min(all_times) / first:6.2f}")


def starts(program, folder):
    static = built(folder, "static", EMPTY, "-static")
    linked = built(folder, "linked", EMPTY, "-Wl,--no-as-needed", "-static-libstdc++", "-static-libgcc", "-lm", "-ldl")
    side_by_side(200, an_empty_program_linked_like_it=[linked], an_empty_static_program=[static],
                 its_version=[program, "--version"], check_of_the_demo=[program, "check", "--in", RECIPES])


def many_files(program, folder):
    workspaces.files(folder, 10_000)
    files = sorted(str(path) for path in folder.glob("*.scruple"))
    reader = built(folder, "reader", READER)
    side_by_side(9, opening_and_reading_10_000_files=[reader, *files], checking_them=[program, "check", "--in", str(folder)])


def many_recipes(program, folder):
    for i in range(1000):
        (folder / f"{i}.scruple").write_text("\n".join(map(workspaces.recipe, range(i * 100, i * 100 + 100))), encoding="utf-8")
    words = [program, "check", "--in", str(folder)]
    one = min(milliseconds(words, {0}) for _ in range(3))
    every = min(milliseconds(words, set(range(os.cpu_count()))) for _ in range(3))
    print(f"100 000 recipes: {one:.0f} ms on one core, {every:.0f} ms on {os.cpu_count()}, {one / every:.2f} times as fast")


def whole_job(program, folder):
    (folder / "sums.py").write_text(SUMS, encoding="utf-8")
    sums = ["/usr/bin/python3", str(folder / "sums.py")]
    programs = {"a_card": [program, "card", "Medlar", "part", "A", "--make", "500ml", "--in", RECIPES],
                "a_shopping_list": [program, "shopping", "December", "--in", RECIPES]}
    if subprocess.run(["/usr/bin/python3", "-c", "import pint"], capture_output=True, check=False).returncode == 0:
        programs["a_script_with_pint"] = sums
    if office := shutil.which("soffice"):
        programs["a_sheet_without_a_window"] = with_a_sheet(office, folder)
    side_by_side(9, **programs)


def with_a_sheet(office, folder):
    (folder / "sums.fods").write_text(sheet(), encoding="utf-8")
    words = [office, f"-env:UserInstallation=file://{folder}/settings", "--headless", "--convert-to", "csv", "--outdir",
             str(folder), str(folder / "sums.fods")]
    run(words)  # its settings are made the first time
    said = (folder / "sums.csv").read_text()
    assert "39" in said and "0.0877" in said, said
    return words


def main():
    for measure in (starts, many_files, many_recipes, whole_job):
        with tempfile.TemporaryDirectory() as name:
            measure(str(pathlib.Path(sys.argv[1]).resolve()), pathlib.Path(name))


if __name__ == "__main__":
    main()
