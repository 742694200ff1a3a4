# SPDX-License-Identifier: MIT
"""What the commands print, from recipe text to the figures. The back ends have tests of their own."""
import math
import re

from support import FAULTS, HERON, ROOT, TERN, Workspace


class Cards(Workspace):
    def setUp(self):
        super().setUp()
        self.put("heron.scruple", HERON)
        self.put("tern.scruple", TERN)

    def grams(self, card):
        return {row["chemical"]: row["amount"]["value"] for row in card["gather"] if row["amount"]["unit"] == "g"}

    def test_a_card_for_half_the_volume_takes_half_of_everything(self):
        card = self.json("card", "Heron", "part", "A", "--make", "500ml")
        self.assertEqual(card["makes"], {"value": 500, "unit": "ml"})
        self.assertEqual(self.grams(card), {"sodium sulfite": 20, "hydroquinone": 5})

    def test_a_small_batch_is_less_sure_than_a_large_one(self):
        """Root sum of squares (JCGM 100, 5.1.2) of half a division, of what the jar holds (0.5 %) and of the volume
        (1 % where no graduate is known), in percent."""
        self.put("a.scruple", "recipe Wryneck\n    water 900 ml\n    metol 5 g\n    water to make 1 l\n"
                              "bench Saltmarsh\n    balance 0.1 g up to 500 g\n")
        for batch, grams in (("1 l", 5), ("100 ml", 0.5), ("4 l", 20)):
            (metol,) = self.json("card", "Wryneck", "--make", batch)["contents"]
            self.assertAlmostEqual(metol["give_or_take_percent"], math.hypot(0.05 / grams * 100, 0.5, 1), delta=0.006)

    def test_a_measured_stock_brings_how_far_its_graduate_is_off(self):
        """Root sum of squares (JCGM 100, 5.1.2): 5 g at 0.1 g, half a division of 5 ml at 100 ml (of 1 l: ten fills are too
        many, 1 %), then 20 ml at 0.2 ml made up to 100 ml at 5 ml; what the jar holds, 0.5 %."""
        self.put("a.scruple", "recipe Wryneck\n    part A\n        metol 5 g\n        water to make 1 l\n    working\n"
                              "        Wryneck part A 20 ml\n        water to make 100 ml\n"
                              "bench Saltmarsh\n    balance 0.1 g up to 500 g\n    graduate 100 ml by 5 ml\n    graduate 20 ml by 0.2 ml\n")
        (metol,) = self.json("card", "Wryneck", "working")["contents"]
        self.assertAlmostEqual(metol["give_or_take_percent"], math.hypot(1, 0.5, 1, 0.5, 2.5), delta=0.006)

    def test_names_need_no_quotes_and_no_case(self):
        wanted = self.scruple("card", "Heron", "part", "A")
        for words in (["heron part a"], ["HERON", "PART", "A"], ["Heron", " part  A "]):
            self.assertEqual(self.scruple("card", *words), wanted)

    def test_amounts_may_be_typed_apart(self):
        wanted = self.json("card", "Tern", "--make", "500ml")
        for words in (["--make", "500", "ml", "Tern"], ["--make", "500 ml", "Tern"], ["Tern", "--make=0.5l"],
                      ["Tern", "--make", "1/2", "l"]):
            self.assertEqual(self.json("card", *words), wanted)
        # A US pint is 473.176473 ml (NIST Handbook 44, appendix C).
        pint = self.json("card", "--make", "1", "pint", "us", "Tern")
        self.assertAlmostEqual(pint["makes"]["value"], 473.2, delta=0.3)

    def test_a_recipe_with_several_solutions_gets_a_card_for_each(self):
        cards = self.json("card", "Heron")
        self.assertEqual([card["section"] for card in cards["cards"]], ["part A", "part B", "working"])
        text = self.scruple("card", "Heron")
        self.assertEqual(self.scruple("card", "Heron", "--as", "html").count("</html>"), 1)
        self.assertLess(text.index("hydroquinone"), text.index("sodium carbonate"))

    def test_an_amount_is_for_what_the_recipe_itself_makes(self):
        self.put(
            "wren.scruple",
            "recipe Wren\nwater 700 ml\nborax (decahydrate) 5 g\nstir until clear\nwater to make 1 l\n"
            "working\ndilute Wren 1+3\n",
        )
        card = self.json("card", "Wren", "--make", "500ml")
        self.assertEqual((card["recipe"], card["makes"]), ("Wren", {"value": 500, "unit": "ml"}))
        self.assertEqual(self.grams(card), {"borax": 2.5})
        self.assertIn("recipe Wren", self.scruple("scaled", "Wren", "--make", "500ml"))
        self.assertIn("Name one of", self.refused("card", "Heron", "--make", "500ml"))

    def test_what_does_not_dissolve_stands_on_the_card(self):
        # Borax: 2.5 g of the dry salt in 100 g of water at 20 °C, so that 300 ml cannot take 21 g of it.
        self.put("ouzel.scruple", "recipe Ouzel\nwater 300 ml\nborax (decahydrate) 40 g\nwater to make 1 l\n")
        self.assertEqual([w["kind"] for w in self.json("card", "Ouzel")["warnings"]], ["too-little-water"])
        self.assertIn("40 g of it in 300 ml of water", " ".join(self.scruple("card", "Ouzel").split()))

    def test_what_comes_down_in_the_cold_is_a_note_of_the_card(self):
        lines = "water 700 ml at 45 C\nsodium sulfite (anhydrous) 190 g\nwater to make 1 l\n"
        self.put("coot.scruple", "recipe Coot\nkeeps 6 months\n" + lines + "recipe Rail\n" + lines)
        card = self.json("card", "Coot")
        self.assertEqual(card["warnings"], [])
        self.assertIn("in a cold store, at 5 °C, crystals of", card["notes"][0])
        self.assertEqual(self.json("card", "Rail")["notes"], [])

    def test_as_much_as_films_take_by_the_capacity(self):
        # 4 films per 1 l: six take 1.5 l.
        card = self.json("card", "Heron", "working", "--films", "6", "135")
        self.assertEqual(card["makes"], {"value": 1500, "unit": "ml"})
        both = self.json("card", "Heron", "working", "--films", "2", "135", "--films", "4", "135")
        self.assertEqual(both["makes"], card["makes"])

    def test_as_much_as_a_jar_allows(self):
        card = self.json("card", "Tern", "--with", "sodium sulfite (anhydrous) 43 g")
        self.assertAlmostEqual(card["makes"]["value"], 43 / 30 * 1000, delta=1)

    def test_drops_are_counted_with_the_dropper_of_the_chosen_bench(self):
        self.put("benches.scruple", "bench Marsh\n    dropper   10 drops per 1 ml water\n"
                                    "bench Dune\n    dropper   40 drops per 1 ml water\n")
        self.put("drops.scruple", "recipe Teasel\n    water   900 ml\n"
                                  "    potassium bromide (10 % w/v)   20 drops\n    water to make   1 l\n")
        # 20 drops are 2 ml or 0.5 ml of a solution of 0.1 g a ml, in 1 l.
        for bench, grams in (("Marsh", 0.2), ("Dune", 0.05)):
            card = self.json("card", "Teasel", "--bench", bench)
            held = {row["chemical"]: row["g_per_l"] for row in card["contents"]}
            self.assertAlmostEqual(held["potassium bromide"], grams, places=6)

    def test_the_only_bench_is_used_and_one_of_several_must_be_named(self):
        self.put("bench.scruple", "bench Marsh\n    balance   1 g up to 500 g\n")
        self.assertEqual(self.grams(self.json("card", "Tern", "--make", "210ml")), {"sodium sulfite": 6})
        self.put("other.scruple", "bench Dune\n    balance   0.1 g up to 500 g\n")
        self.assertIn("`Marsh` or `Dune`", self.refused("card", "Tern"))
        self.assertEqual(self.grams(self.json("card", "Tern", "--make", "110ml", "--bench", "dune")),
                         {"sodium sulfite": 3.3})

    def test_variants_must_be_named(self):
        self.put("gull.scruple", "recipe Gull\n    variants soft, hard\n    water 700 ml\n"
                                 "    potassium bromide 1 g soft, 2 g hard\n    water to make 1 l\n")
        self.assertIn("`soft` or `hard`", self.refused("card", "Gull"))
        self.assertEqual(self.grams(self.json("card", "Gull", "--variant", "Hard")), {"potassium bromide": 2})

    def test_the_day_of_mixing_is_on_the_card(self):
        self.assertIn("2026-12-03", self.scruple("card", "Tern", "--mixed", "2026-12-03"))

    def test_the_ph_is_on_the_card_and_moves_with_the_temperature(self):
        # 5 g/l sodium carbonate: 11.352 at 20 C and 11.244 at 25 C (tests/reference/phreeqc_pH.csv, S06).
        self.put("knot.scruple", "recipe Knot\nwater 800 ml\nsodium carbonate (anhydrous) 5 g\nwater to make 1 l\n")
        for words, celsius, wanted in (([], 20, 11.352), (["--at", "25", "C"], 25, 11.244), (["--at", "77F"], 25, 11.244)):
            ph = self.json("card", "Knot", *words)["ph"]
            self.assertAlmostEqual(ph["at"], celsius)
            self.assertAlmostEqual(ph["value"], wanted, delta=0.03)
            self.assertLess(ph["low"], wanted)
            self.assertGreater(ph["high"], wanted)
        self.assertIn("pH at 25\u00a0°C", self.scruple("card", "Knot", "--at", "25C"))
        for wrong in ("5 g", "70 C", "-2 C", "20 to 24 C", "warm"):
            self.refused("card", "Knot", "--at", wrong)

    def test_where_something_is_not_known_in_water_no_ph_is_given(self):
        self.put("skua.scruple", "recipe Skua\nwater 800 ml\ncopper sulfate (pentahydrate) 9 g\nwater to make 1 l\n")
        ph = self.json("card", "Skua")["ph"]
        self.assertIsNone(ph["value"])
        self.assertIn("Cu+2", ph["text"])
        self.assertIn("nothing is known of Cu+2 in water", self.scruple("card", "Skua"))


