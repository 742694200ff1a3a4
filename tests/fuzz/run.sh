#!/bin/sh
# SPDX-License-Identifier: MIT
# Fuzzes every target of tests/fuzz, as many at a time as there are cores:
#   sh tests/fuzz/run.sh SECONDS            all together take about so long; 14400 for four hours
#   sh tests/fuzz/run.sh SECONDS TARGET...  these alone
#   sh tests/fuzz/run.sh --gather           puts what the runs have found, the least that does as much, into tests/fuzz/corpus
# Programs are those of build/sanitize (set FUZZ_BUILD for another). Prints executions per target; what was found is in
# build/fuzz/TARGET, and an input that breaks something is named there.
set -u
cd "$(dirname "$0")/../.." || exit 2

programs=${FUZZ_BUILD:-build/sanitize}/tests/fuzz
all="alike compile formulas log paper parse plans printed reactions server"
jobs=$(nproc)
work=build/fuzz
# Weighing inputs by how rare is what they reach would take libFuzzer four times as long as the inputs themselves.
# Anything that takes longer than ten seconds, or more memory than this, is a fault. What Fontconfig keeps as long as the
# process lasts is no leak of ours.
limits="-entropic=0 -timeout=10 -rss_limit_mb=2048 -malloc_limit_mb=1024 -max_len=4096"
export LSAN_OPTIONS="suppressions=$PWD/tests/support/leaks.txt:print_suppressions=0"

usage() {
    echo "usage: sh tests/fuzz/run.sh SECONDS [TARGET...] | --gather" >&2
    exit 2
}

# The words that a fuzzer may put in, and what each target begins with.
prepare() {
    /usr/bin/python3 tests/fuzz/words.py >"$work/words" &&
        /usr/bin/python3 tests/fuzz/seeds.py "$work/seeds"
}

# fuzz TARGET SECONDS: one line, `target executions executions-a-second fault`.
fuzz() {
    mkdir -p "$work/$1/found"
    # shellcheck disable=SC2086 # several options
    "$programs/fuzz_$1" $limits -max_total_time="$2" -print_final_stats=1 -dict="$work/words" \
        -artifact_prefix="$work/$1/" "$work/$1/found" "tests/fuzz/corpus/$1" >"$work/$1/log" 2>&1
    status=$?
    runs=$(sed -n 's/^stat::number_of_executed_units: *//p' "$work/$1/log")
    echo "$1: ${runs:-0} executions"
    [ "$status" -eq 0 ] && return
    tail -n 60 "$work/$1/log"
    echo "$1: FAULT; the whole is in $work/$1/log"
    touch "$work/faults/$1"
}

# The smallest set of inputs that goes as far as all of them, in a folder of its own until it is whole.
gather() {
    for target in $all; do
        rm -rf "$work/merged" && mkdir -p "$work/merged" "$work/$target/found" "tests/fuzz/corpus/$target"
        # shellcheck disable=SC2086 # several options
        "$programs/fuzz_$target" -merge=1 $limits "$work/merged" "tests/fuzz/corpus/$target" "$work/$target/found" \
            "$work/seeds/$target" >"$work/merge.log" 2>&1 || return 1
        rm -rf "tests/fuzz/corpus/$target" && mv "$work/merged" "tests/fuzz/corpus/$target"
        echo "$target: $(find "tests/fuzz/corpus/$target" -type f | wc -l) inputs"
    done
}

[ $# -gt 0 ] || usage
mkdir -p "$work" && prepare || exit 2
if [ "$1" = --gather ]; then
    gather
    exit
fi
case $1 in *[!0-9]*) usage ;; esac
seconds=$1
shift
# shellcheck disable=SC2086 # a list of targets
[ $# -gt 0 ] || set -- $all
each=$((seconds * jobs / $#))
rm -rf "$work/faults" && mkdir "$work/faults"
running=0
for target in "$@"; do
    fuzz "$target" "$each" &
    running=$((running + 1))
    # A new one begins when the oldest of as many as there are cores ends; all take the same time.
    [ $((running % jobs)) -eq 0 ] && wait
done
wait
[ -z "$(ls "$work/faults")" ]
