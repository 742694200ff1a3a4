# SPDX-License-Identifier: MIT
"""The search of a binder's page, typed into by a browser (Debian's chromium, under its own reading of the page's policy)."""
import html
import json
import re
import shutil
import unittest

from sheets import Sheets, tool
from support import HERON, TERN

BROWSER = shutil.which("chromium")

# Types each of the words, and notes which cards are still there and what is said of it.
TYPIST = """<!DOCTYPE html><iframe src="binder/index.html"></iframe><pre></pre><script>
onload = () => {
  const page = document.querySelector("iframe").contentDocument;
  const field = page.querySelector("input");
  const shown = (one) => one.checkVisibility();
  const seen = WORDS.map((typed) => {
    field.value = typed;
    field.dispatchEvent(new Event("input"));
    return [[...page.querySelectorAll("li a")].filter(shown).map((a) => a.textContent),
            page.querySelector("[role=status]").textContent];
  });
  const told = {seen, label: field.labels[0].textContent, shown: shown(field), order: field.tabIndex};
  document.querySelector("pre").textContent = JSON.stringify(told);
};
</script>
"""


@unittest.skipUnless(BROWSER, "no chromium here")
class Search(Sheets):
    def typed(self, *words):
        self.scruple("binder", "--out", str(self.folder / "binder"))
        typist = self.put("typist.html", TYPIST.replace("WORDS", json.dumps(words)))
        page = tool(BROWSER, "--headless", "--no-sandbox", "--disable-gpu", "--disable-web-security",
                    "--allow-file-access-from-files", f"--user-data-dir={self.folder}/browser", "--dump-dom",
                    typist.as_uri()).decode()
        return json.loads(html.unescape(re.search("<pre>(.*?)</pre>", page)[1]))

    def setUp(self):
        super().setUp()
        self.put("heron.scruple", HERON)
        self.put("tern.scruple", TERN)

    def test_every_word_is_looked_for_in_names_purposes_and_chemicals(self):
        told = self.typed("", "TERN", "developer part", "sulfite", "sulfite hydroquinone", "guano")
        cards = [["Heron, part A", "Heron, part B", "Heron, working", "Tern"], ["Tern"], ["Heron, part A", "Heron, part B", "Heron, working"],
                 ["Heron, part A", "Tern"], ["Heron, part A"], []]
        said = ["", "1 card has it", "3 cards have it", "2 cards have it", "1 card has it", "0 cards have it"]
        self.assertEqual(told["seen"], [list(both) for both in zip(cards, said)])

    def test_the_field_has_a_label_and_a_place_among_the_keys(self):
        told = self.typed("")
        self.assertEqual((told["shown"], told["order"]), (True, 0))
        self.assertIn("Search", told["label"])

    def test_without_scripts_the_list_stands_alone(self):
        self.scruple("binder", "--out", str(self.folder / "binder"))
        page = (self.folder / "binder/index.html").read_text(encoding="utf-8")
        self.assertRegex(page, r'<div id="search" hidden>')
        self.assertNotRegex(page, r"<li[^>]*hidden")
