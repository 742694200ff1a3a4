# SPDX-License-Identifier: MIT
"""Lines written into the log: laid out like those before, whole or not at all, by many at once."""
import datetime
import json
import os
import re
import subprocess

import jsonschema
from support import FAULTS, FAULTY, HERON, PROGRAM, ROOT, TERN, TROUBLE, Workspace

LOG = """\
log
    2026-11-02 received   sodium sulfite (anhydrous) 500 g   # a new jar
    2026-11-03 on shelf   hydroquinone 25 g
"""
AFTER = """
# What the shed has.
bench Saltmarsh
    balance   0.1 g up to 500 g
"""


class Mixed(Workspace):
    def setUp(self):
        super().setUp()
        self.put("heron.scruple", HERON + TERN)

    def mixed(self, *words, on="2026-12-03", **how):
        return self.scruple("mixed", *words, "--on", on, **how).replace("\u00a0", " ")

    def test_the_line_is_laid_out_like_the_one_before(self):
        self.put("log.scruple", LOG)
        out = self.mixed("Heron", "part", "A", "500ml", "--note", "for the club")
        wanted = "    2026-12-03 mixed      Heron part A 500 ml   # for the club\n"
        self.assertEqual(self.text("log.scruple"), LOG + wanted)
        self.assertIn("Written: log.scruple:4", out)
        # Half of 40 g and of 10 g.
        self.assertIn("20 g   sodium sulfite (anhydrous), jar of 2026-11-02", out)
        self.assertIn(" 5 g   hydroquinone, counted on 2026-11-03", out)
        self.assertNotIn("!", out)

    def test_what_the_shelf_does_not_have_is_said(self):
        self.put("log.scruple", LOG)
        self.assertIn("! by the log the shelf has 5 g hydroquinone too little for it", self.mixed("Heron part A 3 l"))
        document = self.json("mixed", "Tern", "1", "l", "--on", "2026-12-03")
        self.assertEqual((document["where"], document["faults"]), ("log.scruple:5", []))
        self.assertEqual(document["text"], "    2026-12-03 mixed      Tern 1 l")
        self.assertEqual([share["amount"]["exact"] for share in document["takes"]], ["30"])

    def test_a_bottle_past_its_date_is_told(self):
        self.put("heron.scruple", HERON.replace("part A\n", "part A\n    keeps   2 months\n"))
        self.put("log.scruple", "log\n    2026-08-31 mixed  Heron part A 1 l\n    2026-08-31 mixed  Heron part B 1 l\n")
        # Two months from 31 August end on 31 October.
        wanted = "Heron part A, batch of 2026-08-31, is past its use-by date of 2026-10-31 by 1 day"
        self.assertIn("! " + wanted, " ".join(self.mixed("Heron working", "1 l", on="2026-11-01").split()))
        self.assertNotIn("past", self.mixed("Heron working", "1 l", on="2026-10-31"))

    def test_a_log_in_the_middle_of_a_file(self):
        self.put("log.scruple", LOG + AFTER)
        self.mixed("Tern 1l")
        self.assertEqual(self.text("log.scruple"), LOG + "    2026-12-03 mixed      Tern 1 l\n" + AFTER)

    def test_jars_are_told_with_their_lines_as_they_stand_afterwards(self):
        behind = "\nlog\n    2026-11-01 received   sodium sulfite (anhydrous) 20 g\n"
        self.put("log.scruple", LOG + behind)
        document = self.json("mixed", "Tern 1 l", "--on", "2026-12-03")
        lines = self.text("log.scruple").splitlines()
        taken = [(share["amount"]["exact"], lines[int(share["where"].split(":")[1]) - 1].split()[0])
                 for share in document["takes"]]
        self.assertEqual(taken, [("20", "2026-11-01"), ("10", "2026-11-02")])

    def test_line_ends_and_a_missing_one(self):
        self.put("log.scruple", LOG.replace("\n", "\r\n").rstrip())
        self.mixed("Tern 1l")
        self.assertEqual((self.folder / "log.scruple").read_bytes().decode(),
                         (LOG + "    2026-12-03 mixed      Tern 1 l\n").replace("\n", "\r\n"))

    def test_a_log_without_a_line(self):
        self.put("log.scruple", "log\n")
        self.mixed("Tern 1 1/2 l")
        self.assertEqual(self.text("log.scruple"), "log\n    2026-12-03 mixed Tern 1 1/2 l\n")

    def test_of_several_logs_the_one_with_the_latest_line(self):
        early = self.put("a.scruple", LOG + "\nlog\n  2026-11-20 discarded Tern\n" + AFTER)
        self.put("z.scruple", LOG)
        self.mixed("Tern 1l")
        self.assertIn("  2026-11-20 discarded Tern\n  2026-12-03 mixed     Tern 1 l\n", early.read_text())
        self.mixed("Tern 2l", "--log", "z.scruple")
        self.assertEqual(self.text("z.scruple"), LOG + "    2026-12-03 mixed      Tern 2 l\n")
        self.assertIn("heron.scruple", self.refused("mixed", "Tern", "1l", "--log", "heron.scruple"))

    def test_without_a_day_it_is_today(self):
        self.put("log.scruple", LOG)
        days = [datetime.date.today()]
        self.scruple("mixed", "Tern", "1l")
        days.append(datetime.date.today())
        self.assertIn(self.text("log.scruple").splitlines()[-1].split()[0], map(str, days))

    def test_nothing_is_written_where_something_is_wrong(self):
        self.put("log.scruple", LOG)
        for words, said in ((["Hern part A", "1l"], "`Heron part A`"), (["Heron", "1l"], "which"),
                            (["Tern"], "scruple mixed"), (["Tern", "5 g"], "volume"), (["Tern", "5 oz"], "fl oz"),
                            (["Tern", "1l", "--on", "2027-02-29"], "2027-02-29"), (["Tern", "0 l"], "0 l"),
                            (["Tern", "1l", "--note", "a\nlog"], "in --note that does not show"), ([], "scruple mixed")):
            with self.subTest(words):
                self.assertIn(said, self.refused("mixed", *words))
        self.put("bad.scruple", FAULTY)
        self.assertIn("[ambiguous-unit]", self.refused("mixed", "Heron part A", "1l", status=FAULTS))
        self.assertEqual(self.text("log.scruple"), LOG)

    def test_a_workspace_without_a_log(self):
        self.assertIn("`log`", self.refused("mixed", "Tern", "1l"))

    def test_a_folder_that_cannot_be_written(self):
        if os.geteuid() == 0:
            self.skipTest("root may write anywhere")
        self.put("log.scruple", LOG)
        self.folder.chmod(0o555)
        self.addCleanup(self.folder.chmod, 0o755)
        self.assertIn("log.scruple", self.refused("mixed", "Tern", "1l", status=TROUBLE))
        self.assertEqual(self.text("log.scruple"), LOG)

    def test_a_link_stays_a_link(self):
        real = self.put("kept/log.txt", LOG)
        (self.folder / "log.scruple").symlink_to("kept/log.txt")
        self.mixed("Tern 1l")
        self.assertTrue((self.folder / "log.scruple").is_symlink())
        self.assertIn("Tern 1 l", real.read_text())


