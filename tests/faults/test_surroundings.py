# SPDX-License-Identifier: MIT
"""Streams, locales, clocks, memory and files that are not as usual: a clear message or the usual answer, never a crash."""
import errno
import fcntl
import os
import resource
import shutil
import signal
import subprocess
import time

from faults import Faults
from support import FINE, HERON, PROGRAM, ROOT, TERN, TROUBLE, WRONG_CALL, Workspace

MiB = 1 << 20


def limited(**limits):
    def apply():
        for name, value in limits.items():
            resource.setrlimit(getattr(resource, f"RLIMIT_{name}"), (value, value))
    return apply


class Files(Faults):
    def call(self, words, name, about):
        calls = self.calls(words)
        self.fill()
        return next(at for at, (call, of) in enumerate(calls, 1) if call == name and of == about)

    def test_a_file_that_vanishes_before_it_is_read(self):
        done = self.run_faulty(["check"], self.call(["check"], "open", "tern.scruple"), errno.ENOENT)
        self.assertEqual((done.returncode, done.stdout), (TROUBLE, b""))
        self.assertEqual(done.stderr, b"scruple: tern.scruple cannot be read: No such file or directory\n")

    def test_a_log_that_vanishes_before_it_is_held(self):
        words = self.words("mixed")
        opened = [at for at, call in enumerate(self.calls(words), 1) if call == ["open", "log.scruple"]]
        for at in opened:
            self.fill()
            done = self.run_faulty(words, at, errno.ENOENT)
            self.assertEqual((done.returncode, done.stdout), (TROUBLE, b""))
            self.assertRegex(done.stderr, rb"^scruple: log\.scruple cannot be (read|held for writing): No such file")


class Rights(Workspace):
    def as_nobody(self, *words):
        program = self.folder.parent / f"{self.folder.name}-program"
        shutil.copy(PROGRAM, program)
        self.addCleanup(program.unlink, missing_ok=True)
        program.chmod(0o755)
        return self.run_scruple(*words, program=program, user=65534 if os.geteuid() == 0 else None)

    def test_files_and_folders_that_may_not_be_read(self):
        self.folder.chmod(0o755)
        self.put("tern.scruple", TERN).chmod(0)
        done = self.as_nobody("check")
        self.assertEqual((done.returncode, done.stderr),
                         (TROUBLE, b"scruple: tern.scruple cannot be read: Permission denied\n"))
        (self.folder / "tern.scruple").chmod(0o644)
        self.put("closed/x.scruple", TERN)
        (self.folder / "closed").chmod(0)
        self.addCleanup((self.folder / "closed").chmod, 0o755)
        done = self.as_nobody("check")
        self.assertEqual((done.returncode, done.stderr),
                         (TROUBLE, b"scruple: the folder closed cannot be read: Permission denied\n"))

    def test_a_log_in_a_folder_that_may_not_be_written(self):
        log = "log\n    2026-11-02 received   sodium sulfite (anhydrous) 500 g\n"
        self.folder.chmod(0o755)
        self.put("tern.scruple", TERN)
        self.put("log.scruple", log).chmod(0o666)
        self.folder.chmod(0o555)
        self.addCleanup(self.folder.chmod, 0o755)
        done = self.as_nobody("mixed", "Tern", "1l")
        self.assertEqual((done.returncode, done.stderr),
                         (TROUBLE, b"scruple: log.scruple cannot be written: Permission denied\n"))
        self.assertEqual(self.text("log.scruple"), log)


class Disk(Workspace):
    def test_a_disk_that_is_full(self):
        self.put("tern.scruple", TERN)
        disk = self.folder / "disk"
        disk.mkdir()
        if subprocess.run(["mount", "-t", "tmpfs", "-o", "size=64k", "tmpfs", disk], capture_output=True, check=False).returncode:
            self.skipTest("nothing may be mounted here; calls that give the same error are in test_errors.py")
        self.addCleanup(subprocess.run, ["umount", disk], check=True)
        self.put("disk/card.pdf", "old")
        for room in (0, 4096, 12288):
            self.put("disk/rest", b"x" * (56 * 1024 - room))
            message = self.refused("card", "Tern", "--as", "pdf", "--out", "disk/card.pdf", status=TROUBLE)
            self.assertEqual(message, "scruple: disk/card.pdf cannot be written: No space left on device\n")
            self.assertEqual((disk / "card.pdf").read_text(), "old")
            self.assertEqual(sorted(path.name for path in disk.iterdir()), ["card.pdf", "rest"])


