// SPDX-License-Identifier: MIT
// Figures as they are shown, by the rules of src/plan/figure.cpp.

const blank = "\u00A0";

/** How far the shown value is off, in percent of the exact one. */
function errorOf(shown, exact) {
  return exact.isZero() ? zero : shown.minus(exact).size().over(exact.size()).times(whole(100));
}

function figure(value, exact, unit) {
  return { value, exact, unit, text: exactText(value), error: errorOf(value, exact), instrument: "" };
}

function inReadableUnit(value, exact, small, large) {
  if (exact.size().compare(whole(10000)) < 0) return figure(value, exact, small);
  return figure(value.over(thousand), exact.over(thousand), large);
}

const plain = (value, unit, digits = 4) => figure(toSignificant(value, digits), value, unit);
const gramsAsRead = (value, exact) => inReadableUnit(value, exact, "g", "kg");
const mlAsRead = (value, exact) => inReadableUnit(value, exact, "ml", "l");
const plainGrams = (grams) => gramsAsRead(toSignificant(grams, 4), grams);
const plainMl = (ml) => mlAsRead(toSignificant(ml, 4), ml);
const withUnit = (it) => it.text + blank + it.unit;

const inLarge = (it) => it.unit === "kg" || it.unit === "l";
const inBase = (value, it) => (inLarge(it) ? value.times(thousand) : value);