class Enter(Workspace):
    """The other words of a log, written in the same way."""

    def setUp(self):
        super().setUp()
        self.put("heron.scruple", HERON + TERN + "supplier Tidewater\n    metol   25 g   8.40 EUR\n")
        self.put("log.scruple", LOG)

    def enter(self, *words):
        return self.scruple("enter", *words, "--on", "2026-12-03").replace("\u00a0", " ")

    def test_each_word_of_a_log(self):
        self.assertNotIn("takes", self.enter("received", "metol", "25g", "from", "Tidewater", "8.40", "EUR"))
        # 4 films a litre: 2 take 500 ml, a quarter of it each part, which nobody has mixed.
        self.assertIn("the shelf has 125 ml Heron part A too little for it",
                      self.enter("processed 2 films 135 in Heron working"))
        self.enter("used", "metol 2.5 g for a test")
        self.enter("discarded", "Tern")
        self.assertEqual(self.text("log.scruple"), LOG + """\
    2026-12-03 received   metol 25 g from Tidewater 8.40 EUR
    2026-12-03 processed  2 films 135 in Heron working
    2026-12-03 used       metol 2.5 g for a test
    2026-12-03 discarded  Tern
""")

    def test_a_count_says_by_how_much_it_corrects(self):
        out = self.enter("on", "shelf", "sodium sulfite (anhydrous)", "0.48kg")
        self.assertIn("sodium sulfite (anhydrous): 480 g counted, 500 g by the log", out)
        self.assertIn("−20 g", out)
        self.assertTrue(self.text("log.scruple").endswith("    2026-12-03 on shelf   sodium sulfite (anhydrous) 0.48 kg\n"))

    def test_documents_hold_to_their_schema(self):
        schema = json.loads((ROOT / "docs/schemas/log.json").read_text(encoding="utf-8"))
        for words in (["mixed", "Heron part A", "3 l"], ["enter", "on shelf hydroquinone 20 g"],
                      ["enter", "used metol 3 g"], ["enter", "discarded sodium sulfite (anhydrous)"]):
            document = self.json(*words, "--on", "2026-12-03")
            jsonschema.Draft202012Validator(schema).validate(document)

    def test_what_cannot_be_a_line(self):
        for words, said in ((["mixed Tern 1 l"], "`scruple mixed Tern 1 l`"), (["received metol"], "`scruple enter` takes"),
                            (["lost metol 5 g"], "`scruple enter` takes"), ([], "`scruple enter` takes"),
                            (["received metol 5 g from Tidewatr"], "Tidewater")):
            with self.subTest(words):
                self.assertIn(said, self.refused("enter", *words))
        self.assertEqual(self.text("log.scruple"), LOG)