class Scaled(Workspace):
    def setUp(self):
        super().setUp()
        self.put("in/heron.scruple", HERON + "\n" + TERN)

    def test_a_scaled_recipe_compiles_and_keeps_its_comments(self):
        for name, comment in {"Heron": "# the shed is cold", "Tern": "# by the open window"}.items():
            text = self.scruple("scaled", name, "--make", "2l", "--in", "in")
            self.assertIn(comment, text)
            self.put("out/scaled.scruple", text)
            self.scruple("check", "--in", "out")

    def test_by_three_and_by_a_third_is_where_it_began(self):
        once = self.scruple("scaled", "Tern", "--make", "3l", "--in", "in")
        self.assertRegex(once, r"sodium sulfite \(anhydrous\) +90 g")
        self.put("out/scaled.scruple", once)
        back = self.scruple("scaled", "Tern", "--make", "1l", "--in", "out")
        self.assertEqual(back, TERN)

    def test_more_figures_than_a_number_has_are_refused_and_not_written(self):
        self.put("in/heron.scruple", TERN.replace("30 g", "0.123456789 g"))
        self.assertIn("more figures", self.refused("scaled", "Tern", "--make", "700ml", "--in", "in"))
        self.assertIn("0.246913578 g", self.scruple("scaled", "Tern", "--make", "2l", "--in", "in"))

    def test_solutions_that_scale_differently_must_be_named(self):
        self.put("in/heron.scruple", HERON.replace("water to make                  1 l\n\npart B",
                                                   "water to make                  2 l\n\npart B"))
        self.assertIn("`Heron part A`", self.refused("scaled", "Heron", "--make", "500ml", "--in", "in"))
        text = self.scruple("scaled", "Heron", "part", "A", "--make", "500ml", "--in", "in")
        self.assertRegex(text, r"sodium carbonate \(anhydrous\) +12.5 g")


