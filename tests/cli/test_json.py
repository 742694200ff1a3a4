# SPDX-License-Identifier: MIT
"""Everything that comes out as JSON is as docs/schemas says, over the demo's recipes; pages are well formed."""
import json
from html.parser import HTMLParser

import jsonschema
from support import FAULTS, ROOT, Workspace

RECIPES = str(ROOT / "recipes")
CALLS = {
    "check": ["check"],
    "card": ["card", "Medlar", "part", "A"],
    "cards": ["card", "Medlar"],
    "scaled": ["scaled", "Medlar", "--make", "500ml"],
    "labels": ["labels", "Medlar", "--mixed", "2026-12-03", "--bottles", "2x500ml"],
    "shopping": ["shopping", "December"],
    "calendar": ["calendar", "December"],
    "evening": ["evening", "December", "2026-12-01", "--from", "18:00"],
    "shelf": ["shelf"],
    "chemical": ["chemical", "borax"],
    "weigh": ["weigh", "5 g borax (decahydrate)"],
    "react": ["react", "borax (decahydrate) + sodium hydroxide -> sodium metaborate (anhydrous) + water"],
    "contents": ["contents", "Medlar"],
    "settle": ["settle", "Bittern"],
    "why": ["why", "Medlar", "part", "A", "sodium sulfite"],
    "help": ["help", "recipe"],
}


class Balanced(HTMLParser):
    def __init__(self):
        super().__init__()
        self.open, self.seen = [], set()

    def handle_starttag(self, tag, attrs):
        self.seen.add(tag)
        if tag not in ("meta", "br", "hr", "input", "link"):
            self.open.append(tag)

    def handle_endtag(self, tag):
        assert self.open.pop() == tag, f"</{tag}> closes nothing"


class Documents(Workspace):
    def hold(self, name, document):
        schema = json.loads((ROOT / f"docs/schemas/{name}.json").read_text(encoding="utf-8"))
        resolver = jsonschema.RefResolver(base_uri=(ROOT / "docs/schemas").as_uri() + "/", referrer=schema)
        jsonschema.Draft202012Validator(schema, resolver=resolver).validate(document)

    def test_every_command_holds_to_its_schema(self):
        for name, call in CALLS.items():
            with self.subTest(name):
                self.hold(name, self.json(*call, "--in", RECIPES))

    def test_faults_and_tidying_hold_to_theirs(self):
        self.put("a.scruple", "recipe Gull\n  metol 5\n  )(\n")
        self.put("b.scruple", "recipe   Tern\nwater 1 l\n")
        self.put("c.scruple", b"\xff")
        self.hold("check", self.json("check", status=FAULTS))
        self.hold("tidy", self.json("tidy", status=FAULTS))

    def test_every_command_makes_a_page(self):
        for name, call in CALLS.items():
            with self.subTest(name):
                page = Balanced()
                page.feed(self.scruple(*call, "--in", RECIPES, "--as", "html"))
                self.assertEqual(page.open, [])
                self.assertLessEqual({"html", "head", "title", "body"}, page.seen)
                # A card works without its scripts; tests/web holds them to the page's policy.
                scripts = set() if name in ("card", "cards") else {"script"}
                self.assertFalse(({"img", "iframe", "link"} | scripts) & page.seen)

    def test_what_is_in_a_file_does_not_act_in_a_page(self):
        self.put("a.scruple", "recipe <script>x</script>\n    water 1 xyz\n")
        for call in (["check"], ["tidy"]):
            done = self.run_scruple(*call, "--as", "html")
            self.assertNotIn(b"<script", done.stdout)
