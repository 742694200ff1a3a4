# SPDX-License-Identifier: MIT
"""Shopping lists and shelves on paper, and bookmarks, which qpdf shows as the document has them."""
import json
import re

from sheets import Sheets, tool
from support import ROOT

DEMO = ("--in", str(ROOT / "recipes"))


class Shopping(Sheets):
    def test_the_list_has_what_is_to_mix_and_to_buy(self):
        path = self.draw("shopping", "December", *DEMO, sheet="a5")
        wanted = self.json("shopping", "December", *DEMO)
        text = re.sub(r"\s+", " ", "\n".join(self.pages(path)).replace("\u00a0", " "))
        for need in wanted["solutions"]:
            self.assertIn(f"{need['to_mix']['value']:g} {need['to_mix']['unit']} {need['solution']}", text)
        bought = [need["buy"] for need in wanted["chemicals"] if need["buy"]]
        self.assertGreater(len(bought), 3)
        for buy in bought:
            self.assertIn(f"{buy['cost']['value']:.2f} {buy['cost']['currency']}", text)
        for total in wanted["totals"]:
            self.assertIn(f"{total['value']:.2f} {total['currency']}", text)

    def test_the_shelf_has_jars_bottles_and_corrections(self):
        path = self.draw("shelf", *DEMO, sheet="a5")
        shelf = self.json("shelf", *DEMO)
        text = re.sub(r"\s+", " ", "\n".join(self.pages(path)).replace("\u00a0", " "))
        for item in shelf["solutions"]:
            for batch in item["batches"]:
                self.assertIn(f"{batch['left']['value']:g} {batch['left']['unit']} {item['solution']}", text)
                self.assertIn(f"use by {batch['use_by']}", text)
        self.assertGreater(len([it for it in shelf["corrections"] if not it["first"]]), 10)
        self.assertIn("CORRECTED BY COUNTING", text.upper())

    def test_a_calendar_has_each_mixing(self):
        text = re.sub(r"\s+", " ", "\n".join(self.pages(self.draw("calendar", *DEMO, sheet="a5"))).replace("\u00a0", " "))
        for day in self.json("calendar", *DEMO)["days"]:
            self.assertIn(day["day"], text)
            for one in day["mixings"]:
                self.assertIn(f"{one['volume']['value']:g} {one['volume']['unit']} {one['solution']}", text)

    def test_an_evening_has_each_step_and_its_time(self):
        call = ("evening", "2026-12-01", "--from", "18:00", *DEMO)
        text = re.sub(r"\s+", " ", "\n".join(self.pages(self.draw(*call, sheet="a5"))).replace("\u00a0", " "))
        for step in self.json(*call)["steps"]:
            self.assertIn(step["clock"], text)
        for one in self.json(*call)["solutions"]:
            self.assertIn(f"{one['solution']}, vessel {one['vessel']}", text)

    def test_type_and_colour(self):
        self.assertGreaterEqual(min(word.points for word in self.words(self.draw("evening", "2026-12-01", *DEMO))), 13.95)
        self.assertGreaterEqual(min(word.points for word in self.words(self.draw("shelf", *DEMO))), 13.95)
        path = self.draw("shopping", "December", *DEMO)
        self.assertGreaterEqual(min(word.points for word in self.words(path)), 13.95)
        for picture in self.pictures(path):
            red, green, blue = picture.split()
            self.assertEqual(red.tobytes(), green.tobytes())
            self.assertEqual(red.tobytes(), blue.tobytes())

    def test_bookmarks_lead_to_the_first_sheet_of_each_card(self):
        path = self.draw("card", "Medlar", *DEMO)
        outlines = json.loads(tool("qpdf", "--json", "--json-key=outlines", str(path)))["outlines"]
        heads = [n for n, page in enumerate(self.pages(path), 1) if "sheet 1 of" in page]
        self.assertEqual([one["destpageposfrom1"] for one in outlines], heads)
        self.assertEqual([one["title"].replace("\u00a0", " ").split(" – ")[0] for one in outlines],
                         ["Medlar, part A", "Medlar, part B", "Medlar, working"])
