# SPDX-License-Identifier: MIT
"""An evening of the demo on the command line: one pair of hands, by the clock, in vessels of their own."""
from support import ROOT, Workspace

DEMO = ("--in", str(ROOT / "recipes"))


class Evenings(Workspace):
    def evening(self, *more):
        return self.json("evening", "December", "2026-12-01", *more, *DEMO)

    def test_it_has_what_the_calendar_has_on_that_day(self):
        evening = self.evening()
        day = next(day for day in self.json("calendar", "December", *DEMO)["days"] if day["day"] == "2026-12-01")
        self.assertEqual(
            sorted((one["solution"], one["volume"]["value"]) for one in evening["solutions"]),
            sorted((one["solution"], one["volume"]["value"]) for one in day["mixings"]),
        )

    def test_hands_do_one_thing_at_a_time_and_all_is_done_sooner(self):
        evening = self.evening()
        free = 0
        for step in evening["steps"]:
            self.assertGreaterEqual(step["start"], free)
            free = step["start"] + step["hands"]
        self.assertLess(evening["minutes"], evening["one_after_the_other"])
        self.assertGreaterEqual(evening["minutes"], evening["hands"])
        self.assertEqual(sum(step["hands"] for step in evening["steps"]), evening["hands"])

    def test_no_two_solutions_are_in_one_vessel(self):
        for more in ((), ("--vessels", "3")):
            evening = self.evening(*more)
            ends = {}
            for one in evening["solutions"]:
                self.assertGreaterEqual(one["begun"], ends.get(one["vessel"], 0))
                ends[one["vessel"]] = evening["minutes"] + 1 if one["stays_in_vessel"] else one["ready"]
            if more:
                self.assertLessEqual(evening["vessels"], 3)

    def test_the_clock_goes_on_past_midnight(self):
        evening = self.evening("--from", "23:30")
        self.assertEqual(evening["steps"][0]["clock"], "23:30")
        after = next(step for step in evening["steps"] if step["start"] >= 30)
        self.assertEqual(after["clock"], f"0:{after['start'] - 30:02}")

    def test_what_cannot_be_asked_is_told(self):
        self.assertIn("2026-12-05", self.refused("evening", "December", "2026-12-02", *DEMO))
        self.assertIn("which day", self.refused("evening", *DEMO))
        self.assertIn("no day `tomorrow`", self.refused("evening", "December", "tomorrow", *DEMO))
        for time in ("24:00", "18", "18:60", "6pm", "-1:00"):
            self.assertIn("--from 18:00", self.refused("evening", "2026-12-01", f"--from={time}", *DEMO))
        for count in ("0", "two", "-1", "1.5"):
            self.assertIn("--vessels 3", self.refused("evening", "2026-12-01", f"--vessels={count}", *DEMO))
        self.assertIn("too few vessels", self.refused("evening", "2026-12-01", "--vessels", "1", *DEMO))

    def test_what_is_accepted_although_it_must_not_meet_is_told(self):
        self.put("owl.scruple", """\
recipe Owl
    keeps      6 months
    capacity   10 films 135 per 1 l
    accept     acid on sulfide because "it is done outdoors"
    water                        700 ml
    sodium sulfide (nonahydrate) 10 g
    acetic acid (glacial)        10 ml
    water to make                1 l

process p
    Owl   1 min

plan One
    2026-12-01   4 films 135 through p
""")
        [accepted] = self.json("evening", "2026-12-01")["accepted"]
        self.assertEqual((accepted["meeting"], accepted["lethal"]), ("acid on sulfide", True))
        self.assertIn("it is done outdoors", self.scruple("evening", "2026-12-01"))
