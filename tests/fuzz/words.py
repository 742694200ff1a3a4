#!/usr/bin/python3
# SPDX-License-Identifier: MIT
"""Prints a dictionary for libFuzzer: the words of the grammar, names of the library, methods of the language server."""
import pathlib
import re
import sys

ROOT = pathlib.Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT / "grammar/editors"))
import peg  # noqa: E402

METHOD = re.compile(r'"((?:textDocument|workspace)/\w+(?:/full)?)"')
NAMED = re.compile(r"^ *(?:chemical|form|also|conversion|format) +(\S.*?)(?:  |,|$)", re.M)


def words_of_grammar():
    tokens = (token for rule in peg.RULES.values() for token in rule)
    return (token[1:-1] for token in tokens if token[0] == "'" and "\\" not in token)


def names_of_library():
    for path in sorted((ROOT / "src/library").glob("*.scruple")):
        yield from NAMED.findall(path.read_text(encoding="utf-8"))


def methods():
    return METHOD.findall((ROOT / "src/server/session.cpp").read_text(encoding="utf-8"))


def escaped(word):
    return "".join(chr(byte) if 0x20 <= byte < 0x7F and byte not in b'"\\' else f"\\x{byte:02X}"
                   for byte in word.encode())


def main():
    words = dict.fromkeys([*words_of_grammar(), *names_of_library(), *methods()])
    print("\n".join(f'"{escaped(word)}"' for word in words if 0 < len(word.encode()) <= 60))


if __name__ == "__main__":
    main()
