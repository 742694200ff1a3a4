#!/usr/bin/python3
# SPDX-License-Identifier: MIT
"""How long the language server takes from an edit to its diagnostics, and what memory it holds.

    editing.py PROGRAM [RECIPES [EDITS]]     in a workspace of so many generated recipes; clangd beside it, where it is
                                             there, on a file of 1000 lines

Each edit changes one character of an amount, as typing does; the time is that from writing the message to having read
the diagnostics of that version.
"""
import os
import pathlib
import random
import shutil
import sys
import tempfile
import time

sys.path.insert(0, str(pathlib.Path(__file__).resolve().parents[1] / "cli"))
os.environ["SCRUPLE"] = sys.argv[1]
import lsp  # noqa: E402

SALTS = ["sodium sulfite (anhydrous)", "sodium carbonate (anhydrous)", "potassium carbonate (anhydrous)", "hydroquinone",
         "borax (decahydrate)", "potassium bromide", "metol", "citric acid (monohydrate)"]


def recipe(i, pick):
    lines = [f"recipe Reed {i}", "    is a       film developer", ""]
    for part in "AB":
        lines += [f"part {part}", "    keeps      6 months full, 2 months half full", "    water   700 ml at 45 to 50 C"]
        for salt in pick.sample(SALTS, 4):
            lines += [f"    {salt}   {pick.randint(10, 300) / 10} g", "    stir until clear"]
        lines += ["    cool to 20 C", "    water to make   1 l", ""]
    lines += ["working", "    use within 2 h", "    water   600 ml at 20 C", "    part A   100 ml", "    part B   60 ml"]
    if i > 10 and i % 7 == 0:
        lines.append(f"    Reed {pick.randrange(i)} part A   20 ml")
    return "\n".join([*lines, "    water to make   1 l", ""])


LAST = {}  # the digit at a place, so that each edit changes something


def resident(client):
    status = pathlib.Path(f"/proc/{client.server.pid}/status").read_text(encoding="utf-8")
    return int(status.split("VmRSS:")[1].split()[0]) / 1024


def processor_seconds(client):
    fields = pathlib.Path(f"/proc/{client.server.pid}/stat").read_text(encoding="utf-8").rsplit(")", 1)[1].split()
    return (int(fields[11]) + int(fields[12])) / os.sysconf("SC_CLK_TCK")


def wait_for(client, uri, version):
    while True:
        message = client.receive()
        if message.get("method") == "textDocument/publishDiagnostics" and message["params"]["uri"] == uri \
                and message["params"].get("version") == version:
            return


def percentiles(times):
    times = sorted(times)
    return ", ".join(f"{name} {times[min(len(times) - 1, int(len(times) * share))] * 1000:.2f} ms"
                     for name, share in (("median", 0.5), ("90 %", 0.9), ("99 %", 0.99), ("most", 1)))


def edits(client, name, places, count, pick, pause=0.0):
    times = []
    for _ in range(count):
        line, column = pick.choice(places)
        digit = str(pick.choice([d for d in range(1, 10) if LAST.get((name, line)) != d]))
        LAST[name, line] = int(digit)
        before = time.perf_counter()
        client.change(name, ((line, column), (line, column + 1), digit))
        wait_for(client, client.uri(name), client.versions[name])
        times.append(time.perf_counter() - before)
        time.sleep(pause)
    return times


def amounts(text):
    return [(i, line.index(" g") - 1) for i, line in enumerate(text.splitlines()) if line.endswith(" g")]


def ours(folder, count, many):
    pick = random.Random(1)
    for i in range(count):
        (folder / f"reed{i}.scruple").write_text(recipe(i, pick), encoding="utf-8")
    before = time.perf_counter()
    client = lsp.Client(folder)
    client.settled()
    print(f"{count} recipes read and checked in {time.perf_counter() - before:.2f} s, {resident(client):.0f} MB")
    times, begun = [], processor_seconds(client)
    for i in pick.sample(range(count), min(50, count)):
        name = f"reed{i}.scruple"
        text = (folder / name).read_text(encoding="utf-8")
        client.open(name, text)
        wait_for(client, client.uri(name), 1)
        times += edits(client, name, amounts(text), 40, pick)
    print(f"edit to diagnostics, {len(times)} edits in {min(50, count)} files: {percentiles(times)}; of the "
          f"processor {(processor_seconds(client) - begun) / len(times) * 1000:.2f} ms each")
    held = resident(client)
    for some in range(0, many, many // 4 or 1):
        edits(client, name, amounts(text), many // 4 or 1, pick)
        print(f"after {some + (many // 4 or 1)} edits: {resident(client):.1f} MB (before: {held:.1f} MB)")
    client.stop()


CPP = "#include <string>\n#include <vector>\n" + "".join(
    f"int amount_{i}(int grams) {{\n    int result = grams * {i % 9 + 1};\n    return result;\n}}\n\n" for i in range(200))


def clangd(folder):
    if shutil.which("clangd") is None:
        return
    (folder / "compile_flags.txt").write_text("-std=c++20\n", encoding="utf-8")
    lsp.PROGRAM = shutil.which("clangd")
    popen = lsp.subprocess.Popen
    lsp.subprocess.Popen = lambda words, **how: popen([words[0], "--log=error"], stderr=lsp.subprocess.DEVNULL, **how)
    client = lsp.Client(folder)
    client.versions["a.cpp"] = 1
    client.notify("textDocument/didOpen", {"textDocument": {"uri": client.uri("a.cpp"), "languageId": "cpp", "version": 1,
                                                            "text": CPP}})
    wait_for(client, client.uri("a.cpp"), 1)
    places = [(i, line.index(";") - 1) for i, line in enumerate(CPP.splitlines()) if "* " in line]
    LAST.update({("a.cpp", i): int(CPP.splitlines()[i][column]) for i, column in places})
    times = edits(client, "a.cpp", places, 30, random.Random(1), pause=0.05)
    print(f"clangd, a file of {len(CPP.splitlines())} lines, 30 edits: {percentiles(times)}")
    client.kill()


def main():
    count = int(sys.argv[2]) if len(sys.argv) > 2 else 10000
    many = int(sys.argv[3]) if len(sys.argv) > 3 else 2000
    with tempfile.TemporaryDirectory() as place:
        ours(pathlib.Path(place), count, many)
    with tempfile.TemporaryDirectory() as place:
        clangd(pathlib.Path(place))


main()
