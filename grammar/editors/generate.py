#!/usr/bin/python3
# SPDX-License-Identifier: MIT
"""Writes what editors and the language server know of the language's words, from grammar/scruple.peg.

    generate.py            writes the files anew
    generate.py --check    says which of them would change
"""
import pathlib
import sys

import emacs
import peg
import textmate
import vim

ROOT = pathlib.Path(__file__).resolve().parents[2]


def keyword_table(name, words):
    return f"constexpr std::string_view {name}[] = {{\n" + "".join(f'    "{word}",\n' for word in words) + "};\n"


def keywords_inc():
    return ("// SPDX-License-Identifier: MIT\n// Made from grammar/scruple.peg by grammar/editors/generate.py.\n"
            "// clang-format off\n" +
            keyword_table("all_block_words", peg.block_words()) + keyword_table("all_fact_words", peg.fact_words()) +
            keyword_table("all_step_words", peg.step_words()))


def files():
    here = pathlib.Path("grammar/editors")
    yield pathlib.Path("src/server/keywords.inc"), keywords_inc()
    yield here / "textmate/syntaxes/scruple.tmLanguage.json", textmate.grammar()
    yield here / "vim/syntax/scruple.vim", vim.syntax()
    yield here / "emacs/scruple-mode.el", emacs.mode()


def main():
    only_look = sys.argv[1:] == ["--check"]
    stale = 0
    for path, text in files():
        full = ROOT / path
        if full.exists() and full.read_text(encoding="utf-8") == text:
            continue
        stale += 1
        print(path)
        if not only_look:
            full.parent.mkdir(parents=True, exist_ok=True)
            full.write_text(text, encoding="utf-8")
    print(f"{stale} {'would change' if only_look else 'written'}")
    return 1 if only_look and stale else 0


if __name__ == "__main__":
    sys.exit(main())
