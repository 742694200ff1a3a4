# SPDX-License-Identifier: MIT
"""A card worked by keys alone, and with scripts off. Real key presses, through WebDriver."""
from driven import Driven

try:
    from selenium.webdriver.common.action_chains import ActionChains
    from selenium.webdriver.common.keys import Keys
except ImportError:
    pass  # Driven is skipped

WHERE = """
  const it = document.activeElement;
  const seen = getComputedStyle(it).outlineStyle !== "none";
  return [it.getAttribute("aria-label") ?? it.labels?.[0]?.textContent ?? it.textContent, it.tagName, seen];
"""


class ByKeys(Driven):
    def press(self, browser, *keys):
        ActionChains(browser).send_keys(*keys).perform()

    def walk(self, browser):
        """What Tab comes to, in turn, until it leaves the page."""
        found = []
        while True:
            self.press(browser, Keys.TAB)
            name, tag, seen = browser.execute_script(WHERE)
            if tag == "BODY" or len(found) > 99:
                return found
            self.assertTrue(seen, f"no outline at {name}")
            found.append(name)

    def test_tab_comes_to_everything_in_the_order_of_the_page(self):
        browser = self.open(self.folder / self.card("Medlar", "part", "B"))
        found = self.walk(browser)
        controls = browser.execute_script("return [...document.querySelectorAll('input, button')].length")
        self.assertEqual(len(found), controls)
        self.assertEqual(found[0], "Make another volume")
        self.assertEqual([name.split(",")[0] for name in found[1:3]], ["water", "borax (decahydrate)"])
        work = [name for name in found if "step" in name]
        self.assertEqual(work[:4], ["step 4: weighed", "Start the clock of step 5", "step 6: weighed", "Start the clock of step 7"])
        self.assertEqual(found[-1], "clear, and nothing left at the bottom")

    def test_a_volume_is_typed_a_box_ticked_and_a_clock_started(self):
        browser = self.open(self.folder / self.card("Medlar", "part", "B"))
        self.press(browser, Keys.TAB)
        self.press(browser, *[Keys.BACKSPACE] * 12, "2 l")
        makes = browser.find_element("css selector", ".makes").text
        self.assertEqual(makes.replace("\u00a0", " "), "makes 2000 ml")
        while browser.execute_script(WHERE)[0] != "step 4: weighed":
            self.press(browser, Keys.TAB)
        self.press(browser, Keys.SPACE, Keys.TAB, Keys.ENTER)
        self.assertTrue(browser.find_element("css selector", '[aria-label="step 4: weighed"]').is_selected())
        self.assertEqual(browser.find_element("css selector", ".said").text, "Clock started: 2 minutes.")
        self.assertEqual(browser.execute_script(WHERE)[0], "Stop the clock of step 5")

    def test_without_scripts_the_card_is_whole_and_offers_nothing_that_does_not_work(self):
        page = self.folder / self.card("Medlar", "part", "B")
        with_them, without = self.open(page), self.open(page, scripts=False)
        text = without.find_element("css selector", "main").text.replace("\u00a0", " ")
        for part in ("Put out on the bench", "40.57 g", "Mix, in this order", "up to 1000 ml", "started", "ended"):
            self.assertIn(part, text)
        for selector in ("input", "button", ".timer"):
            shown = [it for it in without.find_elements("css selector", selector) if it.is_displayed()]
            self.assertEqual(shown, [], selector)
        self.assertFalse(without.find_element("css selector", ".rescale").is_displayed())
        self.assertTrue(with_them.find_element("css selector", ".rescale").is_displayed())
