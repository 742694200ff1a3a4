# SPDX-License-Identifier: MIT
"""Reading, checking, laying out, comparing, telling what is wrong; an editor's work."""
import pathlib
import sys

sys.path.insert(0, str(pathlib.Path(__file__).parent))
import growth  # noqa: E402
import workspaces as of  # noqa: E402

FAULTS = (1,)


class Reading(growth.Growth):
    def test_files(self):
        self.grows_little(40, of.files, "check")

    def test_recipes_in_one_file(self):
        self.grows_little(40, of.recipes, "check")
        self.grows_little(100, of.recipes, "tidy")

    def test_recipes_of_each_other(self):
        self.grows_little(40, of.one_into_the_other, "check")

    def test_lines(self):
        self.grows_little(100, of.lines, "check")

    def test_awkward_lines(self):
        self.grows_little(40, of.awkward_lines, "check", statuses=FAULTS)

    def test_chemicals(self):
        self.grows_little(40, of.chemicals, "check")

    def test_mistakes(self):
        for form in ("text", "sarif"):
            self.grows_little(40, of.one_mistake_a_line, "check", "--as", form, statuses=FAULTS)

    def test_comparing(self):
        def two(folder, count):
            for name, more in (("old", 0), ("new", 1)):
                (folder / name).mkdir()
                of.recipes(folder / name, count + more)
        self.grows_little(5, two, "compare", "FOLDER/old", "FOLDER/new", statuses=(0, 1))

    def test_comparing_what_was_renamed(self):
        def two(folder, count):
            for name in ("old", "new"):
                (folder / name).mkdir()
                of.recipes(folder / name, count)
            it = folder / "new" / of.OF_ONE_FILE
            it.write_text(it.read_text(encoding="utf-8").replace("Reed", "Rush"), encoding="utf-8")
        self.grows_little(5, two, "compare", "FOLDER/old", "FOLDER/new", statuses=(0, 1))

    def test_comparing_chains(self):
        def two(folder, count):
            for name, grams in (("old", "3 g"), ("new", "4 g")):
                (folder / name).mkdir()
                of.chain(folder / name, count)
                it = folder / name / of.OF_ONE_FILE
                it.write_text(it.read_text(encoding="utf-8").replace("3 g", grams), encoding="utf-8")
        self.grows_little(50, two, "compare", "FOLDER/old", "FOLDER/new", statuses=(0, 1))

    def test_printed_lines(self):
        self.grows_little(10, of.printed, "settle", "Bittern", statuses=(0, 1))

    def test_editing(self):
        self.grows_little(20, of.edit_of(of.recipes), "language-server")
        self.grows_little(60, of.edit_of(of.lines), "language-server")
        self.grows_little(20, of.one_edit_a_line, "language-server")
