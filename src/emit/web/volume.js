// SPDX-License-Identifier: MIT
// The volume that somebody types, or why it is none.

const mostLitres = 10000;
const wantedForm = "Write a volume such as 500 ml or 1.5 l";

/** {ml} or {trouble} */
function volumeOf(typed) {
  const text = typed.trim().replaceAll(blank, " ");
  const found = /^([+-]?)(\d+(?:\.\d+)?|\.\d+) *(ml|l)$/i.exec(text);
  if (!found) return { trouble: troubleWith(text) };
  const [, sign, digits, unit] = found;
  if (digits.length > 12) return { trouble: `That has too many digits. ${wantedForm}.` };
  const [before, after = ""] = digits.split(".");
  const number = new Exact(BigInt(before + after), 10n ** BigInt(after.length));
  const ml = unit.toLowerCase() === "l" ? number.times(thousand) : number;
  if (sign === "-" || ml.isZero()) return { trouble: "Nothing is made from nothing: write a volume above 0 ml." };
  if (ml.isOver(thousand.times(whole(mostLitres)))) return { trouble: `That is more than ${mostLitres} l.` };
  return { ml };
}

function troubleWith(text) {
  if (text === "") return `${wantedForm}.`;
  if (/^[\d.]*,[\d,.]* *(ml|l)?$/i.test(text)) return "Write the number with a point and no comma: 1.5 l.";
  if (/^[+-]?(\d+(\.\d+)?|\.\d+)$/.test(text)) return `Of what? ${wantedForm}.`;
  if (/\d *[a-z]/i.test(text)) return `This field takes ml and l. ${wantedForm}.`;
  return `That is no volume. ${wantedForm}.`;
}

function volumeText(ml) {
  return withUnit(ml.compare(thousand) < 0 ? figure(ml, ml, "ml") : figure(ml.over(thousand), ml, "l"));
}
