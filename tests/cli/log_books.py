# SPDX-License-Identifier: MIT
"""Invented logs of a year, and their books kept a second time: jar by jar, in fractions, from the lines alone.

The recipes are invented. What a line takes is worked out here from the numbers below and not from the program.
"""
import bisect
import calendar
import datetime
import random
from fractions import Fraction

RECIPES = """\
recipe Linnet
    capacity   one-shot, 250 ml working per film 135, 400 ml working per film 120

part A
    keeps      6 months full, 2 months half full
    water                               2 l at 45 C
    metol                               10 g
    sodium sulfite (anhydrous)          200 g
    hydroquinone                        17 g
    potassium bromide (10 % w/v)        25 ml
    propylene glycol                    40 ml
    water to make                       3 l

working
    water                               500 ml
    part A                              250 ml
    water to make                       1 l

recipe Dunlin
    capacity   reused, 20 films 135 per 1 l
    keeps      3 months
    water                               500 ml at 45 C
    sodium thiosulfate (pentahydrate)   240 g
    water to make                       1 l
"""
A, WORKING, DUNLIN = "Linnet part A", "Linnet working", "Dunlin"
SULFITE, HYPO, BROMIDE = "sodium sulfite (anhydrous)", "sodium thiosulfate (pentahydrate)", "potassium bromide"
BROMIDE_10, GLYCOL = "potassium bromide (10 % w/v)", "propylene glycol"
# g or ml in one ml.
MADE_OF = {
    A: {"metol": Fraction(10, 3000), SULFITE: Fraction(200, 3000), "hydroquinone": Fraction(17, 3000),
        BROMIDE_10: Fraction(25, 3000), GLYCOL: Fraction(40, 3000)},
    WORKING: {A: Fraction(250, 1000)},
    DUNLIN: {HYPO: Fraction(240, 1000)},
}
DRAWN = {WORKING: {"135": 250, "120": 400}, DUNLIN: {"135": Fraction(1000, 20)}}
BY_VOLUME = {BROMIDE_10, GLYCOL, A, WORKING, DUNLIN}
CHEMICALS = ["metol", SULFITE, "hydroquinone", BROMIDE, BROMIDE_10, GLYCOL, HYPO]


class Maker:
    """Lines of a log over 366 days and more, month ends and leap days among them more often than chance has them."""

    def __init__(self, seed, count, first=datetime.date(2027, 12, 30), days=430):
        self.random = random.Random(seed)
        self.days = [first + datetime.timedelta(n) for n in range(days)]
        edges = [day for day in self.days if (day + datetime.timedelta(1)).day == 1 or (day.month, day.day) == (2, 29)]
        self.days = sorted(self.days + edges * 4)
        self.lines = [self.line() for _ in range(count)]

    def amount(self, most):
        return Fraction(self.random.randint(1, most * 1000), 1000)

    def line(self):
        day, pick = self.random.choice(self.days), self.random.random()
        if pick < 0.3:
            return day, "received", self.random.choice(CHEMICALS), self.amount(1000), self.price()
        if pick < 0.55:
            return day, "mixed", self.random.choice([A, A, WORKING, DUNLIN]), self.amount(3000), None
        if pick < 0.75:
            bath = self.random.choice([WORKING, DUNLIN])
            return day, "processed", bath, (self.random.randint(1, 8), self.random.choice(sorted(DRAWN[bath]))), None
        what = self.random.choice([*CHEMICALS, A, WORKING, DUNLIN])
        if pick < 0.87:
            return day, "used", what, self.amount(200), None
        if pick < 0.95:
            return day, "on shelf", what, self.amount(500) if self.random.random() < 0.9 else Fraction(0), None
        return day, "discarded", what, self.amount(300) if self.random.random() < 0.6 else None, None

    def price(self):
        return self.random.randint(50, 3000) if self.random.random() < 0.7 else None


def text_of(line):
    day, verb, what, amount, price = line
    if verb == "processed":
        count, film = amount
        return f"    {day} {verb} {count} {'film' if count == 1 else 'films'} {film} in {what}"
    words = f"    {day} {verb} {what}"
    if amount is not None:
        words += f" {float(amount):.3f} {'ml' if what in BY_VOLUME else 'g'}"
    if price is not None:
        words += f" from Kiln Lane {price // 100}.{price % 100:02} EUR"
    return words