class Streams(Workspace):
    def setUp(self):
        super().setUp()
        self.put("heron.scruple", HERON)

    def test_a_pipe_that_does_not_wait_gets_all_of_it(self):
        wanted = self.run_scruple("card", "Heron", "--as", "svg").stdout
        self.assertGreater(len(wanted), 70_000)  # more than a pipe holds
        ours, theirs = os.pipe()
        fcntl.fcntl(theirs, fcntl.F_SETFL, os.O_NONBLOCK)
        running = subprocess.Popen([PROGRAM, "card", "Heron", "--as", "svg"], cwd=self.folder, stdout=theirs)
        os.close(theirs)
        time.sleep(0.2)
        with os.fdopen(ours, "rb") as pipe:
            self.assertEqual(pipe.read(), wanted)
        self.assertEqual(running.wait(), FINE)

    def test_an_interrupt_ends_it_by_that_signal(self):
        # It waits for a log that somebody else holds.
        self.put("log.scruple", "log\n    2026-11-02 received   hydroquinone 500 g\n")
        with open(self.folder / "log.scruple", "rb") as file:
            fcntl.flock(file, fcntl.LOCK_EX)
            for how in (signal.SIGINT, signal.SIGTERM, signal.SIGHUP):
                running = subprocess.Popen([PROGRAM, "mixed", "Heron", "part", "A", "1l"], cwd=self.folder, stderr=subprocess.PIPE)
                time.sleep(0.3)
                self.assertIsNone(running.poll())
                running.send_signal(how)
                self.assertEqual((running.communicate(timeout=60)[1], running.returncode), (b"", -how))
        self.assertEqual(self.names(), ["heron.scruple", "log.scruple"])


class Locales(Workspace):
    def setUp(self):
        super().setUp()
        self.put("heron.scruple", HERON + TERN)

    def german(self):
        """A locale with a decimal comma, made for this test where the system has none."""
        (self.folder / "locales").mkdir()
        subprocess.run(["localedef", "-i", "de_DE", "-f", "UTF-8", self.folder / "locales/de_DE.UTF-8"], capture_output=True, check=False)
        environment = {"PATH": os.environ["PATH"], "LOCPATH": str(self.folder / "locales"), "LC_ALL": "de_DE.UTF-8"}
        other = subprocess.run(["/usr/bin/printf", "%.1f", "0,5"], env=environment, capture_output=True, check=True)
        self.assertEqual(other.stdout, b"0,5")  # it holds for other programs
        return environment

    def test_a_decimal_comma_comes_nowhere(self):
        environment = self.german()
        for words in (["card", "Heron", "part", "A", "--make", "0.33l"], ["card", "Heron", "--as", "json"], ["card", "Tern", "--as", "html"],
                      ["card", "Tern", "--as", "pdf"], ["card", "Tern", "--as", "svg"], ["labels", "Heron", "--as", "svg", "--label", "98x68.5"],
                      ["contents", "Heron"], ["react", "NaOH + HCl -> NaCl + H2O", "--with", "2.5 g sodium hydroxide"], ["chemical", "metol"]):
            plain, there = (self.run_scruple(*words, env=env) for env in ({"PATH": os.environ["PATH"]}, environment))
            self.assertEqual((there.returncode, there.stderr), (plain.returncode, plain.stderr), words)
            self.assertEqual(there.stdout, plain.stdout, words)

    def test_no_place_and_no_zone(self):
        self.put("log.scruple", "log\n    2026-11-02 received   sodium sulfite (anhydrous) 5 kg\n")
        for zone in (None, "", "UTC", ":/nowhere", "../../../etc/passwd", "X" * 4000):
            environment = {} if zone is None else {"TZ": zone}
            done = self.run_scruple("mixed", "Tern", "1l", env=environment)
            self.assertEqual((done.returncode, done.stderr), (FINE, b""), zone)
        days = {line.split()[0] for line in self.text("log.scruple").splitlines() if "mixed" in line}
        self.assertLessEqual(days, {time.strftime("%Y-%m-%d", time.gmtime(time.time() - n)) for n in (0, 600)})

    def test_the_day_is_that_of_the_zone(self):
        self.put("log.scruple", "log\n    2026-11-02 received   sodium sulfite (anhydrous) 5 kg\n")
        for zone, hours in (("XXX-14", 14), ("XXX+12", -12)):  # POSIX has the sign the other way round
            self.scruple("mixed", "Tern", "1l", env={"TZ": zone})
            expected = {time.strftime("%Y-%m-%d", time.gmtime(time.time() + hours * 3600 - n)) for n in (0, 600)}
            self.assertIn(self.text("log.scruple").splitlines()[-1].split()[0], expected)


