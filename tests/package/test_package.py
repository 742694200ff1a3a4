# SPDX-License-Identifier: MIT
"""The Debian package, made by CPack and laid out in a bare root by dpkg: the program runs from there, draws, and brings its
page and completions. The bill of materials is held to what the dynamic loader says is linked (readelf)."""
import json
import os
import pathlib
import re
import subprocess
import tempfile
import time
import unittest

from support import HERON

BUILD = pathlib.Path(os.environ["SCRUPLE"]).parent.parent


def said(*words):
    return subprocess.run(words, check=True, capture_output=True, text=True).stdout


class Package(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.place = tempfile.TemporaryDirectory()
        folder = pathlib.Path(cls.place.name)
        said("cpack", "--config", str(BUILD / "CPackConfig.cmake"), "-B", str(folder / "made"))
        [cls.package] = (folder / "made").glob("*.deb")
        cls.root = folder / "root"
        said("dpkg-deb", "--extract", str(cls.package), str(cls.root))
        cls.work = folder / "work"
        cls.work.mkdir()
        (cls.work / "heron.scruple").write_text(HERON)

    @classmethod
    def tearDownClass(cls):
        cls.place.cleanup()

    def scruple(self, *words):
        done = subprocess.run([self.root / "usr/bin/scruple", *words], cwd=self.work, capture_output=True)
        self.assertEqual(done.returncode, 0, done.stderr)
        return done.stdout

    def test_the_program_runs_and_draws_from_a_bare_root(self):
        self.assertIn(b"nothing to say against", self.scruple("check"))
        self.assertTrue(self.scruple("card", "Heron", "part", "A", "--as", "pdf").startswith(b"%PDF-"))

    def test_its_page_and_completions_stand_where_they_are_looked_for(self):
        share = self.root / "usr/share"
        for path in ("man/man1/scruple.1", "bash-completion/completions/scruple", "zsh/site-functions/_scruple",
                     "fish/vendor_completions.d/scruple.fish", "doc/scruple/materials.spdx.json"):
            self.assertTrue((share / path).is_file(), path)

    def test_packed_again_later_it_is_the_same(self):
        packed = []
        for _ in range(2):
            with tempfile.TemporaryDirectory() as folder:
                subprocess.run(["cpack", "--config", str(BUILD / "CPackConfig.cmake"), "-B", folder], check=True,
                               env={**os.environ, "SOURCE_DATE_EPOCH": "1764000000"}, stdout=subprocess.DEVNULL)
                packed.append(next(pathlib.Path(folder).glob("*.deb")).read_bytes())
            time.sleep(1.1)
        self.assertTrue(packed[0] == packed[1])

    def test_it_says_what_it_needs(self):
        needs = said("dpkg-deb", "--field", str(self.package), "Depends")
        for name in ("libc6", "libpango-1.0-0", "libcairo2", "libqrencode4"):
            self.assertIn(name, needs)

    def test_all_that_is_linked_is_in_the_bill_of_materials(self):
        bill = json.loads((self.root / "usr/share/doc/scruple/materials.spdx.json").read_text())
        self.assertEqual(bill["spdxVersion"], "SPDX-2.3")
        known = {it["SPDXID"]: it for it in bill["packages"]}
        for it in bill["packages"]:
            self.assertRegex(it["versionInfo"], r"^[0-9]+\.[0-9]", it["name"])
        told = {known[it["relatedSpdxElement"]]["name"] for it in bill["relationships"] if it["relationshipType"] == "DYNAMIC_LINK"}
        [module] = self.root.glob("usr/lib/**/scruple-drawing.so")
        linked = set()
        for path in (module, self.root / "usr/bin/scruple"):
            linked |= set(re.findall(r"\(NEEDED\).*\[lib([a-z0-9_]+)", said("readelf", "--dynamic", str(path))))
        # Of the system: the C library, and the unwinder of GCC. Pango comes in three files, with GLib, which it brings.
        of_the_system = {"c", "m", "gcc_s", "dl", "pthread", "glib", "gobject", "harfbuzz", "fontconfig"}
        names = {"pangocairo": "pango", "pangoft2": "pango"}
        self.assertEqual({names.get(it, it) for it in linked} - of_the_system, told)


if __name__ == "__main__":
    unittest.main()