def in_order(lines):
    return sorted(lines, key=lambda line: line[0])  # The sort is stable: lines of one day as they stand.


def months_later(day, months):
    year, month = divmod(day.year * 12 + day.month - 1 + months, 12)
    return datetime.date(year, month + 1, min(day.day, calendar.monthrange(year, month + 1)[1]))


class Books:
    """The oldest jar first. `jars` of a thing are [day, made, left]; empty ones stay in the list."""

    def __init__(self, lines, on=datetime.date.max):
        self.jars, self.first, self.cleared, self.wanting = {}, {}, {}, {}
        self.corrections, self.faults, self.came, self.went = [], [], {}, {}
        days = [line[0] for line in lines]
        for line in lines[:bisect.bisect_right(days, on)]:
            self.apply(*line)

    # ---- the shelf ----

    def held(self, what):
        jars = self.jars.get(what, [])
        return sum((jar[2] for jar in jars[self.first.get(what, 0):]), Fraction(0))

    def put(self, what, day, amount):
        self.jars.setdefault(what, []).append([day, amount, amount])

    def take(self, what, amount):
        jars, rest = self.jars.get(what, []), amount
        at = self.first.get(what, 0)
        while at < len(jars) and rest > 0:
            part = min(jars[at][2], rest)
            jars[at][2] -= part
            rest -= part
            if jars[at][2] == 0:
                at += 1
        self.first[what] = at
        return amount - rest

    def lack(self, day, what, amount):
        if amount > 0:
            self.wanting[what] = self.wanting.get(what, 0) + amount
            self.faults.append((day, what, amount))

    def put_back(self, what, more):
        """Into what stands there, or stood there last and was not thrown away."""
        jars = self.jars.get(what, [])
        at = self.first.get(what, 0)
        if at == len(jars) and self.cleared.get(what, 0) < len(jars):
            at -= 1
            self.first[what] = at
        for jar in jars[at:]:
            part = min(jar[1] - jar[2], more)
            jar[2] += part
            more -= part
        return more

    # ---- the two sides of the ledger ----

    def enter(self, side, what, amount):
        side[what] = side.get(what, 0) + amount

    def use(self, day, what, amount):
        self.enter(self.went, what, amount)
        self.lack(day, what, amount - self.take(what, amount))

    def mix(self, day, what, ml):
        for part, share in MADE_OF[what].items():
            amount = share * ml
            if part != BROMIDE_10:
                self.use(day, part, amount)
                continue
            own = self.take(part, amount)
            self.enter(self.went, part, own)
            salt = min((amount - own) / 10, self.held(BROMIDE))  # 10 % w/v: 0.1 g in a ml
            self.take(BROMIDE, salt)
            self.enter(self.went, BROMIDE, salt)
            missing = amount - own - salt * 10
            self.enter(self.went, part, missing)
            self.lack(day, part, missing)

    def count(self, day, what, amount):
        expected = self.held(what) - self.wanting.pop(what, 0)
        if amount != expected or (what not in self.jars and expected == 0):
            self.corrections.append((day, what, amount - expected))
        self.enter(self.came, what, amount - expected)
        held = self.held(what)
        if amount > held:
            beyond = self.put_back(what, amount - held)
            if beyond > 0:
                self.put(what, day, beyond)
        else:
            self.take(what, held - amount)

    def apply(self, day, verb, what, amount, _price):
        if verb == "received":
            self.enter(self.came, what, amount)
            self.put(what, day, amount)
        elif verb == "mixed":
            self.mix(day, what, amount)
            self.enter(self.came, what, amount)
            self.put(what, day, amount)
        elif verb == "used":
            self.use(day, what, amount)
        elif verb == "on shelf":
            self.count(day, what, amount)
        elif verb == "discarded":
            self.discard(day, what, amount)
        elif what == WORKING or self.held(what) == 0:  # A bath that is kept stays where it is.
            count, film = amount
            ml = Fraction(DRAWN[what][film]) * count
            poured = self.take(what, ml)
            self.enter(self.went, what, poured)
            self.mix(day, what, ml - poured)

    def discard(self, day, what, amount):
        if amount is not None:
            self.use(day, what, amount)
        else:
            self.enter(self.went, what, self.held(what))
            self.take(what, self.held(what))
            if self.wanting.get(what):
                self.count(day, what, Fraction(0))
        if self.held(what) == 0:
            self.cleared[what] = len(self.jars.get(what, []))
