# SPDX-License-Identifier: MIT
"""Cards on a telephone: nothing stands beyond the edge."""
from pages import Pages


class Narrow(Pages):
    def test_nothing_stands_beyond_the_edge(self):
        for words in (("Medlar", "part", "B"), ("Sloe", "--instead", "sodium citrate")):
            page = self.card(*words)
            for width in (360, 520):
                with self.subTest(words=words, width=width):
                    there, wide, beyond = self.tell(page, """
                      const there = page.documentElement.clientWidth;
                      const beyond = [...page.querySelectorAll("main *")].filter((it) => it.getBoundingClientRect().right > there + 1);
                      return [there, page.documentElement.scrollWidth, beyond.map((it) => it.textContent.slice(0, 40))];""", width)
                    self.assertLessEqual(there, width)
                    self.assertEqual((wide, beyond), (there, []))
