// SPDX-License-Identifier: MIT
// What stands below a line of the work, as src/plan/line_details.cpp and src/emit/words.cpp put it.

function growingFigure(text, scale) {
  if (!text.shown) return "";
  const amount = Exact.ratio(text.amount).times(scale);
  if (text.shown === "three figures") return withUnit(plain(amount, text.unit, 3)) + text.after;
  return withUnit(text.shown === "grams" ? plainGrams(amount) : plainMl(amount.ceil())) + text.after;
}

function detailTexts(details, scale) {
  const standing = details.filter((text) => !text.only_as_written || scale.equals(one));
  return standing.map((text) => text.before + growingFigure(text, scale));
}

const listed = (parts) => parts.filter(Boolean).join(", ");

function rounding(shown) {
  const percent = shown.error.isZero() ? 0 : nearestDouble(shown.error);
  return percent > 1 ? `rounded by ${twoFigures(percent)}${blank}%` : "";
}

function remarks(line, amount, details) {
  const how = amount?.instrument ? "with the " + amount.instrument : "";
  const first = listed([line.at && "at " + line.at, how, amount ? rounding(amount) : ""]);
  return [first, line.elsewhere, ...details].filter(Boolean);
}

/** A number and its unit stay on one line. */
function withUnitsKept(text) {
  let kept = "";
  let number = false;
  for (const c of text) {
    kept += c === " " && number ? blank : c;
    const begins = kept.length === 1 || kept[kept.length - 2] === " ";
    number = /[0-9]/.test(c) ? number || begins : number && (c === "." || c === "/");
  }
  return kept;
}
