# SPDX-License-Identifier: MIT
"""The language server, message by message (Language Server Protocol 3.17): what it answers, and what it survives."""
import json
import os
import random
import unittest

from lsp import Client, span
from support import FAULTS, FINE, HERON, ROOT, TERN, Workspace

OUNCES = TERN.replace("30 g", "30 oz")


class Served(Workspace):
    def setUp(self):
        super().setUp()
        self.put("heron.scruple", HERON)
        self.put("tern.scruple", TERN)

    def client(self, **how):
        client = Client(self.folder, **how)
        self.addCleanup(client.kill)
        return client

    def apply(self, text, edits):
        """Edits of the protocol, in a text without characters past U+FFFF."""
        lines = text.split("\n")
        starts = [0]
        for line in lines:
            starts.append(starts[-1] + len(line) + 1)

        def offset(place):
            return starts[place["line"]] + place["character"]
        for edit in sorted(edits, key=lambda e: offset(e["range"]["start"]), reverse=True):
            text = text[:offset(edit["range"]["start"])] + edit["newText"] + text[offset(edit["range"]["end"]):]
        return text


class Diagnostics(Served):
    def test_as_typed_and_mended(self):
        client = self.client()
        client.open("tern.scruple", TERN)
        self.assertEqual(client.kinds("tern.scruple"), [])
        client.change("tern.scruple", ((2, 38), (2, 39), "oz"))
        self.assertEqual(client.kinds("tern.scruple"), ["ambiguous-unit"])
        found = client.diagnostics[client.uri("tern.scruple")]
        self.assertEqual(found["version"], 2)
        self.assertEqual(found["diagnostics"][0]["range"], span((2, 38), (2, 40)))
        actions = client.request("textDocument/codeAction", {**client.document("tern.scruple"), "range": span((2, 38), (2, 38)),
                                                             "context": {"diagnostics": []}})
        self.assertEqual([a["title"] for a in actions], [f"Write {u}" for u in ("oz av", "oz ap", "fl oz us", "fl oz uk")])
        edit = actions[0]["edit"]["changes"][client.uri("tern.scruple")][0]
        client.change("tern.scruple", ((2, edit["range"]["start"]["character"]), (2, edit["range"]["end"]["character"]),
                                       edit["newText"]))
        self.assertNotIn("ambiguous-unit", client.kinds("tern.scruple"))
        self.assertEqual(client.stop(), 0)

    def test_every_fix_of_every_case_is_offered(self):
        client = self.client()
        offered = 0
        for case in sorted((ROOT / "tests/cases/check").glob("u*.scruple")):
            text = case.read_text(encoding="utf-8")
            client.open("case.scruple", text)
            whole = {**client.document("case.scruple"), "range": span((0, 0), (len(text), 0)), "context": {"diagnostics": []}}
            offered += len(client.request("textDocument/codeAction", whole))
        self.assertGreaterEqual(offered, 50)

    def test_files_of_the_folder_are_told_of_too(self):
        self.put("faulty.scruple", OUNCES.replace("Tern", "Smew"))
        client = self.client()
        self.assertEqual(client.kinds("faulty.scruple"), ["ambiguous-unit"])
        self.put("faulty.scruple", TERN.replace("Tern", "Smew"))
        client.notify("workspace/didChangeWatchedFiles", {"changes": [{"uri": client.uri("faulty.scruple"), "type": 2}]})
        self.assertEqual(client.kinds("faulty.scruple"), [])

    def test_what_depends_on_an_edit_is_checked_anew(self):
        self.put("smew.scruple", "recipe Smew\n    Tern   100 ml\n    water to make   1 l\n    expect sodium sulfite (anhydrous) 3 g/l\n")
        client = self.client()
        client.open("tern.scruple", TERN)
        self.assertEqual(client.kinds("smew.scruple"), [])
        client.change("tern.scruple", TERN.replace("30 g", "60 g"))
        self.assertEqual(client.kinds("smew.scruple"), ["expectation-missed"])
        client.change("tern.scruple", TERN.replace("recipe Tern", "recipe Terne"))
        self.assertEqual(client.kinds("smew.scruple"), ["unknown-name"])
        self.assertIn("`Terne`", client.diagnostics[client.uri("smew.scruple")]["diagnostics"][0]["message"])
        client.notify("textDocument/didClose", client.document("tern.scruple"))
        self.assertEqual(client.kinds("smew.scruple"), [])

    def test_a_file_that_is_no_text_while_it_is_typed(self):
        client = self.client()
        client.open("tern.scruple", TERN)
        client.change("tern.scruple", ((1, 4), (1, 4), "\x00"))
        self.assertEqual(client.kinds("tern.scruple"), ["not-text"])
        client.change("tern.scruple", ((1, 4), (1, 5), ""))
        self.assertEqual(client.kinds("tern.scruple"), [])


