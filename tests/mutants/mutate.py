#!/usr/bin/python3
# SPDX-License-Identifier: MIT
"""Writes a mutated copy of the project: each place that could be wrong asks tests/mutants/mutant.hpp which of the two it is to
be, so that all mutants are built at once. Places are found with libclang; what is constant at compile time is left alone, and
what does not compile is taken back.

    mutate.py COPY COMMANDS RUNG...     writes COPY/src/RUNG/*.cpp and COPY/mutants.json
"""
import concurrent.futures
import json
import os
import pathlib
import re
import subprocess
import sys

from clang import cindex
from clang.cindex import CursorKind as Kind, TypeKind

ROOT = pathlib.Path(__file__).resolve().parents[2]
COMPARED = {"<": "lt", "<=": "le", ">": "gt", ">=": "ge", "==": "eq", "!=": "ne"}
WORKED_OUT = {"+": "add", "-": "sub", "*": "mul", "/": "quo"}
FUNCTIONS = (Kind.FUNCTION_DECL, Kind.CXX_METHOD, Kind.CONSTRUCTOR, Kind.FUNCTION_TEMPLATE, Kind.CONVERSION_FUNCTION)
NUMBERS = {TypeKind.INT, TypeKind.UINT, TypeKind.LONG, TypeKind.ULONG, TypeKind.LONGLONG, TypeKind.ULONGLONG, TypeKind.DOUBLE}


class Places:
    """Of one file: what is put where, and in which order at the same place."""

    def __init__(self, path, arguments):
        self.path = path
        self.bytes = path.read_bytes()
        self.found = []  # (operator, offset, insertions)
        parsed = cindex.Index.create().parse(str(path), args=arguments)
        for cursor in parsed.cursor.get_children():
            if cursor.location.file and pathlib.Path(cursor.location.file.name) == path:
                self.walk(cursor, None)

    def text(self, cursor):
        return self.bytes[cursor.extent.start.offset:cursor.extent.end.offset].decode(errors="replace")

    def here(self, cursor):
        start = cursor.extent.start
        return start.file and pathlib.Path(start.file.name) == self.path and cursor.extent.end.offset > start.offset

    def add(self, operator, cursor, *insertions):
        self.found.append((operator, cursor.extent.start.offset, insertions))

    def wrap(self, operator, call, cursor):
        start, end = cursor.extent.start.offset, cursor.extent.end.offset
        self.add(operator, cursor, (start, 0, end, f"mutant::{call}(@, "), (end, 1, start, ")"))

    def walk(self, cursor, function):
        if cursor.kind in (Kind.STATIC_ASSERT, Kind.ENUM_DECL, Kind.TEMPLATE_TYPE_PARAMETER, Kind.TEMPLATE_NON_TYPE_PARAMETER,
                           Kind.TYPE_ALIAS_DECL, Kind.USING_DECLARATION):
            return
        if cursor.kind in FUNCTIONS or cursor.kind == Kind.VAR_DECL:
            head = self.text(cursor).split("{")[0].split("=")[0]
            if re.search(r"\bconst(expr|eval|init)\b", head):
                return
        if cursor.kind in FUNCTIONS:
            function = cursor.result_type.spelling
        elif cursor.kind == Kind.LAMBDA_EXPR:
            function = "what a lambda returns is not asked"
        children = list(cursor.get_children())
        if self.here(cursor) and function is not None:
            self.look_at(cursor, children, function)
        if cursor.kind == Kind.CASE_STMT:
            children = children[1:]
        if cursor.kind == Kind.IF_STMT and self.text(cursor).startswith("if constexpr"):
            children = children[1:]
        for child in children:
            self.walk(child, function)

    def look_at(self, cursor, children, function):
        if cursor.kind == Kind.BINARY_OPERATOR and len(children) == 2:
            self.between(cursor, children[0], children[1])
        elif cursor.kind == Kind.CALL_EXPR and cursor.spelling.startswith("operator"):
            operands = list(cursor.get_arguments())
            if len(operands) == 2:
                self.between(cursor, operands[0], operands[1])
        elif cursor.kind == Kind.IF_STMT and children and not re.match(r"if (constexpr|\([^;]*;|\((const )?auto)", self.text(cursor)):
            if self.here(children[0]) and children[0].kind not in (Kind.DECL_STMT, Kind.VAR_DECL):
                self.wrap("condition", "negated", children[0])
        elif cursor.kind == Kind.CONDITIONAL_OPERATOR and children and self.here(children[0]):
            self.wrap("condition", "negated", children[0])
        elif cursor.kind == Kind.RETURN_STMT and children and function == "bool" and self.here(children[0]):
            self.wrap("return", "negated", children[0])
        elif cursor.kind in (Kind.INTEGER_LITERAL, Kind.FLOATING_LITERAL) and re.match(r"[\d.]", self.text(cursor)):
            self.wrap("literal", "next", cursor)
        elif cursor.kind == Kind.COMPOUND_STMT:
            for child in children:
                self.leave_out(child)

    def between(self, cursor, left, right):
        if not (self.here(left) and self.here(right)):
            return
        begin, end = left.extent.end.offset, right.extent.start.offset
        sign = self.bytes[begin:end].decode(errors="replace").strip()
        at = begin + self.bytes[begin:end].decode(errors="replace").find(sign)
        whole = (left.extent.start.offset, right.extent.end.offset)
        if sign in ("&&", "||"):
            for operand in (left, right):
                self.wrap("logic", "yes" if sign == "&&" else "no", operand)
            return
        numbers = all(side.type.get_canonical().kind in NUMBERS or side.type.spelling.removeprefix("const ").split("::")[-1] == "Exact"
                      for side in (left, right))
        call = COMPARED.get(sign) or (WORKED_OUT.get(sign) if numbers else None)
        if call:
            self.add("comparison" if sign in COMPARED else "arithmetic", cursor,
                     (whole[0], 0, whole[1], f"mutant::{call}(@, "), (at, 2, len(sign), ","), (whole[1], 1, whole[0], ")"))

    def leave_out(self, statement):
        text = self.text(statement)
        is_call = statement.kind == Kind.CALL_EXPR or (statement.kind == Kind.UNEXPOSED_EXPR and text.endswith(")"))
        is_set = statement.kind == Kind.COMPOUND_ASSIGNMENT_OPERATOR or (
            statement.kind == Kind.BINARY_OPERATOR and re.match(r"[\w.\[\]()>-]+ = ", text))
        if ".reserve(" in text:  # room made beforehand changes nothing
            return
        end = statement.extent.end.offset
        if self.here(statement) and (is_call or is_set) and self.bytes[end:end + 1] == b";":
            start = statement.extent.start.offset
            self.add("statement", statement, (start, 0, end + 1, "{ if (!mutant::on(@)) "), (end + 1, 1, start, " }"))


