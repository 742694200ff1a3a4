# SPDX-License-Identifier: MIT
"""Files that no careful person would write. None may crash the program, hang it, or leave half a file behind."""
import os
import random

from support import FAULTS, FAULTY, FINE, TERN, TROUBLE, Workspace

LIMIT = 16 << 20


class Files(Workspace):
    def kinds(self):
        return [d["kind"] for d in self.json("check", status=FAULTS)]

    def test_an_empty_file_and_one_of_blank_lines(self):
        self.put("a.scruple", "")
        self.put("b.scruple", "\n\r\n \t\n# note\r")
        self.put("c.scruple", "\ufeff")
        self.assertEqual(self.json("check"), [])

    def test_nul_bytes_and_other_encodings(self):
        self.put("a.scruple", b"recipe Gull\n\0")
        self.put("b.scruple", "recipe Möwe\n".encode("latin-1"))
        self.put("c.scruple", TERN.encode("utf-16"))
        self.put("d.scruple", b"\xed\xa0\x80")  # a surrogate
        self.put("e.scruple", os.urandom(1000) + b"\xff")
        self.assertEqual(self.kinds(), ["not-text"] * 5)
        self.assertIn("a.scruple:2.1:", self.scruple("check", status=FAULTS))

    def test_byte_order_mark_and_foreign_line_ends(self):
        self.put("a.scruple", "\ufeff" + FAULTY.replace("\n", "\r\n"))
        (fault,) = self.json("check", status=FAULTS)
        self.assertEqual((fault["kind"], fault["line"], fault["column"]), ("ambiguous-unit", 3, 39))
        self.put("a.scruple", "\ufeff" + TERN.replace("\n", "\r"))
        self.scruple("card", "Tern")

    def test_a_file_past_the_limit_is_refused_unread(self):
        path = self.put("large.scruple", "")
        os.truncate(path, 100_000_000)
        self.assertEqual(self.kinds(), ["text-too-large"])
        message = self.scruple("check", status=FAULTS)
        self.assertIn("100000000 bytes", message)
        self.assertIn(str(LIMIT), message)

    def test_a_file_just_below_the_limit_is_read(self):
        line = "# a line of a very long notebook, with nothing in it\n"
        self.put("long.scruple", TERN + line * ((LIMIT - len(TERN)) // len(line)))
        self.assertEqual(self.json("check"), [])

    def test_a_line_of_ten_megabytes(self):
        for line in ("x" * 10_000_000, "metol " * 1_600_000, "# " + "x" * 10_000_000):
            self.put("long.scruple", TERN + line + "\n")
            done = self.run_scruple("check")
            self.assertEqual(done.returncode, FINE if line[0] == "#" else FAULTS)
            self.assertLess(len(done.stdout), 10_000)

    def test_ten_thousand_faults_are_capped_and_said(self):
        self.put("a.scruple", "recipe Gull\n" + "    metol 5 xyz\n" * 10_000)
        out = self.scruple("check", status=FAULTS)
        self.assertIn("100 of 100", out)
        self.assertLess(len(out), 50_000)
        self.assertGreaterEqual(len(self.json("check", status=FAULTS)), 10_000)

    def test_a_recipe_that_contains_itself(self):
        self.put("a.scruple", "recipe Gull\n    water 500 ml\n    Gull 100 ml\n    water to make 1 l\n")
        self.assertIn("contains-itself", self.kinds())

    def test_a_folder_that_links_to_itself(self):
        self.put("deep/tern.scruple", TERN)
        (self.folder / "deep/again").symlink_to(self.folder)
        (self.folder / "self").symlink_to("self")
        self.assertIn("1 recipe in 1 file", self.scruple("check"))
        (self.folder / "self.scruple").symlink_to("self.scruple")
        self.assertIn("self.scruple", self.refused("check", status=TROUBLE))

    def test_files_that_are_no_files(self):
        os.mkfifo(self.folder / "pipe.scruple")
        self.assertIn("not a plain file", self.refused("check", status=TROUBLE))

    def test_names_with_odd_signs(self):
        for n, name in enumerate((b"a b.scruple", b"\xff.scruple", "ü\u202e.scruple".encode(), b"-x.scruple", b"a\nb.scruple")):
            with open(os.fsencode(self.folder) + b"/" + name, "wb") as file:
                file.write(FAULTY.replace("Tern", f"Tern {n}").encode())
        self.assertEqual(self.kinds(), ["ambiguous-unit"] * 5)
        out = self.scruple("check", status=FAULTS)
        self.assertNotIn("\u202e", out)

    def test_terminal_escapes_in_a_file_come_out_harmless(self):
        self.put("a.scruple", "recipe Gull\n    \x1b[2Jmetol 5\n")
        self.assertNotIn("\x1b", self.scruple("check", status=FAULTS))

    def test_torn_and_scrambled_recipes(self):
        dice = random.Random(20261203)
        text = TERN.encode()
        for _ in range(60):
            torn = bytearray(text)
            for _ in range(dice.randrange(1, 12)):
                at = dice.randrange(len(torn))
                torn[at : at + dice.randrange(3)] = bytes(dice.randrange(256) for _ in range(dice.randrange(3)))
            self.put("tern.scruple", bytes(torn))
            self.assertIn(self.run_scruple("check").returncode, (FINE, FAULTS), bytes(torn))


class Surroundings(Workspace):
    def test_no_environment_at_all(self):
        self.put("tern.scruple", TERN)
        self.assertIn("°C", self.scruple("card", "Tern", env={}))
        self.assertEqual(self.scruple("card", "Tern", env={}), self.scruple("card", "Tern", env={"LC_ALL": "de_DE.UTF-8"}))

    def test_arguments_that_are_no_text(self):
        self.put("tern.scruple", TERN)
        for words in ([b"card", b"\xff\xfe"], [b"\xff"], [b"help", b"\xff"], [b"chemical", b"\xff"], [b"card", b"Tern", b"--\xff"],
                      [b"card", b"x" * 100_000], [b"card", b"Tern", b"--make", b"9" * 100_000], [b""], [b"card", b""]):
            self.refused(*words)