class Incremental(Served):
    """Whatever is typed, what the server says in the end is what the command line says of the same files."""

    def said_by_the_command_line(self, texts):
        for name, text in texts.items():
            self.put(name, text)
        done = self.run_scruple("check", "--as", "json")
        self.assertIn(done.returncode, (FINE, FAULTS))
        return sorted((m["file"], m["line"], m["kind"], m["message"], m["write"]) for m in json.loads(done.stdout))

    def said_by_the_server(self, client, texts):
        client.settled()
        said = []
        for name in texts:
            for d in client.diagnostics.get(client.uri(name), {"diagnostics": []})["diagnostics"]:
                message, _, write = d["message"].partition("\nwrite ")
                said.append((name, d["range"]["start"]["line"] + 1, d["code"], message, write))
        return sorted(said)

    def edits_agree(self, texts, rounds, seed):
        pick = random.Random(seed)
        self.said_by_the_command_line(texts)
        client = self.client()
        for name, text in texts.items():
            client.open(name, text)
        lines = [line for text in texts.values() for line in text.splitlines() if line.strip()]
        for i in range(rounds):
            for _ in range(pick.randint(1, 4)):
                name = pick.choice(sorted(texts))
                own = texts[name].split("\n")
                at = pick.randrange(len(own))
                what = pick.random()
                if what < 0.4:
                    own[at] = pick.choice(lines)
                elif what < 0.6:
                    own.insert(at, pick.choice(lines))
                elif what < 0.8 and len(own) > 1:
                    del own[at]
                elif own[at]:
                    column = pick.randrange(len(own[at]))
                    own[at] = own[at][:column] + pick.choice("aeg1 (,") + own[at][column + 1:]
                texts[name] = "\n".join(own)
                client.change(name, texts[name])
            for _ in range(60):  # what waits is checked while nothing is asked
                if self.said_by_the_server(client, texts) == (wanted := self.said_by_the_command_line(texts)):
                    break
            self.assertEqual(self.said_by_the_server(client, texts), wanted, f"round {i}")
        self.assertEqual(client.stop(), 0)

    def test_edits_of_the_demo(self):
        for path in self.folder.glob("*.scruple"):
            path.unlink()
        texts = {path.name: path.read_text(encoding="utf-8") for path in sorted((ROOT / "recipes").glob("*.scruple"))}
        self.edits_agree(texts, 40, 1)

    def test_edits_of_recipes_that_stand_on_one_another(self):
        for path in self.folder.glob("*.scruple"):
            path.unlink()
        texts = {f"r{i}.scruple": f"recipe Reed {i}\n    {'Reed ' + str(i - 1) if i else 'water'}   200 ml\n    metol   {i + 1} g\n"
                                  f"    water to make   1 l\n    expect metol 0.5 to {i + 2} g/l\n" for i in range(6)}
        texts["chemical.scruple"] = "chemical moss killer\n    form anhydrous FeSO4\n\nbench Shed\n    dropper 20 drops per 1 ml water\n"
        texts["use.scruple"] = "recipe Moss\n    water   200 ml\n    moss killer   5 g\n    metol   3 drops\n    water to make   1 l\n"
        self.edits_agree(texts, 60, 2)


