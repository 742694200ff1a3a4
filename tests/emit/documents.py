#!/usr/bin/python3
# SPDX-License-Identifier: MIT
"""Holds documents to what is said of them elsewhere.

JSON to the schemas in docs/schemas (python3-jsonschema); that a schema can refuse is tried too. Pages
to the rules of HTML (html.parser: every element closed in its turn), to their own policy (RFC 9110 and
Content Security Policy Level 3: the digests are those of the one style and the one script), and to fetching nothing.

    documents.py FOLDER…    every .json and .html in them; FOLDER may be a file
"""
import base64
import hashlib
import json
import pathlib
import re
import sys
from html.parser import HTMLParser

import jsonschema

ROOT = pathlib.Path(__file__).resolve().parents[2]
SCHEMAS = ROOT / "docs" / "schemas"
VOID = {"meta", "link", "br", "hr", "img", "input"}
KNOWN = {"html", "head", "meta", "title", "style", "body", "main", "article", "header", "footer", "section", "div",
         "h1", "h2", "p", "span", "small", "b", "ul", "ol", "li", "table", "thead", "tbody", "tr", "th", "td", "pre",
         "label", "script"}


def validator(name):
    schema = json.loads((SCHEMAS / f"{name}.json").read_text(encoding="utf-8"))
    jsonschema.Draft202012Validator.check_schema(schema)
    resolver = jsonschema.RefResolver(base_uri=SCHEMAS.as_uri() + "/", referrer=schema)
    return jsonschema.Draft202012Validator(schema, resolver=resolver)


def kind_of(document):
    return "check" if isinstance(document, list) else document["kind"]


def faults_of_json(path):
    document = json.loads(path.read_text(encoding="utf-8"))
    held_to = validator(kind_of(document))
    faults = [f"{'/'.join(map(str, e.absolute_path))}: {e.message}" for e in held_to.iter_errors(document)]
    if isinstance(document, dict):
        if held_to.is_valid({**document, "surprise": 1}):
            faults.append("the schema takes what it does not know")
        for key in document:
            if held_to.is_valid({k: v for k, v in document.items() if k != key}):
                faults.append(f"the schema does not miss {key}")
    return faults


class Page(HTMLParser):
    def __init__(self):
        super().__init__()
        self.open, self.faults, self.policy = [], [], ""
        self.inside = {"style": "", "script": "", "data": ""}

    def handle_starttag(self, tag, attrs):
        attributes = dict(attrs)
        if tag not in KNOWN:
            self.faults.append(f"<{tag}> is no element of these pages")
        for name in attributes:
            if name.startswith("on") or name in ("src", "href", "style", "srcset", "action"):
                self.faults.append(f"<{tag} {name}> would run or fetch")
        if tag == "th" and attributes.get("scope") not in ("row", "col"):
            self.faults.append("<th> without scope")
        if attributes.get("http-equiv") == "Content-Security-Policy":
            self.policy = attributes["content"]
        if tag not in VOID:
            self.open.append(tag)
        if tag == "script":
            self.script = "data" if attributes.get("type") == "application/json" else "script"

    def handle_endtag(self, tag):
        if not self.open or self.open.pop() != tag:
            self.faults.append(f"</{tag}> closes nothing")

    def handle_data(self, data):
        if self.open and self.open[-1] in ("style", "script"):
            self.inside["style" if self.open[-1] == "style" else self.script] += data


def faults_of_page(path):
    page = Page()
    page.feed(path.read_text(encoding="utf-8"))
    page.close()
    for kind in ("style", "script"):
        text = page.inside[kind]
        digest = base64.b64encode(hashlib.sha256(text.encode()).digest()).decode()
        if text and f"{kind}-src 'sha256-{digest}'" not in page.policy:
            page.faults.append(f"the policy does not take the {kind}; its digest is sha256-{digest}")
    if "default-src 'none'" not in page.policy:
        page.faults.append("the policy lets something in by default")
    if re.search(r"url\(|@import", page.inside["style"]):
        page.faults.append("the style would fetch")
    return page.faults + [f"<{tag}> is never closed" for tag in page.open]


def documents(arguments):
    for argument in map(pathlib.Path, arguments):
        yield from sorted(argument.iterdir()) if argument.is_dir() else [argument]


def main():
    seen = failed = 0
    for path in documents(sys.argv[1:]):
        looked_at = {".json": faults_of_json, ".html": faults_of_page}.get(path.suffix)
        if looked_at is None:
            continue
        seen += 1
        for fault in looked_at(path):
            failed += 1
            print(f"{path}: {fault}")
    print(f"{seen} documents, {failed} faults")
    return 1 if failed or not seen else 0


if __name__ == "__main__":
    sys.exit(main())
