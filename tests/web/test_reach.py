# SPDX-License-Identifier: MIT
"""Pages by keyboard and screen reader: axe-core, the rules of WCAG 2.1 A and AA, in Debian's chromium."""
import html
import json
import os
import pathlib
import re
import unittest

from pages import RECIPES, Pages

AXE = pathlib.Path(os.environ.get("SCRUPLE_AXE", "nowhere"))
RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "best-practice"]

# The policy takes no script but the page's own, so the page is tried without it; the rest is as it was written.
PROBE = """<script>AXE</script><pre id="told"></pre><script>
onload = async () => {
  SCRIPT
  const { violations, passes } = await axe.run(document, { runOnly: RULES });
  const told = { faults: violations.map((it) => it.id + " " + it.nodes.map((node) => node.html).join(" ")), passed: passes.length };
  document.getElementById("told").textContent = JSON.stringify(told);
};
</script></body>"""


@unittest.skipUnless(AXE.exists(), "no axe-core here: tests/run.sh installs it")
class Reach(Pages):
    def probe(self, name, script=""):
        page = re.sub(r'<meta http-equiv="Content-Security-Policy"[^>]*>', "", self.text(name))
        probe = PROBE.replace("RULES", json.dumps(RULES)).replace("SCRIPT", script).replace("AXE", AXE.read_text(encoding="utf-8"))
        probed = self.put("probed.html", page.replace("</body>", "") .replace("</html>", probe + "</html>"))
        dump = self.browse("--virtual-time-budget=20000", "--dump-dom", probed.as_uri())
        return json.loads(html.unescape(re.search('<pre id="told">(.*?)</pre>', dump, re.S)[1]))

    def hold(self, name, script=""):
        told = self.probe(name, script)
        self.assertEqual(told["faults"], [], name)
        self.assertGreater(told["passed"], 10)

    def test_a_card_as_it_is_written_rescaled_refused_and_with_a_clock_running(self):
        name = self.card("Medlar", "part", "B")
        typed = 'const field = document.querySelector("input"); field.value = "%s"; field.dispatchEvent(new Event("input"));'
        press = 'document.querySelector("button").click(); document.querySelector("input.box").click();'
        for script in ("", typed % "2 l", typed % "2 pints", press):
            self.hold(name, script)

    def test_several_cards_on_one_page(self):
        self.hold(self.card("Medlar"))

    def test_the_binders_pages(self):
        self.scruple("binder", "--in", str(RECIPES), "--out", str(self.folder / "binder"))
        self.hold("binder/index.html")
        self.hold("binder/card-damson.html")

    def test_the_shopping_list(self):
        self.scruple("shopping", "December", "--in", str(RECIPES), "--as", "html", "--out", str(self.folder / "shopping.html"))
        self.hold("shopping.html")

    def test_a_fault_is_found(self):
        name = self.card("Damson")
        told = self.probe(name, 'document.querySelector(".rescale label").remove();')
        self.assertRegex(" ".join(told["faults"]), r"\blabel ")
