# SPDX-License-Identifier: MIT
"""Invented workspaces in which one thing grows."""
import datetime
import json

SALTS = ["sodium sulfite (anhydrous)", "sodium carbonate (anhydrous)", "potassium carbonate (anhydrous)", "hydroquinone",
         "borax (decahydrate)", "potassium bromide", "metol"]
BENCH = "bench Tollgate\n    balance    0.001 g up to 5 kg\n    graduate   5 l by 1 ml\n    bottle     500 ml, 1 l\n"
OF_ONE_FILE = "all.scruple"


def write(folder, *blocks):
    (folder / OF_ONE_FILE).write_text("\n".join(blocks), encoding="utf-8")


def recipe(i, extra=(), keeps="3 months"):
    lines = [f"recipe Reed {i}", "    is a       film developer", "    capacity   one-shot, 250 ml per film 135",
             f"    keeps      {keeps}", "    water   700 ml at 45 C"]
    lines += [f"    {SALTS[(i + k) % len(SALTS)]}   {((i * 7 + k * 3) % 90 + 10) / 10} g" for k in range(3)]
    return "\n".join([*lines, *extra, "    stir until clear", "    water to make   1 l", ""])


def files(folder, count):
    for i in range(count):
        (folder / f"reed{i}.scruple").write_text(recipe(i), encoding="utf-8")


def recipes(folder, count):
    write(folder, BENCH, *map(recipe, range(count)))


def one_into_the_other(folder, count):
    """A little of each recipe goes into the next."""
    write(folder, BENCH, *(recipe(i, [f"    Reed {i - 1}   50 ml"] if i else []) for i in range(count)))


def lines(folder, count):
    """Each salt is in it once, whatever the count: what more salts take is not what more lines take."""
    added = [f"    {SALTS[i % len(SALTS)]}   {(i % 9 + 1) / 10} g\n    stir {i % 7 + 1} min" for i in range(len(SALTS) + count)]
    write(folder, BENCH, "recipe Reed\n    is a   film developer\n    water   9 l at 45 C", *added, "    water to make   10 l\n")


def chemicals(folder, count):
    write(folder, *(f"chemical reed salt {i}\n    also      marsh salt {i}\n    form      dry    NaCl\n    form      dihydrate   NaCl·2H2O\n"
                    for i in range(count)),
          *(f"recipe Reed {i}\n    is a   stop bath\n    water   800 ml\n    marsh salt {i} (dry)   5 g\n    water to make   1 l\n"
            for i in range(count)))


AWKWARD = ["x", " ", " x", "(", "( ", '"', "1 ", "1:", "to make ", ", ", "a from \"", "é", "1 g soft, ", "- ", "+ ", "a 1 b ",
           "a (b ", "1 to ", "a, ", "1 x at ", "? ", "the rest ", 'x from "y ']


def awkward_lines(folder, count):
    """Each as long as a line may be at ten times 40."""
    write(folder, "recipe Reed\n    water   800 ml", *(f"    reed {piece * count}" for piece in AWKWARD), "    water to make   1 l\n")


def one_mistake_a_line(folder, count):
    added = [f"    reed salt {i}   {i % 9 + 1} g" for i in range(count)]
    write(folder, "recipe Reed\n    water   800 ml", *added, "    water to make   1 l\n")


def printed(folder, count):
    rows = [f"    | Sodium carbonate   {i % 40 + 2} grs   {(i % 40 + 2) * 0.057:.2g} g" for i in range(count)]
    write(folder, "printed Bittern", "    | Water   40 oz   1000 c.c.", *rows)


# ---- month and log ----

KILN = """\
supplier Kiln Lane
    postage    5.90 EUR, none over 60 EUR
"""
USED_FIRST = datetime.date(2027, 1, 1)


def day(i):
    return USED_FIRST + datetime.timedelta(i)


PROCESS = "process roll film\n    Reed 0   10 min at 20 C\n    wash   5 min\n"


def busy_plan(folder, count):
    """So many sets of days to choose from, from few lines on, that no more of them are tried."""
    rows = [f"    {day(i)}   2 films 135 through roll film" for i in range(count)]
    prices = [f"    {salt}   {size}   {cost} EUR" for salt in SALTS for size, cost in (("100 g", "4.20"), ("1 kg", "21.00"))]
    write(folder, BENCH, recipe(0, keeps="4 days"), PROCESS, KILN + "\n".join(prices), "plan Winter", *rows)


def busy_evening(folder, count):
    """More is mixed on one day than all orders of are tried, from few solutions on."""
    processes = [f"process line {i}\n    Reed {i}   10 min at 20 C\n" for i in range(count)]
    rows = [f"    {day(0)}   2 films 135 through line {i}" for i in range(count)]
    write(folder, BENCH, *(recipe(i, keeps="1 day") for i in range(count)), *processes, "plan Winter", *rows)


