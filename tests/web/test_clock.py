# SPDX-License-Identifier: MIT
"""The clock of a wait, and the boxes: pressed in Debian's chromium, whose time of day the test sets."""
from pages import Pages


class Clock(Pages):
    def test_it_counts_down_by_the_time_of_day_and_says_when_it_is_up(self):
        page = self.card("Medlar", "part", "B")
        seen = self.tell(page, """
          const view = frame.contentWindow;
          let now = 1e12;
          view.Date.now = () => now;
          const box = page.querySelector(".timer");
          const button = box.querySelector("button"), face = box.querySelector(".face"), said = box.querySelector(".said");
          const seen = [[face.textContent, button.textContent, said.textContent]];
          const pass = async (seconds) => {
            now += seconds * 1000;
            await new Promise((done) => setTimeout(done, 500));
            seen.push([face.textContent, button.textContent, said.textContent]);
          };
          button.click();
          for (const seconds of [0, 20, 41, 30, 20, 9, 12]) await pass(seconds);
          button.click();
          await pass(60);
          button.click();
          await pass(0);
          return seen;""")
        start, stop, again = (f"{verb} the clock of step 5" for verb in ("Start", "Stop", "Restart"))
        started = "Clock started: 2 minutes."
        self.assertEqual(seen, [
            ["2:00", start, ""], ["2:00", stop, started], ["1:40", stop, started], ["0:59", stop, "Step 5: 59 seconds left."],
            ["0:29", stop, "Step 5: 59 seconds left."], ["0:09", stop, "Step 5: 9 seconds left."], ["0:00", stop, "Step 5: time is up."],
            ["+0:12", stop, "Step 5: time is up."], ["+0:12", again, "Clock stopped at +0:12."], ["2:00", stop, started]])

    def test_a_tab_that_slept_past_the_end_says_only_that(self):
        page = self.card("Medlar", "part", "B")
        said = self.tell(page, """
          let now = 1e12;
          frame.contentWindow.Date.now = () => now;
          const box = page.querySelector(".timer");
          box.querySelector("button").click();
          now += 4000000;
          await new Promise((done) => setTimeout(done, 500));
          return [box.querySelector(".said").textContent, box.querySelector(".face").textContent];""")
        self.assertEqual(said, ["Step 5: time is up.", "+1:04:40"])

    def test_boxes_can_be_ticked_and_reached_and_stay_ticked_at_another_volume(self):
        page = self.card("Medlar", "part", "B")
        told = self.tell(page, """
          const boxes = () => [...page.querySelectorAll("input[type=checkbox]")];
          const name = (box) => box.getAttribute("aria-label") ?? box.labels[0].textContent;
          for (const box of boxes()) if (["borax (decahydrate)", "step 6: weighed"].includes(name(box))) box.click();
          type(cards[0].querySelector("input"), "2 l");
          return {names: boxes().map(name), ticked: boxes().filter((box) => box.checked).map(name),
                  left: page.querySelectorAll(".tick > span.box").length, order: boxes().map((box) => box.tabIndex)};""")
        self.assertEqual([told["names"][at] for at in (1, 5, 6)], ["borax (decahydrate)", "step 4: weighed", "step 6: weighed"])
        self.assertEqual(told["ticked"], ["borax (decahydrate)", "step 6: weighed"])
        self.assertEqual((told["left"], set(told["order"])), (0, {0}))