class AtOnce(Workspace):
    def setUp(self):
        super().setUp()
        self.put("heron.scruple", HERON + TERN)
        self.put("log.scruple", LOG + AFTER)

    def start(self, ml):
        return subprocess.Popen([PROGRAM, "mixed", "Tern", f"{ml}ml", "--on", "2026-12-03"], cwd=self.folder,
                                stdout=subprocess.DEVNULL, stderr=subprocess.PIPE)

    def volumes(self):
        return [int(ml) for ml in re.findall(r"(?m)^    2026-12-03 mixed      Tern (\d+) ml$", self.text("log.scruple"))]

    def test_of_many_at_once_nothing_is_lost(self):
        running = [self.start(ml) for ml in range(1, 41)]
        for one in running:
            self.assertEqual((one.communicate(timeout=120)[1], one.returncode), (b"", 0))
        self.assertEqual(sorted(self.volumes()), list(range(1, 41)))
        self.assertTrue(self.text("log.scruple").startswith(LOG))
        self.assertTrue(self.text("log.scruple").endswith(AFTER))
        self.scruple("check")
        self.assertEqual(self.names(), ["heron.scruple", "log.scruple"])

    def test_laying_out_meanwhile_loses_nothing(self):
        running = []
        for ml in range(1, 16):
            running.append(self.start(ml))
            running.append(subprocess.Popen([PROGRAM, "tidy", "log.scruple"], cwd=self.folder,
                                            stdout=subprocess.DEVNULL, stderr=subprocess.PIPE))
        for one in running:
            self.assertEqual((one.communicate(timeout=120)[1], one.returncode), (b"", 0))
        volumes = re.findall(r"(?m)^ +2026-12-03 mixed +Tern (\d+) ml$", self.text("log.scruple"))
        self.assertEqual(sorted(map(int, volumes)), list(range(1, 16)))
