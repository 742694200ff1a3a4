# SPDX-License-Identifier: MIT
"""Runs the tests beside it, those of a folder, or one file of it: `run.py [FOLDER [FILE]]`. The last line says how many
passed and failed."""
import pathlib
import sys
import unittest

HERE = pathlib.Path(__file__).resolve().parent
FOLDER = pathlib.Path(sys.argv[1]) if len(sys.argv) > 1 else HERE
FILE = sys.argv[2] if len(sys.argv) > 2 else "test_*.py"
sys.path.insert(0, str(HERE))  # support.py

tests = unittest.defaultTestLoader.discover(str(FOLDER), pattern=FILE)
result = unittest.TextTestRunner(stream=sys.stdout, verbosity=2).run(tests)
failed = len(result.failures) + len(result.errors)
print(f"{result.testsRun - failed - len(result.skipped)} passed, {failed} failed")
sys.exit(0 if result.wasSuccessful() and result.testsRun > 0 else 1)
