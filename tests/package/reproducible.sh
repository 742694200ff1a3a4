#!/bin/sh
# SPDX-License-Identifier: MIT
# Two builds of the same sources give the same bytes, by hand since it builds twice: in folders of other names and depths, at
# other times, in other languages, one with more at a time than the other.
set -eu
cd "$(dirname "$0")/../.."
SOURCE_DATE_EPOCH=$(git log -1 --format=%ct)
export SOURCE_DATE_EPOCH CCACHE_DISABLE=1
place=$(mktemp -d)
trap 'rm -rf "$place"' EXIT

# built FOLDER LANGUAGE JOBS
built() {
    mkdir -p "$place/$1"
    (
        export LC_ALL="$2"
        git archive HEAD | tar -x -C "$place/$1"
        cd "$place/$1"
        cmake -S . -B made -G Ninja -DCMAKE_BUILD_TYPE=Release -DSCRUPLE_TESTS=OFF >/dev/null
        ninja -C made -j "$3" >/dev/null
        cpack --config made/CPackConfig.cmake -B made/package >/dev/null
    )
}

built one C.UTF-8 2
built a/folder/elsewhere C 1
status=0
for file in src/scruple src/scruple-drawing.so $(cd "$place/one/made" && find package -name '*.deb'); do
    if cmp "$place/one/made/$file" "$place/a/folder/elsewhere/made/$file"; then
        echo "the same  $(sha256sum <"$place/one/made/$file" | cut -c1-16)  $file"
    else
        status=1
    fi
done
exit "$status"
