# SPDX-License-Identifier: MIT
"""Cards, lists, calendars, logs and binders."""
import pathlib
import sys

sys.path.insert(0, str(pathlib.Path(__file__).parent))
import growth  # noqa: E402
import workspaces as of  # noqa: E402


class Planning(growth.Growth):
    def test_card(self):
        for form in ("text", "html", "json"):
            self.grows_little(40, of.lines, "card", "Reed", "--as", form)

    def test_lines_in_other_ways(self):
        self.grows_little(100, of.lines, "scaled", "Reed", "--make", "5l")
        self.grows_little(100, of.lines, "contents", "Reed")
        self.grows_little(150, of.lines, "why", "Reed", "metol")

    def test_shopping(self):
        for form in ("text", "html", "csv"):
            self.grows_little(60, of.busy_plan, "shopping", "Winter", "--as", form)

    def test_prices(self):
        self.grows_little(100, of.prices, "shopping", "Winter")

    def test_many_wares(self):
        self.grows_little(30, of.wares, "shopping", "Winter")

    def test_many_baths(self):
        for command in ("shopping", "calendar"):
            self.grows_little(30, of.baths, command, "Winter")

    def test_a_chain_of_solutions(self):
        for words in (("shopping", "Winter"), ("calendar", "Winter"), ("card", "Last"), ("contents", "Last"), ("why", "Last", "metol")):
            self.grows_little(50, of.chain, *words)

    def test_calendar(self):
        for form in ("text", "ics"):
            self.grows_little(60, of.busy_plan, "calendar", "Winter", "--as", form)

    def test_evening(self):
        # Few solutions are searched for the best order, and take more. A hundred are as many as an evening may have.
        self.grows_little(50, of.busy_evening, "evening", "Winter", "2027-01-01", "--from", "18:00", times=2)

    def test_log(self):
        for form in ("text", "json"):
            self.grows_little(20, of.log, "shelf", "--as", form, "--on", "2030-01-01")

    def test_binder(self):
        self.grows_little(2, of.recipes, "binder", "--out", "FOLDER/binder")
