# SPDX-License-Identifier: MIT
"""Runs the tests of a folder, `run.py [FOLDER]`, or those beside it; the last line says how many passed and failed."""
import pathlib
import sys
import unittest

HERE = pathlib.Path(__file__).resolve().parent
FOLDER = pathlib.Path(sys.argv[1]) if len(sys.argv) > 1 else HERE
sys.path.insert(0, str(HERE))  # support.py

tests = unittest.defaultTestLoader.discover(str(FOLDER), pattern="test_*.py")
result = unittest.TextTestRunner(stream=sys.stdout, verbosity=2).run(tests)
failed = len(result.failures) + len(result.errors)
print(f"{result.testsRun - failed - len(result.skipped)} passed, {failed} failed")
sys.exit(0 if result.wasSuccessful() and result.testsRun > 0 else 1)