ROOK = """\
recipe Rook
    variants   soft, normal
    water                          820 ml at 40 C
    sodium sulfite (anhydrous)     30 g, 3 g now
    sodium ascorbate               6 g soft, 9 g normal
    sodium sulfite                 the rest
    sodium carbonate (anhydrous)   20 g   # the good jar
    potassium bromide              2 g, slowly
    water to make                  1 l
"""
SHELF = """\
log
    2026-11-20 on shelf   sodium sulfite (heptahydrate) 500 g
    2026-11-20 on shelf   ascorbic acid 100 g
    2026-11-20 on shelf   sodium bicarbonate 100 g
    2026-11-20 on shelf   sodium carbonate (anhydrous, 20 % w/v) 500 ml
    2026-11-20 on shelf   bromide stock 100 ml

recipe bromide stock
    water                          80 ml
    potassium bromide              10 g
    water to make                  100 ml
"""


class Substitution(Workspace):
    def setUp(self):
        super().setUp()
        self.put("in/rook.scruple", ROOK)
        self.put("in/shelf.scruple", SHELF)

    def card(self, *words, folder="in"):
        return self.json("card", "Rook", *words, "--in", folder)

    def test_each_missing_chemical_is_come_by_in_the_best_way(self):
        card = self.card("--from-shelf", "--variant", "normal")
        grams = {row["chemical"]: row["amount"]["value"] for row in card["gather"]}
        # 9 g sodium ascorbate, 198.106 g/mol, from ascorbic acid, 176.124 g/mol; 4 % more bicarbonate, 84.006 g/mol
        self.assertAlmostEqual(grams["ascorbic acid"], 9 / 198.106 * 176.124, delta=0.005)
        self.assertAlmostEqual(grams["sodium bicarbonate"], 9 / 198.106 * 84.006 * 1.04, delta=0.005)
        # Heptahydrate for anhydrous sulfite: 2.0005 (The Darkroom Cookbook, 3rd ed., p. 330, has 2.0)
        self.assertAlmostEqual(grams["sodium sulfite"], 30 * 2.0005, delta=0.01)
        self.assertEqual(grams["bromide stock"], 20)
        self.assertEqual(grams["sodium carbonate"], 100)
        kinds = {row["wanted"].split(" (")[0]: row["kind"] for row in card["substituted"]}
        self.assertEqual(len(kinds), 4)
        self.assertTrue(all(kind.startswith("same species, exact") for kind in kinds.values()))
        in_it = {row["chemical"]: row["g_per_l"] for row in card["contents"]}
        self.assertAlmostEqual(in_it["potassium bromide"], 2, delta=0.001)
        # What the reaction leaves over: 4 % of 3.816 g.
        self.assertAlmostEqual(in_it["sodium bicarbonate"], 9 / 198.106 * 84.006 * 0.04, delta=0.001)
        # 9 g give 45.43 mmol of gas, at 24.465 l a mole (ideal gas, 25 °C, 1 atm).
        vessel = next(line for line in card["work"] if line["do"] == "open vessel")["details"]
        self.assertIn("gives off about 1.11\u00a0l of carbon dioxide", vessel)
        # 5 ml a gram of acid, and 0.30 ml or 0.75 ml a gram for what dissolves in it, three times over.
        self.assertIn("an open vessel that holds at least 142\u00a0ml", vessel)

    def test_the_text_with_what_there_is_gives_the_same_card(self):
        for batch in ([], ["--make", "2l"], ["--make", "300ml"]):
            text = self.scruple("scaled", "Rook", "--from-shelf", "--variant", "normal", *batch, "--in", "in")
            was = {"--make": {"2l": 40, "300ml": 6}}.get(batch[0], {}).get(batch[1]) if batch else 20
            self.assertIn(f"# the good jar; in place of {was} g sodium carbonate (anhydrous)", text)
            self.put("out/rook.scruple", text)
            self.put("out/shelf.scruple", SHELF)
            self.scruple("check", "--in", "out")
            for variant in ("soft", "normal"):
                wanted = self.card("--from-shelf", "--variant", variant, *batch)
                got = self.card("--variant", variant, folder="out")
                for key in ("makes", "gather", "contents"):
                    self.assertEqual(got[key], wanted[key], f"{key} of {text}")
                without_origin = [{k: v for k, v in line.items() if k != "details"} for line in got["work"]]
                self.assertEqual(without_origin, [{k: v for k, v in line.items() if k != "details"}
                                                  for line in wanted["work"]], text)

    def test_one_that_is_named_is_come_by_in_another_way(self):
        card = self.card("--instead", "sodium ascorbate", "--variant", "soft")
        self.assertEqual(len(card["substituted"]), 1)
        self.assertIn("made from", card["substituted"][0]["taken"])
        text = self.scruple("scaled", "Rook", "--instead", "Sodium Ascorbate", "--in", "in")
        self.assertIn("6 g soft, 9 g normal, by conversion", text)

    def test_the_jar_of_a_reagent_sizes_the_text(self):
        # 8.001 g of ascorbic acid for 9 g of its sodium salt: 16.002 g are twice the batch.
        text = self.scruple("scaled", "Rook", "--instead", "sodium ascorbate", "--with", "ascorbic acid 16.0025 g",
                            "--variant", "normal", "--in", "in")
        whole, above, below = map(int, re.search(r"water to make +(\d+) (\d+)/(\d+) l", text).groups())
        self.assertAlmostEqual(whole + above / below, 16.0025 / (9 / 198.106 * 176.124), delta=0.0001)

    def test_what_cannot_be_come_by_is_refused_with_the_ways_there_are(self):
        message = self.refused("card", "Rook", "--variant", "soft", "--instead", "sodium carbonate (anhydrous)",
                               "--instead", "sodium sulfite (anhydrous)", "--in", "in",
                               "--make", "30l")
        self.assertIn("There is no way to 600", message)
        self.assertIn("500\u00a0ml sodium carbonate (anhydrous, 20\u00a0% w/v) on hand, 3000\u00a0ml needed", message)
        self.assertIn("advice only, by heat", message)

    def test_every_conversion_of_the_library_can_be_worked(self):
        library = (ROOT / "src/library/conversions.scruple").read_text(encoding="utf-8")
        blocks = [block for block in library.split("conversion of ")[1:]]
        worked = [block for block in blocks if re.search(r" per 1 g ", block)]
        self.assertGreaterEqual(len(worked), 12)
        for block in blocks:
            self.assertRegex(block, r"(?m)^    source ", block)
        for block in worked:
            product = block.splitlines()[0]
            left = re.search(r"reaction +(.*?) ->", block).group(1)
            reagents = [re.sub(r"^\d+ ", "", term) for term in left.split(" + ") if term != "water"]
            self.put("one/shelf.scruple", "log\n" + "".join(f"    2026-11-20 on shelf {name} 1 kg\n" for name in reagents))
            self.put("one/dunlin.scruple", f"recipe Dunlin\n    water 900 ml\n    {product} 10 g\n    water to make 1 l\n")
            card = self.json("card", "Dunlin", "--instead", product, "--in", "one")
            for name in reagents:
                self.assertIn(name.split(" (")[0], card["substituted"][0]["taken"])
            self.assertAlmostEqual(card["contents"][0]["g_per_l"], 10, delta=0.001)

    def test_more_lines_than_a_solution_has_are_refused(self):
        lines = "    sodium ascorbate 1 mg, by conversion\n" * 1001
        self.put("long/dunlin.scruple", f"recipe Dunlin\n    water 900 ml\n{lines}    water to make 1 l\n")
        self.assertIn("1000 are the most", self.refused("card", "Dunlin", "--in", "long"))

    def test_names_that_do_not_fit(self):
        self.assertIn("no line asks for an amount of `metol`",
                      self.refused("card", "Rook", "--variant", "soft", "--instead", "metol", "--in", "in"))
        self.assertIn("`sodium ascorbate`",
                      self.refused("card", "Rook", "--variant", "soft", "--instead", "sodium askorbate", "--in", "in"))
        self.assertIn("form of sodium carbonate",
                      self.refused("card", "Rook", "--variant", "soft", "--instead", "sodium carbonate (wet)",
                                   "--in", "in"))


