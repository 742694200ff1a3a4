# SPDX-License-Identifier: MIT
"""Whichever call to the system fails: a clear message, the right exit status, and each file as it was or as it is to be."""
import errno

from faults import CHANGES, Faults
from support import FINE, TROUBLE

# What each call may give (the manual page of each, section 2, under ERRORS).
ERRORS = {
    "open": [errno.EMFILE, errno.EACCES],
    "mkostemp": [errno.ENOSPC, errno.EROFS],
    "write": [errno.ENOSPC, errno.EIO],
    "read": [errno.EIO],
    "fstat": [errno.EIO],
    "stat": [errno.EACCES],
    "fchmod": [errno.EPERM],
    "fsync": [errno.EIO],
    "flock": [errno.ENOLCK],
    "rename": [errno.ENOSPC],
    "unlink": [errno.EIO],
    "mkdir": [errno.ENOSPC],
    "close": [errno.EIO],
    "readdir": [errno.EIO],
}


class Errors(Faults):
    def each_error(self, command):
        """After each: what was called, which error, how the program ended; and holds what must always hold."""
        self.fill()
        before = self.everything()
        words = self.words(command)
        # A binder's fonts are read by other libraries, which go on without those that they cannot have.
        writing = command == "binder"
        calls = self.calls(words, writing)
        after = self.everything()
        for at, (call, about) in enumerate(calls, 1):
            for error in ERRORS[call]:
                self.set_back(before)
                done = self.run_faulty(words, at, error, writing=writing)
                where = f"{command}: call {at}, {call} {about}, {errno.errorcode[error]}: {done.stderr}"
                self.assertIn(done.returncode, (FINE, TROUBLE), where)
                self.assertEqual(done.returncode == TROUBLE, done.stderr != b"", where)
                now = self.everything()
                if done.returncode == FINE:
                    self.assertEqual(now, after, where)
                for name in before.keys() | after.keys():
                    self.assertIn(now.get(name), (before.get(name), after.get(name)), where)
                yield call, about, error, done

    def test_each_error_at_each_call(self):
        for command in ("mixed", "tidy", "binder"):
            tried = 0
            for call, about, error, done in self.each_error(command):
                tried += 1
                if call in CHANGES | {"fsync"} - {"unlink"} and about not in ("1", "2") and done.returncode == TROUBLE:
                    self.assertRegex(done.stderr.decode(), r"^scruple: .* cannot be (written|made): |^.* is left as it is: ")
                if done.returncode == TROUBLE and call != "unlink":
                    self.assertEqual(self.drafts(), [])
            self.assertGreater(tried, 20)

    def test_a_full_disk_is_said_by_its_name(self):
        calls = self.calls(self.words("mixed"))
        writes = [at for at, (call, about) in enumerate(calls, 1) if call == "write" and about not in ("1", "2")]
        self.assertEqual(len(writes), 1)
        self.fill()
        done = self.run_faulty(self.words("mixed"), writes[0], errno.ENOSPC)
        self.assertEqual(done.stderr, b"scruple: log.scruple cannot be written: No space left on device\n")

    def test_a_write_that_takes_only_half_goes_on(self):
        for command in ("mixed", "card as pdf"):
            words = self.words(command)
            self.fill()
            calls = self.calls(words)
            after = self.everything()
            for at, (call, _) in enumerate(calls, 1):
                if call == "write":
                    self.fill()
                    for how in ("short", errno.EINTR):
                        self.fill()
                        done = self.run_faulty(words, at, how)
                        self.assertEqual((done.returncode, done.stderr), (FINE, b""))
                        self.assertEqual(self.everything(), after)

    def test_what_is_done_already_is_said_where_the_rest_cannot_be(self):
        calls = self.calls(self.words("mixed"))
        to_the_reader = [at for at, call in enumerate(calls, 1) if call == ["write", "1"]]
        self.assertEqual(len(to_the_reader), 1)
        self.fill()
        done = self.run_faulty(self.words("mixed"), to_the_reader[0], errno.ENOSPC)
        self.assertEqual(done.returncode, TROUBLE)
        self.assertIn("Tern 1 l", self.text("log.scruple").splitlines()[-1])
        self.assertRegex(done.stderr.decode(), r"^scruple: the line is written: log\.scruple:4; the output cannot be written: No space")
