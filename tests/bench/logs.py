#!/usr/bin/python3
# SPDX-License-Identifier: MIT
"""What reading a log takes, as whole processes: `check` reads and checks it, `shelf` works it out and prints it.

    logs.py SCRUPLE
"""
import pathlib
import statistics
import subprocess
import sys
import tempfile
import time

sys.path.insert(0, str(pathlib.Path(__file__).resolve().parents[1] / "cli"))
import log_books  # noqa: E402

TIMES = 9


def write(folder, count):
    lines = (log_books.text_of(line) for line in log_books.in_order(log_books.Maker(count, count).lines))
    supplier = "supplier Kiln Lane\n    metol   25 g   8.40 EUR\n"
    (folder / "log.scruple").write_text(log_books.RECIPES + supplier + "log\n" + "\n".join(lines) + "\n", encoding="utf-8")


def median_ms(program, folder, *words):
    taken = []
    for _ in range(TIMES):
        begin = time.perf_counter()
        subprocess.run([program, *words, "--in", folder], check=True, stdout=subprocess.DEVNULL)
        taken.append((time.perf_counter() - begin) * 1000)
    return statistics.median(taken)


def main():
    program = pathlib.Path(sys.argv[1]).resolve()
    for count in (1_000, 10_000, 100_000):
        with tempfile.TemporaryDirectory() as name:
            write(pathlib.Path(name), count)
            check = median_ms(program, name, "check")
            early = median_ms(program, name, "shelf", "--on", "2027-01-01")
            shelf = median_ms(program, name, "shelf", "--as", "json")
            print(f"{count:7} lines: check {check:5.0f} ms, shelf before the first {early:5.0f} ms, after the last {shelf:5.0f} ms")


if __name__ == "__main__":
    main()