class Tidy(Workspace):
    untidy = "recipe   Tern\nwater   700 ml\n\n\n\n   # note\nmetol    5 g\nwater to make 1 l"

    def test_files_are_rewritten_once(self):
        self.put("tern.scruple", self.untidy)
        self.assertIn("tern.scruple\n1 file looked at, 1 changed", self.scruple("tidy"))
        tidy = self.text("tern.scruple")
        self.assertNotEqual(tidy, self.untidy)
        self.assertIn("# note", tidy)
        self.assertIn("1 file looked at, 0 changed", self.scruple("tidy"))
        self.assertEqual(self.text("tern.scruple"), tidy)
        self.assertEqual(self.names(), ["tern.scruple"])

    def test_check_lists_and_changes_nothing(self):
        self.put("tern.scruple", self.untidy)
        self.assertIn("tern.scruple\n1 file looked at, 1 would change", self.scruple("tidy", "--check", status=FAULTS))
        self.assertEqual(self.text("tern.scruple"), self.untidy)
        self.scruple("tidy")
        self.scruple("tidy", "--check")

    def test_a_file_with_a_line_that_cannot_be_read_is_left_and_others_are_done(self):
        broken = self.untidy + "\n)(\n"
        self.put("a.scruple", broken)
        self.put("b.scruple", self.untidy)
        self.put("c.scruple", b"\xff")
        done = self.run_scruple("tidy")
        self.assertEqual(done.returncode, FAULTS)
        self.assertIn(b"a.scruple is left as it is: line 9 cannot be read", done.stderr)
        self.assertIn(b"c.scruple is left as it is", done.stderr)
        self.assertIn(b"3 files looked at, 1 changed", done.stdout)
        self.assertEqual(self.text("a.scruple"), broken)
        self.assertNotEqual(self.text("b.scruple"), self.untidy)

    def test_files_and_folders_may_be_named(self):
        self.put("a.scruple", self.untidy)
        self.put("deep/b.scruple", self.untidy)
        self.scruple("tidy", "deep")
        self.assertEqual(self.text("a.scruple"), self.untidy)
        self.assertNotEqual(self.text("deep/b.scruple"), self.untidy)
        files = self.json("tidy", "a.scruple", "deep/b.scruple")["files"]
        self.assertEqual([(f["file"], f["state"]) for f in files],
                         [("a.scruple", "changed"), ("deep/b.scruple", "unchanged")])


