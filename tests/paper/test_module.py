# SPDX-License-Identifier: MIT
"""What draws is loaded only to draw. What is loaded is told by the dynamic loader (glibc, LD_DEBUG=files)."""
import os
import re

from sheets import Sheets
from support import HERON

DRAWS = {"libcairo", "libpango-1", "libfontconfig", "libqrencode"}


class Module(Sheets):
    def loaded(self, *words):
        done = self.run_scruple(*words, env=os.environ | {"LD_DEBUG": "files"})
        self.assertEqual(done.returncode, 0)
        return set(re.findall(rb"file=(lib[^. \[]+)", done.stderr))

    def test_commands_that_draw_nothing_do_not_wait_for_fonts(self):
        self.put("heron.scruple", HERON)
        draws = {name.encode() for name in DRAWS}
        for words in (("check",), ("card", "Heron", "part", "A"), ("card", "Heron", "part", "A", "--as", "html"), ("labels", "Heron")):
            self.assertEqual(self.loaded(*words) & draws, set(), words)
        self.assertEqual(self.loaded("labels", "Heron", "--as", "svg") & draws, draws)
