# SPDX-License-Identifier: MIT
"""All cards as one PDF, read back by poppler and qpdf, and as pages: the digests of Content Security Policy Level 3."""
import base64
import hashlib
import html
import itertools
import json
import re

from sheets import BENCH, Sheets, tool
from support import FAULTS, HERON, ROOT, TERN, TROUBLE, WRONG_CALL

HOSTILE = ["../x", "con", "<script>alert(1)</script>", "現像液", "定着液", "c/on", "c-on", "a" * 300, "\\..\\y & \"z'"]


class Binders(Sheets):
    def binder(self, *more, into="binder"):
        self.scruple("binder", "--out", str(self.folder / into), *more)
        return self.folder / into

    def outline(self, path):
        return json.loads(tool("qpdf", "--json", "--json-key=outlines", str(path)))["outlines"]

    def put_hostile(self):
        quoted = ['"' + name.replace('"', "”") + '"' for name in HOSTILE]
        for n, name in enumerate(quoted):
            self.put(f"r{n}.scruple", f"recipe {name}\n    water 500 ml\n    potassium bromide 5 g\n")

    def test_the_contents_tell_the_pages(self):
        folder = self.binder("--in", str(ROOT / "recipes"), "--paper", "a5")
        pages = self.pages(folder / "binder.pdf")
        contents = re.findall(r"^(\S.*?)\s{2,}(\d+)$", "\n".join(pages[:2]), re.M)
        self.assertGreaterEqual(len(contents), 14)
        for name, page in contents:
            self.assertTrue(pages[int(page) - 1].lstrip().startswith(name), (name, page))
        for number, page in enumerate(pages, 1):
            self.assertRegex(page[-200:], rf"page {number}\n")

    def test_bookmarks_and_links_lead_where_they_say(self):
        path = self.binder("--in", str(ROOT / "recipes")) / "binder.pdf"
        pages = self.pages(path)
        tops = self.outline(path)
        self.assertEqual(tops[0]["destpageposfrom1"], 1)
        medlar = next(one for one in tops if one["title"] == "Medlar")
        self.assertEqual([one["title"] for one in medlar["kids"]], ["part A", "part B", "working"])
        for one in medlar["kids"]:
            self.assertIn(f"Medlar, {one['title']}", pages[one["destpageposfrom1"] - 1].split("\n")[0])
        objects = tool("qpdf", "--qdf", "--object-streams=disable", str(path), "-").decode("latin-1")
        entries = re.findall(r"^\S.*?\s{2,}\d+$", pages[0], re.M)
        self.assertEqual(objects.count("/Subtype /Link"), len(entries))
        targets = re.findall(r"/Dest \[\s*(\d+) 0 R", objects)
        self.assertGreaterEqual(len(set(targets)), len(entries))

    def test_the_pdf_is_whole_and_the_same_each_time(self):
        self.put("heron.scruple", HERON + BENCH)
        self.put("tern.scruple", TERN)
        first = (self.binder() / "binder.pdf").read_bytes()
        self.assertEqual(first, (self.binder(into="again") / "binder.pdf").read_bytes())
        self.assertIn("No syntax or stream encoding errors", tool("qpdf", "--check", str(self.folder / "binder/binder.pdf")).decode())
        self.assertEqual(self.info(self.folder / "binder/binder.pdf")["Title"], "Mixing cards")
        for picture in self.pictures(self.folder / "binder/binder.pdf", 40):
            red, green, blue = picture.split()
            self.assertEqual(red.tobytes(), green.tobytes())
            self.assertEqual(red.tobytes(), blue.tobytes())

    def test_a_name_of_any_length_covers_nothing(self):
        names = {"worded": "a long name of many words " * 8, "unbroken": "a" * 300, "longer than a sheet": "abcde " * 200}
        for n, name in enumerate(names.values()):
            self.put(f"r{n}.scruple", f'recipe "{name.strip()}"\n    water 500 ml\n'
                                      + "".join(f"    sodium chloride {grams} g\n" for grams in range(1, 12)))
        path = self.binder("--paper", "a5") / "binder.pdf"
        self.assertEqual(sum(page.count("Mix, in this order") for page in self.pages(path)), len(names))
        by_page = {}
        for word in self.words(path):
            self.assertLess(word.bottom, 210 / 25.4 * 72)
            by_page.setdefault(word.page, []).append(word)
        for page, words in by_page.items():
            for one, other in itertools.combinations(words, 2):
                self.assertFalse(one.covers(other), (page, one.text, other.text))

    def test_names_make_harmless_files_each_its_own(self):
        self.put_hostile()
        folder = self.binder()
        names = sorted(path.name for path in folder.iterdir())
        self.assertEqual(len(names), len(HOSTILE) + 2)
        self.assertEqual(len({name.lower() for name in names}), len(names))
        for name in names:
            self.assertRegex(name, r"^(binder\.pdf|index\.html|card(-[a-z0-9-]+)?\.html)$")
            self.assertLess(len(name), 70)
        self.assertEqual(sorted(path.name for path in self.folder.iterdir() if path.is_dir()), ["binder"])
        self.assertNotIn("<script>alert", (folder / "index.html").read_text(encoding="utf-8"))

    def test_a_card_keeps_its_file_when_recipes_come_and_go(self):
        def files(into):
            page = (self.binder(into=into) / "index.html").read_text(encoding="utf-8")
            return {html.unescape(title): name for name, title in re.findall(r'<a href="([^"]*)">(.*?)</a>', page)}

        self.put_hostile()
        few = files("few")
        for n, name in enumerate(["丙", "c.on", "a" * 299, "../w/x", "con!"]):
            self.put(f"more{n}.scruple", f'recipe "{name}"\n    water 500 ml\n    potassium bromide 5 g\n')
        many = files("many")
        self.assertEqual(len(many), len(few) + 5)
        self.assertEqual({title: many[title] for title in few}, few)
        self.assertEqual(few["con"], "card-con.html")

    def test_the_page_of_all_cards_leads_to_each(self):
        self.put_hostile()
        folder = self.binder()
        page = (folder / "index.html").read_text(encoding="utf-8")
        links = re.findall(r'<a href="([^"]*)">(.*?)</a>', page)
        self.assertEqual(sorted(name for name, _ in links), sorted(path.name for path in folder.iterdir() if path.name != "index.html"))
        for name, title in links:
            if name.endswith(".html"):
                card = (folder / name).read_text(encoding="utf-8")
                self.assertIn(f"<h1>{title}</h1>", card)
                self.assertIn('href="index.html"', card)
        self.assertIn("potassium bromide", html.unescape(page))

    def test_the_policy_takes_this_style_and_this_script_alone(self):
        self.put("tern.scruple", TERN)
        folder = self.binder()
        for name in ("index.html", "card-tern.html"):
            self.hold_to_policy((folder / name).read_text(encoding="utf-8"))

    def hold_to_policy(self, page):
        policy = re.search(r'http-equiv="Content-Security-Policy" content="([^"]*)"', page)[1]
        self.assertTrue(policy.startswith("default-src 'none'"))
        for tag in ("style", "script"):
            inside, = re.findall(rf"<{tag}>(.*?)</{tag}>", page, re.S)
            digest = base64.b64encode(hashlib.sha256(inside.encode()).digest()).decode()
            self.assertIn(f"{tag}-src 'sha256-{digest}'", policy)
        self.assertEqual(re.findall(r"https?:|//[a-z]", page), [])

    def test_variants_have_a_card_each_and_what_cannot_be_made_is_told(self):
        self.put("avens.scruple", "recipe Avens\n    variants soft, normal\n    water 900 ml\n"
                                  "    hydroquinone 1 g soft, 5 g normal\n    water to make 1 l\n")
        folder = self.binder()
        self.assertEqual([one["title"] for one in self.outline(folder / "binder.pdf")[1]["kids"]], ["soft", "normal"])
        self.assertTrue((folder / "card-avens-soft.html").exists())

    def test_other_files_stay_and_faults_write_nothing(self):
        self.put("binder/mine.txt", "mine")
        self.put("tern.scruple", TERN)
        self.binder()
        self.assertEqual(self.text("binder/mine.txt"), "mine")
        self.assertIn("--out", self.refused("binder", status=WRONG_CALL))
        self.put("file", "")
        self.refused("binder", "--out", str(self.folder / "file"), status=TROUBLE)
        self.put("tern.scruple", TERN.replace("30 g", "30 oz"))
        self.refused("binder", "--out", str(self.folder / "none"), status=FAULTS)
        self.assertFalse((self.folder / "none").exists())
