# SPDX-License-Identifier: MIT
"""The commands of a page (```console), run in the page's folder: what comes out is what the page shows.

A line `…` on the page stands for lines that it leaves out. Each command begins with `$ scruple`.
"""
import dataclasses
import os
import shlex
import subprocess

PROMPT = "$ "
LEFT_OUT = "…"


@dataclasses.dataclass
class Command:
    text: str
    shown: list


def commands_of(block):
    commands = []
    for line in block.lines:
        if line.startswith(PROMPT):
            commands.append(Command(line[len(PROMPT):], []))
        else:
            commands[-1].shown.append(line)
    return commands


def output_of(scruple, folder, command):
    words = shlex.split(command.text)
    if words[0] != "scruple":
        raise ValueError(f"only scruple is run here, not `{words[0]}`")
    # A terminal's width and colours would be those of whoever runs the test.
    ran = subprocess.run([scruple, *words[1:]], cwd=folder, stdin=subprocess.DEVNULL, stdout=subprocess.PIPE,
                         stderr=subprocess.STDOUT, text=True, timeout=60, env={**os.environ, "NO_COLOR": "1"})
    if ran.returncode < 0:
        raise RuntimeError(f"`{command.text}` was ended by signal {-ran.returncode}")
    return trimmed(ran.stdout.splitlines())


def trimmed(lines):
    """Without blanks at the ends; a no-break blank shows as a blank."""
    lines = [line.replace("\u00a0", " ").rstrip() for line in lines]
    while lines and not lines[0]:
        lines.pop(0)
    while lines and not lines[-1]:
        lines.pop()
    return lines


def pieces_of(shown):
    pieces = [[]]
    for line in trimmed(shown):
        if line.strip() == LEFT_OUT:
            pieces.append([])
        else:
            pieces[-1].append(line)
    return [trimmed(piece) for piece in pieces]


def place_of(piece, lines, start):
    for at in range(start, len(lines) - len(piece) + 1):
        if lines[at:at + len(piece)] == piece:
            return at
    return None


def shows(shown, output):
    """Whether the page's lines are the output, or pieces of it in their order; first and last hold at the ends."""
    pieces = pieces_of(shown)
    if len(pieces) == 1:
        return pieces[0] == output
    at = 0
    for number, piece in enumerate(pieces):
        found = place_of(piece, output, at)
        if found is None or (number == 0 and found != 0):
            return False
        at = found + len(piece)
    return not pieces[-1] or output[-len(pieces[-1]):] == pieces[-1]


def fault_of(scruple, folder, block):
    for command in commands_of(block):
        output = output_of(scruple, folder, command)
        if not shows(command.shown, output):
            heard = "\n    ".join(output)
            return f"{block.place}: `{command.text}` does not give what the page shows, but\n    {heard}"
    return None


def rewritten(scruple, folder, block):
    """The block's lines with what the program gives now; what a page shows in part stays."""
    lines = []
    for command in commands_of(block):
        in_part = any(line.strip() == LEFT_OUT for line in command.shown)
        shown = command.shown if in_part else output_of(scruple, folder, command)
        lines += [PROMPT + command.text, *shown]
    return lines
