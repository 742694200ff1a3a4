# SPDX-License-Identifier: MIT
"""Shopping lists of a plan with more or less in it, against plans that say the same. Amounts by hand."""
from support import WRONG_CALL, Workspace

MONTH = """\
format 127
    area   80 sq in

recipe Plover
    is a       fixer
    keeps      2 months
    capacity   10 films 127 per 1 l
    water                        700 ml
    sodium sulfite (anhydrous)   100 g
    water to make                1 l

process p
    Plover   5 min

process q
    Plover   5 min

supplier Quay
    sodium sulfite (anhydrous)   500 g   6.00 EUR

plan Month
    2026-12-01   4 films 127 through p
    2026-12-08   4 films 127 through p
    2026-12-20   4 films 127 through q
{more}
"""


class WhatIf(Workspace):
    def month(self, more=""):
        self.put("month.scruple", MONTH.format(more=more))

    def otherwise(self, *call):
        [compared] = self.json("shopping", *call)["compared"]
        return [line.replace("\u00a0", " ") for line in compared["lines"]]

    def mixed(self, *call):
        return [(s["solution"], s["to_mix"]) for s in self.json("shopping", *call)["solutions"]]

    def test_more_is_as_if_the_plan_said_so(self):
        self.month()
        more = ("--with", "60 films 127 through p")
        asked, otherwise = self.json("shopping", *more), self.otherwise(*more)
        self.month("    2026-12-20   60 films 127 through p")
        written = self.json("shopping")
        for key in ("solutions", "chemicals", "totals", "waste"):
            self.assertEqual(asked[key], written[key])
        # 72 films take 7.2 l with 720 g: two packs of 500 g; 12 films take one.
        self.assertEqual(asked["totals"], [{"value": 12, "currency": "EUR"}])
        self.assertIn("this list costs 12.00 EUR, the plan as it is written costs 6.00 EUR: 6.00 EUR more", otherwise)
        self.assertIn("7200 ml of Plover to mix, and not 1200 ml", otherwise)

    def test_less_is_a_day_or_a_process(self):
        self.month()
        self.assertEqual(self.mixed(), [("Plover", {"value": 1200, "unit": "ml"})])
        self.assertEqual(self.mixed("--without", "2026-12-08"), [("Plover", {"value": 800, "unit": "ml"})])
        self.assertEqual(self.mixed("--without", "p"), [("Plover", {"value": 400, "unit": "ml"})])
        self.assertEqual(self.mixed("--without", "q", "--without", "2026-12-01"),
                         [("Plover", {"value": 400, "unit": "ml"})])
        self.refused("shopping", "--without", "2026-12-09", status=WRONG_CALL)
        self.refused("shopping", "--with", "some films", status=WRONG_CALL)

    def test_two_plans(self):
        self.month("plan Other\n    2027-01-05   2 films 127 through p")
        otherwise = self.otherwise("Month", "--against", "Other")
        self.assertIn("this list costs 6.00 EUR, Other costs 6.00 EUR: as much", otherwise)
        self.assertIn("1200 ml of Plover to mix, and not 200 ml", otherwise)
        self.refused("shopping", "Month", "--against", "Nothing", status=WRONG_CALL)

    def test_what_a_film_costs(self):
        # 10 films a litre: 100 ml with 10 g. A pack of 500 g costs 6.00 EUR: 0.12 EUR.
        self.month()
        [cost] = [one for one in self.json("shopping")["use_costs"] if one["process"] == "p"]
        self.assertEqual(cost["per"], "film 127")
        self.assertEqual(cost["cost"], {"value": 0.12, "currency": "EUR"})
        self.assertEqual(cost["baths"], [{"solution": "Plover", "cost": {"value": 0.12, "currency": "EUR"}}])
        self.assertEqual(cost["unpriced"], [])

    def test_what_holds_silver_stands_apart(self):
        self.month()
        self.assertEqual(self.json("shopping")["waste"],
                         [{"kind": "fixer", "volume": {"value": 1200, "unit": "ml"}, "holds_silver": True}])