class Positions(Served):
    def test_utf_16_in_any_script(self):
        text = "recipe 𝔗ern\n    note 🧪🧪 日本 é\n    water   700 ml # 🧪\n    \"🧪\"   30 oz\n    sodium sulfite (anhydrous)   30 oz # 𝔗\n"
        client = self.client()
        client.open("x.scruple", text)
        client.settled()
        for d in client.diagnostics[client.uri("x.scruple")]["diagnostics"]:
            if d["code"] != "ambiguous-unit":
                continue
            line = text.split("\n")[d["range"]["start"]["line"]].encode("utf-16-le")
            begin, end = d["range"]["start"]["character"], d["range"]["end"]["character"]
            self.assertEqual(line[2 * begin:2 * end].decode("utf-16-le"), "oz")
        # Units of UTF-16: 🧪 takes two.
        client.change("x.scruple", ((1, 9), (1, 13), "é"), ((0, 7), (0, 9), "T"))
        symbols = client.request("textDocument/documentSymbol", client.document("x.scruple"))
        self.assertEqual(symbols[0]["name"], "recipe Tern")
        self.assertEqual(symbols[0]["selectionRange"], span((0, 0), (0, 11)))

    def test_line_ends_of_every_kind_and_places_past_the_end(self):
        client = self.client()
        client.open("x.scruple", "recipe Tern\r\n    water   1 l\r    metol   3 oz\n")
        self.assertEqual([d["range"]["start"] for d in self.found(client)], [{"line": 2, "character": 14}])
        client.change("x.scruple", ((2, 14), (2, 900), "g"), ((900, 0), (901, 5), "    metol 5 oz"))
        self.assertEqual([d["range"]["start"]["line"] for d in self.found(client)], [3])

    def found(self, client):
        client.settled()
        return [d for d in client.diagnostics[client.uri("x.scruple")]["diagnostics"] if d["code"] == "ambiguous-unit"]


