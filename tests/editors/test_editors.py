# SPDX-License-Identifier: MIT
"""The language server and the colours, in the programs they are made for.

Neovim, Vim and Emacs are Debian's, set up as docs/editors.md says, word for word. The client libraries of the protocol
and the TextMate tokenizer come from npm, by the versions of tests/node (tests/run.sh puts them into build/node). What is
not there is left out.
"""
import json
import os
import pathlib
import re
import shutil
import subprocess
import sys
import unittest

from support import PROGRAM, ROOT, Workspace

HERE = ROOT / "tests/editors"
GRAMMAR = ROOT / "grammar/editors"
NODE = ROOT / "build/node/node_modules"
RECIPES = sorted((ROOT / "recipes").glob("*.scruple"))


def set_up(language):
    """The block of docs/editors.md in that language, with the path of this copy."""
    text = (ROOT / "docs/editors.md").read_text(encoding="utf-8")
    return re.search(rf"^```{language}\n(.*?)^```$", text, re.M | re.S)[1].replace("/path/to/scruple", str(ROOT))


class Beside(Workspace):
    def setUp(self):
        super().setUp()
        self.home = self.folder / "home"
        for path in RECIPES:
            self.put(path.name, path.read_bytes())
        self.put("home/bin/keep", "")
        os.symlink(PROGRAM, self.home / "bin/scruple")
        self.environment = {**os.environ, "HOME": str(self.home), "PATH": f"{self.home}/bin:{os.environ['PATH']}",
                            "XDG_CONFIG_HOME": str(self.home / ".config"), "XDG_DATA_HOME": str(self.home / ".data"),
                            "XDG_STATE_HOME": str(self.home / ".state"), "NODE_PATH": str(NODE), "TERM": "xterm-256color"}

    def run_it(self, *words, **more):
        done = subprocess.run(words, cwd=self.folder, env={**self.environment, **more}, capture_output=True, check=False,
                              timeout=120, stdin=subprocess.DEVNULL)
        self.assertEqual(done.returncode, 0, (done.stdout + done.stderr).decode(errors="replace"))
        return done.stdout.decode()


class Editors(Beside):
    @unittest.skipUnless(shutil.which("nvim"), "Neovim is not there")
    def test_neovim(self):
        self.put("home/.config/nvim/init.lua", set_up("lua"))
        self.run_it("nvim", "--headless", "-S", str(HERE / "neovim.lua"), SEEN=str(self.folder / "seen.json"))
        seen = json.loads(self.text("seen.json"))
        self.assertNotIn("failed", seen, seen.get("failed"))
        self.assertEqual((seen["filetype"], seen["syntax"], seen["commentstring"]), ("scruple", "scruple", "# %s"))
        self.assertEqual((seen["clean"], seen["found"], seen["mended"]), (0, "decimal-comma", True))
        self.assertTrue(seen["log"])
        self.assertIn("344.4 g/mol", seen["hover"])
        self.colours_are_there(seen["groups"])

    def colours_are_there(self, groups):
        for group in ("Block", "Fact", "Step", "Number", "Unit", "String", "Comment", "Form", "Joining"):
            self.assertIn(f"scruple{group}", groups)

    @unittest.skipUnless(shutil.which("vim"), "Vim is not there")
    def test_vim(self):
        self.put("home/.vimrc", set_up("vim"))
        self.put("look.vim", "let seen = {}\nfor row in range(1, line('$'))\n  for column in range(1, len(getline(row)))\n"
                             "    let seen[synIDattr(synID(row, column, 1), 'name')] = 1\n  endfor\nendfor\n"
                             "call writefile(keys(seen) + [&filetype], 'groups.txt')\nqall!\n")
        self.run_it("vim", "-es", "-u", str(self.home / ".vimrc"), "-c", "edit film-developer.scruple", "-S", "look.vim")
        groups = self.text("groups.txt").split("\n")
        self.assertIn("scruple", groups)
        self.colours_are_there(groups)

    @unittest.skipUnless(shutil.which("emacs"), "Emacs is not there")
    def test_emacs(self):
        self.put("home/.emacs.d/init.el", set_up("lisp"))
        faces = self.run_it("emacs", "--batch", "-l", str(self.home / ".emacs.d/init.el"), "film-developer.scruple", "--eval",
                            "(progn (font-lock-ensure) (princ major-mode) (goto-char (point-min)) (while (not (eobp))"
                            " (let ((face (get-text-property (point) 'face))) (when face (princ (format \"\\n%s %s\" face"
                            " (buffer-substring (point) (next-single-property-change (point) 'face nil (point-max)))))))"
                            " (goto-char (next-single-property-change (point) 'face nil (point-max)))))")
        self.assertTrue(faces.startswith("scruple-mode"))
        for line in ("font-lock-keyword-face recipe", "font-lock-type-face Medlar", "font-lock-builtin-face keeps",
                     "font-lock-function-name-face stir", "font-lock-type-face ml", "font-lock-constant-face 700"):
            self.assertIn("\n" + line, faces)
        self.assertRegex(faces, r"font-lock-comment(-delimiter)?-face # ")
        self.run_it("emacs", "--batch", "--eval", "(setq byte-compile-error-on-warn t)", "-f", "batch-byte-compile",
                    shutil.copy(GRAMMAR / "emacs/scruple-mode.el", self.folder))

    @unittest.skipUnless(shutil.which("emacs") and list(pathlib.Path("/usr/share/emacs/site-lisp/elpa").glob("eglot-*")),
                         "Eglot is not there")
    def test_emacs_with_the_server(self):
        self.put("home/.emacs.d/init.el", set_up("lisp"))
        self.put("tern.scruple", "recipe Tern\n    water   700 ml\n    metol   0,7 g\n    water to make   1 l\n")
        said = self.run_it("emacs", "--batch", "-l", str(self.home / ".emacs.d/init.el"), "-l", str(HERE / "eglot.el"))
        self.assertIn("[decimal-comma]", said)
        self.assertIn("write `0.7`", said)

    @unittest.skipUnless(shutil.which("node") and (NODE / "vscode-jsonrpc").is_dir(), "the client libraries are not there")
    def test_the_client_libraries_of_the_protocol(self):
        self.assertIn("all as awaited", self.run_it("node", str(HERE / "client.cjs"), PROGRAM, str(self.folder)))


