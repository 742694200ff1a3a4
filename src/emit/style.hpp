// SPDX-License-Identifier: MIT
// How every page looks: black on white, big enough for dim light, each card on paper of its own.
//
// Sizes follow guides for large print (body 14 points or more, leading of a quarter or more); what is
// weighed or measured is 22 points, to be read at arm's length. No colour carries a meaning: red ink is
// gone under a red lamp.
#pragma once

#include <string_view>

namespace scruple::emit::html {

inline constexpr std::string_view style = R"(
@page { margin: 11mm 12mm; }
* { box-sizing: border-box; }
html { background: #fff; color: #000; }
body { margin: 0 auto; padding: 1rem; max-width: 46rem; font: 14pt/1.4 Verdana, "DejaVu Sans", Helvetica, Arial, sans-serif; overflow-wrap: break-word; }
article + article { margin-top: 4rem; border-top: 1mm solid #000; padding-top: 2rem; }
h1 { font-size: 28pt; line-height: 1.1; margin: 0; }
h2 { font-size: 17pt; line-height: 1.2; margin: 1.6rem 0 .6rem; break-after: avoid; }
p { margin: .3rem 0; }
ul, ol { margin: 0; padding: 0; list-style: none; }
ul > li { margin: .35rem 0 .35rem 1.2em; }
ul > li::before { content: "–"; display: inline-block; width: 1.2em; margin-left: -1.2em; }
.makes, .amount { font-size: 22pt; font-weight: bold; white-space: nowrap; }
.makes { margin: .4rem 0; }
.blanks { display: flex; flex-wrap: wrap; gap: .8rem 1.6rem; margin: 1rem 0; }
.line { display: inline-block; width: 7.5em; margin-left: .5em; border-bottom: .4mm solid #000; }
.clock { display: inline-block; width: 5em; margin-left: .5em; border-bottom: .4mm solid #000; }
.cautions { border: 1mm solid #000; padding: .2rem .9rem .7rem; margin-top: 1.2rem; box-decoration-break: clone; -webkit-box-decoration-break: clone; }
.cautions h2 { margin-top: .6rem; }
.cautions ul > li::before { content: "!"; font-weight: bold; }
.box { display: inline-block; width: 7mm; height: 7mm; border: .5mm solid #000; margin-right: .5em; vertical-align: -1.6mm; }
.tick { white-space: nowrap; margin-right: 1.6em; line-height: 2.1; }
.work > li { position: relative; padding: .7rem 0 .7rem 3.2rem; border-top: .3mm solid #000; break-inside: avoid; }
.work > li:last-child { border-bottom: .3mm solid #000; }
.work .number { position: absolute; left: 0; top: .95rem; font-size: 17pt; }
.what { font-size: 17pt; }
.amount { display: inline-block; margin-right: .8em; }
.amount small { font-size: 14pt; font-weight: normal; }
.errands > li { margin: 0; padding: .7rem 0; border-top: .3mm solid #000; break-inside: avoid; }
.errands > li::before { content: none; }
.errands .tick { margin-right: 0; }
.tally { display: flex; flex-wrap: wrap; gap: .5rem 1.4rem; margin-top: .7rem; }
.tally .box { margin: 0 .3rem 0 0; }
a { color: #000; }
label { display: block; margin-top: 1rem; }
input { width: 100%; padding: .4rem; border: .5mm solid #000; border-radius: 0; font: inherit; font-size: 17pt; }
.binder > li { margin: 0; padding: .7rem 0; border-top: .3mm solid #000; break-inside: avoid; }
.binder > li::before { content: none; }
.binder a { font-size: 17pt; font-weight: bold; }
table { border-collapse: collapse; width: 100%; }
th, td { text-align: left; vertical-align: baseline; padding: .35rem .8rem .35rem 0; border-bottom: .2mm solid #000; }
thead th { border-bottom-width: .5mm; }
tbody th { font-weight: normal; }
.figure { text-align: right; padding-right: 0; padding-left: .8rem; white-space: nowrap; }
.gather td.figure { font-size: 22pt; font-weight: bold; line-height: 1.1; }
@media print {
  body { padding: 0; max-width: none; }
  .work > li { padding-top: .35rem; padding-bottom: .35rem; }
  .work .number { top: .6rem; }
  .way-back, #search { display: none; }
  article + article { margin-top: 0; border-top: 0; padding-top: 0; break-before: page; }
}
)";

/// The digest of `style`, which lets the page's policy take this one style and no other.
inline constexpr std::string_view style_digest = "sha256-mEWkxvExkTgqbEG2wdwNPfGCG3DuClv77PJO4dts7v4=";

}  // namespace scruple::emit::html
