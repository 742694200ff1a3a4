# SPDX-License-Identifier: MIT
"""The shelf against books kept a second time (log_books.py) over invented logs of a year and more."""
import datetime
import json
import os
import random
import re
from fractions import Fraction

import log_books
from log_books import Books, Maker, in_order, months_later, text_of
from support import ROOT, Workspace

LEAP_DAY = datetime.date(2028, 2, 29)
SUPPLIER = "supplier Kiln Lane\n    metol   25 g   8.40 EUR\n"


def name_of(item):
    if "solution" in item:
        return item["solution"]
    return f"{item['chemical']} ({item['form']})" if item["form"] else item["chemical"]


class Shown(Workspace):
    def shelf(self, *words):
        shelf = json.loads(self.scruple("shelf", *words, "--as", "json").replace("\u00a0", " "))
        return shelf, {name_of(item): item for item in shelf["chemicals"] + shelf["solutions"]}

    def in_base_units(self, amount):
        return Fraction(amount["exact"]) * (1000 if amount["unit"] in ("kg", "l") else 1)


class Shelf(Shown):
    def write(self, lines, files=3):
        """In several files, which the program reads in the order of their names."""
        self.put("recipes.scruple", log_books.RECIPES + SUPPLIER)
        step = len(lines) // files + 1
        for n in range(files):
            some = lines[n * step:(n + 1) * step]
            self.put(f"log-{n}.scruple", "log\n" + "".join(text_of(line) + "\n" for line in some))

    def hold(self, items, shelf, books):
        self.assertEqual(set(items), {what for what in books.jars} | set(books.came) | set(books.went))
        for what, item in items.items():
            book = {side: Fraction(amount) for side, amount in item["book"].items()}
            self.assertEqual(book["on_hand"], books.held(what), what)
            self.assertEqual(book["wanting"], books.wanting.get(what, 0), what)
            self.assertEqual(book["received"] + book["mixed"] + book["first_count"] + book["corrections"],
                             books.came.get(what, 0), what)
            went = ["into_mixing", "processed", "used", "replenishing", "discarded"]
            self.assertEqual(sum(book[side] for side in went), books.went.get(what, 0), what)
            self.assertEqual(book["received"] + book["mixed"] + book["first_count"] + book["corrections"]
                             + book["wanting"], book["on_hand"] + sum(book[side] for side in went), what)
            self.assertGreaterEqual(book["on_hand"], 0)
            jars = [(jar["date"], self.in_base_units(jar["left"])) for jar in item.get("jars", item.get("batches"))]
            kept = books.jars.get(what, [])[books.first.get(what, 0):]
            self.assertEqual(jars, [(str(day), left) for day, _, left in kept if left > 0], what)
        self.assertEqual([(it["date"], it["what"], self.in_base_units(it["by"])) for it in shelf["corrections"]],
                         [(str(day), what, by) for day, what, by in books.corrections])
        self.assertEqual([(it["date"], it["what"], self.in_base_units(it["wanting"])) for it in shelf["faults"]],
                         [(str(day), what, by) for day, what, by in books.faults])

    def test_the_books_balance_exactly(self):
        for seed in range(12):
            lines = Maker(seed, 60 + 150 * seed).lines
            self.write(lines)
            shelf, items = self.shelf()
            with self.subTest(seed):
                self.hold(items, shelf, Books(in_order(lines)))

    def test_a_hundred_thousand_lines(self):
        lines = Maker(2028, 100_000).lines
        self.write(lines)
        shelf, items = self.shelf()
        self.hold(items, shelf, Books(in_order(lines)))

    def test_each_day_sees_its_own_lines_and_those_before(self):
        lines = Maker(77, 900).lines
        self.write(lines)
        days = [LEAP_DAY, LEAP_DAY + datetime.timedelta(1), LEAP_DAY - datetime.timedelta(1),
                datetime.date(2027, 12, 1), datetime.date(2027, 12, 31), datetime.date(2028, 4, 30),
                datetime.date(2030, 1, 1)]
        for day in days:
            with self.subTest(day):
                shelf, items = self.shelf("--on", str(day))
                self.hold(items, shelf, Books(in_order(lines), day))
                self.assertEqual(shelf["lines_after"], sum(line[0] > day for line in lines))

    def test_a_fault_names_its_line(self):
        lines = Maker(5, 300).lines
        self.write(lines)
        shelf, _ = self.shelf()
        self.assertGreater(len(shelf["faults"]), 20)
        for fault in shelf["faults"] + shelf["corrections"]:
            name, line = fault["where"].rsplit(":", 1)
            self.assertIn(fault["date"], self.text(name).splitlines()[int(line) - 1])

    def test_use_by_dates_follow_the_calendar(self):
        lines = Maker(9, 500).lines
        self.write(lines)
        on = max(line[0] for line in lines)
        _, items = self.shelf()
        kept = 0
        for batch in items[log_books.A]["batches"]:
            if batch["how"] != "mixed":
                continue
            kept += 1
            full = Fraction(batch["left"]["exact"]) >= Fraction(batch["amount"]["exact"]) * Fraction(9, 10)
            use_by = months_later(datetime.date.fromisoformat(batch["date"]), 6 if full else 2)
            self.assertEqual(batch["use_by"], str(use_by))
            self.assertEqual(any("past its use-by" in warning for warning in batch["warnings"]), use_by < on)
        self.assertGreater(kept, 0)

    def test_time_zones_do_not_matter(self):
        self.write(Maker(3, 400).lines)
        outputs = {self.scruple("shelf", "--on", "2028-02-29", "--as", "json", env=os.environ | {"TZ": zone})
                   for zone in ("Pacific/Kiritimati", "America/Adak", "UTC")}
        self.assertEqual(len(outputs), 1)