@unittest.skipUnless(shutil.which("node") and (NODE / "vscode-textmate").is_dir(), "the tokenizer is not there")
class TextMate(Beside):
    def tokens(self, *files):
        grammar = GRAMMAR / "textmate/syntaxes/scruple.tmLanguage.json"
        said = json.loads(self.run_it("node", str(HERE / "tokens.cjs"), str(grammar), *map(str, files)))
        return {pathlib.Path(file).name: lines for file, lines in said.items()}

    def test_all_of_the_demo(self):
        sys.path.insert(0, str(GRAMMAR))
        import peg  # pylint: disable=import-outside-toplevel
        unit = re.compile(peg.units(peg.Dialect()))
        lines = [line for file in self.tokens(*RECIPES).values() for line in file]
        self.assertGreater(len(lines), 200)
        for line in lines:
            text = "".join(token for token, _ in line)
            first = re.match(r"[ \t]*([a-z]+)", text)
            if first and not text.startswith(" "):
                self.assertEqual(line[0][1], "keyword.control.block.scruple", text)
            elif first and first[1] in set(peg.step_words()) | set(peg.fact_words()):
                self.assertRegex(line[1][1], r"keyword\.(other\.fact|operator\.step)\.scruple", text)
            comment = re.search(r"(?:^|\s)#", text)
            if comment and '"' not in text:
                self.assertEqual(line[-1][1], "comment.line.number-sign.scruple", text)
            for token, scope in line:
                if scope == "keyword.other.unit.scruple":
                    self.assertTrue(unit.fullmatch(token), token)
                if scope in ("source.scruple", "meta.form.scruple"):
                    self.assertIsNone(re.search(r"(?<![\w.,/:+])\d+(?![\w.,/:+])", token), f"{token!r} in {text!r}")

    def test_every_unit_and_every_word(self):
        sys.path.insert(0, str(GRAMMAR))
        import peg  # pylint: disable=import-outside-toplevel
        spellings = [spelling for line in (ROOT / "include/scruple/quantity/units.inc").read_text(encoding="utf-8").split("\n")
                     if line.startswith("SCRUPLE_UNIT") for spelling in line.rsplit('"', 2)[1].split("|")]
        self.assertGreater(len(spellings), 80)
        units = self.put("units.scruple", "".join(f"    metol   5 {spelling}\n" for spelling in spellings))
        for spelling, line in zip(spellings, self.tokens(units)["units.scruple"]):
            self.assertIn([spelling, "keyword.other.unit.scruple"], line)
        words = [("keyword.control.block.scruple", word, word + " x") for word in peg.block_words()] + \
                [("keyword.other.fact.scruple", word, f"    {word} x") for word in peg.fact_words()] + \
                [("keyword.operator.step.scruple", word, f"    {word} x") for word in peg.step_words()]
        file = self.put("words.scruple", "".join(line + "\n" for _, _, line in words))
        for (scope, word, _), line in zip(words, self.tokens(file)["words.scruple"]):
            self.assertIn([word, scope], line)


class Drift(unittest.TestCase):
    def test_all_of_it_is_as_the_grammar_makes_it(self):
        done = subprocess.run([sys.executable, str(GRAMMAR / "generate.py"), "--check"], capture_output=True, check=False)
        self.assertEqual(done.returncode, 0, done.stdout.decode())
