# SPDX-License-Identifier: MIT
"""Two versions beside each other: what is told, and in a real repository with a merge.

Grams and moles are done again here; molar masses are sums of the abridged standard atomic weights of IUPAC (2021), as in
tests/reference/atomic_weights.csv. Git is Debian's.
"""
import json
import os
import subprocess

import jsonschema
from support import HERON, PROGRAM, ROOT, TERN, TROUBLE, Workspace

PAPER = """\
recipe Plover
    water                          700 ml at 40 C
    metol                          2 g
    sodium sulfite (anhydrous)     30 g
    stir until clear
    sodium carbonate (anhydrous)   20 g
    wait 5 min
    water to make                  1 l
"""


class Compared(Workspace):
    def compared(self, *words, **how):
        document = self.json("compare", *words, **how)
        schema = json.loads((ROOT / "docs/schemas/compare.json").read_text(encoding="utf-8"))
        jsonschema.Draft202012Validator(schema).validate(document)
        return document

    def one(self, old, new):
        self.put("old/plover.scruple", old)
        self.put("new/plover.scruple", new)
        document = self.compared("old", "new")
        self.assertEqual(len(document["solutions"]) + document["same"], 1)
        return document["solutions"][0] if document["solutions"] else None

    def told(self, old, new, of):
        return [(d["how"], d["what"], d["before"], d["after"]) for d in self.one(old, new)["differences"] if d["of"] == of]


class Chemistry(Compared):
    def test_nothing_differs_from_itself(self):
        self.assertIsNone(self.one(PAPER, PAPER))
        self.assertIsNone(self.one(PAPER, PAPER.replace("metol   ", "metol     ") + "# by the window\n"))

    def test_grams_and_moles_a_litre(self):
        solution = self.one(PAPER, PAPER.replace("metol                          2 g", "metol   5 g"))
        self.assertFalse(solution["same_solution"])
        contents = [d for d in solution["differences"] if d["of"] == "contents"]
        self.assertEqual(len(contents), 1)
        self.assertEqual(contents[0]["what"], "metol")
        for side, grams in (("before", 2), ("after", 5)):
            g, mol = contents[0][side].replace("\u00a0", " ").split(", ")
            self.assertEqual(g, f"{grams} g/l")
            self.assertAlmostEqual(float(mol.split()[0]), grams / 344.382, delta=1e-5)  # (C7H9NO)2·H2SO4
        self.assertFalse([d for d in solution["differences"] if d["of"] == "work"], "the contents tell of it")

    def test_order(self):
        lines = PAPER.splitlines(keepends=True)
        lines[2], lines[3] = lines[3], lines[2]
        moved = self.told(PAPER, "".join(lines), "work")
        self.assertEqual([how for how, *_ in moved], ["moved"])
        self.assertTrue(self.one(PAPER, "".join(lines))["same_solution"])

    def test_temperatures_and_waits(self):
        work = self.told(PAPER, PAPER.replace("40 C", "50 C"), "work")
        self.assertEqual([(how, what) for how, what, *_ in work], [("changed", "water")])
        self.assertIn("40\u00a0°C", work[0][2])
        self.assertIn("50\u00a0°C", work[0][3])
        work = self.told(PAPER, PAPER.replace("5 min", "15 min"), "work")
        self.assertEqual(sorted(how for how, *_ in work), ["gone", "new"])

    def test_ph_and_cautions(self):
        more = PAPER.replace("carbonate (anhydrous)   20 g", "hydroxide               20 g")
        self.assertTrue(self.told(PAPER, more, "ph"))
        self.assertIn(("new", "sodium hydroxide"), [(how, what) for how, what, *_ in self.told(PAPER, more, "cautions")])
        warned = PAPER + '    caution "Gloves."\n'
        self.assertEqual(self.told(PAPER, warned, "cautions"), [("new", "Gloves.", None, None)])

    def test_another_form_is_the_same_solution(self):
        grams = 20 * 124.003 / 105.988  # Na2CO3·H2O for Na2CO3
        form = PAPER.replace("(anhydrous)   20 g", f"(monohydrate)   {grams:.3f} g")
        solution = self.one(PAPER, form)
        self.assertTrue(solution["same_solution"])
        self.assertLess(solution["percent_apart"], 0.01)
        self.assertIn("The same solution, exactly, of the same chemicals",
                      self.scruple("compare", "old", "new"))

    def test_written_otherwise(self):
        solution = self.one(PAPER, PAPER.replace("30 g", "30.0 g").replace("1 l", "1000 ml"))
        self.assertEqual((solution["how"], solution["differences"]), ("written otherwise", []))

    def test_another_batch_and_another_name(self):
        twice = PAPER.replace("700 ml", "1.4 l").replace(" 2 g", " 4 g").replace("30 g", "60 g").replace("20 g", "40 g")
        solution = self.one(PAPER, twice.replace("make                  1 l", "make   2 l").replace("Plover", "Dunlin"))
        self.assertEqual((solution["solution"], solution["called_before"]), ("Dunlin", "Plover"))
        self.assertTrue(solution["same_solution"])
        self.assertEqual([d["of"] for d in solution["differences"]], ["batch"])

    def test_what_cannot_be_read_is_not_compared(self):
        solution = self.one(PAPER, PAPER.replace("20 g", "20 oz"))
        self.assertEqual(solution["how"], "not compared")
        self.assertIn("cannot be read", solution["why"])
        document = self.compared("old", "new")
        self.assertIn("1 error", document["remarks"][0])

    def test_a_lethal_meeting_is_told_and_still_compared(self):
        new = self.told(PAPER, PAPER + "    expect metol 3 to 4 g/l\n", "cautions")
        self.assertEqual([how for how, *_ in new], ["new"])
        self.assertIn("is expected", new[0][1])

    def test_files_stand_in_for_each_other(self):
        self.put("plover.scruple", PAPER)
        self.put("plover-2.scruple", PAPER.replace("5 min", "9 min"))
        self.put("part.scruple", TERN)
        document = self.compared("plover.scruple", "plover-2.scruple")
        self.assertEqual([s["solution"] for s in document["solutions"]], ["Plover"])
        self.assertEqual(document["remarks"], [])

    def test_wrong_calls(self):
        self.refused("compare")
        self.refused("compare", "a", "b", "c")
        self.refused("compare", "--lines")
        self.refused("compare", "--git", "a", "b")
        self.assertIn("no revision", self.refused("compare", "nowhere", status=TROUBLE))