class DemoBooks(Shown):
    """The demo's recipes, with conversions, percent stocks and other forms: each book balances by itself, and the jars
    are what is on hand. Receipts, counts and what was used are summed from the lines."""

    CHEMICALS = ["sodium sulfite (anhydrous)", "sodium sulfite (heptahydrate)", "metol", "hydroquinone", "phenidone",
                 "borax (decahydrate)", "sodium hydroxide", "potassium bromide", "benzotriazole", "ascorbic acid",
                 "sodium bicarbonate", "potassium carbonate (anhydrous)", "citric acid (monohydrate)"]
    SOLUTIONS = ["Medlar part A", "Medlar part B", "Medlar working", "Damson", "Damson working", "Bullace", "Sloe",
                 "bromide stock", "phenidone stock", "benzotriazole stock"]

    def demo_lines(self, seed, count):
        chance, day = random.Random(seed), datetime.date(2027, 1, 1)
        for _ in range(count):
            day += datetime.timedelta(chance.choice([0, 0, 1, 2]))
            chemical, solution, amount = chance.choice(self.CHEMICALS), chance.choice(self.SOLUTIONS), chance.randint(1, 900)
            yield day, chance.choice([f"received {chemical} {amount} g", f"received {chemical} {amount} g",
                                      f"mixed {solution} {amount} ml", f"mixed {solution} {amount} ml",
                                      f"used {chemical} {amount % 30 + 1} g", f"on shelf {chemical} {amount} g",
                                      f"on shelf {solution} {amount} ml", f"discarded {solution}",
                                      f"discarded {chemical}", f"discarded {solution} {amount % 90 + 1} ml",
                                      f"processed {amount % 6 + 1} films 135 in {chance.choice(['Medlar working', 'Bullace'])}",
                                      f"processed {amount % 20 + 1} sheets 8x10 in in Damson working"])

    def test_every_book_balances(self):
        for path in (ROOT / "recipes").glob("*.scruple"):
            if path.name != "log.scruple":
                self.put(path.name, path.read_bytes())
        for seed in range(8):
            lines = list(self.demo_lines(seed, 400))
            self.put("log.scruple", "log\n" + "".join(f"    {day} {words}\n" for day, words in lines))
            _, items = self.shelf()
            for what, item in items.items():
                book = {side: Fraction(amount) for side, amount in item["book"].items()}
                came = sum(book[side] for side in ("received", "mixed", "first_count", "corrections", "wanting"))
                self.assertEqual(came, sum(book.values()) - came, what)
                jars = item.get("jars", item.get("batches"))
                self.assertEqual(book["on_hand"], sum(self.in_base_units(jar["left"]) for jar in jars), what)
                self.assertTrue(all(Fraction(jar["left"]["exact"]) > 0 for jar in jars), what)
                self.assertGreaterEqual(min(book["on_hand"], book["wanting"]), 0)
                for side, verb in (("received", "received"), ("used", "used")):
                    logged = [words.split()[-2] for _, words in lines if words.startswith(f"{verb} {what} ")]
                    self.assertEqual(book[side], sum(map(int, logged)), what)


