# SPDX-License-Identifier: MIT
"""The fenced blocks of a page: what is said behind the fence, and the lines in it."""
import dataclasses

FENCE = "```"


@dataclasses.dataclass
class Block:
    page: str
    line: int  # of the opening fence, from 1
    said: list  # the words behind the fence: `scruple`, `file`, `bench.scruple`
    lines: list

    @property
    def place(self):
        return f"{self.page}:{self.line}"

    @property
    def text(self):
        return "".join(line + "\n" for line in self.lines)


def blocks_of(page, text):
    found, block = [], None
    for number, line in enumerate(text.splitlines(), start=1):
        if block is None and line.startswith(FENCE):
            block = Block(page, number, line[len(FENCE):].split(), [])
        elif block is not None and line == FENCE:
            found.append(block)
            block = None
        elif block is not None:
            block.lines.append(line)
    if block is not None:
        raise ValueError(f"{block.place}: the block never ends")
    return found
