# SPDX-License-Identifier: MIT
"""What recipes, files and branches are called is completed by the shells and never run by them."""
import os
import pathlib
import shutil
import subprocess
import unittest

from hostile import SHELLS
from support import PROGRAM, ROOT, TERN, Workspace

COMPLETIONS = ROOT / "docs/completions"
NAMES = [f"Gull{word}" for word in SHELLS if word not in ("!!",)] + [f"{word}Gull" for word in SHELLS if word[0] not in "-!"]


class Shells(Workspace):
    def setUp(self):
        super().setUp()
        text = "".join(TERN.replace("Tern", f'"{name}"') for name in NAMES)
        self.put("a.scruple", text + "".join(f'bench "{name} bench"\n    balance   0.1 g up to 500 g\n' for name in NAMES) +
                 "".join(f'plan "{name} plan"\n    note   x\n' for name in NAMES) + TERN.replace("Tern", '"--out=pwned"'))
        self.assertEqual(set(NAMES) - set(self.scruple("help", "names", "recipes").splitlines()), set())

    def assert_nothing_was_run(self):
        self.assertEqual([name for name in self.names() if "pwned" in name and not name.endswith(".scruple")], [])


@unittest.skipUnless(shutil.which("bash"), "there is no bash here")
class Bash(Shells):
    def offered(self, *words):
        """What bash offers, and what it reads each as, when the line is sent off."""
        script = f"""
            source {COMPLETIONS / "scruple.bash"}
            COMP_WORDS=("$@") COMP_CWORD=$(($# - 1))
            _scruple
            printf '%s\\0' "${{COMPREPLY[@]}}"
        """
        done = subprocess.run(["bash", "-c", script, "bash", PROGRAM, *words], cwd=self.folder, capture_output=True, check=True)
        self.assertEqual(done.stderr, b"")
        return [word for word in done.stdout.decode().split("\0") if word]

    def read_back(self, offered):
        script = "\n".join(f"printf '%s\\n' {word}" for word in offered)
        return subprocess.run(["bash", "-f", "-c", script], cwd=self.folder, capture_output=True, check=True).stdout.decode().splitlines()

    def test_names_are_offered_so_that_they_are_read_back_as_they_are(self):
        for words in (["card", ""], ["--x", ""], ["shopping", ""], ["card", "x", "--bench", ""], ["card", "x", "--against", ""]):
            offered = self.offered(*words)
            self.assert_nothing_was_run()
            read = self.read_back(offered)
            self.assert_nothing_was_run()
            if words == ["card", ""]:
                self.assertEqual(set(read), {name.split(" ")[0] for name in NAMES})
            if words == ["card", "x", "--bench", ""]:
                self.assertEqual(set(read), {f"{name} bench" for name in NAMES})

    def test_a_name_like_an_option_is_not_offered(self):
        self.assertNotIn("--out=pwned", self.offered("card", ""))

    def test_files_and_branches(self):
        for name in ("$(touch pwned).scruple", "`touch pwned`.scruple", "a b.scruple", ";touch pwned;.scruple"):
            self.put(name, "")
        subprocess.run(["git", "init", "-q"], cwd=self.folder, check=True)
        subprocess.run(["git", "-c", "user.name=x", "-c", "user.email=x@x.invalid", "commit", "-q", "--allow-empty", "-m", "x"],
                       cwd=self.folder, check=True)
        subprocess.run(["git", "branch", "$(touch${IFS}pwned)"], cwd=self.folder, check=True)
        for words in (["tidy", ""], ["compare", ""], ["card", "x", "--out", ""], ["mixed", "x", "--log", ""], ["check", "--in", ""]):
            offered = self.offered(*words)
            self.assert_nothing_was_run()
            if words[0] in ("tidy", "mixed"):
                self.assertIn("$(touch pwned).scruple", offered)  # as it is: readline quotes names of files
            if words[0] == "compare":
                self.assertIn("$(touch${IFS}pwned)", self.read_back([word for word in offered if "IFS" in word]))
                self.assert_nothing_was_run()

    def test_a_line_typed_with_tab_in_a_real_shell(self):
        # Keys as a terminal sends them: the name that begins so is completed, and the line that is sent off runs nothing.
        ours, theirs = os.openpty()
        environment = {"PATH": f"{pathlib.Path(PROGRAM).parent}:/usr/bin:/bin", "PS1": "> ", "TERM": "dumb", "HOME": str(self.folder)}
        shell = subprocess.Popen(["bash", "--norc", "--noprofile", "-i"], cwd=self.folder, stdin=theirs, stdout=theirs,
                                 stderr=theirs, env=environment, start_new_session=True)
        lines = f"source {COMPLETIONS / 'scruple.bash'}\nscruple card Gull\\$\t\nscruple card x --out \\$\t\nexit\n"
        os.write(ours, lines.encode())
        self.assertIsNotNone(shell.wait(timeout=60))
        for end in (ours, theirs):
            os.close(end)
        self.assert_nothing_was_run()


@unittest.skipUnless(shutil.which("fish"), "there is no fish here")
class Fish(Shells):
    def test_names_are_offered_and_not_run(self):
        script = f'set PATH {pathlib.Path(PROGRAM).parent} $PATH; source {COMPLETIONS / "scruple.fish"}; complete -C "scruple card "'
        done = subprocess.run(["fish", "--no-config", "-c", script], cwd=self.folder, capture_output=True, text=True, check=True)
        offered = {line.split("\t")[0] for line in done.stdout.splitlines()}
        self.assert_nothing_was_run()
        self.assertIn("Gull$(touch pwned)", {word.replace("\\", "") for word in offered})
        self.assertNotIn("--out=pwned", offered)


@unittest.skipUnless(shutil.which("zsh"), "there is no zsh here")
class Zsh(Shells):
    def test_names_are_offered_and_not_run(self):
        # The functions that its completion gives, so that what is offered can be looked at.
        script = f"""
            _call_program() {{ shift; eval "$*" }}
            compadd() {{ print -rl -- $names }}
            source {COMPLETIONS / "_scruple"} >/dev/null 2>&1
            words=({PROGRAM} card) service={PROGRAM}
            _scruple_names recipes
        """
        done = subprocess.run(["zsh", "-f", "-c", script], cwd=self.folder, capture_output=True, text=True, check=True)
        self.assert_nothing_was_run()
        self.assertIn("Gull$(touch pwned)", done.stdout.splitlines())
        self.assertNotIn("--out=pwned", done.stdout.splitlines())
