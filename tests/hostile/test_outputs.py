# SPDX-License-Identifier: MIT
"""Hostile words through every command and every form of its output: each comes out as the words that they are. Pages are
read by Python's html.parser, XML by libxml2 (xmllint), JSON and rows by Python, calendars by python3-icalendar, PDFs by
qpdf and poppler, codes by zbar. What a page is made of must be the same with harmless words in the same places."""
import csv
import html.parser
import io
import json
import re
import subprocess
import xml.etree.ElementTree

import icalendar
from hostile import CALLS, DATA, FORMULAS, HARMLESS, PAGES, WORKSPACE, Hostile, formats_of, unseen_in
from support import Workspace


class Skeleton(html.parser.HTMLParser):
    """The elements of a page with the names of their attributes, its words, and what its scripts hold as data."""

    def __init__(self, page):
        super().__init__()
        self.parts, self.words, self.data, self.is_data = [], "", [], False
        self.feed(page)
        self.close()

    def handle_starttag(self, tag, attrs):
        self.parts.append((tag, sorted(name for name, _ in attrs)))
        self.is_data = ("type", "application/json") in attrs
        for name, value in attrs:
            assert name not in ("href", "src") or value.replace("-", "").replace(".", "").isalnum(), value

    def handle_endtag(self, tag):
        self.parts.append(("/" + tag,))
        self.is_data = False

    def handle_comment(self, data):
        self.parts.append(("comment", data))

    def handle_data(self, data):
        if self.is_data:
            self.data.append(data)
        else:
            self.words += data


def xml_skeleton(text):
    return [(element.tag, sorted(element.attrib)) for element in xml.etree.ElementTree.fromstring(text).iter()]


def xml_is_well_formed(text):
    return subprocess.run(["xmllint", "--noout", "--nonet", "-"], input=text, check=False).returncode == 0


class Everywhere(Hostile):
    def test_nothing_that_is_printed_acts_on_a_terminal(self):
        for command, call in CALLS.items():
            for form in ["text", *formats_of(command)]:
                with self.subTest(command, form=form):
                    printed = self.pair(*call, *([] if form == "text" else ["--as", form]))[0]
                    self.assertEqual(unseen_in(printed.decode()), [])
        self.assertEqual([name for name in self.files() if ".before" not in name],
                         ["harmless", "harmless/all.scruple", "hostile", "hostile/all.scruple"])

    def test_pages_hold_the_same_elements_as_with_harmless_words(self):
        for command, call in CALLS.items():
            if "html" not in formats_of(command):
                continue
            with self.subTest(command):
                hostile, harmless = (Skeleton(page.decode()) for page in self.pair(*call, "--as", "html"))
                self.assertEqual(hostile.parts, harmless.parts)
                for one in hostile.data:
                    json.loads(one)
                if command in ("card", "labels", "chemical", "shopping"):
                    for word in PAGES:
                        self.assertIn(word, hostile.words.replace("\u00a0", " "))

    def test_json_gives_the_words_back(self):
        for command, call in CALLS.items():
            for form in formats_of(command):
                if form not in ("json", "sarif"):
                    continue
                with self.subTest(command, form=form):
                    hostile, harmless = (json.loads(text) for text in self.pair(*call, "--as", form))
                    self.assertEqual(shape(hostile), shape(harmless))
                    if command in ("card", "labels", "chemical"):
                        self.assertIn(self.words, "\n".join(strings(hostile)))

    def test_junit_is_the_same_document(self):
        hostile, harmless = self.pair("check", "--as", "junit")
        self.assertTrue(xml_is_well_formed(hostile))
        self.assertEqual(xml_skeleton(hostile), xml_skeleton(harmless))

    def test_the_binder_has_the_same_files_and_pages(self):
        for folder in ("hostile", "harmless"):
            self.scruple("binder", "--out", "binder", cwd=self.folder / folder)
        pages = {folder: sorted(path.name for path in (self.folder / folder / "binder").iterdir())
                 for folder in ("hostile", "harmless")}
        self.assertEqual(len(pages["hostile"]), len(pages["harmless"]))
        for name in pages["hostile"]:
            self.assertRegex(name, r"^[a-z0-9-]+\.(html|pdf)$")
            self.assertLess(len(name), 256)
        index = [Skeleton((self.folder / folder / "binder/index.html").read_text(encoding="utf-8")) for folder in pages]
        self.assertEqual(index[0].parts, index[1].parts)
        self.assertEqual({path.name for path in (self.folder / "hostile").iterdir()}, {".before", "all.scruple", "binder"})

    def test_sheets_hold_words_and_nothing_that_acts(self):
        self.pair("card", "Plover WORDS part WORDS", "--as", "pdf", "--out", "card.pdf")
        path = self.folder / "hostile/card.pdf"
        plain = subprocess.run(["qpdf", "--qdf", "--object-streams=disable", path, "-"], capture_output=True, check=True).stdout
        for name in (b"/JavaScript", b"/JS", b"/URI", b"/Launch", b"/OpenAction", b"/EmbeddedFile", b"/AA"):
            self.assertNotIn(name, plain)
        title = subprocess.run(["pdfinfo", path], capture_output=True, check=True).stdout.decode()
        self.assertIn(PAGES[0], title)
        hostile, harmless = self.pair("card", "Plover WORDS", "--as", "svg")
        self.assertTrue(xml_is_well_formed(hostile))
        allowed = {tag for tag, _ in xml_skeleton(harmless)}
        self.assertLessEqual({tag for tag, _ in xml_skeleton(hostile)}, allowed)
        self.assertNotIn(b"script", hostile)