def prices(folder, count):
    rows = [f"    {SALTS[i % len(SALTS)]}   {i + 100} g   {i % 50 + i // 10 + 3}.50 EUR" for i in range(len(SALTS) + count)]
    write(folder, BENCH, recipe(0), PROCESS, "plan Winter\n    2027-02-01   2 films 135 through roll film", KILN + "\n".join(rows))


def wares(folder, count):
    """So many chemicals, each sold in two packs by two shops, one of which sends large orders free."""
    salts = [f"reed salt {i}" for i in range(count)]
    sold = [f"    {salt}   {size}   {i % 7 + cost}.{i % 90 + 10} EUR" for i, salt in enumerate(salts)
            for size, cost in (("10 g", 1), ("100 g", 4))]
    write(folder, BENCH, *(f"chemical {salt}\n    form      dry    NaCl\n" for salt in salts),
          "recipe Reed 0\n    is a   film developer\n    capacity   one-shot, 250 ml per film 135\n    water   9 l",
          *(f"    {salt} (dry)   {i % 9 + 1} g" for i, salt in enumerate(salts)), "    water to make   10 l\n", PROCESS,
          "plan Winter\n    2027-02-01   2 films 135 through roll film", KILN + "\n".join(sold),
          "supplier Wharf\n    postage   3.50 EUR", *sold)


def baths(folder, count):
    """All used on one day."""
    write(folder, BENCH, *(recipe(i) for i in range(count)), *(f"process line {i}\n    Reed {i}   10 min at 20 C\n" for i in range(count)),
          "plan Winter", *(f"    {day(0)}   2 films 135 through line {i}" for i in range(count)))


def chain(folder, count):
    """Each solution is the one before, under another name; the last is used."""
    diluted = [f"recipe Reed {i}\n    Reed {i - 1}   1 l\n" for i in range(1, count)]
    write(folder, BENCH, "recipe Reed 0\n    water   1 l\n    metol   3 g\n    water to make   1 l\n", *diluted,
          f"recipe Last\n    Reed {count - 1}   1 l\n    capacity   10 films 135 per 1 l\n",
          "process last\n    Last   5 min\nplan Winter\n    2027-02-01   2 films 135 through last")


def log(folder, count):
    rows = ["    2027-01-01 received   " + salt + " 5 kg" for salt in SALTS]
    for i in range(count):
        rows += [f"    {day(i // 4 + 1)} mixed      Reed 0 1 l", f"    {day(i // 4 + 1)} used       Reed 0 250 ml",
                 f"    {day(i // 4 + 1)} received   metol 10 g 1.50 EUR"]
    write(folder, BENCH, recipe(0), "log", *rows)


# ---- an editor ----

def message(method, params, number=None):
    body = {"jsonrpc": "2.0", "method": method, "params": params} | ({} if number is None else {"id": number})
    text = json.dumps(body).encode()
    return b"Content-Length: %d\r\n\r\n" % len(text) + text


def session(folder, *messages):
    begin = [message("initialize", {"processId": None, "rootUri": folder.as_uri(), "capabilities": {}}, 1), message("initialized", {})]
    end = [message("shutdown", None, 2), message("exit", None)]
    return b"".join([*begin, *messages, *end])


def opened(folder):
    text = (folder / OF_ONE_FILE).read_text(encoding="utf-8")
    return message("textDocument/didOpen", {"textDocument": {"uri": (folder / OF_ONE_FILE).as_uri(), "languageId": "scruple",
                                                             "version": 1, "text": text}})


def edited(folder, version, line, old, new):
    place = {"start": {"line": line, "character": 0}, "end": {"line": line, "character": old}}
    return message("textDocument/didChange", {"textDocument": {"uri": (folder / OF_ONE_FILE).as_uri(), "version": version},
                                              "contentChanges": [{"range": place, "text": new}]})


ASKED = ["documentSymbol", "semanticTokens/full", "foldingRange", "formatting", "codeLens"]


def asked_of_all(folder):
    document = {"textDocument": {"uri": (folder / OF_ONE_FILE).as_uri()}, "options": {"tabSize": 4, "insertSpaces": True}}
    return [message(f"textDocument/{method}", document, 10 + i) for i, method in enumerate(ASKED)]


def edit_of(make):
    """One edit in the first lines of a file of so many."""
    def fed(folder, count):
        make(folder, count)
        return session(folder, opened(folder), edited(folder, 2, 0, 0, "# a remark\n"), *asked_of_all(folder))
    return fed


def one_edit_a_line(folder, count):
    recipes(folder, 1)
    return session(folder, opened(folder), *(edited(folder, 2 + i, 0, 0, f"# {i}\n") for i in range(count)))
