# SPDX-License-Identifier: MIT
"""The manual page and the completions know every command and every option, as the program's own help lists them."""
import pathlib
import re
import shutil
import subprocess
import unittest

from support import HERON, PROGRAM, ROOT, TERN, Workspace

MANUAL = ROOT / "docs/man/scruple.1"
COMPLETIONS = ROOT / "docs/completions"


class Listing(Workspace):
    def commands(self):
        return re.findall(r"(?m)^  ([a-z]+(?:-[a-z]+)*) {2,}", self.scruple("--help"))

    def options(self, command):
        return set(re.findall(r"(?m)^  (--[a-z-]+)", self.scruple("help", command)))

    def everything(self):
        commands = self.commands()
        self.assertEqual(len(commands), 21)
        return {command: self.options(command) for command in commands}


class Papers(Listing):
    def test_the_manual_page_has_them_all(self):
        page = MANUAL.read_text(encoding="utf-8")
        for command, options in self.everything().items():
            self.assertRegex(page, rf"(?m)^\.It Cm {command}\b")
            for option in options:
                escaped = option[1:].replace("-", r"\-")
                self.assertIn(f".It Fl {escaped}", page)

    def test_the_manual_page_is_well_formed(self):
        mandoc = shutil.which("mandoc")
        if mandoc is None:
            self.skipTest("there is no mandoc here")
        done = subprocess.run([mandoc, "-Tlint", "-Wwarning", MANUAL], capture_output=True, text=True, check=False)
        self.assertEqual(done.stdout + done.stderr, "")

    def test_the_manual_page_names_every_exit_status(self):
        page = MANUAL.read_text(encoding="utf-8").split(".Sh EXIT STATUS")[1].split(".Sh")[0]
        self.assertEqual(re.findall(r"(?m)^\.It (\d)$", page), ["0", "1", "2", "3"])

    def test_zsh_and_fish_have_them_all(self):
        zsh = (COMPLETIONS / "_scruple").read_text(encoding="utf-8")
        fish = (COMPLETIONS / "scruple.fish").read_text(encoding="utf-8")
        for command, options in self.everything().items():
            self.assertIn(f"'{command}:", zsh)
            self.assertIn(f"-a {command} ", fish)
            for option in options:
                self.assertRegex(zsh, rf"'\*?(?:\(.*\))?{option}\[")
                self.assertRegex(fish, rf"(?m)^complete -c scruple .*-l {option[2:]} ")

    def test_zsh_and_fish_read_their_files(self):
        for shell, name in {"zsh": "_scruple", "fish": "scruple.fish", "bash": "scruple.bash"}.items():
            if shutil.which(shell):
                subprocess.run([shell, "-n", COMPLETIONS / name], check=True)


@unittest.skipUnless(shutil.which("bash"), "there is no bash here")
class Bash(Listing):
    def complete(self, *words):
        script = f"""
            source {COMPLETIONS / "scruple.bash"}
            COMP_WORDS=("$@") COMP_CWORD=$(($# - 1))
            _scruple
            printf '%s\\n' "${{COMPREPLY[@]}}"
        """
        done = subprocess.run(["bash", "-c", script, "bash", PROGRAM, *words], cwd=self.folder, capture_output=True,
                              text=True, check=True)
        return [line for line in done.stdout.splitlines() if line]

    def test_it_completes_commands_and_options(self):
        self.assertEqual(sorted(self.complete("")), sorted([*self.commands(), "--help", "--version"]))
        for command, options in self.everything().items():
            self.assertEqual(set(self.complete(command, "--")), options)

    def test_it_completes_names_word_by_word(self):
        self.put("a.scruple", HERON + TERN + "plan December\n")
        self.assertEqual(set(self.complete("card", "")), {"Heron", "Tern"})
        self.assertEqual(set(self.complete("card", "heron", "")), {"part", "working"})
        self.assertEqual(set(self.complete("scaled", "Heron", "part", "")), {"A", "B"})
        self.assertEqual(self.complete("shopping", "D"), ["December"])
        self.assertEqual(self.complete("tidy", "a"), ["a.scruple"])
        self.assertEqual(set(self.complete("card", "Tern", "--as", "")), {"text", "html", "json"})


if shutil.which("fish"):

    class Fish(Workspace):
        def complete(self, line):
            script = f'set PATH {pathlib.Path(PROGRAM).parent} $PATH; source {COMPLETIONS / "scruple.fish"}; complete -C "{line}"'
            done = subprocess.run(["fish", "--no-config", "-c", script], cwd=self.folder, capture_output=True, text=True,
                                  check=True)
            return {entry.split("\t")[0] for entry in done.stdout.splitlines()}

        def test_it_completes_commands_names_and_options(self):
            self.put("a.scruple", HERON + TERN)
            self.assertIn("card", self.complete("scruple "))
            self.assertIn("Heron part A", self.complete("scruple card "))
            self.assertIn("--films", self.complete("scruple card --f"))
            self.assertNotIn("--films", self.complete("scruple check --f"))