class Reading(Workspace):
    """What a person reads before the shelf; the sums are written out."""

    RECIPE = log_books.RECIPES + SUPPLIER + "log\n"

    def shelf(self, log, *words):
        self.put("a.scruple", self.RECIPE + re.sub(r"(?m)^ *\| ?", "    ", log))
        return self.scruple("shelf", *words).replace("\u00a0", " ")

    def batch(self, name, *words):
        (item,) = [item for item in self.json("shelf", *words)["solutions"] if item["solution"] == name]
        return item["batches"][0]

    def test_a_bottle_past_its_date_and_one_that_is_used_up(self):
        out = self.shelf("""| 2028-01-05 received sodium thiosulfate (pentahydrate) 1 kg from Kiln Lane 6.00 EUR
                            | 2028-01-05 mixed Dunlin 1 l
                            | 2028-01-06 processed 12 films 135 in Dunlin
                            | 2028-01-20 processed 1 film 135, 7 films 135 in Dunlin
                            | 2028-05-01 received metol 25 g""")
        # 5 January and three months are 5 April; to 1 May that is 26 days. 20 films are what a litre does. 240 g of a
        # kilogram for 6.00 EUR cost 1.44 EUR.
        self.assertIn("! past its use-by date of 2028-04-05 by 26 days", out)
        self.assertIn("! its capacity is used up", out)
        self.assertIn("through it: 20 films 135; 100 % of its capacity used", out)
        self.assertIn("1.44 EUR", out)
        self.assertIn("1 bottle wants attention", out)
        self.assertIn("- 240 g sodium thiosulfate (pentahydrate), jar of 2028-01-05", out)

    def test_what_is_poured_off_takes_its_part_of_the_capacity_along(self):
        self.shelf("""| 2028-01-05 received sodium thiosulfate (pentahydrate) 1 kg
                      | 2028-01-05 mixed Dunlin 1 l
                      | 2028-01-06 processed 10 films 135 in Dunlin
                      | 2028-01-07 discarded Dunlin 400 ml""")
        batch = self.batch("Dunlin")
        self.assertEqual((batch["left"]["exact"], batch["percent_of_capacity_used"]), ("600", 50))
        # 3 films more take 150 ml of 600, which is a quarter; a count changes nothing of what has gone through.
        self.put("b.scruple", "log\n    2028-01-08 processed 3 films 135 in Dunlin\n    2028-01-09 on shelf Dunlin 900 ml\n")
        batch = self.batch("Dunlin")
        self.assertEqual((batch["left"]["exact"], batch["percent_of_capacity_used"]), ("900", 75))

    def test_the_next_batch_takes_what_the_first_cannot(self):
        self.shelf("""| 2028-01-05 received sodium thiosulfate (pentahydrate) 1 kg
                      | 2028-01-05 mixed Dunlin 1 l
                      | 2028-01-05 mixed Dunlin 500 ml
                      | 2028-01-06 processed 24 films 135 in Dunlin""")
        (item,) = self.json("shelf")["solutions"]
        used = [batch["percent_of_capacity_used"] for batch in item["batches"]]
        self.assertEqual(used, [100, 40])  # 20 films, and 4 of 10

    def test_shopping_counts_on_what_a_bath_can_still_take(self):
        self.shelf("""| 2028-01-05 received sodium thiosulfate (pentahydrate) 1 kg
                      | 2028-01-05 mixed Dunlin 1 l
                      | 2028-01-06 processed 15 films 135 in Dunlin""")
        self.put("b.scruple", """process film
    Dunlin   5 min at 20 C
plan January
    2028-01-09   8 films 135 through film
""")
        (need,) = self.json("shopping")["solutions"]
        # 8 films want 400 ml; 5 of 20 are left of a litre, as 250 ml are.
        self.assertEqual([need[amount]["value"] for amount in ("needed", "on_hand", "to_mix")], [400, 250, 150])

    def test_shopping_tells_a_dozen_of_many_shortages(self):
        self.shelf("".join(f"| 2028-01-05 used metol {n} g\n" for n in range(1, 31)))
        self.put("b.scruple", "process film\n    Dunlin   5 min at 20 C\n"
                              "plan January\n    2028-01-09   8 films 135 through film\n")
        told = [warning for warning in self.json("shopping")["warnings"] if "than there was" in warning]
        self.assertEqual(len(told), 12)
        self.assertIn("there are 18 more such lines", self.scruple("shopping").replace("\u00a0", " "))

    def test_costs_say_what_has_no_price_and_never_nought(self):
        out = self.shelf("""| 2028-01-05 received metol 100 g from Kiln Lane 20.00 EUR
                            | 2028-01-05 received sodium sulfite (anhydrous) 1 kg from Kiln Lane 10.00 EUR
                            | 2028-01-05 received hydroquinone 100 g
                            | 2028-01-05 received potassium bromide 50 g from Kiln Lane 5.00 EUR
                            | 2028-01-05 on shelf propylene glycol 100 ml
                            | 2028-01-06 mixed Linnet part A 1.5 l""")
        # 5 g of metol 1.00, 100 g of sulfite 1.00, 12.5 ml of 10 % from 1.25 g of bromide 0.125: 2.125 EUR.
        self.assertIn("at least 2.13 EUR", out)
        self.assertIn("not in its cost: hydroquinone, propylene glycol", out)
        self.assertNotIn(" 0.00", out)
        batch = self.batch("Linnet part A")
        self.assertEqual(batch["cost"]["without_price"], ["hydroquinone", "propylene glycol"])

    def test_half_a_batch_costs_half(self):
        self.shelf("""| 2028-01-05 received sodium thiosulfate (pentahydrate) 480 g from Kiln Lane 4.80 EUR
                      | 2028-01-05 mixed Dunlin 2 l
                      | 2028-01-06 discarded Dunlin 1 l""")
        self.assertEqual(self.batch("Dunlin")["cost"]["sums"], [{"value": 2.4, "currency": "EUR"}])

    def test_what_is_short_is_told_with_its_line(self):
        out = self.shelf("| 2028-01-05 received metol 10 g\n| 2028-01-06 used metol 25 g for a test\n"
                         "| 2028-01-07 received metol 5 g")
        at = self.text("a.scruple").splitlines().index("    2028-01-06 used metol 25 g for a test") + 1
        self.assertIn(f"! a.scruple:{at}: ", out)
        self.assertIn("takes 15 g more metol than there", " ".join(out.split()))
        out = self.shelf("| 2028-01-05 received metol 10 g\n| 2028-01-06 used metol 25 g\n| 2028-01-08 on shelf metol 4 g")
        self.assertIn("metol: 4 g counted, −15 g by the log", out)
        self.assertIn("+19 g", out)
        self.assertNotIn("MORE TAKEN", out)

    def test_a_replenished_bath_has_an_end(self):
        self.put("b.scruple", """\
recipe Plover
working
    replenish  20 ml per film 135, at most 1 l per 2 l
    water                        500 ml at 45 C
    sodium sulfite (anhydrous)   75 g
    water to make                1 l
replenisher
    water                        500 ml at 45 C
    sodium sulfite (anhydrous)   80 g
    water to make                1 l
""")
        out = self.shelf("""| 2028-01-01 on shelf sodium sulfite (anhydrous) 900 g
                            | 2028-01-02 mixed Plover working 2 l
                            | 2028-01-02 mixed Plover replenisher 2 l
                            | 2028-01-09 processed 30 films 135 in Plover working
                            | 2028-01-09 replenished Plover working 600 ml
                            | 2028-02-09 replenished Plover replenisher 400 ml""")
        batch = self.batch("Plover working")
        self.assertEqual((batch["left"]["exact"], batch["percent_of_capacity_used"]), ("2000", 100))
        self.assertIn("! it has been given as much replenisher as it may get", out)
        self.assertEqual(self.batch("Plover replenisher")["left"]["exact"], "1000")

    def test_which_keeping_time_holds(self):
        """Months by the calendar: from 30 November three of them end on 29 February 2028."""
        cases = {"3 months": ("2028-02-29", "2028-02-29"), "3 months full": ("2028-02-29", None),
                 "2 months half full": ("2028-01-30", "2028-01-30"),
                 "3 months full, 1 to 2 months half full": ("2028-02-29", "2027-12-30"),
                 "3 months full, 10 days": ("2027-12-10", "2027-12-10"),
                 "2 weeks in the tray": (None, None), None: (None, None)}
        for keeps, (full, half) in cases.items():
            recipe = log_books.RECIPES.replace("    keeps      3 months\n", f"    keeps {keeps}\n" if keeps else "")
            for poured, use_by in (("99 ml", full), ("101 ml", half)):
                self.put("a.scruple", recipe + f"""log
    2027-11-30 mixed Dunlin 1 l
    2027-12-01 discarded Dunlin {poured}
""")
                with self.subTest(keeps=keeps, poured=poured):
                    batch = self.batch("Dunlin")
                    self.assertEqual(batch["use_by"], use_by)
                    self.assertNotEqual(batch["use_by_because"], "")

    def test_a_working_solution_lasts_its_day(self):
        self.put("a.scruple", log_books.RECIPES.replace("working\n", "working\n    use within 90 min\n")
                 + "log\n    2027-11-30 mixed Linnet working 1 l\n")
        self.assertEqual(self.batch("Linnet working")["use_by"], "2027-11-30")
        self.assertIn("past its use-by date of 2027-11-30 by 1 day\n",
                      self.scruple("shelf", "--on", "2027-12-01").replace("\u00a0", " "))

    def test_without_a_log_there_is_no_shelf(self):
        self.put("a.scruple", log_books.RECIPES)
        self.assertIn("scruple help log", self.refused("shelf"))
        self.assertIn("2026-02-30", self.refused("shelf", "--on", "2026-02-30"))

    def test_lines_fit_eighty_columns(self):
        for line in self.scruple("shelf", "--in", str(ROOT / "recipes")).splitlines():
            self.assertLessEqual(len(line), 80, line)
