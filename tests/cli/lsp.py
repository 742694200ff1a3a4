# SPDX-License-Identifier: MIT
"""A client of the language server that says exactly what a test wants, right or wrong."""
import json
import pathlib
import subprocess
import urllib.parse

from support import PROGRAM


class Client:
    def __init__(self, folder, start=True, **capabilities):
        self.folder = pathlib.Path(folder)
        self.server = subprocess.Popen([PROGRAM, "language-server"], stdin=subprocess.PIPE, stdout=subprocess.PIPE)
        self.next_id, self.versions, self.diagnostics, self.told = 0, {}, {}, []
        if start:
            self.started = self.request("initialize", {"processId": None, "rootUri": self.folder.as_uri(),
                                                       "capabilities": capabilities})
            self.notify("initialized", {})

    # ---- the wire ----

    def raw(self, data):
        self.server.stdin.write(data)
        self.server.stdin.flush()

    def send(self, message):
        body = json.dumps(message, ensure_ascii=False).encode()
        self.raw(b"Content-Length: %d\r\n\r\n" % len(body) + body)

    def receive(self):
        length = None
        while (line := self.server.stdout.readline()) != b"\r\n":
            if not line:
                return None
            name, value = line.split(b":")
            if name.lower() == b"content-length":
                length = int(value)
        message = json.loads(self.server.stdout.read(length))
        if message.get("method") == "textDocument/publishDiagnostics":
            self.diagnostics[message["params"]["uri"]] = message["params"]
        return message

    # ---- requests and notices ----

    def ask(self, method, params):
        self.next_id += 1
        self.send({"jsonrpc": "2.0", "id": self.next_id, "method": method, "params": params})
        return self.next_id

    def response(self, number):
        while (message := self.receive()) is not None:
            if message.get("id") == number and "method" not in message:
                return message
            self.told.append(message)
        raise AssertionError("the server is gone")

    def request(self, method, params):
        message = self.response(self.ask(method, params))
        if "error" in message:
            raise AssertionError(message["error"]["message"])
        return message["result"]

    def refused(self, method, params):
        return self.response(self.ask(method, params))["error"]

    def notify(self, method, params):
        self.send({"jsonrpc": "2.0", "method": method, "params": params})

    # ---- documents ----

    def uri(self, name):
        return "file://" + urllib.parse.quote(str(self.folder / name))

    def document(self, name):
        return {"textDocument": {"uri": self.uri(name)}}

    def open(self, name, text):
        self.versions[name] = 1
        self.notify("textDocument/didOpen", {"textDocument": {"uri": self.uri(name), "languageId": "scruple", "version": 1,
                                                              "text": text}})

    def change(self, name, *changes):
        """Each a text, or ((line, character), (line, character), text)."""
        self.versions[name] += 1
        edits = [{"text": one} if isinstance(one, str) else {"range": span(*one[:2]), "text": one[2]} for one in changes]
        self.notify("textDocument/didChange", {"textDocument": {"uri": self.uri(name), "version": self.versions[name]},
                                               "contentChanges": edits})

    def at(self, name, line, character, **more):
        return {**self.document(name), "position": {"line": line, "character": character}, **more}

    def settled(self):
        """All that is published up to now: the server answers in order."""
        self.request("workspace/symbol", {"query": "\x7fnothing"})
        return self.diagnostics

    def kinds(self, name):
        self.settled()
        return [d["code"] for d in self.diagnostics.get(self.uri(name), {"diagnostics": []})["diagnostics"]]

    def stop(self):
        self.request("shutdown", None)
        self.notify("exit", None)
        self.server.stdin.close()
        status = self.server.wait(timeout=20)
        self.server.stdout.close()
        return status

    def kill(self):
        self.server.kill()
        self.server.wait()
        try:
            self.server.stdin.close()
        except BrokenPipeError:
            pass  # what was not read by the time the server ended cannot be sent any more
        self.server.stdout.close()


def span(start, end):
    return {"start": {"line": start[0], "character": start[1]}, "end": {"line": end[0], "character": end[1]}}