class Chemicals(Workspace):
    def test_a_chemical_by_any_of_its_names(self):
        card = self.scruple("chemical", "sodium carbonate")
        self.assertIn("497-19-8", card)  # CAS registry number of sodium carbonate
        self.assertEqual(self.scruple("chemical", "washing", "soda"), card)
        self.assertIn("</html>", self.scruple("chemical", "washing soda", "--as", "html"))

    def test_weighing_another_form(self):
        # Molar masses 105.988 and 124.003 g/mol (CIAAW 2021 abridged weights): 30 g is 35.10 g.
        for words in (["30 g sodium carbonate (anhydrous)"], ["30", "g", "sodium", "carbonate", "(anhydrous)"],
                      ["sodium carbonate (anhydrous) 30 g"]):
            found = self.json("weigh", *words, "--as-form", "monohydrate")
            self.assertAlmostEqual(found["as"][0]["amount"]["value"], 30 * 124.003 / 105.988, delta=0.01)
            self.assertAlmostEqual(found["mol"], 30 / 105.988, delta=0.0001)
        self.assertIn("35.1\u00a0g", self.scruple("weigh", "30 g sodium carbonate (anhydrous)", "--as-form", "Monohydrate"))

    def test_without_a_form_all_others_are_shown(self):
        found = self.json("weigh", "1 oz av sodium carbonate (monohydrate)")
        self.assertEqual({row["form"] for row in found["as"]}, {"anhydrous", "decahydrate"})
        # An avoirdupois ounce is 28.349523125 g (NIST Handbook 44, appendix C).
        self.assertAlmostEqual(found["amount"]["value"], 28.35, delta=0.005)

    def test_forms_that_are_not_there(self):
        message = self.refused("weigh", "30 g sodium carbonate (anhydrous)", "--as-form", "dodecahydrate")
        self.assertIn("`decahydrate`", message)


