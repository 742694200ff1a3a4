# SPDX-License-Identifier: MIT
"""Events of a mixing calendar, read back by python3-icalendar; a shopping list as rows, read back by Python's csv."""
import csv
import datetime
import io

import icalendar
from support import ROOT, WRONG_CALL, Workspace

RECIPES = str(ROOT / "recipes")
MONTH = """\
format 127
    area   80 sq in

recipe {name}
    keeps      {keeps}
    capacity   10 films 127 per 1 l
    water                        700 ml
    sodium sulfite (anhydrous)   100 g
    water to make                1 l

process p
    {name}   5 min

plan Month
    2026-12-01   4 films 127 through p
    2026-12-08   4 films 127 through p
    2026-12-20   4 films 127 through p

supplier {shop}
    sodium sulfite (anhydrous)   500 g   6.00 EUR
"""


class Calendars(Workspace):
    def month(self, name="Plover", keeps="2 weeks", shop="Quay"):
        self.put("month.scruple", MONTH.format(name=name, keeps=keeps, shop=shop))

    def events(self, *call):
        text = self.run_scruple("calendar", *call, "--as", "ics").stdout
        self.assertTrue(all(len(line) <= 75 for line in text.split(b"\r\n")), "a line is longer than 75 bytes")
        self.assertNotIn(b"\n", text.replace(b"\r\n", b""))
        calendar = icalendar.Calendar.from_ical(text)
        self.assertEqual(calendar["VERSION"], "2.0")
        self.assertTrue(calendar["PRODID"])
        return calendar.walk("VEVENT")

    def test_nothing_is_used_past_its_time(self):
        # Two weeks from the 1st end on the 15th: the 8th is in time, the 20th is not.
        self.month()
        days = self.json("calendar")["days"]
        self.assertEqual([day["day"] for day in days], ["2026-12-01", "2026-12-20"])
        first = days[0]["mixings"][0]
        self.assertEqual(first["used_on"], ["2026-12-01", "2026-12-08"])
        self.assertEqual(first["use_by"], "2026-12-15")
        self.assertEqual(first["volume"], {"value": 800, "unit": "ml"})

    def test_events_are_whole_days_with_names_of_their_own(self):
        self.month()
        events = self.events()
        found = {(str(e["SUMMARY"]), e["DTSTART"].dt) for e in events}
        self.assertIn(("Mix Plover", datetime.date(2026, 12, 1)), found)
        self.assertIn(("Last day of Plover", datetime.date(2026, 12, 15)), found)
        self.assertIn(("Discard Plover", datetime.date(2026, 12, 16)), found)
        for event in events:
            self.assertEqual(event["DTEND"].dt - event["DTSTART"].dt, datetime.timedelta(days=1))
            self.assertTrue(event["DTSTAMP"])
        names = [str(e["UID"]) for e in events]
        self.assertEqual(len(names), len(set(names)))
        self.assertEqual(names, [str(e["UID"]) for e in self.events()])

    def test_names_come_back_as_they_were(self):
        name = "Plover; a, b: " + "ä" * 60
        self.month(name=f'"{name}"')
        self.assertIn(f"Mix {name}", {str(e["SUMMARY"]) for e in self.events()})

    def test_the_demo_goes_through(self):
        events = self.events("December", "--in", RECIPES)
        self.assertGreater(len(events), 3)
        self.assertIn("ics", self.refused("calendar", "December", "--in", RECIPES, "--as", "csv"))

    def test_a_year_of_lines_comes_to_an_end(self):
        self.month()
        day = datetime.date(2027, 1, 1)
        lines = "".join(f"    {day + datetime.timedelta(days=i)}   4 films 127 through p\n" for i in range(500))
        self.put("year.scruple", "plan Year\n" + lines)
        days = self.json("calendar", "Year")["days"]
        self.assertEqual(len(days), 34)  # Fifteen days a mixing, the day itself and two weeks: 500 / 15.


class Rows(Workspace):
    def rows(self, *call):
        text = self.run_scruple("shopping", *call, "--as", "csv").stdout.decode()
        self.assertNotIn("\n", text.replace("\r\n", ""))
        rows = list(csv.reader(io.StringIO(text, newline="")))
        self.assertEqual({len(row) for row in rows}, {13})
        return rows

    def test_what_is_bought_and_what_it_costs(self):
        rows = self.rows("December", "--in", RECIPES)
        document = self.json("shopping", "December", "--in", RECIPES)
        bought = [row for row in rows if row[0] == "buy"]
        packs = sum(len(c["buy"]["packs"]) for c in document["chemicals"] if c["buy"])
        self.assertEqual(len(bought), packs)
        total = sum(float(row[10]) for row in rows[1:] if row[0] in ("buy", "postage"))
        self.assertAlmostEqual(total, document["totals"][0]["value"])

    def test_no_name_is_a_formula(self):
        for name in ("=1+1", "+1", "-1", "@sum", "=cmd|' /C calc'!A0", '=\t"x"'.replace('"', "")):
            with self.subTest(name):
                self.put("month.scruple", MONTH.format(name=f'"{name}"', keeps="2 weeks", shop=f'"{name}"'))
                rows = self.rows("Month")
                for row in rows[1:]:
                    for cell in row:
                        self.assertFalse(cell.lstrip(" ").startswith(tuple("=+-@\t\r")), row)
                self.assertIn("'" + name, {row[1] for row in rows})

    def test_other_commands_have_no_rows(self):
        self.refused("card", "Plover", "--as", "csv", status=WRONG_CALL)
