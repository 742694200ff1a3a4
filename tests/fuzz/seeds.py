#!/usr/bin/python3
# SPDX-License-Identifier: MIT
"""Writes what fuzzing begins with, a folder a target: seeds.py FOLDER

Recipe text of the demo, the library and the tests, cut at its headings into pieces that can be changed as a whole;
formulas and reactions of the library and the reference tables; conversations with the language server.
"""
import csv
import hashlib
import json
import pathlib
import re
import sys

ROOT = pathlib.Path(__file__).resolve().parents[2]
MOST_BYTES = 4000
HEADING = re.compile(r"^(?=[a-z])", re.M)
OF_TEXT = ["alike", "compile", "log", "paper", "parse", "plans", "printed"]


def texts():
    for folder in ["recipes", "src/library", "tests/cases", "tests/fuzz/seeds"]:
        for path in sorted((ROOT / folder).rglob("*.scruple")):
            yield path.read_bytes().decode("utf-8", "surrogateescape")


def pieces(text):
    """The whole of a short text; as many blocks of a long one as there is room for."""
    piece = ""
    for block in HEADING.split(text):
        if piece and len((piece + block).encode("utf-8", "surrogateescape")) > MOST_BYTES:
            yield piece
            piece = ""
        piece += block
    yield piece


def formulas():
    with open(ROOT / "tests/reference/molar_masses.csv", encoding="utf-8", newline="") as rows:
        found = [row["formula"] for row in csv.DictReader(line for line in rows if not line.startswith("#"))]
    for path in sorted((ROOT / "src/library").glob("*.scruple")):
        found += re.findall(r"^ +form .* (\S+)$", path.read_text(encoding="utf-8"), re.M)
    return dict.fromkeys(found)


def reactions():
    """Between names, as the library has them, and between formulas."""
    for path in sorted((ROOT / "src/library").glob("*.scruple")):
        yield from re.findall(r"^ +(?:reaction|equilibrium) +(.*? -> [^,;\n]*)", path.read_text(encoding="utf-8"), re.M)
    yield from ["Na2CO3 + 2 HCl -> 2 NaCl + H2O + CO2", "K2Cr2O7 + HCl -> CrCl3 + KCl + H2O + Cl2",
                "AgBr + Na2S2O3 -> Na3Ag(S2O3)2 + NaBr", "MnO4- + Fe+2 + H+ -> Mn+2 + Fe+3 + H2O"]


def with_amounts(reaction):
    first = re.sub(r"^[0-9]+ ", "", re.split(r" \+ | -> ", reaction)[0])
    return f"{reaction}\n40 g {first}\n3 mol {first}\n"


def conversation(text):
    document = {"uri": "file:///hall/a.scruple"}

    def notice(method, **params):
        return {"method": method, "params": params}

    def request(method, **params):
        return {"id": 1, "method": "textDocument/" + method, "params": {"textDocument": document, **params}}
    lines = text.split("\n")
    middle = {"line": len(lines) // 2, "character": len(lines[len(lines) // 2]) // 2}
    whole = {"start": {"line": 0, "character": 0}, "end": {"line": len(lines), "character": 0}}
    at = {"position": middle}
    yield notice("textDocument/didOpen", textDocument={**document, "version": 1, "languageId": "scruple", "text": text})
    yield from [request("hover", **at), request("completion", **at), request("definition", **at),
                request("references", **at, context={"includeDeclaration": True}), request("documentHighlight", **at),
                request("prepareRename", **at), request("rename", **at, newName="Fathom"),
                request("codeAction", range=whole, context={"diagnostics": []}), request("inlayHint", range=whole),
                request("documentSymbol"), request("foldingRange"), request("semanticTokens/full"), request("codeLens"),
                request("formatting", options={"tabSize": 4, "insertSpaces": True})]
    yield notice("textDocument/didChange", textDocument={**document, "version": 2},
                 contentChanges=[{"range": {"start": middle, "end": middle}, "text": "5 oz\n"}])
    yield {"id": 2, "method": "workspace/symbol", "params": {"query": "a"}}
    name = re.search(r"^recipe +(.*?) *$", text, re.M)
    yield {"id": 3, "method": "workspace/executeCommand",
           "params": {"command": "scruple.card", "arguments": [document["uri"], name[1] if name else "A", 500]}}
    yield notice("textDocument/didClose", textDocument=document)
    yield {"id": 4, "method": "shutdown"}
    yield notice("exit")


def conversations():
    for text in texts():
        piece = next(pieces(text))
        if len(piece.encode("utf-8", "surrogateescape")) > 1500:
            continue
        messages = [json.dumps(one) for one in conversation(piece)]
        yield "\n".join(messages)
        yield "\n".join(messages[:1] + messages[5::3])
    yield "!Content-Length: 2\r\n\r\n{}\nnull\n[]\n{\"id\":1,\"method\":7}\n"


def seeds():
    for text in texts():
        for piece in pieces(text):
            for target in OF_TEXT:
                yield target, piece
    for formula in formulas():
        yield "formulas", formula
    for reaction in reactions():
        yield "formulas", reaction
        yield "reactions", with_amounts(reaction)
    for talk in conversations():
        yield "server", talk


def main():
    for target, seed in seeds():
        data = seed.encode("utf-8", "surrogateescape")
        folder = pathlib.Path(sys.argv[1]) / target
        folder.mkdir(parents=True, exist_ok=True)
        (folder / hashlib.sha1(data).hexdigest()).write_bytes(data)


if __name__ == "__main__":
    main()