class Clock(Workspace):
    def test_a_line_of_the_log_that_lies_in_the_future(self):
        self.put("tern.scruple", TERN)
        self.put("log.scruple", "log\n    2026-11-02 received   sodium sulfite (anhydrous) 5 kg\n    9999-12-31 mixed      Tern 1 l\n")
        self.assertNotIn("9999-12-31", self.scruple("mixed", "Tern", "1l", "--on", "2026-12-03"))
        self.assertEqual(len(self.json("shelf", "--on", "2026-12-04")["solutions"][0]["batches"]), 1)
        self.assertEqual(len(self.json("shelf")["solutions"][0]["batches"]), 2)
        (warning,) = self.json("mixed", "Tern", "1l")["warnings"]
        self.assertRegex(warning, r"a line of 9999-12-31, and by this machine's clock today is \d{4}-\d\d-\d\d; .*`--on`")


class Memory(Workspace):
    def test_the_demo_is_checked_in_64_mib(self):
        wanted = self.scruple("check", "--in", str(ROOT / "recipes"))
        self.assertEqual(self.scruple("check", "--in", str(ROOT / "recipes"), preexec_fn=limited(AS=64 * MiB)), wanted)

    def test_where_it_does_not_suffice_that_is_said(self):
        self.put("long.scruple", TERN + "recipe Gull\n" + "    metol   5 g\n" * 900_000)
        before = self.names()
        done = self.run_scruple("check", "--out", "out", preexec_fn=limited(AS=64 * MiB))
        self.assertEqual((done.returncode, done.stdout, done.stderr),
                         (TROUBLE, b"", b"scruple: there is not enough memory for this\n"))
        self.assertEqual(self.names(), before)

    def test_a_small_stack(self):
        # What goes deepest: brackets, an evening of many steps, and sheets.
        nested = "(" * 16 + "H" + ")" * 16
        long_evening = TERN.replace("    water ", "    capacity   10 films 135 per 1 l\n    water ", 1).replace(
            "stir until clear", "wait 1900 min, stirring every 2 min")
        self.put("a.scruple", long_evening + f"chemical salt\n    form crystals {nested}Cl\n" +
                 "process p\n    Tern   5 min\nplan Month\n    2026-12-01   4 films 135 through p\n")
        for words in (["check"], ["evening", "2026-12-01"], ["card", "Tern", "--as", "pdf"], ["calendar"], ["shopping"]):
            self.assertEqual(self.run_scruple(*words, preexec_fn=limited(STACK=MiB)).returncode, FINE, words)
            message = self.refused(*words, status=TROUBLE, preexec_fn=limited(STACK=MiB - 1024))
            self.assertEqual(message, "scruple: the stack is limited to less than 1024 KiB; `ulimit -s 1024` is enough\n")

    def test_no_room_for_another_thread(self):
        self.put("heron.scruple", HERON + TERN)
        for n in range(20):
            self.put(f"{n}.scruple", TERN.replace("Tern", f"Tern {n}"))
        done = self.run_scruple("check", user=65533 if os.geteuid() == 0 else None, program=self.program(), preexec_fn=limited(NPROC=1))
        self.assertEqual((done.returncode, done.stderr), (FINE, b""))

    def program(self):
        self.folder.chmod(0o755)
        program = self.folder.parent / f"{self.folder.name}-program"
        shutil.copy(PROGRAM, program)
        self.addCleanup(program.unlink, missing_ok=True)
        program.chmod(0o755)
        return program


class Calls(Workspace):
    def test_a_program_without_its_name_or_with_thousands_of_words(self):
        done = subprocess.run([PROGRAM], executable=PROGRAM, capture_output=True, check=False)
        self.assertEqual(done.returncode, WRONG_CALL)
        self.refused("card", *["x"] * 20_000)
