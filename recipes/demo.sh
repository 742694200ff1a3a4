#!/bin/sh
# SPDX-License-Identifier: MIT
# Sets up what is missing, builds Scruple, and does a month's work of the demo darkroom with it.
set -eu
cd "$(dirname "$0")/.."
. recipes/setup.sh

out=build/demo
log=build/demo-build.txt

build_scruple() {
    # A folder that is configured already, with the tests or without, is used as it is.
    [ -f build/release/CMakeCache.txt ] ||
        cmake -S . -B build/release -G Ninja -DCMAKE_BUILD_TYPE=Release -DSCRUPLE_TESTS=OFF
    ninja -C build/release scruple
}

scruple() {
    build/release/src/scruple "$@" --in recipes
}

# card FILE RECIPE …: the card as a page to print.
card() {
    file=$out/$1
    shift
    scruple card "$@" --as html --out "$file"
}

mkdir -p "$out"
rm -rf "${out:?}"/*
# shellcheck disable=SC2086 # a list of packages
need $build_needs
echo "Building Scruple (a few minutes the first time; what it says is in $log)"
build_scruple >"$log" 2>&1 || {
    tail -n 40 "$log"
    exit 1
}

echo "Checking the recipes in recipes/"
scruple check

echo "Writing cards, a recipe for half the volume, and the shopping list for December"
card medlar-part-a.html Medlar part A --make 1l
card medlar-part-b.html Medlar part B --make 500ml
card medlar-working.html Medlar working --films 6 135
card damson.html Damson --make 500ml
card sloe.html Sloe --make 1l
card sloe-without-citrate.html Sloe --make 1l --instead "sodium citrate"
card bullace.html Bullace --make 2l
card mulberry-tone.html Mulberry bath tone --make 500ml
scruple card Medlar --mixed 2026-12-01 --as pdf --paper a5 --out $out/medlar.pdf
scruple labels Medlar --bottles 500ml --mixed 2026-12-01 --as pdf --out $out/medlar-labels.pdf
scruple binder --paper a5 --out $out/binder >/dev/null
scruple shopping December --as pdf --paper a5 --out $out/shopping-december.pdf
scruple shelf --on 2026-12-01 --out $out/shelf.txt
scruple shelf --on 2026-12-01 --as html --out $out/shelf.html
scruple card Medlar part B --make 500ml --as json --out $out/medlar-part-b.json
scruple scaled Medlar --make 500ml --out $out/medlar-500ml.scruple
scruple shopping December --out $out/shopping-december.txt
scruple shopping December --as html --out $out/shopping-december.html
scruple shopping December --as csv --out $out/shopping-december.csv
scruple calendar December --as ics --out $out/mixing-december.ics
scruple evening December 2026-12-01 --from 18:00 --as pdf --out $out/evening-2026-12-01.pdf

echo "The card for half a litre of Medlar part B, which makes its metaborate from borax and lye:"
echo
scruple card Medlar part B --make 500ml
echo
echo "Somebody mixes a litre of Sloe, in a copy of the darkroom's recipes:"
mkdir $out/darkroom
cp recipes/*.scruple $out/darkroom
build/release/src/scruple mixed Sloe 1l --on 2026-12-01 --in $out/darkroom
echo
echo "What the log leaves of solutions on the first of December:"
sed -n '/SOLUTIONS/,/CORRECTED/{/CORRECTED/!p}' $out/shelf.txt
echo "Written:"
printf '  %s\n' "$out"/*
