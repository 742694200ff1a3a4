# SPDX-License-Identifier: MIT
"""What is built has what src/hardening.cmake asks for, by readelf (binutils), and is the same wherever it is built."""
import os
import pathlib
import re
import subprocess
import unittest

BUILT = pathlib.Path(os.environ["SCRUPLE"])
SOURCE = pathlib.Path(__file__).resolve().parents[2]
OPTIMIZED = "CMAKE_BUILD_TYPE:STRING=Release" in (BUILT.parent.parent / "CMakeCache.txt").read_text()


def told(path, *words):
    return subprocess.run(["readelf", "--wide", *words, path], check=True, capture_output=True, text=True).stdout


class Hardening(unittest.TestCase):
    def of_each(self):
        for path in (BUILT, BUILT.parent / "scruple-drawing.so"):
            with self.subTest(path.name):
                yield path

    def test_it_is_laid_out_anew_each_time(self):
        for path in self.of_each():
            self.assertRegex(told(path, "--file-header"), r"Type:\s+DYN")
        self.assertIn("PIE", told(BUILT, "--dynamic"))

    def test_what_the_loader_fills_in_cannot_be_written_afterwards(self):
        for path in self.of_each():
            self.assertIn("GNU_RELRO", told(path, "--program-headers"))
            self.assertRegex(told(path, "--dynamic"), r"BIND_NOW|FLAGS_1.*NOW")

    def test_nothing_is_both_written_and_run(self):
        for path in self.of_each():
            segments = re.findall(r"^\s+(LOAD|GNU_STACK)\s.*\s([R ][W ][E ])\s+0x", told(path, "--program-headers"), re.M)
            self.assertIn("GNU_STACK", [name for name, _ in segments])
            for name, may in segments:
                self.assertFalse("W" in may and "E" in may, f"{name} {may}")

    def test_the_stack_is_watched(self):
        for path in self.of_each():
            self.assertIn("__stack_chk_fail", told(path, "--dyn-syms"))

    @unittest.skipUnless(OPTIMIZED, "the C library checks nothing at -O0")
    def test_the_c_library_checks_lengths(self):
        self.assertRegex(told(BUILT, "--dyn-syms"), r"__(mem|str|printf|snprintf|vsnprintf|read|fd|recv|realpath)\w*_chk")

    def test_no_folder_of_the_build_is_in_it(self):
        for path in self.of_each():
            bytes_of = path.read_bytes()
            for folder in (SOURCE, BUILT.parent.parent):
                self.assertNotIn(str(folder).encode(), bytes_of)