class Shopping(Workspace):
    def test_a_plan_becomes_a_list(self):
        self.put("month.scruple", HERON + re.sub(r"(?m)^ +\| ?", "    ", """
            process roll film
            | Heron working   8 min at 20 C
            plan December
            | 2026-12-03   8 films 135 through roll film
        """).replace("            ", ""))
        wanted = self.scruple("shopping", "December")
        self.assertIn("hydroquinone", wanted)
        self.assertEqual(self.scruple("shopping"), wanted)
        # 8 films at 4 per litre: 2 l working, 0.5 l of part A, 5 g.
        rows = self.json("shopping", "december")["chemicals"]
        need = {row["chemical"]: row["needed"] for row in rows if "hydroquinone" in row["chemical"]}
        self.assertEqual(need["hydroquinone"], {"value": 5, "unit": "g"})

    def test_degrees_of_another_scale_are_read_to_half_a_degree(self):
        # (120 - 32) × 5/9 = 48.89; (125 - 32) × 5/9 = 51.67, NIST SP 811, appendix B.
        self.put("a.scruple", "recipe Siskin\n    water                        700 ml at 120 to 125 F\n"
                              "    sodium sulfite (anhydrous)   20.3 g\n    cool to 20.3 C\n"
                              "    water to make                1 l\n")
        card = self.scruple("card", "Siskin").replace("\u00a0", " ")
        self.assertIn("49 to 51.5 °C", card)
        self.assertIn("20.3 °C", card)
        self.assertNotIn("48.89", card)

    def test_a_check_says_how_many_files_it_looked_through(self):
        fine = "    water           500 ml\n    water to make   1 l\n"
        for name in ("Siskin", "Finch", "Knot"):
            self.put(f"{name}.scruple", f"recipe {name}\n    metol           5 g\n" + fine)
        self.put("Tern.scruple", "recipe Tern\n" + fine.replace("500 ml", "500 ml\n    metol           2 g"))
        self.assertIn("in 3 of 4 files", self.scruple("check"))
