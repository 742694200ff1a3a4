# SPDX-License-Identifier: MIT
"""What is printed, and the time that it takes, are bounded by what is read, however large the figures in it are."""
import time

from support import FAULTS, FINE, TROUBLE, WRONG_CALL, Workspace

SOON = 20  # s, of any one call here; a search without an end does not come near it, and a slow machine does

PLACE = """\
recipe Gull
    is a       fixer
    keeps      {keeps}
    capacity   {films} films 135 per 1 l
    water                          700 ml
    sodium sulfite (anhydrous)     30 g
    water to make                  1 l

recipe Tern
    water                          700 ml
    Gull                           {ml}
    metol                          1 g
    water to make                  {makes}

process p
    Gull   5 min

plan Month
{plan}
supplier Quay
    sodium sulfite (anhydrous)     {pack}   1.00 EUR
    sodium sulfite (anhydrous)     500 g   6.00 EUR
    postage    3 EUR, none over 75 EUR

bench Shed
    balance    0.01 g up to 200 g
    graduate   {graduate}
    bottle     1 l
    bottle     {bottle}

log
    2026-11-02 received   sodium sulfite (anhydrous) {pack} from Quay 1.00 EUR
    2026-11-03 mixed      Gull 1 l
"""
USUAL = {"keeps": "2 weeks", "films": "10", "ml": "100 ml", "makes": "1 l", "pack": "1 kg", "graduate": "500 ml by 5 ml",
         "bottle": "500 ml", "plan": "    2026-12-01   600 films 135 through p\n"}
HUGE = {
    "keeps": {"keeps": "99999999 years"},
    "films of a litre": {"films": "1/999999999"},
    "films of the plan": {"plan": "    2026-12-01   999999999999999999 films 135 through p\n"},
    "a litre": {"ml": "999999999999999999 l", "makes": "1000000000000000000 l"},
    "a small pack": {"pack": "0.000000001 g", "plan": "    2026-12-01   999999999 films 135 through p\n"},
    "a large pack": {"pack": "999999999999999999 kg"},
    "a small bottle": {"bottle": "0.000000001 ml"},
    "a fine scale": {"graduate": "999999999 l by 0.000000001 ml"},
    "all days": {"plan": "    0001-01-01   6 films 135 through p\n    9999-12-31   6 films 135 through p\n"},
    "each day": {"plan": "    each Thursday from 0001-01-01 to 9999-12-31   1 film 135 through p\n"},
    "years of Thursdays": {"plan": "    each Thursday from 2026-01-01 to 2035-12-31   1 film 135 through p\n" * 20},
}
CALLS = [["check"], ["card", "Gull"], ["card", "Tern", "--as", "html"], ["card", "Tern", "--as", "pdf"], ["shopping"],
         ["calendar"], ["calendar", "--as", "ics"], ["evening", "2026-12-01"], ["shelf"], ["labels", "Gull", "--mixed", "9999-12-31"],
         ["contents", "Tern"], ["scaled", "Tern", "--make", "3l"], ["why", "Tern", "metol"]]
AMOUNTS = [["--make", "999999999999999999 l"], ["--make", "0.000000001 ml"], ["--films", "999999999999999999", "135"],
           ["--sheets", "999999999", "999999999x999999999 in"], ["--area", "999999999999999999 m2"], ["--with", "sodium sulfite (anhydrous) 999999999999999999 kg"]]


class Output(Workspace):
    def said(self, *words):
        begun = time.monotonic()
        done = self.run_scruple(*words)
        self.assertLess(time.monotonic() - begun, SOON, words)
        self.assertIn(done.returncode, (FINE, 1, WRONG_CALL, TROUBLE), (words, done.stderr))
        self.assertNotIn(b"cannot be done here", done.stderr, words)
        self.assertEqual(done.returncode == FINE, done.stderr == b"" or words[0] == "card" and done.stdout != b"", (words, done.stderr))
        return done.stdout

    def test_huge_amounts_make_no_long_pages(self):
        self.put("a.scruple", PLACE.format(**USUAL))
        usual = {}
        for words in CALLS:
            usual[tuple(words)] = len(self.said(*words))
            self.assertGreater(usual[tuple(words)], 0, words)
        for name, change in HUGE.items():
            self.put("a.scruple", PLACE.format(**(USUAL | change)))
            days = 10_440 if name == "years of Thursdays" else 0  # each is a day of the plan, and may have its lines
            if name == "each day":
                self.assertEqual([d["kind"] for d in self.json("check", status=FAULTS)], ["plan-too-long"])
                continue
            for words in CALLS:
                with self.subTest(name, words=words):
                    most = 3 * usual[tuple(words)] + 20_000 + days * 1500
                    self.assertLess(len(self.said(*words)), most)

    def test_price_lists_that_nobody_reads(self):
        def lines(count):
            return "".join(f"    sodium sulfite (anhydrous)   {i}.001 g   {2 * i + 1}.00 EUR\n" for i in range(count, 0, -1))
        usual = PLACE.format(**USUAL)
        many = "".join(f"supplier S{i}\n    postage   3 EUR\n    sodium sulfite (anhydrous)   {i} g   {i}.0{i % 10} EUR\n"
                       for i in range(1, 2001))
        for text in (usual + "supplier Many\n" + lines(60_000), usual + many):
            self.put("a.scruple", text)
            out = self.said("shopping").decode()
            self.assertIn("cheaper ones are not ruled out", " ".join(out.split()))
            self.assertRegex(out, r"1\s×\s1\skg\s+sodium sulfite")  # for 1 EUR, which none of the others comes near

    def test_huge_amounts_in_a_call(self):
        self.put("a.scruple", PLACE.format(**USUAL))
        for words in (["card", "Gull"], ["card", "Gull", "--as", "html"], ["card", "Gull", "--as", "pdf"], ["scaled", "Gull"], ["why", "Gull", "sodium sulfite"]):
            usual = len(self.said(*words))
            for amount in AMOUNTS:
                with self.subTest(words, amount=amount):
                    self.assertLess(len(self.said(*words, *amount)), 3 * usual + 20_000)
        for words in (["mixed", "Gull", "999999999999999999l"], ["enter", "used", "sodium sulfite (anhydrous)", "999999999999999999 kg"],
                      ["weigh", "999999999999999999 kg sodium carbonate (anhydrous)"], ["shopping", "--with", "999999999999999999 films 135 through p"],
                      ["react", "Na2CO3 + HCl -> NaCl + H2O + CO2", "--with", "999999999999999999 kg sodium carbonate (anhydrous)"]):
            with self.subTest(words):
                self.assertLess(len(self.said(*words)), 50_000)
