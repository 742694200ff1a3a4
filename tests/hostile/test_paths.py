# SPDX-License-Identifier: MIT
"""Names that would lead out of a folder, or to something that is no file; and links where output goes."""
import os

from hostile import PATHS
from support import FINE, PROGRAM, TERN, TROUBLE, WRONG_CALL, Workspace

NAMES = [*PATHS, "../../../x", "a/b", "/", "~", "x" * 1000, "index", "binder", "index.html", "CON.html",
         "a\\b", "%2e%2e%2fx", "..%2fx", "a:b", "ſ", "ı", "İ", "é", "e\u0301"]


class Names(Workspace):
    def test_a_binder_keeps_to_its_folder_whatever_recipes_are_called(self):
        here = self.put("a/b/here/in/a.scruple", "".join(TERN.replace("Tern", f'"{name}"') for name in NAMES)).parents[1]
        self.scruple("binder", "--in", "in", "--out", "out", cwd=here)
        outside = [str(path.relative_to(self.folder)) for path in self.folder.rglob("*") if here / "out" not in path.parents]
        self.assertEqual(sorted(outside), ["a", "a/b", "a/b/here", "a/b/here/in", "a/b/here/in/a.scruple", "a/b/here/out"])
        written = sorted(path.name for path in (here / "out").iterdir())
        self.assertEqual(len(written), len(NAMES) + 2)
        for name in written:
            self.assertRegex(name, r"^[a-z0-9-]{1,200}\.(html|pdf)$")
            # Names of devices on another system, where the folder may be copied to.
            self.assertNotIn(name.split(".")[0], ("con", "nul", "prn", "aux", "com1", "lpt1"))

    def test_a_recipe_says_nothing_about_where_output_goes(self):
        for name in NAMES:
            self.put("a.scruple", TERN.replace("Tern", f'"{name}"'))
            done = self.run_scruple("card", name, "--as", "html")
            self.assertEqual(done.returncode, FINE, name)
            self.assertEqual(self.names(), ["a.scruple"])


class Places(Workspace):
    def setUp(self):
        super().setUp()
        self.put("tern.scruple", TERN)

    def test_places_that_are_no_files(self):
        os.mkfifo(self.folder / "pipe")
        for place in ("/dev/null", "/dev/tty", "/dev/stdout", "/proc/self/mem", "pipe", "/", ".", "..", "./", "tern.scruple/",
                      "nowhere/", "nowhere/x", "x" * 256, "a/" * 3000 + "x", "/proc/version"):
            done = self.run_scruple("card", "Tern", f"--out={place}")
            self.assertEqual((done.returncode, done.stdout), (TROUBLE, b""), place)
            self.assertIn(b"cannot be written", done.stderr)
        self.assertEqual(self.names(), ["pipe", "tern.scruple"])
        self.refused("card", "Tern", "--out=")

    def test_a_name_as_long_as_there_may_be(self):
        self.scruple("card", "Tern", "--out", "x" * 255)
        self.assertEqual(self.names(), ["tern.scruple", "x" * 255])

    def test_the_caller_may_name_any_place(self):
        (self.folder / "in").mkdir()
        self.scruple("card", "Tern", "--in", "..", "--out", "../card.txt", cwd=self.folder / "in")
        self.scruple("card", "Tern", "--out", str(self.folder / "whole.txt"))
        self.assertEqual(self.names(), ["card.txt", "in", "tern.scruple", "whole.txt"])

    def test_links_where_output_goes(self):
        self.put("elsewhere/old.txt", "old")
        (self.folder / "link.txt").symlink_to("elsewhere/old.txt")
        (self.folder / "nowhere.txt").symlink_to("elsewhere/none.txt")
        (self.folder / "round.txt").symlink_to("round.txt")
        (self.folder / "folder").symlink_to("elsewhere")
        self.scruple("card", "Tern", "--out", "link.txt")
        self.assertTrue((self.folder / "link.txt").is_symlink())
        self.assertIn("Tern", self.text("elsewhere/old.txt"))
        self.scruple("card", "Tern", "--out", "folder/new.txt")
        for name in ("nowhere.txt", "round.txt", "folder"):
            self.assertIn("cannot be written", self.refused("card", "Tern", "--out", name, status=TROUBLE))
        self.assertEqual(sorted(os.listdir(self.folder / "elsewhere")), ["new.txt", "old.txt"])

    def test_a_log_that_is_a_link_stays_one(self):
        self.put("elsewhere/log.txt", "log\n    2026-11-02 received   sodium sulfite (anhydrous) 500 g\n")
        (self.folder / "log.scruple").symlink_to("elsewhere/log.txt")
        self.scruple("mixed", "Tern", "1l", "--on", "2026-12-03")
        self.assertTrue((self.folder / "log.scruple").is_symlink())
        self.assertIn("mixed", self.text("elsewhere/log.txt"))

    def test_links_in_the_workspace(self):
        for name, to in (("round", "."), ("up", ".."), ("a", "b"), ("b", "a"), ("root", "/")):
            (self.folder / name).symlink_to(to)
        self.put("deep/deeper/gull.scruple", TERN.replace("Tern", "Gull"))
        (self.folder / "deep/deeper/back").symlink_to("../..")
        self.assertIn("2 recipes in 2 files", self.scruple("check"))

    def test_a_pipe_or_a_device_as_a_workspace(self):
        for place in ("/dev/null", "/dev/zero", "tern.scruple", "nowhere", "/proc/self/mem"):
            self.refused("check", "--in", place, status=TROUBLE)
        (self.folder / "zero.scruple").symlink_to("/dev/zero")
        self.assertIn("not a plain file", self.refused("check", status=TROUBLE))

    def test_a_name_with_nothing_in_it(self):
        # A NUL byte ends an argument, so that none can hold one; the shortest names are left.
        for words in (["--in", ""], ["--in="], ["--log", ""]):
            self.assertIn(self.run_scruple("shelf", *words, program=PROGRAM).returncode, (TROUBLE, WRONG_CALL))