class Features(Served):
    def setUp(self):
        super().setUp()
        self.put("log.scruple", "log\n    2026-01-02 mixed Heron part A 1 l\n    2026-01-03 mixed Tern 1 l\n")
        self.put("smew.scruple", "recipe Smew\n    Heron part A   100 ml\n    part A   5 ml\n    water to make   1 l\n")
        self.served = self.client()

    def ask(self, method, name, line, character, **more):
        return self.served.request(f"textDocument/{method}", self.served.at(name, line, character, **more))

    def labels(self, name, text, line, character):
        self.served.open(name, text)
        found = self.ask("completion", name, line, character)
        return [item["label"] for item in (found["items"] if isinstance(found, dict) else found)]

    def test_hover(self):
        said = self.ask("hover", "heron.scruple", 6, 6)["contents"]["value"]
        self.assertIn("`Na2SO3`, 126 g/mol", said)  # 2 × 22.990 + 32.06 + 3 × 15.999 = 126.04
        self.assertIn("0.3174 mol", said)           # 40 g ÷ 126.04 g/mol
        self.assertIn("40 g/l", said)
        self.assertRegex(said, r"so far: 71\d ml, pH (9|10)\.\d")
        self.assertIn("safety data sheet", said)
        self.assertIn("**Heron part A**", self.ask("hover", "smew.scruple", 1, 6)["contents"]["value"])
        self.assertIsNone(self.ask("hover", "heron.scruple", 2, 6))

    def test_definition_and_references_through_files(self):
        place = self.ask("definition", "log.scruple", 1, 32)
        self.assertEqual([(p["uri"], p["range"]) for p in place], [(self.served.uri("heron.scruple"), span((4, 5), (4, 6)))])
        place = self.ask("definition", "log.scruple", 1, 23)
        self.assertEqual(place[0]["range"], span((0, 7), (0, 12)))
        self.assertEqual(self.ask("definition", "tern.scruple", 2, 6), [])  # of the library, which is in no file
        all_of_heron = self.ask("references", "heron.scruple", 0, 8, context={"includeDeclaration": True})
        self.assertEqual(sorted(p["uri"].rsplit("/", 1)[1] for p in all_of_heron),
                         ["heron.scruple", "log.scruple", "smew.scruple"])
        sulfite = self.ask("references", "tern.scruple", 2, 6, context={"includeDeclaration": False})
        self.assertEqual(len(sulfite), 2)

    def test_rename_through_files(self):
        changes = self.ask("rename", "log.scruple", 1, 23, newName="Egret")["changes"]
        texts = {name: self.apply(self.text(name), changes[self.served.uri(name)])
                 for name in ("heron.scruple", "log.scruple", "smew.scruple")}
        self.assertIn("mixed Egret part A 1 l", texts["log.scruple"])
        changes = self.ask("rename", "heron.scruple", 4, 5, newName="one")["changes"]
        texts = {name: self.apply(self.text(name), edits) for uri, edits in changes.items()
                 for name in [uri.rsplit("/", 1)[1]]}
        self.assertIn("part one\n", texts["heron.scruple"])
        self.assertIn("mix part one + part B + water", texts["heron.scruple"])
        self.assertIn("Heron part one   100 ml", texts["smew.scruple"])
        before = self.scruple("check", "--as", "json", status=FAULTS)
        for name, text in texts.items():
            self.put(name, text)
        self.assertEqual(len(json.loads(self.scruple("check", "--as", "json", status=FAULTS))), len(json.loads(before)))

    def test_rename_refuses(self):
        for name, line, character, new in (("heron.scruple", 0, 8, "Tern"), ("heron.scruple", 0, 8, "5 g"),
                                           ("heron.scruple", 0, 8, "a\nb"), ("heron.scruple", 0, 8, ""),
                                           ("tern.scruple", 2, 6, "salt"), ("heron.scruple", 2, 8, "x")):
            error = self.served.refused("textDocument/rename", self.served.at(name, line, character, newName=new))
            self.assertNotIn("`recipe", error["message"])

    def test_completion_by_position(self):
        self.assertIn("recipe", self.labels("a.scruple", "re", 0, 2))
        self.assertEqual(self.labels("b.scruple", "recipe X\n    sodium carbonate (", 1, 22),
                         ["anhydrous", "monohydrate", "decahydrate"])
        units = self.labels("c.scruple", "recipe X\n    metol 5 ", 1, 12)
        self.assertIn("grains", units)
        self.assertNotIn("min", units)
        self.assertIn("min", self.labels("d.scruple", "recipe X\n    wait 5 ", 1, 11))
        self.assertEqual(self.labels("e.scruple", "recipe X\n    water 1 l at 20 ", 1, 20)[0].strip("°"), "C")
        names = self.labels("f.scruple", "recipe X\n    her", 1, 7)
        self.assertIn("Heron part A", names)
        self.assertIn("sodium sulfite (anhydrous)", self.labels("g.scruple", "recipe X\n    sodium su", 1, 13))
        self.assertEqual(self.labels("h.scruple", "recipe X # so", 0, 13), [])

    def test_symbols_folding_tokens(self):
        outline = self.served.request("textDocument/documentSymbol", self.served.document("heron.scruple"))
        self.assertEqual([c["name"] for c in outline[0]["children"]], ["part A", "part B", "working"])
        names = [s["name"] for s in self.served.request("workspace/symbol", {"query": "heron"})]
        self.assertEqual(names, ["Heron", "Heron part A", "Heron part B", "Heron working"])
        folds = self.served.request("textDocument/foldingRange", self.served.document("heron.scruple"))
        self.assertIn((0, 19), [(f["startLine"], f["endLine"]) for f in folds])
        legend = self.served.started["capabilities"]["semanticTokensProvider"]["legend"]["tokenTypes"]
        data = self.served.request("textDocument/semanticTokens/full", self.served.document("tern.scruple"))["data"]
        line = character = 0
        seen = []
        for i in range(0, len(data), 5):
            line, character = line + data[i], data[i + 1] if data[i] else character + data[i + 1]
            seen.append((legend[data[i + 3]], TERN.split("\n")[line][character:character + data[i + 2]]))
        for token in (("keyword", "recipe"), ("class", "Tern"), ("variable", "sodium sulfite"), ("property", "anhydrous"),
                      ("number", "700"), ("type", "ml"), ("comment", "# by the open window"), ("keyword", "stir")):
            self.assertIn(token, seen)

    def test_formatting_is_tidy(self):
        self.served.open("t.scruple", "recipe X\n  metol 5 g\n water 1 l\n")
        edits = self.served.request("textDocument/formatting", {**self.served.document("t.scruple"), "options": {}})
        text = self.apply("recipe X\n  metol 5 g\n water 1 l\n", edits)
        self.put("t.scruple", "recipe X\n  metol 5 g\n water 1 l\n")
        self.scruple("tidy", "t.scruple")
        self.assertEqual(text, self.text("t.scruple"))
        self.served.open("u.scruple", "recipe X\n  \"\n")
        self.assertIn("line 2", self.served.refused("textDocument/formatting",
                                                    {**self.served.document("u.scruple"), "options": {}})["message"])

    def test_hints_and_lenses(self):
        hints = self.served.request("textDocument/inlayHint", {**self.served.document("heron.scruple"), "range": span((0, 0), (99, 0))})
        self.assertIn("0.3174 mol, now 71", " ".join(h["label"] for h in hints))
        lenses = self.served.request("textDocument/codeLens", self.served.document("heron.scruple"))
        self.assertEqual([lens["command"]["title"] for lens in lenses], ["make 500 ml"] * 3)
        command = lenses[0]["command"]
        call = {"command": command["command"], "arguments": command["arguments"]}
        card = self.served.request("workspace/executeCommand", call)
        self.assertIn("makes 500 ml", card.replace("\u00a0", " "))
        self.served.open("heron.scruple", HERON.replace("40 g", "40 oz"))
        self.assertIn("errors", self.served.refused("workspace/executeCommand", call)["message"])