def shape(document):
    """Of a JSON document: its members and the kinds of its values."""
    if isinstance(document, dict):
        return {key: shape(value) for key, value in document.items() if key not in ("text", "gone", "line", "column")}
    if isinstance(document, list):
        return [shape(value) for value in document]
    return type(document).__name__


def strings(document):
    if isinstance(document, dict):
        return [text for value in document.values() for text in strings(value)]
    if isinstance(document, list):
        return [text for value in document for text in strings(value)]
    return [document] if isinstance(document, str) else []


class Rows(Workspace):
    def list_of(self, begins, words=HARMLESS):
        text = WORKSPACE.replace("    is a       {words}\n", "").replace(" for {words}   # {words} {open}", "")
        self.put("all.scruple", text.format(words=words, open=HARMLESS, begins=begins))
        return self.scruple("shopping", "--as", "csv")

    def test_no_cell_is_a_formula_however_cells_are_parted(self):
        harmless = [len(row) for row in csv.reader(io.StringIO(self.list_of("")))]
        for sign in FORMULAS:
            for words in (HARMLESS, f"x;{sign}", f"x| {sign}", f"x, {sign}"):
                text = self.list_of(sign + " ", words)
                rows = list(csv.reader(io.StringIO(text)))
                self.assertEqual([len(row) for row in rows], harmless)
                for parted in ",;|\t":
                    for row in csv.reader(io.StringIO(text), delimiter=parted):
                        for cell in row:
                            self.assertNotIn(cell.strip(' "')[:1] or "x", "=+-@＝＋－＠", f"parted by {parted}: {cell}")

    def test_words_that_would_end_a_cell_or_an_event_stay_in_theirs(self):
        words = " ".join(DATA)
        rows = list(csv.reader(io.StringIO(self.list_of("", words))))
        self.assertIn(f"salt {words}", [row[1] for row in rows])
        hostile = self.run_scruple("calendar", "--as", "ics").stdout
        self.list_of("")
        harmless = self.run_scruple("calendar", "--as", "ics").stdout
        events = [icalendar.Calendar.from_ical(text).walk("VEVENT") for text in (hostile, harmless)]
        self.assertEqual([sorted(event) for event in events[0]], [sorted(event) for event in events[1]])
        # RFC 5545, 3.1 and 3.3.11; python3-icalendar takes `\\\\n` for a line end.
        lines = hostile.decode().replace("\r\n ", "").split("\r\n")
        summaries = [re.sub(r"\\(.)", r"\1", line.partition(":")[2]) for line in lines if line.startswith("SUMMARY:")]
        self.assertTrue(any(words in summary for summary in summaries), summaries)


class Codes(Workspace):
    def test_a_code_says_one_name_and_no_line_more(self):
        name = "MECARD:N:x;; WIFI:S:x;P:y;; http://x.invalid"
        self.put("a.scruple", f'recipe "{name}"\n    water   1 l\n    metol   1 g\n')
        self.scruple("labels", name, "--batch", "7; use by 2099-01-01", "--as", "png", "--out", "label.png")
        read = subprocess.run(["zbarimg", "-q", "--raw", self.folder / "label.png"], capture_output=True, check=True).stdout
        lines = read.decode().strip().splitlines()
        self.assertEqual(lines[:2], [name, "batch 7; use by 2099-01-01"])
        self.assertEqual([line.split(" ")[0] for line in lines[2:]], ["recipe"])
        self.assertIn("does not show", self.refused("labels", name, "--batch", "7\nuse by 2099-01-01"))
