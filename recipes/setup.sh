# shellcheck shell=sh
# SPDX-License-Identifier: MIT
# What Scruple needs on Debian 12, in one place: sourced by recipes/demo.sh and tests/run.sh.
# shellcheck disable=SC2034 # the lists are for those two

build_needs="g++ cmake ninja-build pkgconf libfmt-dev libcli11-dev tao-pegtl-dev nlohmann-json3-dev libboost-dev
    libutf8proc-dev libcairo2-dev libpango1.0-dev libqrencode-dev libmd-dev fonts-dejavu-core fonts-droid-fallback"

# What the tests are compiled with, and what they run.
test_build_needs="doctest-dev"
test_needs="units glpk-utils openbabel python3 python3-periodictable python3-jsonschema python3-selenium clang-format clang-tidy lld
    clang libclang-rt-dev llvm shellcheck mandoc bash zsh fish poppler-utils qpdf zbar-tools python3-pil python3-icalendar chromium chromium-driver
    git libxml2-utils cmark-gfm locales perl neovim vim emacs-nox elpa-eglot valgrind dpkg-dev file"
# A node from elsewhere brings its own npm, and Debian's cannot stand beside it.
command -v npm >/dev/null || test_needs="$test_needs nodejs npm"

coverage_needs="gcovr"

is_installed() {
    dpkg-query -W -f='${Status}' "$1" 2>/dev/null | grep -q ' installed$'
}

missing_of() {
    for package in "$@"; do
        is_installed "$package" || echo "$package"
    done
}

# need PACKAGE...: installs those that are missing, or says what to install and fails.
need() {
    command -v dpkg-query >/dev/null || {
        echo "This is no Debian; the programs and libraries needed are, by their names there: $*"
        return 0
    }
    # shellcheck disable=SC2046 # one word a package
    set -- $(missing_of "$@")
    [ $# -eq 0 ] && return 0
    if [ "$(id -u)" -eq 0 ]; then
        as_root=
    elif command -v sudo >/dev/null; then
        as_root=sudo
    else
        echo "Missing packages. As root, run:  apt-get install $*" >&2
        return 1
    fi
    echo "Installing $*"
    $as_root apt-get -q update &&
        $as_root env DEBIAN_FRONTEND=noninteractive apt-get -q install -y --no-install-recommends "$@"
}