class Robust(Served):
    def test_malformed_messages(self):
        client = self.client()
        for data, code in ((b"Content-Length: 5\r\n\r\n{\"a\":", -32700), (b"Content-Length: 2\r\n\r\n[]", -32600),
                           (b"Content-Length: 2\r\n\r\n\xff\xfe", -32700), (b"Nonsense: 1\r\n\r\n", -32700),
                           (b"Content-Length: x\r\n\r\n", -32700), (b"content-length: 4\r\nX: y\r\n\r\nnull", -32600),
                           (b"Content-Length: 2\r\n\r\n{}", -32600), (b"Content-Length: 12\r\n\r\n{\"method\":1}", -32600)):
            client.raw(data)
            while "error" not in (message := client.receive()):
                pass
            self.assertEqual(message["error"]["code"], code, data)
        self.assertEqual(client.stop(), 0)

    def test_wrong_parameters_and_unknown_methods(self):
        client = self.client()
        self.assertEqual(client.refused("textDocument/hover", {})["code"], -32602)
        self.assertEqual(client.refused("textDocument/hover", None)["code"], -32602)
        self.assertEqual(client.refused("textDocument/hover", client.at("nowhere.scruple", 0, 0))["code"], -32602)
        self.assertEqual(client.refused("textDocument/hover", client.at("tern.scruple", -1, "x"))["code"], -32602)
        self.assertEqual(client.refused("no/such", {})["code"], -32601)
        client.notify("no/such", {})
        client.notify("textDocument/didOpen", {"textDocument": 5})
        client.notify("textDocument/didChange", {"contentChanges": "x"})
        client.notify("$/setTrace", {"value": "off"})
        self.assertEqual(client.stop(), 0)

    def test_life(self):
        client = self.client(start=False)
        self.assertEqual(client.refused("textDocument/hover", {})["code"], -32002)
        client.notify("textDocument/didOpen", {"textDocument": {"uri": client.uri("x.scruple"), "version": 1, "text": TERN}})
        client.request("initialize", {"capabilities": {}})
        self.assertEqual(client.refused("initialize", {})["code"], -32600)
        client.request("shutdown", None)
        self.assertEqual(client.refused("textDocument/hover", {})["code"], -32600)
        client.notify("exit", None)
        self.assertEqual(client.server.wait(timeout=20), 0)
        client = self.client()
        client.notify("exit", None)
        self.assertEqual(client.server.wait(timeout=20), 1)

    def test_a_client_that_vanishes(self):
        for vanish in ("stdin", "stdout", "both"):
            client = self.client()
            if vanish != "stdin":
                client.server.stdout.close()
            client.open("tern.scruple", OUNCES)
            if vanish != "stdout":
                client.server.stdin.close()
            else:
                for _ in range(50):
                    try:
                        client.change("tern.scruple", TERN)
                    except BrokenPipeError:
                        break
            self.assertEqual(client.server.wait(timeout=20), 1, vanish)

    def test_cancelled_and_out_of_order(self):
        client = self.client()
        client.open("tern.scruple", TERN)
        client.settled()
        number = client.next_id + 1
        request = {"jsonrpc": "2.0", "id": number, "method": "workspace/symbol", "params": {"query": ""}}
        cancel = {"jsonrpc": "2.0", "method": "$/cancelRequest", "params": {"id": number}}
        both = b"".join(b"Content-Length: %d\r\n\r\n" % len(body) + body for body in
                        (json.dumps(message).encode() for message in (request, cancel)))
        client.raw(both)
        client.next_id = number
        answer = client.response(number)
        self.assertTrue("result" in answer or answer["error"]["code"] == -32800)
        client.notify("$/cancelRequest", {"id": 999})
        client.notify("textDocument/didChange", {"textDocument": {"uri": client.uri("tern.scruple"), "version": 0},
                                                 "contentChanges": [{"text": OUNCES}]})
        client.versions["new.scruple"] = 1
        client.change("new.scruple", OUNCES)
        client.notify("textDocument/didClose", client.document("never.scruple"))
        self.assertEqual(client.kinds("tern.scruple"), [])
        self.assertEqual(client.kinds("new.scruple"), [])
        self.assertEqual(client.stop(), 0)

    def test_any_place_in_any_case_is_answered(self):
        client = self.client()
        pick = random.Random(3)
        for case in pick.sample(sorted((ROOT / "tests/cases/check").glob("*.scruple")), 40):
            lines = case.read_text(encoding="utf-8").split("\n")
            client.open("case.scruple", "\n".join(lines))
            for _ in range(12):
                line = pick.randrange(len(lines))
                place = client.at("case.scruple", line, pick.randint(0, len(lines[line]) + 2))
                for method in ("hover", "completion", "definition", "documentHighlight", "prepareRename"):
                    self.assertIn("id", client.response(client.ask(f"textDocument/{method}", place)))
            for method in ("documentSymbol", "foldingRange", "semanticTokens/full", "codeLens"):
                client.request(f"textDocument/{method}", client.document("case.scruple"))
            client.request("textDocument/inlayHint", {**client.document("case.scruple"), "range": span((0, 0), (999, 0))})
        self.assertEqual(client.stop(), 0)

    @unittest.skipIf(os.environ.get("SCRUPLE_SANITIZED"), "the address sanitizer keeps what was given back")
    def test_memory_stays_flat(self):
        client = self.client()
        client.open("tern.scruple", TERN)

        def resident():
            client.settled()
            with open(f"/proc/{client.server.pid}/status", encoding="utf-8") as status:
                return int(status.read().split("VmRSS:")[1].split()[0])

        def edits(count):
            for i in range(count):
                client.change("tern.scruple", ((2, 35), (2, 36), str(i % 9 + 1)))
                if i % 100 == 0:
                    client.settled()
        edits(1000)
        before = resident()
        edits(4000)
        self.assertLess(resident(), before * 1.02 + 512)