def written(places, numbers):
    """The text with those places that have a number."""
    edits = []
    for index, (_, _, insertions) in enumerate(places.found):
        if index in numbers:
            edits += [(at, kind, other, text.replace("@", str(numbers[index]))) for at, kind, other, text in insertions]
    # At one place what ends comes before what begins; the outer of two begins first and ends last.
    edits.sort(key=lambda edit: (edit[0], {1: 0, 2: 1, 0: 2}[edit[1]], -edit[2]))
    pieces, at = [], 0
    for place, kind, length, text in edits:
        pieces += [places.bytes[at:place], text.encode()]
        at = place + (length if kind == 2 else 0)
    return b"".join(pieces) + places.bytes[at:]


def compiled(path, arguments):
    """The lines of the file that its compiler's errors speak of."""
    done = subprocess.run(["clang++", *arguments, "-fsyntax-only", "-w", "-ferror-limit=0", "-include",
                           str(ROOT / "tests/mutants/mutant.hpp"), str(path)], capture_output=True, text=True)
    if done.returncode == 0:
        return set()
    lines = {int(line) for line in re.findall(re.escape(str(path)) + r":(\d+):\d+: (?:error|note: in instantiation)", done.stderr)}
    return lines or {0}


def mutated(task):
    original, path, arguments, first = task
    places = Places(original, arguments)
    numbers = {index: first + index for index in range(len(places.found))}
    for _ in range(8):
        path.write_bytes(written(places, numbers))
        lines = compiled(path, arguments)
        if not lines:
            break
        if lines == {0}:
            numbers = {}
            continue
        text = path.read_text().split("\n")
        bad = {int(n) for line in lines for n in re.findall(r"mutant::\w+\((\d+)", text[line - 1])}
        numbers = {index: number for index, number in numbers.items() if number not in bad}
        if not bad:
            numbers = {}
    else:
        path.write_bytes(places.bytes)
        numbers = {}
    source = places.bytes
    return [{"id": number, "file": str(original.relative_to(ROOT)), "operator": places.found[index][0],
             "line": source.count(b"\n", 0, places.found[index][1]) + 1,
             "text": source[places.found[index][1]:].split(b"\n")[0].decode(errors="replace")[:100]}
            for index, number in numbers.items()]


def main():
    copy, commands, rungs = pathlib.Path(sys.argv[1]), json.loads(pathlib.Path(sys.argv[2]).read_text()), sys.argv[3:]
    tasks, first = [], 0
    for command in commands:
        original = pathlib.Path(command["file"])
        if not any(original.parent == ROOT / "src" / rung for rung in rungs):
            continue
        words = command["command"].split()
        arguments = [w for w in words[1:] if w.startswith(("-I", "-D", "-std"))] + ["-isystem", "/usr/lib/llvm-14/lib/clang/14.0.6/include"]
        arguments += [f"-I{original.parent}"]
        tasks.append((original, copy / original.relative_to(ROOT), arguments, first))
        first += 3000
    with concurrent.futures.ProcessPoolExecutor(os.cpu_count()) as pool:
        mutants = [mutant for of_file in pool.map(mutated, tasks) for mutant in of_file]
    (copy / "mutants.json").write_text(json.dumps(mutants, indent=0))
    print(f"{len(mutants)} mutants in {len(tasks)} files")


if __name__ == "__main__":
    main()
