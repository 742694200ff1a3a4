# SPDX-License-Identifier: MIT
"""What the language server says of hostile names: Markdown that holds the same elements as with harmless ones, as cmark-gfm
reads it, which is GitHub's own; edits within the lines that they are about."""
import shutil
import subprocess
import unittest
from html.parser import HTMLParser

from hostile import HARMLESS, MARKDOWN, PAGES, unseen_in
from lsp import Client
from support import Workspace

TEXT = """\
chemical "salt {words}"
    form       crystals NaCl

recipe "Plover {words}"
    water                                            700 ml
    "salt {words}"                                   10 g
    water to make                                    1 l

recipe Dunlin
    water                                            500 ml
    "Plover {words}"                                 100 ml
    water to make                                    1 l
"""


def elements(markdown):
    page = subprocess.run(["cmark-gfm", "--unsafe", "-e", "table", "-e", "autolink", "-e", "strikethrough"],
                          input=markdown.encode(), capture_output=True, check=True).stdout.decode()
    found = []
    reader = HTMLParser()
    reader.handle_starttag = lambda tag, attrs: found.append((tag, attrs))
    words = []
    reader.handle_data = words.append
    reader.feed(page)
    return found, "".join(words)


class Editor(Workspace):
    def client(self, words):
        self.put("a.scruple", TEXT.format(words=words))
        client = Client(self.folder)
        self.addCleanup(client.kill)
        client.open("a.scruple", TEXT.format(words=words))
        return client

    @unittest.skipUnless(shutil.which("cmark-gfm"), "there is no cmark-gfm here")
    def test_hovering_shows_words(self):
        shown = {}
        for words in (" ".join([*MARKDOWN, *PAGES]), HARMLESS):
            client = self.client(words)
            for line, column in ((0, 12), (5, 6), (10, 6)):
                hover = client.request("textDocument/hover", client.at("a.scruple", line, column))
                self.assertIsNotNone(hover, (line, column))
                text = hover["contents"]["value"]
                self.assertEqual(unseen_in(text), [])
                shown.setdefault((line, column), []).append(elements(text))
                if words != HARMLESS and line == 0:
                    for word in words.split(" "):
                        self.assertIn(word, shown[line, column][0][1])
        for hostile, harmless in shown.values():
            self.assertEqual(hostile[0], harmless[0])
            self.assertNotIn("a", [tag for tag, _ in hostile[0]])

    def test_a_new_name_is_one_name(self):
        client = self.client(HARMLESS)
        for name in ("x\n    lye 5 g", "x\rrecipe y", 'x" # ', "x\u202ey", "x\x1b", ""):
            answer = client.response(client.ask("textDocument/rename", client.at("a.scruple", 3, 10, newName=name)))
            self.assertIn("error", answer, name)
