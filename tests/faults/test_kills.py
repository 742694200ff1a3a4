# SPDX-License-Identifier: MIT
"""Whatever ends the program, at whichever of its calls to the system: each file is as it was, or as it is to be."""
import fcntl
import re
import signal
import subprocess
import time

from faults import TERN, WRITERS, WRITES_NOTHING, Faults
from support import PROGRAM, Workspace


class Kills(Faults):
    def before_and_after(self, command):
        """What is there before, the calls that are made, and what is there after."""
        self.fill()
        before = self.everything()
        calls = self.calls(self.words(command), writing=True)
        return before, calls, self.everything()

    def assert_old_or_new(self, before, after, where):
        now = self.everything()
        for name in before.keys() | after.keys():
            self.assertIn(now.get(name), (before.get(name), after.get(name)), f"{where}: {name}")
        self.assertLessEqual(now.keys(), after.keys(), where)

    def assert_killed_everywhere(self, command):
        before, calls, after = self.before_and_after(command)
        self.assertNotEqual(before, after)
        left = 0
        for at in range(1, len(calls) + 1):
            self.set_back(before)
            done = self.run_faulty(self.words(command), at, "kill", writing=True)
            self.assertEqual(done.returncode, -signal.SIGKILL)
            self.assert_old_or_new(before, after, f"killed at {at}, {calls[at - 1]}")
            left = max(left, len(self.drafts()))
        self.assertEqual(left, 1)  # else no kill came in between, and nothing was tried
        self.set_back(before)
        self.scruple("check")  # which reads no draft
        self.run_faulty(self.words(command))
        self.assertEqual((self.everything(), self.drafts()), (after, []))

    def test_a_kill_at_each_call_leaves_whole_files(self):
        for command in WRITERS:
            with self.subTest(command):
                self.assert_killed_everywhere(command)

    def test_every_command_is_there(self):
        known = {words[0] for words, _ in WRITERS.values()} | WRITES_NOTHING
        self.assertEqual(set(re.findall(r"(?m)^  ([a-z]+(?:-[a-z]+)*) {2,}", self.scruple("--help"))), known)

    def test_an_interrupt_at_each_call_leaves_no_draft_either(self):
        for command in ("mixed", "tidy", "card", "binder"):
            with self.subTest(command):
                before, calls, after = self.before_and_after(command)
                for at in range(1, len(calls) + 1):
                    self.set_back(before)
                    done = self.run_faulty(self.words(command), at, "term", writing=True)
                    self.assertEqual(done.returncode, -signal.SIGTERM)
                    self.assert_old_or_new(before, after, f"ended at {at}, {calls[at - 1]}")
                    self.assertEqual(self.drafts(), [], f"ended at {at}, {calls[at - 1]}")

    def test_a_draft_that_is_being_written_is_left_to_its_writer(self):
        # Somebody else holds it: it must be there after another has written in the same folder.
        draft = self.put(".scruple-draft-abcdef", "half")
        with open(draft, "rb") as file:
            fcntl.flock(file, fcntl.LOCK_EX)
            self.scruple("card", "Tern", "--out", "card.txt")
            self.assertEqual(draft.read_text(), "half")
        self.scruple("card", "Tern", "--out", "card.txt")
        self.assertFalse(draft.exists())

    def test_what_only_looks_like_a_draft_stays(self):
        kept = [".scruple-draft-", ".scruple-draft-abcdefg", ".scruple-draft", "scruple-draft-abcdef", ".card.txt.abcdef"]
        for name in kept:
            self.put(name, "mine")
        (self.folder / ".scruple-draft-folder").mkdir()
        (self.folder / ".scruple-draft-linked").symlink_to("tern.scruple")
        self.scruple("card", "Tern", "--out", "card.txt")
        for name in [*kept, ".scruple-draft-folder", ".scruple-draft-linked", "tern.scruple"]:
            self.assertTrue((self.folder / name).exists(), name)


class AtOnce(Workspace):
    def test_two_who_write_the_same_file(self):
        self.put("tern.scruple", TERN + TERN.replace("Tern", "Gull"))
        whole = {name: self.scruple("card", name, "--as", "html") for name in ("Tern", "Gull")}
        running = [subprocess.Popen([PROGRAM, "card", name, "--as", "html", "--out", "card.html"], cwd=self.folder,
                                    stdout=subprocess.DEVNULL, stderr=subprocess.PIPE) for name in ("Tern", "Gull") * 10]
        seen = set()
        while any(one.poll() is None for one in running):
            if (self.folder / "card.html").exists():
                seen.add(self.text("card.html"))
            time.sleep(0.001)
        for one in running:
            self.assertEqual((one.communicate()[1], one.returncode), (b"", 0))
        self.assertLessEqual(seen | {self.text("card.html")}, set(whole.values()))
        self.assertEqual(self.names(), ["card.html", "tern.scruple"])
