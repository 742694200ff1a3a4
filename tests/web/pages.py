# SPDX-License-Identifier: MIT
"""Cards in a browser (Debian's chromium, under its own reading of the page's policy), and the same read from their text."""
import html
import json
import pathlib
import re
import shutil
import subprocess
import sys
import unittest

sys.path.insert(0, str(pathlib.Path(__file__).resolve().parents[1] / "paper"))
from sheets import Sheets  # noqa: E402
from support import ROOT  # noqa: E402

BROWSER = shutil.which("chromium")
RECIPES = ROOT / "recipes"

# Runs SCRIPT with `page` (the document of the page that is tried) and prints what it returns.
DRIVER = """<!DOCTYPE html><iframe src="PAGE" width="WIDTH" height="2000"></iframe><pre></pre><script>
onload = async () => {
  const frame = document.querySelector("iframe");
  const page = frame.contentDocument;
  const told = await (async () => { SCRIPT })();
  document.querySelector("pre").textContent = JSON.stringify(told);
};
</script>
"""

READ = """
  const cards = [...page.querySelectorAll("article")];
  const type = (field, typed) => { field.value = typed; field.dispatchEvent(new Event("input")); };
  const pieces = (card) => [...card.querySelectorAll(".makes, .gather th, .gather td, .work p")].map((it) => it.textContent.trim());
"""


def pieces_of(page):
    """The texts of the card that `READ` reads, from the page as it was written."""
    makes = re.search(r'<p class="makes">.*?</p>', page, re.S)[0]
    gather = re.search(r'<div class="gather">.*?</table>', page, re.S)
    work = re.search(r'<ol class="work">.*?</ol>', page, re.S)
    text = makes + (gather[0] if gather else "") + (work[0] if work else "")
    return [html.unescape(re.sub("<[^>]*>", "", found[2])).strip(" \n")
            for found in re.finditer(r"<(p|th|td)\b[^>]*>(.*?)</\1>", text, re.S)]


@unittest.skipUnless(BROWSER, "no chromium here")
class Pages(Sheets):
    def browse(self, *words, **how):
        done = subprocess.run([BROWSER, "--headless", "--no-sandbox", "--disable-gpu", "--disable-background-networking",
                               f"--user-data-dir={self.folder}/browser", *words], check=False, capture_output=True, timeout=120, **how)
        return done.stdout.decode()

    def tell(self, page, script, width=1000):
        """What `script` returns with `page` loaded beside it, so many pixels wide."""
        filled = DRIVER.replace("PAGE", page).replace("WIDTH", str(width)).replace("SCRIPT", READ + script)
        driver = self.put("driver.html", filled)
        dump = self.browse("--disable-web-security", "--allow-file-access-from-files", "--virtual-time-budget=20000",
                           "--dump-dom", driver.as_uri())
        return json.loads(html.unescape(re.search("<pre>(.*?)</pre>", dump, re.S)[1]))

    def card(self, *words, name="card.html", folder=RECIPES):
        self.scruple("card", *words, "--as", "html", "--in", str(folder), "--out", str(self.folder / name))
        return name
