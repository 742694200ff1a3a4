# SPDX-License-Identifier: MIT
"""What is written where, and what happens where it cannot be."""
import os
import pathlib
import resource
import shutil
import signal
import subprocess

from support import FINE, HERON, PROGRAM, TERN, TROUBLE, Workspace


def small_files():
    """No file may grow past 100 bytes: a full disk. The signal is at its default, as a shell leaves it."""
    signal.signal(signal.SIGXFSZ, signal.SIG_DFL)
    resource.setrlimit(resource.RLIMIT_FSIZE, (100, 100))


class Out(Workspace):
    def setUp(self):
        super().setUp()
        self.put("tern.scruple", TERN)

    def test_what_is_printed_is_written(self):
        wanted = self.scruple("card", "Tern", "--as", "html")
        self.assertEqual(self.scruple("card", "Tern", "--as", "html", "--out", "card.html"), "")
        self.assertEqual(self.text("card.html"), wanted)
        self.scruple("card", "Tern", "--as", "json", "--out", "card.html")
        self.assertTrue(self.text("card.html").startswith("{"))
        self.assertEqual(self.names(), ["card.html", "tern.scruple"])

    def test_a_full_disk_leaves_the_old_file(self):
        self.put("card.html", "old")
        message = self.refused("card", "Tern", "--as", "html", "--out", "card.html", status=TROUBLE,
                               preexec_fn=small_files)
        self.assertIn("card.html cannot be written: File too large", message)
        self.assertEqual(self.text("card.html"), "old")
        self.assertEqual(self.names(), ["card.html", "tern.scruple"])

    def test_tidy_on_a_full_disk_leaves_the_recipe(self):
        untidy = TERN + "\n\n\n" + TERN.replace("Tern", "Gull").replace("    ", "  ")
        self.put("tern.scruple", untidy)
        done = self.run_scruple("tidy", preexec_fn=small_files)
        self.assertEqual(done.returncode, TROUBLE)
        self.assertEqual(self.text("tern.scruple"), untidy)
        self.assertEqual(self.names(), ["tern.scruple"])

    def test_a_folder_that_may_not_be_written(self):
        inner = self.put("inner/card.html", "old").parent
        for path in (self.folder, inner):
            path.chmod(0o755)
        inner.chmod(0o555)
        self.addCleanup(inner.chmod, 0o755)
        user = 65534 if os.geteuid() == 0 else None  # nobody: root may write everywhere
        # Where that user may run it: a home folder is closed to others.
        program = pathlib.Path(shutil.copy(PROGRAM, self.folder / "program"))
        program.chmod(0o755)
        message = self.refused("check", "--out", "inner/card.html", status=TROUBLE, user=user, program=program)
        self.assertIn("inner/card.html cannot be written: Permission denied", message)
        self.assertEqual((inner / "card.html").read_text(), "old")

    def test_no_places_for_a_file(self):
        (self.folder / "link").symlink_to("nowhere")
        for place in ("none/card.txt", "/dev/full", ".", "link", "tern.scruple/card.txt"):
            self.assertIn("cannot be written", self.refused("check", f"--out={place}", status=TROUBLE))
        self.assertEqual(self.names(), ["link", "tern.scruple"])

    def test_a_wrong_call_writes_nothing(self):
        self.put("card.txt", "old")
        self.refused("card", "Gull", "--out", "card.txt")
        self.assertEqual(self.text("card.txt"), "old")


class Streams(Workspace):
    def setUp(self):
        super().setUp()
        self.put("heron.scruple", HERON)

    def run_with_output(self, output, *words):
        return subprocess.run([PROGRAM, *words], cwd=self.folder, stdout=output, stderr=subprocess.PIPE, check=False)

    def test_a_full_device_is_trouble(self):
        with open("/dev/full", "wb") as full:
            for words in (["check"], ["card", "Heron"], ["--version"], ["help"]):
                done = self.run_with_output(full, *words)
                self.assertEqual(done.returncode, TROUBLE)
                self.assertIn(b"cannot be written", done.stderr)

    def test_a_reader_that_goes_away_is_no_trouble(self):
        for words in (["chemical", "metol"], ["help"], ["card", "Heron"]):
            read_end, write_end = os.pipe()
            os.close(read_end)
            done = self.run_with_output(write_end, *words)
            os.close(write_end)
            self.assertEqual((done.returncode, done.stderr), (FINE, b""))

    def test_streams_that_were_closed(self):
        shell = f'"$0" card Heron --as html --out card.html <&- >&- 2>&-; echo $? >status; "$0" check >&- 2>err; echo $? >>status'
        subprocess.run(["sh", "-c", shell, PROGRAM], cwd=self.folder, check=True)
        self.assertEqual(self.text("status"), f"{FINE}\n{TROUBLE}\n")
        self.assertTrue(self.text("card.html").endswith("</html>\n"))
        self.assertIn("cannot be written", self.text("err"))

    def test_no_colour_outside_a_terminal(self):
        self.put("faulty.scruple", "recipe Gull\n    metol 5\n")
        self.assertNotIn(b"\x1b", self.run_scruple("check").stdout)

    def test_colour_on_a_terminal_but_not_against_the_wish(self):
        self.put("faulty.scruple", "recipe Gull\n    metol 5\n")
        self.assertIn(b"\x1b[", self.on_terminal({}))
        self.assertNotIn(b"\x1b[", self.on_terminal({"NO_COLOR": "1"}))

    def on_terminal(self, environment):
        ours, theirs = os.openpty()
        subprocess.run([PROGRAM, "check"], cwd=self.folder, stdout=theirs, stderr=theirs, env=environment, check=False)
        os.close(theirs)
        shown = b""
        try:
            while piece := os.read(ours, 65536):
                shown += piece
        except OSError:  # how a terminal says that the other end has gone
            pass
        os.close(ours)
        return shown
