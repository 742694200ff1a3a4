// SPDX-License-Identifier: MIT
// Exact rational numbers and their texts, as src/quantity has them: nothing is rounded until a figure is shown.
"use strict";

class Exact {
  constructor(n, d = 1n) {
    const sign = d < 0n ? -1n : 1n;
    const common = Exact.common(n, d) * sign;
    this.n = n / common;
    this.d = d / common;
  }
  static common(a, b) {
    [a, b] = [a < 0n ? -a : a, b < 0n ? -b : b];
    while (b) [a, b] = [b, a % b];
    return a;
  }
  /** `5`, `7/3` */
  static ratio(text) {
    const [n, d] = text.split("/");
    return new Exact(BigInt(n), BigInt(d ?? "1"));
  }
  plus(b) { return new Exact(this.n * b.d + b.n * this.d, this.d * b.d); }
  minus(b) { return new Exact(this.n * b.d - b.n * this.d, this.d * b.d); }
  times(b) { return new Exact(this.n * b.n, this.d * b.d); }
  over(b) { return new Exact(this.n * b.d, this.d * b.n); }
  size() { return this.n < 0n ? new Exact(-this.n, this.d) : this; }
  floor() {
    const down = this.n / this.d;
    return new Exact(this.n < 0n && !this.isWhole() ? down - 1n : down);
  }
  ceil() { return new Exact(-new Exact(-this.n, this.d).floor().n); }
  compare(b) {
    const difference = this.n * b.d - b.n * this.d;
    return difference < 0n ? -1 : difference > 0n ? 1 : 0;
  }
  isOver(b) { return this.compare(b) > 0; }
  equals(b) { return this.compare(b) === 0; }
  isZero() { return this.n === 0n; }
  isWhole() { return this.d === 1n; }
  /** The nearest multiple; a tie goes away from zero. */
  roundedTo(step) {
    const steps = this.size().over(step).plus(new Exact(1n, 2n)).floor().times(step);
    return this.n < 0n ? new Exact(-steps.n, steps.d) : steps;
  }
}

const whole = (number) => new Exact(BigInt(number));
const zero = whole(0);
const one = whole(1);
const ten = whole(10);
const thousand = whole(1000);
const mostPlaces = 12;

function withPoint(digits, places) {
  if (places === 0) return digits;
  const padded = digits.padStart(places + 1, "0");
  return (padded.slice(0, -places) + "." + padded.slice(-places)).replace(/\.?0+$/, "");
}

function mixedFraction(value) {
  const floor = value.floor();
  const rest = value.minus(floor);
  return (floor.isZero() ? "" : floor.n + " ") + rest.n + "/" + rest.d;
}

function exactText(value) {
  const sign = value.n < 0n ? "-" : "";
  let scaled = value.size();
  for (let places = 0; places <= mostPlaces; places += 1, scaled = scaled.times(ten))
    if (scaled.isWhole()) return sign + withPoint(String(scaled.n), places);
  return sign + mixedFraction(value.size());
}

/** The step between numbers of so many significant figures near a value. */
function stepOf(value, digits) {
  let step = new Exact(1n, 10n ** BigInt(digits - 1));
  const size = value.size();
  for (let power = ten; !power.isOver(size); power = power.times(ten)) step = step.times(ten);
  for (let power = one; power.isOver(size); power = power.over(ten)) step = step.over(ten);
  return step;
}

function toSignificant(value, digits) {
  return value.isZero() ? value : value.roundedTo(stepOf(value, digits));
}

/** The double nearest to a value above 0: enough bits for one rounding, and one for what is cut off. */
function nearestDouble(value) {
  let shift = 0n;
  while ((value.n << shift) / value.d < 1n << 64n) shift += 64n;
  const scaled = value.n << shift;
  const bits = scaled / value.d;
  return Number(scaled % value.d === 0n ? bits : bits | 1n) / 2 ** Number(shift);
}

/** What a double is, exactly. */
function ofDouble(number) {
  let d = 1n;
  while (!Number.isInteger(number)) {
    number *= 2;
    d *= 2n;
  }
  return new Exact(BigInt(number), d);
}

/** Two significant figures of a double above 0, a tie to the even one, as programs print doubles. */
function twoFigures(number) {
  const exact = ofDouble(number);
  const step = stepOf(exact, 2);
  const down = exact.over(step).floor();
  const over = exact.over(step).minus(down);
  const tie = over.compare(new Exact(1n, 2n));
  const up = tie > 0 || (tie === 0 && down.n % 2n === 1n);
  return exactText((up ? down.plus(one) : down).times(step));
}