class Repository(Compared):
    def setUp(self):
        super().setUp()
        home = {"HOME": str(self.folder), "GIT_CONFIG_NOSYSTEM": "1", "GIT_AUTHOR_NAME": "n", "GIT_AUTHOR_EMAIL": "n@n",
                "GIT_COMMITTER_NAME": "n", "GIT_COMMITTER_EMAIL": "n@n", "GIT_PAGER": "cat"}
        self.environment = {**os.environ, **home}
        self.git("init", "-q", "-b", "main")
        self.put("recipes/heron.scruple", HERON)
        self.put("recipes/plover.scruple", PAPER)
        self.put("recipes/.hidden/tern.scruple", "not a recipe\n")
        self.put(".gitattributes", "*.scruple diff=scruple\n")
        self.commit("one")

    def git(self, *words, status=0):
        done = subprocess.run(["git", *words], cwd=self.folder, env=self.environment, capture_output=True, check=False,
                              timeout=60)
        self.assertEqual(done.returncode, status, done.stderr.decode() + done.stdout.decode())
        return done.stdout.decode()

    def commit(self, words):
        self.git("add", "-A")
        self.git("commit", "-qm", words)

    def change(self, name, old, new):
        text = self.text(name)
        self.assertIn(old, text)
        self.put(name, text.replace(old, new))

    def branch_and_merge(self, status=0):
        self.git("checkout", "-qb", "shed")
        self.change("recipes/heron.scruple", "hydroquinone                   10 g", "hydroquinone                   12 g")
        self.commit("more")
        self.git("checkout", "-q", "main")
        self.change("recipes/heron.scruple", "sodium carbonate (anhydrous)   50 g", "sodium carbonate (anhydrous)   60 g")
        self.commit("stronger")
        self.git("merge", "-q", "--no-edit", "shed", status=status)

    def test_revisions(self):
        self.change("recipes/plover.scruple", "5 min", "15 min")
        for words in (["HEAD"], ["HEAD", "."], ["HEAD:recipes", "recipes"], ["HEAD", "--in", "recipes"]):
            self.assertEqual([s["solution"] for s in self.compared(*words)["solutions"]], ["Plover"], words)
        self.commit("two")
        self.assertEqual(self.compared("HEAD")["solutions"], [])
        names = [s["solution"] for s in self.compared("HEAD~1:recipes/plover.scruple", "HEAD:recipes/plover.scruple")["solutions"]]
        self.assertEqual(names, ["Plover"])

    def test_nothing_of_a_call_is_an_option_of_git_or_a_shell_s(self):
        for word in ("--output=x", "-p", "HEAD;touch x", "$(touch x)", "HEAD:./..", "HEAD\n", "^HEAD", "HEAD..HEAD"):
            done = self.run_scruple("compare", "--", word)
            self.assertNotEqual(done.returncode, 0, word)
            self.assertEqual(done.stdout, b"", word)
        self.assertEqual(self.names(), [".git", ".gitattributes", "recipes"])

    def test_a_merge_as_chemistry(self):
        self.branch_and_merge()
        changed = {s["solution"]: s for s in self.compared("HEAD^1", "HEAD")["solutions"]}
        self.assertEqual(sorted(changed), ["Heron part A", "Heron working"])
        changed = {s["solution"]: s for s in self.compared("main~2", "main")["solutions"]}
        self.assertEqual(sorted(changed), ["Heron part A", "Heron part B", "Heron working"])

    def test_git_calls_the_program_for_a_difference(self):
        self.git("config", "diff.scruple.command", f"{PROGRAM} compare --git")
        self.change("recipes/heron.scruple", "10 g", "12 g")
        self.put("recipes/tern.scruple", TERN)
        self.git("add", "-N", "recipes/tern.scruple")
        said = self.git("diff")
        self.assertIn("From a/recipes/heron.scruple to b/recipes/heron.scruple", said)
        self.assertIn("HERON PART A", said)
        self.assertIn("TERN", said)
        self.commit("two")
        self.git("mv", "recipes/tern.scruple", "recipes/jackdaw.scruple")
        self.assertIn("1\u00a0solution is as it was", self.git("diff", "--cached", "-M", "--ext-diff"))
        self.assertIn("HERON PART A", self.git("log", "-p", "--ext-diff", "-1"))

    def test_git_compares_lines_of_facts(self):
        self.git("config", "diff.scruple.textconv", f"{PROGRAM} compare --lines")
        self.change("recipes/heron.scruple", "hydroquinone                   10 g", "hydroquinone  12.0 g")
        said = self.git("diff").replace("\u00a0", " ")
        self.assertIn("\n-    holds   hydroquinone, 10 g/l, 0.09082 mol/l\n", said)
        self.assertIn("\n+    holds   hydroquinone, 12 g/l, 0.109 mol/l\n", said)
        self.git("checkout", "-q", ".")
        self.change("recipes/heron.scruple", "700 ml", "0.7 l")
        self.assertFalse([line for line in self.git("diff").splitlines() if line[:1] in "+-" and line[:3] not in ("+++", "---")])

    def test_a_merge_that_is_not_done(self):
        self.git("checkout", "-qb", "shed")
        self.change("recipes/plover.scruple", "5 min", "9 min")
        self.commit("longer")
        self.git("checkout", "-q", "main")
        self.change("recipes/plover.scruple", "5 min", "3 min")
        self.commit("shorter")
        self.git("merge", "-q", "shed", status=1)
        self.git("config", "diff.scruple.command", f"{PROGRAM} compare --git")
        self.assertIn("not merged yet", self.git("diff", "--cached"))
        self.git("config", "--unset", "diff.scruple.command")
        self.git("config", "diff.scruple.textconv", f"{PROGRAM} compare --lines")
        self.assertIn("diff --cc recipes/plover.scruple", self.git("diff"))
        self.assertEqual([s["how"] for s in self.compared("HEAD")["solutions"]], ["not compared"])
