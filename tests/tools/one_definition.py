# SPDX-License-Identifier: MIT
"""Holds each type's name to one definition in a namespace.

Two classes of one name in headers of one namespace, used by different sources, break the one-definition rule of C++
([basic.def.odr]), and no compiler has to say so. Names in nameless namespaces are each file's own.
"""
import collections
import pathlib
import re
import sys

ROOT = pathlib.Path(__file__).resolve().parents[2]
NAMELESS = re.compile(r"^namespace \{$.*?^\}  // namespace$", re.M | re.S)
NAMESPACE = re.compile(r"^namespace ([\w:]+) \{", re.M)
TYPE = re.compile(r"^(?:struct|class|enum|enum class) (\w+)(?: final)?(?: : [^{;]*)? \{", re.M)


def definitions(path):
    text = NAMELESS.sub("", path.read_text(encoding="utf-8"))
    namespace = NAMESPACE.search(text)
    return {(namespace[1] if namespace else "", name) for name in TYPE.findall(text)}


def main():
    places = collections.defaultdict(list)
    for folder in ("src", "include", "grammar"):
        for path in sorted((ROOT / folder).rglob("*.[ch]pp")):
            for definition in definitions(path):
                places[definition].append(path.relative_to(ROOT))
    twice = {name: paths for name, paths in places.items() if len(paths) > 1}
    for (namespace, name), paths in sorted(twice.items()):
        print(f"{namespace}::{name} is defined in {' and in '.join(map(str, paths))}")
    print(f"{len(places)} types, {len(twice)} defined twice")
    return 1 if twice or len(places) < 100 else 0


sys.exit(main())
