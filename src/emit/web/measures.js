// SPDX-License-Identifier: MIT
// The instruments of a bench, and what each reads, by the rules of src/plan/measures.cpp.

const badlyOff = whole(5); // percent
const goodTo = one; // percent

function reading(amount, division) {
  const nearest = amount.roundedTo(division);
  return nearest.isZero() && amount.isOver(zero) ? division : nearest;
}

const capacityText = (ml) => withUnit(ml.compare(thousand) < 0 ? plainMl(ml) : plain(ml.over(thousand), "l"));
const isBalance = (it) => it.what === "balance";
const isMeasure = (it) => it.what === "graduate" || it.what === "syringe";
const isJug = (it) => it.what === "jug";
const finer = (a, b) => a.division.compare(b.division) || a.capacity.compare(b.capacity);
const smaller = (a, b) => a.capacity.compare(b.capacity) || a.division.compare(b.division);
const larger = (a, b) => smaller(b, a);

function nameOf(it) {
  return it.what + " " + (isBalance(it) ? withUnit(plainGrams(it.division)) : capacityText(it.capacity));
}

function readOn(it, amount, asRead) {
  const shown = asRead(reading(amount, it.division), amount);
  shown.instrument = nameOf(it);
  if (shown.error.isOver(badlyOff)) {
    const unrounded = plain(shown.exact, shown.unit);
    shown.value = unrounded.value;
    shown.text = unrounded.text;
  }
  return { figure: shown, goes: "", instrument: it };
}

function loadsText(it, full, asRead, rest) {
  const load = withUnit(asRead(it.capacity, it.capacity));
  const loads = full.equals(one) ? load : exactText(full) + " × " + load;
  return rest ? loads + " and " + withUnit(rest.figure) : loads;
}

function inLoads(it, word, amount, asRead, rest) {
  const full = amount.over(it.capacity).floor();
  const loads = full.times(it.capacity);
  const shown = asRead(rest ? loads.plus(inBase(rest.figure.value, rest.figure)) : loads, amount);
  shown.instrument = nameOf(it);
  const count = exactText(rest ? full.plus(one) : full);
  return { figure: shown, goes: `in ${count} ${word}: ${loadsText(it, full, asRead, rest)}`, instrument: it };
}

const remainderOf = (amount, capacity) => amount.minus(amount.over(capacity).floor().times(capacity));
const good = (it) => !it.figure.error.isOver(goodTo);

/** Is the amount rounded by more than 5 %, or can the instrument read it no closer than that? */
function badlyMeasured(it) {
  if (!it.instrument || it.figure.exact.isZero()) return false;
  if (it.figure.error.isOver(badlyOff)) return true;
  const half = it.instrument.division.over(whole(2));
  return it.goes === "" && half.times(whole(100)).isOver(inBase(it.figure.value, it.figure).times(badlyOff));
}

class Measures {
  constructor(bench) {
    this.bench = bench;
    this.instruments = (bench?.instruments ?? []).map(({ what, division, capacity }) => ({
      what,
      division: Exact.ratio(division),
      capacity: Exact.ratio(capacity),
    }));
  }

  best(kind, order, amount) {
    const holds = (it) => it.division.isOver(zero) && !reading(amount, it.division).isOver(it.capacity);
    let found = null;
    for (const it of this.instruments)
      if (kind(it) && holds(it) && (found === null || order(it, found) < 0)) found = it;
    return found;
  }

  vesselFor(ml) {
    return this.best(isMeasure, smaller, ml) ?? this.best(isJug, smaller, ml);
  }

  weighed(grams) {
    const balance = this.best(isBalance, finer, grams);
    if (balance) return readOn(balance, grams, gramsAsRead);
    const largest = this.best(isBalance, larger, zero);
    if (!largest) return { figure: plainGrams(grams), goes: "", instrument: null };
    const remainder = remainderOf(grams, largest.capacity);
    return inLoads(largest, "goes", grams, gramsAsRead, remainder.isZero() ? null : this.weighed(remainder));
  }

  inFills(vessel, ml) {
    const remainder = remainderOf(ml, vessel.capacity);
    return inLoads(vessel, "fills", ml, mlAsRead, remainder.isZero() ? null : this.measured(remainder));
  }

  inGraduateFills(ml) {
    const graduate = this.best(isMeasure, larger, zero);
    if (!graduate || !ml.isOver(graduate.capacity)) return null;
    if (ml.isOver(graduate.capacity.times(whole(this.bench.most_fills)))) return null;
    const fills = this.inFills(graduate, ml);
    return good(fills) ? fills : null;
  }

  measured(ml) {
    const vessel = this.vesselFor(ml);
    if (vessel) {
      const once = readOn(vessel, ml, mlAsRead);
      return good(once) ? once : (this.inGraduateFills(ml) ?? once);
    }
    const largest = this.best((it) => !isBalance(it), larger, zero);
    return largest ? this.inFills(largest, ml) : { figure: plainMl(ml), goes: "", instrument: null };
  }

  madeUp(ml) {
    if (!this.bench) return this.measured(ml);
    const vessel = this.vesselFor(ml);
    const tank = "by the mark of the tank: no vessel of the bench holds it";
    if (!vessel) return { figure: plainMl(ml), goes: tank, instrument: null };
    const once = readOn(vessel, ml, mlAsRead);
    if (good(once)) return once;
    const fills = this.inGraduateFills(ml);
    if (!fills) return once;
    const goes = "to a mark made before you begin: water measured " + fills.goes;
    return { figure: fills.figure, goes, instrument: null };
  }

  dropped(drops) {
    const count = reading(drops, one);
    const shown = figure(count, drops, count.equals(one) ? "drop" : "drops");
    if (this.bench?.dropper) shown.instrument = "dropper";
    return { figure: shown, goes: "", instrument: null };
  }

  read(how, amount) {
    if (how === "weighed") return this.weighed(amount);
    if (how === "dropped") return this.dropped(amount);
    return how === "made up" ? this.madeUp(amount) : this.measured(amount);
  }
}
