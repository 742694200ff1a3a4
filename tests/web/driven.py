# SPDX-License-Identifier: MIT
"""Cards in a browser as hands have it: keys are pressed, sheets printed, by WebDriver (W3C), which Debian's chromium speaks."""
import base64
import shutil
import unittest

from pages import BROWSER, Pages

try:
    from selenium import webdriver
    from selenium.webdriver.chrome.service import Service
except ImportError:
    webdriver = None
DRIVER = shutil.which("chromedriver")

A4, LETTER, A5 = (21.0, 29.7), (21.59, 27.94), (14.8, 21.0)  # centimetres; ISO 216, ANSI/ASME Y14.1


def started(scripts):
    options = webdriver.ChromeOptions()
    options.binary_location = BROWSER
    for word in ("--headless", "--no-sandbox", "--disable-gpu", "--disable-background-networking"):
        options.add_argument(word)
    options.set_capability("goog:loggingPrefs", {"browser": "ALL"})
    if not scripts:
        options.add_experimental_option("prefs", {"profile.managed_default_content_settings.javascript": 2})
    return webdriver.Chrome(service=Service(DRIVER), options=options)


@unittest.skipUnless(webdriver and DRIVER, "no driver of the browser here")
class Driven(Pages):
    """One browser for all tests of a class, since starting it takes longer than they do, and a window of its own a
    page: the one opened last is driven."""
    with_scripts = None

    def open(self, path, scripts=True):
        if not scripts:
            browser = started(scripts)
            self.addCleanup(browser.quit)
        else:
            browser = self.shared()
            browser.switch_to.new_window("window")
        browser.get(path.as_uri())
        return browser

    @classmethod
    def shared(cls):
        if cls.with_scripts is None:
            cls.with_scripts = started(scripts=True)
            cls.addClassCleanup(cls.with_scripts.quit)
        return cls.with_scripts

    def print_out(self, browser, size=A4, name="page.pdf"):
        """The page on paper of that size, with the margins that it asks for itself."""
        wide, high = size
        sheet = browser.execute_cdp_cmd("Page.printToPDF", {
            "paperWidth": wide / 2.54, "paperHeight": high / 2.54, "preferCSSPageSize": False, "displayHeaderFooter": False})
        path = self.folder / name
        path.write_bytes(base64.b64decode(sheet["data"]))
        return path
