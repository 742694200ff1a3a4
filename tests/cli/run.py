# SPDX-License-Identifier: MIT
"""Runs the tests beside it; the last line says how many passed and failed."""
import pathlib
import sys
import unittest

tests = unittest.defaultTestLoader.discover(str(pathlib.Path(__file__).parent), pattern="test_*.py")
result = unittest.TextTestRunner(stream=sys.stdout, verbosity=2).run(tests)
failed = len(result.failures) + len(result.errors)
print(f"{result.testsRun - failed - len(result.skipped)} passed, {failed} failed")
sys.exit(0 if result.wasSuccessful() and result.testsRun > 0 else 1)
