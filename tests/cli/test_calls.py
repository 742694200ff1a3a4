# SPDX-License-Identifier: MIT
"""How the program is called, what it says of itself, and what it says to a wrong call."""
import re

from support import FAULTS, FAULTY, HERON, TERN, TROUBLE, WRONG_CALL, Workspace

COMMANDS = ["check", "card", "binder", "labels", "scaled", "shopping", "calendar", "evening", "shelf", "mixed", "enter", "tidy", "chemical", "weigh", "react", "contents", "compare", "settle", "why", "language-server", "help"]
BLOCKS = ["recipe", "part", "bath", "working", "replenisher", "chemical", "conversion", "bench", "supplier", "log",
          "process", "plan", "meeting", "printed", "format"]


class Help(Workspace):
    def test_overview_names_every_command(self):
        for call in (["--help"], ["-h"], ["help"]):
            out = self.scruple(*call)
            for command in COMMANDS:
                self.assertRegex(out, rf"(?m)^  {command} ")

    def test_no_words_show_the_overview_and_are_a_wrong_call(self):
        self.assertIn("scruple COMMAND", self.refused())

    def test_version(self):
        self.assertRegex(self.scruple("--version"), r"^scruple \d+\.\d+\.\d+\n$")

    def test_each_command_explains_itself_both_ways(self):
        for command in COMMANDS:
            screen = self.scruple(command, "--help")
            self.assertIn(f"scruple {command}", screen)
            self.assertIn("For example:", screen)
            self.assertIn(screen, self.scruple("help", command))

    def test_screens_fit_eighty_columns(self):
        for topic in [[], ["card"], ["recipe"], ["form-not-stated"]]:
            for line in self.scruple("help", *topic).splitlines():
                self.assertLessEqual(len(line), 80, line)

    def test_each_sample_of_a_block_can_be_read(self):
        for block in BLOCKS:
            sample = self.scruple("help", block).split("\n\n", 1)[1]
            sample = re.search(rf"(?m)^{block}\b(?!:).*\n(?: .*\n)+", sample + "\n").group()
            file = self.put("sample.scruple", sample)
            self.assertIn("1 file looked at", self.scruple("tidy", str(file)))

    def test_every_kind_is_explained(self):
        listed = self.scruple("help").split("kinds of faults")[1]
        kinds = re.findall(r"[a-z]+(?:-[a-z]+)+", listed.split("\n\n", 1)[1])
        self.assertGreater(len(kinds), 40)
        for kind in kinds:
            out = self.scruple("help", kind)
            self.assertTrue(out.startswith(kind))
            self.assertNotIn("{0}", out)

    def test_near_topics_are_proposed(self):
        self.assertIn("`form-not-stated`", self.refused("help", "form-not-statd"))

    def test_names_lists_the_names_of_the_workspace(self):
        self.put("a.scruple", HERON + TERN + "plan December\n    2026-12-03   6 films 135 through x\nbench Saltmarsh\n"
                                             "    balance   0.1 g up to 500 g\n")
        recipes = self.scruple("help", "names", "recipes").splitlines()
        self.assertEqual(recipes, ["Heron", "Heron part A", "Heron part B", "Heron working", "Tern"])
        self.assertEqual(self.scruple("help", "names", "plans"), "December\n")
        self.assertEqual(self.scruple("help", "names", "benches"), "Saltmarsh\n")
        everything = self.scruple("help", "names").splitlines()
        for name in [*recipes, "December", "Saltmarsh", "hydroquinone"]:
            self.assertIn(name, everything)
        self.refused("help", "names", "bottles")


