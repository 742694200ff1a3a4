#!/usr/bin/python3
# SPDX-License-Identifier: MIT
"""Each file includes the standard header of what it uses by name: files are compiled together, and would not miss it.

What the project's own headers that a file stands on include, it has too.
"""
import pathlib
import re
import sys

ROOT = pathlib.Path(__file__).resolve().parents[2]
HEADERS = {
    "algorithm": r"std::(?:ranges::)?(?:sort|stable_sort|find|find_if|any_of|all_of|none_of|transform|copy|count|count_if|"
                 r"max_element|min_element|min|max|clamp|reverse|unique|remove_if|lower_bound|upper_bound|equal_range|"
                 r"binary_search|replace|rotate|fill|for_each|equal|mismatch|is_sorted|adjacent_find|partition|"
                 r"stable_partition|contains|starts_with|next_permutation|search)\b[(<]",
    "array": r"std::array\b",
    "chrono": r"std::chrono::",
    "cmath": r"std::(?:sqrt|pow|log|log10|log2|exp|exp2|abs|fabs|floor|ceil|round|lround|llround|hypot|isfinite|isnan|trunc|"
             r"fmod|cbrt)\(",
    "cstdint": r"std::u?int(?:8|16|32|64)_t\b",
    "deque": r"std::deque\b",
    "filesystem": r"std::filesystem\b",
    "fstream": r"std::[io]?fstream\b",
    "functional": r"std::(?:function|reference_wrapper|ref|cref|less|greater|hash|plus|minus)\b",
    "iterator": r"std::(?:back_inserter|next|prev|distance|advance|make_move_iterator|ssize)\b",
    "limits": r"std::numeric_limits\b",
    "map": r"std::(?:multi)?map\b",
    "memory": r"std::(?:unique_ptr|shared_ptr|make_unique|make_shared|weak_ptr|addressof)\b",
    "mutex": r"std::(?:mutex|lock_guard|scoped_lock|unique_lock|once_flag|call_once)\b",
    "numeric": r"std::(?:accumulate|iota|gcd|lcm|partial_sum|inner_product|reduce)\b",
    "optional": r"std::(?:optional|nullopt)\b",
    "ostream": r"std::ostream\b",
    "queue": r"std::(?:priority_)?queue\b",
    "set": r"std::(?:multi)?set\b",
    "span": r"std::span\b",
    "sstream": r"std::[io]?stringstream\b",
    "stdexcept": r"std::(?:runtime_error|logic_error|invalid_argument|out_of_range)\b",
    "string": r"std::(?:string|to_string|stod|stoi|getline)\b(?!_view)",
    "string_view": r"std::string_view\b",
    "thread": r"std::j?thread\b",
    "tuple": r"std::(?:tuple|tie|make_tuple)\b",
    "unordered_map": r"std::unordered_map\b",
    "unordered_set": r"std::unordered_set\b",
    "utility": r"std::(?:move|pair|exchange|swap|forward|make_pair)\b(?!\()|std::(?:move|exchange|forward)\(",
    "variant": r"std::(?:variant|get_if|holds_alternative|visit|monostate)\b",
    "vector": r"std::vector\b",
}
# Standard headers that are sure to bring these along.
BRING = {
    "ostream": {"fstream", "iostream", "sstream"},
    "string": {"filesystem", "sstream"},
    "string_view": {"string"},
    "utility": {"map", "tuple", "unordered_map", "variant"},
}
OWN = re.compile(r'#include "([^"]+)"')
STANDARD = re.compile(r"#include <([a-z_]+)>")


def resolved(path, name):
    for folder in (path.parent, ROOT / "include", ROOT, ROOT / "tests"):
        if (folder / name).is_file():
            return folder / name
    return None


def brought(path, seen=None):
    """Standard headers a file includes, with those of the project's own headers it stands on."""
    seen = set() if seen is None else seen
    if path in seen:
        return set()
    seen.add(path)
    text = path.read_text()
    found = set(STANDARD.findall(text))
    for name in OWN.findall(text):
        own = resolved(path, name)
        if own:
            found |= brought(own, seen)
    return found


def missing(path):
    code = re.sub(r"//[^\n]*", "", path.read_text())
    have = brought(path)
    for header, use in HEADERS.items():
        if header not in have and not BRING.get(header, set()) & have and re.search(use, code):
            yield header


def main():
    faults = 0
    for folder in ("src", "include", "grammar", "tests"):
        for path in sorted((ROOT / folder).rglob("*.[ch]pp")):
            for header in missing(path):
                print(f"{path.relative_to(ROOT)}: uses what <{header}> declares, and does not include it")
                faults += 1
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main())
