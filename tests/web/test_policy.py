# SPDX-License-Identifier: MIT
"""What a card's page lets happen: nothing is fetched (chromium's own log of the network), hostile names stay words."""
import json
import re

from driven import Driven

HOSTILE = """
recipe </script><script>window.hurt=1</script><img src=http://198.51.100.7/x onerror=window.hurt=1>
    is a    paper developer
    water                          700 ml at 40 C
    sodium sulfite (anhydrous)     40 g, "</script><script>window.hurt=1</script>"
    apart <!--<script>
    water                          50 ml
    pour in half of <!--<script>
    stir until clear
    water to make                  1 l
"""


class Policy(Driven):
    def asked_by(self, page):
        """What the page asked for: the browser's own calls have no page to begin them."""
        log = self.folder / "net.json"
        self.browse(f"--log-net-log={log}", "--virtual-time-budget=5000", "--dump-dom", page.as_uri())
        events = json.loads(log.read_text(encoding="utf-8"))["events"]
        told = [event["params"] for event in events if "initiator" in event.get("params", {})]
        return {it["url"] for it in told if it["initiator"] != "not an origin"}

    def test_nothing_is_fetched(self):
        page = self.folder / self.card("Medlar")
        self.assertEqual(self.asked_by(page), set())
        asking = self.put("asking.html", '<img src="http://127.0.0.1:9/asked">')
        self.assertEqual(self.asked_by(asking), {"http://127.0.0.1:9/asked"})
        policy = re.search(r'Content-Security-Policy" content="([^"]*)"', self.text("card.html"))[1]
        self.assertRegex(policy, r"^default-src 'none'; style-src 'sha256-[^']*'; script-src 'sha256-[^']*'; base-uri 'none'; form-action 'none'$")

    def test_a_script_that_is_not_the_pages_own_is_kept_from_running(self):
        page = self.text(self.card("Medlar"))
        foreign = page.replace("</main>", "</main><script>window.hurt = 1</script>")
        self.assertNotEqual(foreign, page)
        unguarded = re.sub(r'<meta http-equiv="Content-Security-Policy"[^>]*>', "", foreign)
        hurt = []
        for name, text in (("foreign.html", foreign), ("unguarded.html", unguarded)):
            browser = self.open(self.put(name, text))
            refused = [it["message"] for it in browser.get_log("browser") if "Content Security Policy" in it["message"]]
            hurt.append((browser.execute_script("return window.hurt ?? null"), len(refused)))
        self.assertEqual(hurt, [(None, 1), (1, 0)])

    def test_hostile_names_stay_words_on_the_page_and_in_its_data(self):
        self.put("dark/hostile.scruple", HOSTILE)
        section = "</script><script>window.hurt=1</script><img src=http://198.51.100.7/x onerror=window.hurt=1>"
        page = self.card(section, folder=self.folder / "dark")
        told = self.tell(page, """
          type(cards[0].querySelector("input"), "500 ml");
          return {hurt: frame.contentWindow.hurt ?? null, scripts: page.scripts.length, images: page.images.length,
                  refused: cards[0].classList.contains("refused"), text: pieces(cards[0]).join("|")};""")
        self.assertEqual((told["hurt"], told["scripts"], told["images"], told["refused"]), (None, 2, 0, False))
        self.assertIn("</script><script>window.hurt=1</script>", told["text"])
        self.assertIn("part of <!--<script>", told["text"])
        json.loads(re.search(r'class="plan">(.*?)</script>', self.text(page))[1])

    def test_the_same_input_gives_the_same_bytes(self):
        first = self.text(self.card("Medlar"))
        self.assertEqual(first, self.text(self.card("Medlar")))