class WrongCalls(Workspace):
    def setUp(self):
        super().setUp()
        self.put("heron.scruple", HERON)
        self.put("tern.scruple", TERN)

    def test_unknown_commands_and_options_come_with_the_nearest(self):
        self.assertIn("`card`", self.refused("crad"))
        self.assertIn("check, card", self.refused("zzzzzzzz"))
        self.assertIn("`--films`", self.refused("card", "Tern", "--film", "6", "135"))
        self.assertIn("scruple help check", self.refused("check", "--xyzzy"))
        self.assertIn("`--make`", self.refused("card", "Tern", "--mak=1l"))

    def test_values_that_are_missing_or_given_twice(self):
        for call in (["--make"], ["--make", "1l", "--make", "2l"], ["--make", "--as", "html"]):
            self.assertIn("`--make 500ml`", self.refused("card", "Tern", *call))
        self.assertIn("--films 6 135", self.refused("card", "Tern", "--films", "6"))

    def test_unknown_formats_and_days(self):
        self.assertIn("text, html and json", self.refused("check", "--as", "pdf"))
        for day in ("2026-02-30", "3.12.2026", "2026-1-1", "26-12-03aa", ""):
            self.assertIn("no day", self.refused("card", "Tern", "--mixed", day))

    def test_unknown_names_come_with_the_nearest_or_with_what_there_is(self):
        self.assertIn("the nearest is `Heron part A`", self.refused("card", "herom", "part", "a"))
        self.assertIn("the nearest is `Tern`", self.refused("card", "Terns"))
        self.assertIn("`Heron part A`, `Heron part B` or `Heron working`", self.refused("card", "Heron", "xyzzy"))
        self.assertIn("which recipe?", self.refused("card"))
        self.assertIn("no plan", self.refused("shopping", "December"))
        self.assertIn("hydroquinone", self.refused("chemical", "hydroquinnone"))
        self.assertIn("no bench", self.refused("card", "Tern", "--bench", "Marsh"))
        self.assertIn("no variant", self.refused("card", "Tern", "--variant", "soft"))

    def test_part_of_a_name_lists_the_names_that_hold_it_and_a_formula_is_a_name(self):
        message = self.refused("chemical", "soda")
        self.assertIn("`washing soda`", message)
        self.assertIn("`soda ash`", message)
        self.assertEqual(self.scruple("chemical", "Na2SO3"), self.scruple("chemical", "sodium sulfite"))

    def test_a_file_is_no_folder(self):
        self.assertIn("is a file", self.refused("check", "--in", "tern.scruple", status=TROUBLE))

    def test_an_amount_for_several_solutions_lists_them(self):
        message = self.refused("card", "Heron", "--make", "500ml")
        self.assertIn("`Heron part A`, `Heron part B` or `Heron working`", message)

    def test_how_much_is_said_once(self):
        self.refused("card", "Tern", "--make", "1l", "--with", "sodium sulfite (anhydrous) 5 g")
        self.refused("scaled", "Tern")

    def test_amounts_are_explained_as_in_a_recipe(self):
        for amount, kind in {"0,7 l": "decimal-comma", "3 pt": "ambiguous-unit", "500": "no-unit", "5 G": "unknown-unit",
                             "0 ml": "not-above-nothing", "1 to 2 l": "range-as-amount"}.items():
            self.assertIn(f"[{kind}]", self.refused("card", "Tern", "--make", amount))
        self.assertIn("takes a volume", self.refused("card", "Tern", "--make", "500 g"))
        self.assertIn("[form-not-stated]", self.refused("card", "Tern", "--with", "sodium sulfite 5 g"))
        self.assertIn("[ambiguous-unit]", self.refused("weigh", "30 oz metol"))
        self.assertIn("[unknown-unit]", self.refused("weigh", "30 gm metol"))
        self.assertIn("write  `sodium sulfite (anhydrous)`", self.refused("weigh", "5 sodium sulfite"))
        self.assertIn("[unknown-film]", self.refused("card", "Heron", "working", "--films", "6", "xyzzy"))

    def test_an_amount_that_is_none_is_told_by_what_the_option_takes(self):
        self.assertIn("`--films 6 135`", self.refused("card", "Heron", "working", "--films", "six", "135"))
        self.assertIn("`--make 500ml`", self.refused("card", "Tern", "--make", "plenty"))
        self.assertIn("--area", self.refused("card", "Tern", "--area", "wide"))
        self.assertIn("--with", self.refused("card", "Tern", "--with", "stir 5 min"))

    def test_amounts_cannot_smuggle_lines_in(self):
        for amount in ("1 l\nbench Evil", "1 l\rmetol 5 g", "\udcff"):
            self.assertIn("in --make that does not show or is no text", self.refused("card", "Tern", "--make", amount))
        for amount in ("to make 1 l", "? ml", "about 3 ml", "1 l, 5 min"):
            self.refused("card", "Tern", "--make", amount)

    def test_check_takes_no_names(self):
        self.assertIn("--in recipes", self.refused("check", "recipes"))


class Statuses(Workspace):
    def test_a_workspace_without_faults(self):
        self.put("heron.scruple", HERON)
        self.assertIn("1 recipe in 1 file", self.scruple("check"))
        self.assertEqual(self.json("check"), [])

    def test_an_empty_folder_is_fine(self):
        self.assertIn("0 recipes in 0 files", self.scruple("check"))

    def test_faults_are_printed_and_their_status_is_one(self):
        self.put("tern.scruple", FAULTY)
        self.assertIn("tern.scruple:3.", self.scruple("check", status=FAULTS))
        self.assertIn("[ambiguous-unit]", self.scruple("check", "--as", "html", status=FAULTS))
        (fault,) = self.json("check", status=FAULTS)
        self.assertEqual((fault["file"], fault["line"], fault["kind"]), ("tern.scruple", 3, "ambiguous-unit"))

    def test_nothing_is_printed_for_the_bench_with_a_fault_anywhere(self):
        self.put("tern.scruple", FAULTY)
        self.put("heron.scruple", HERON)
        for call in (["card", "Heron"], ["scaled", "Heron", "--make", "2l"], ["shopping", "December"],
                     ["weigh", "5 g metol"]):
            self.assertIn("[ambiguous-unit]", self.refused(*call, status=FAULTS))

    def test_a_folder_that_is_not_there(self):
        for command in (["check"], ["card", "Heron"], ["tidy"], ["help", "names"]):
            self.assertIn("nowhere", self.refused(*command, "--in", "nowhere", status=TROUBLE))

    def test_in_reads_another_folder(self):
        self.put("deep/down/tern.scruple", FAULTY)
        self.assertIn("deep/down/tern.scruple:3.", self.scruple("check", "--in", "deep/down", status=FAULTS))
        self.assertIn("deep/down/tern.scruple:3.", self.scruple("check", "--in", "./deep/", status=FAULTS))
        self.assertEqual(WRONG_CALL, self.run_scruple("--in", "deep", "check").returncode)
