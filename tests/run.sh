#!/bin/sh
# SPDX-License-Identifier: MIT
# Sets up what is missing, builds, and tests everything:
#   sh tests/run.sh              release and sanitizer builds, all suites, all checks
#   sh tests/run.sh --coverage   line coverage of src/ and include/ instead
# The last line is `N passed, N failed`; a test case run in both builds counts twice.
set -u
cd "$(dirname "$0")/.." || exit 2
. recipes/setup.sh

python=/usr/bin/python3
jobs=$(nproc)
logs=build/logs
passed=0
failed=0

count() {
    passed=$((passed + $1))
    failed=$((failed + $2))
}

# check NAME COMMAND...: counts once; what the command says is shown where it failed.
check() {
    name=$1
    shift
    if "$@" >"$logs/$name.txt" 2>&1; then
        echo "passed  $name"
        count 1 0
    else
        cat "$logs/$name.txt"
        echo "FAILED  $name"
        count 0 1
    fi
}

# needs_are_there: once what installs them has ended.
needs_are_there() {
    wait "$installing" && return
    cat "$logs/need-of-tests.txt"
    return 1
}

# build FOLDER OPTION...: configures with the tests, which the demo leaves out, and builds into build/FOLDER.
build() {
    folder=build/$1
    shift
    cmake -S . -B "$folder" -G Ninja -DSCRUPLE_TESTS=ON "$@" && ninja -C "$folder"
}

# suite NAME: all programs of build/NAME, counted by test case. One more at a time than there are cores: browsers wait a good
# deal.
suite() {
    ctest --test-dir "build/$1" -j $((jobs + 1)) --output-on-failure --output-junit junit.xml \
        --test-output-size-passed 1000000 --test-output-size-failed 1000000 >"$logs/suite-$1.txt" 2>&1 ||
        cat "$logs/suite-$1.txt"
    counts=$("$python" tests/tools/count.py "build/$1/junit.xml") || counts="0 1"
    echo "suite   $1: ${counts% *} passed, ${counts#* } failed"
    # shellcheck disable=SC2086 # two numbers
    count $counts
}

# What the tests take from npm, at the versions of the lock file.
node_packages() {
    mkdir -p build/node &&
        cp tests/node/package.json tests/node/package-lock.json build/node &&
        npm ci --prefix build/node --ignore-scripts --no-audit --no-fund
}

format_check() {
    find src include grammar tests \( -name '*.cpp' -o -name '*.hpp' \) -exec clang-format --dry-run -Werror --ferror-limit=1 {} +
}

# Over all files of a rung together, whose headers then are read once.
tidy_check() {
    cmake -S . -B build/tidy -G Ninja -DCMAKE_BUILD_TYPE=Release -DSCRUPLE_TESTS=OFF -DCMAKE_UNITY_BUILD_BATCH_SIZE=0 &&
        ninja -C build/tidy scruple_embedded &&
        run-clang-tidy -quiet -j "$jobs" -checks=-bugprone-suspicious-include -p build/tidy
}

scripts_check() {
    find .ci recipes tests src \( -name '*.sh' -o -path .ci/run \) -exec shellcheck -x {} +
}

coverage() {
    # shellcheck disable=SC2086 # lists of packages
    need $build_needs $test_build_needs $test_needs $coverage_needs &&
        build coverage -DCMAKE_BUILD_TYPE=Debug -DSCRUPLE_COVERAGE=ON &&
        find build/coverage -name '*.gcda' -delete &&
        ctest --test-dir build/coverage -j "$jobs" --output-on-failure &&
        gcovr --root . --object-directory build/coverage --filter src/ --filter include/ --exclude-throw-branches \
            --gcov-ignore-parse-errors --sort-uncovered --print-summary
}

mkdir -p "$logs"
if [ "${1:-}" = --coverage ]; then
    coverage
    exit
elif [ $# -gt 0 ]; then
    echo "usage: sh tests/run.sh [--coverage]" >&2
    exit 2
fi

# What the tests run is put in place while the first build goes on: unpacking waits for the disk most of the time.
# shellcheck disable=SC2086 # lists of packages
check setup need $build_needs $test_build_needs
# shellcheck disable=SC2086
need $test_needs >"$logs/need-of-tests.txt" 2>&1 &
installing=$!
check build-release build release -DCMAKE_BUILD_TYPE=Release
check setup-of-tests needs_are_there
check node-packages node_packages
suite release
check build-sanitizers build sanitize -DCMAKE_BUILD_TYPE=Debug -DSCRUPLE_SANITIZE=ON -DCMAKE_CXX_COMPILER=clang++
suite sanitize
check fuzzing sh tests/fuzz/run.sh $((120 / jobs))
check demo sh recipes/demo.sh
check ladder "$python" tests/tools/ladder.py
check one-definition "$python" tests/tools/one_definition.py
check includes "$python" tests/tools/includes.py
check licence-lines "$python" tests/tools/licence_lines.py
check format format_check
check shell-scripts scripts_check
check tidy tidy_check

echo "$passed passed, $failed failed"
[ "$failed" -eq 0 ]
