// SPDX-License-Identifier: MIT
// The work, the running volume and the gather list of a batch, by the rules of src/plan/work.cpp, amounts.cpp and
// gather.cpp.

const threeFigures = (ml) => plain(ml, "ml", 3);
const isWeight = (it) => it.unit === "g" || it.unit === "kg";
const isDrops = (it) => it.unit === "drop" || it.unit === "drops";

function sumOf(a, b) {
  if (isDrops(a)) return plain(a.value.plus(b.value), "drops", 15);
  const shown = inBase(a.value, a).plus(inBase(b.value, b));
  const exact = inBase(a.exact, a).plus(inBase(b.exact, b));
  return isWeight(a) ? gramsAsRead(shown, exact) : mlAsRead(shown, exact);
}

class GatherList {
  constructor(things) {
    this.things = things;
    this.rows = [];
  }
  add(thing, amount, note = "") {
    const sameKind = (it) => isWeight(it) === isWeight(amount) && isDrops(it) === isDrops(amount);
    let row = this.rows.find((it) => it.thing === thing && sameKind(it.amount));
    if (row) row.amount = sumOf(row.amount, amount);
    else this.rows.push((row = { thing, amount, notes: [this.things[thing].grade] }));
    if (!row.notes.includes(note)) row.notes.push(note);
  }
  /** What only fills up: about so many ml of it, up to the next whole one. */
  addAbout(thing, ml) {
    if (ml.isOver(zero)) this.add(thing, plainMl(ml.ceil()), "about: some of it to make up the volume");
  }
  texts() {
    return this.rows.map(({ thing, amount, notes }) => {
      const { name, optional } = this.things[thing];
      const note = notes.filter(Boolean).join("; ");
      return [listed([name, note, optional ? "only if you want it" : ""]), withUnit(amount)];
    });
  }
}

/** What an instrument reads over what was meant: the running volume is that of the bench. */
const asMeasured = (amount) => (amount && !amount.exact.isZero() ? amount.value.over(amount.exact) : one);

/** What cannot be measured well at this volume; the card of that volume says what to do instead. */
class Unmeasurable extends Error {}

class Batch {
  constructor(plan, ml) {
    this.plan = plan;
    this.ml = ml;
    this.scale = ml.over(Exact.ratio(plan.written_ml));
    this.measures = new Measures(plan.bench);
    this.gather = new GatherList(plan.things);
    this.vessels = new Map();
    this.divided = new Map();
  }

  /** The texts of the page; throws Unmeasurable. */
  texts() {
    const lines = this.plan.lines.map((line) => this.line(line));
    return { volume: withUnit(plainMl(this.ml)), gather: this.gather.texts(), lines };
  }

  scaled(ratio) {
    return Exact.ratio(ratio).times(this.scale);
  }

  line(line) {
    const details = (extra) => [...extra, ...detailTexts(line.details, this.scale)].filter(Boolean);
    switch (line.do) {
      case "put":
        return this.put(line, details);
      case "make up":
        return this.makeUp(line, details);
      case "pour":
        return this.pour(line, details);
      case "open":
        this.vessels.set(line.vessel, this.emptied());
        return { what: line.what, remarks: remarks(line, null, details([])) };
      default:
        return null;
    }
  }

  put(line, details) {
    const { amount, said } = this.amountOf(line);
    const texts = { what: line.what, before: line.before, amount, remarks: remarks(line, amount, details(said)) };
    if (!line.counts) return texts;
    const ml = this.scaled(line.room).times(asMeasured(amount));
    return { ...texts, running: this.run(line.vessel, ml, line.room_estimated) };
  }

  /** What goes in now, and what is said of how it is measured. */
  amountOf(line) {
    if (line.piece === "rest") return this.rest(line);
    const note = line.piece === "whole" ? "" : "weighed once, used in two goes";
    const whole = this.measures.read(line.read, this.scaled(line.amount));
    if (line.advised && badlyMeasured(whole)) throw this.unmeasurable(line, whole);
    this.gather.add(line.thing, whole.figure, note);
    return line.piece === "whole" ? { amount: whole.figure, said: [whole.goes] } : this.first(line, whole);
  }

  first(line, whole) {
    const of = ` of the ${withUnit(whole.figure)} weighed out`;
    const pinch = line.piece === "pinch";
    const amount = pinch ? null : this.measures.read(line.read, this.scaled(line.piece_amount)).figure;
    const taken = (value) => (pinch ? zero : inBase(value, amount));
    const kept = { whole: whole.figure, taken: taken(amount?.value), takenExact: taken(amount?.exact) };
    this.divided.set(line.thing, kept);
    return { amount, said: [whole.goes, (pinch ? "a pinch" : "the first piece") + of] };
  }

  rest(line) {
    const { whole, taken, takenExact } = this.divided.get(line.thing);
    const asRead = line.read === "measured" ? mlAsRead : gramsAsRead;
    const amount = asRead(inBase(whole.value, whole).minus(taken), inBase(whole.exact, whole).minus(takenExact));
    return { amount, said: [`what is left of the ${withUnit(whole)} weighed out`] };
  }

  unmeasurable(line, { figure: shown }) {
    const verb = line.read === "measured" ? "measured" : "weighed";
    const exact = inBase(shown.exact, shown);
    const amount = withUnit(verb === "measured" ? plainMl(exact) : plainGrams(exact));
    return new Unmeasurable(`${amount} ${line.what} cannot be ${verb} well on this bench`);
  }

  makeUp(line, details) {
    const ml = this.scaled(line.amount);
    const { figure: amount, goes } = this.measures.read(line.read, ml);
    const mark = ml.times(asMeasured(amount));
    this.gather.addAbout(line.thing, mark.minus(this.vessel(line.vessel).left));
    this.vessels.set(line.vessel, { full: mark, left: mark, estimated: false });
    const texts = { what: line.what, before: line.before, amount, remarks: remarks(line, amount, details([goes])) };
    return { ...texts, running: this.runningIn(line.vessel) };
  }

  pour(line, details) {
    const from = this.vessel(line.vessel);
    const ml = this.poured(line, from);
    const all = ml.equals(from.left);
    const { estimated } = from;
    from.left = from.left.minus(ml);
    const amount = all ? null : estimated ? threeFigures(ml) : this.measures.measured(ml).figure;
    const what = `pour in ${all ? "" : "part of "}${line.name}`;
    const before = amount && estimated ? "about" : "";
    const texts = { what, before, amount, remarks: remarks(line, amount, details([])) };
    return { ...texts, running: this.run(line.into, ml, estimated) };
  }

  poured(line, from) {
    let ml = from.left;
    if (line.share) ml = from.full.times(Exact.ratio(line.share));
    if (line.ml) ml = this.scaled(line.ml);
    return ml.isOver(from.left) ? from.left : ml;
  }

  emptied() {
    return { full: zero, left: zero, estimated: false };
  }

  vessel(name) {
    if (!this.vessels.has(name)) this.vessels.set(name, this.emptied());
    return this.vessels.get(name);
  }

  run(name, ml, estimated) {
    const vessel = this.vessel(name);
    vessel.full = vessel.full.plus(ml);
    vessel.left = vessel.left.plus(ml);
    vessel.estimated ||= estimated;
    return this.runningIn(name);
  }

  runningIn(name) {
    const { left, estimated } = this.vessel(name);
    const shown = withUnit(estimated ? threeFigures(left) : plainMl(left));
    return `now in ${name ? "that" : "the"} vessel: ${estimated ? "about " : ""}${shown}`;
  }
}
