#!/bin/sh
# sh cmake/setup.sh demo|tests|tests-clang|docs|bench
#
# From a bare Debian or Ubuntu to the result in one command: installs what is missing and only that,
# then configures, builds and runs the preset of that name. Elsewhere it names what is missing.
set -u

# Least versions: CMake for workflow presets, compilers and Boost for the library.
least_cmake=3.25
least_gxx=12
least_clang=14
least_boost=107400

say() { printf '==> %s\n' "$*"; }
stop() {
    printf 'setup.sh: %s\n' "$*" >&2
    exit 1
}
usage() {
    cat >&2 <<'USAGE'
usage: sh cmake/setup.sh demo|tests|tests-clang|docs|bench

  demo         build the job_sheet example and print the demo's shop sheet
  tests        build everything with g++, warnings as errors, and run the tests
  tests-clang  the same with clang++
  docs         make the reference pages
  bench        run the benchmarks and measure what the headers cost to compile

Installs missing packages with apt-get, as root or through sudo.
USAGE
    exit 2
}

[ $# -eq 1 ] || usage
preset=$1
extras=
browser='chromium fonts node npm pdftotext' # what the tests of job_sheet's pages take
reference='doxygen python'                  # what the reference pages take
case $preset in
demo) parts='cmake ninja cxx boost cli11 fmt json toml' ;;
tests) parts='cmake ninja gxx boost doctest benchmark cli11 fmt json toml' extras="$browser $reference" ;;
tests-clang) parts='cmake ninja clang boost doctest benchmark cli11 fmt json toml' extras="$browser $reference" ;;
docs) parts="cmake ninja cxx boost cli11 fmt json toml $reference" ;;
bench) parts='cmake ninja cxx boost benchmark' ;;
*) usage ;;
esac

cd "$(dirname "$0")/.." || stop "cannot enter the project's folder"

# Each part's package: apt, dnf, brew, vcpkg ('-': vcpkg has no such thing).
packages() {
    case $1 in
    cmake) echo 'cmake cmake cmake -' ;;
    ninja) echo 'ninja-build ninja-build ninja -' ;;
    cxx | gxx) echo 'g++ gcc-c++ gcc -' ;;
    clang) echo 'clang clang llvm -' ;;
    boost) echo 'libboost-dev boost-devel boost boost-units' ;;
    doctest) echo 'doctest-dev doctest-devel doctest doctest' ;;
    benchmark) echo 'libbenchmark-dev google-benchmark-devel google-benchmark benchmark' ;;
    cli11) echo 'libcli11-dev cli11-devel cli11 cli11' ;;
    fmt) echo 'libfmt-dev fmt-devel fmt fmt' ;;
    json) echo 'nlohmann-json3-dev json-devel nlohmann-json nlohmann-json' ;;
    toml) echo 'libtomlplusplus-dev tomlplusplus-devel tomlplusplus tomlplusplus' ;;
    chromium) echo 'chromium chromium chromium -' ;;
    fonts) echo 'fonts-liberation liberation-sans-fonts font-liberation -' ;;
    node) echo 'nodejs nodejs node -' ;;
    npm) echo 'npm nodejs-npm node -' ;;
    pdftotext) echo 'poppler-utils poppler-utils poppler -' ;;
    doxygen) echo 'doxygen doxygen doxygen -' ;;
    python) echo 'python3 python3 python -' ;;
    esac
}

# package_list <column> <part>...
package_list() {
    column=$1
    shift
    for part in "$@"; do
        packages "$part" | cut -d ' ' -f "$column"
    done | grep -vx -e '-' | tr '\n' ' ' | sed 's/ $//'
}

# have_header <header>: prints the file, looking where CMake will.
have_header() {
    (
        IFS=:
        for prefix in ${CMAKE_PREFIX_PATH-} /usr/local /usr /opt/homebrew /opt/local; do
            if [ -f "$prefix/include/$1" ]; then
                printf '%s\n' "$prefix/include/$1"
                exit 0
            fi
        done
        exit 1
    )
}

# at_least <version> <least>, by dotted numbers
at_least() {
    lower=$(printf '%s\n%s\n' "$1" "$2" | sort -t . -k 1,1n -k 2,2n -k 3,3n | head -n 1)
    [ "$1" = "$2" ] || [ "$lower" = "$2" ]
}

# recent_enough <compiler>: sets old if it is not.
recent_enough() {
    version=$("$1" -dumpfullversion 2>/dev/null) || version=$("$1" -dumpversion)
    least=$least_gxx
    if "$1" --version 2>/dev/null | grep -q clang; then least=$least_clang; fi
    at_least "$version" "$least" || old="$1 is version $version, too old: $least is needed"
}

# Is the part there? A part that is there but too old cannot be cured by installing: old=reason.
old=
is_there() {
    case $1 in
    cmake)
        command -v cmake >/dev/null 2>&1 || return 1
        version=$(cmake --version | sed -n '1s/[^0-9]*\([0-9.]*\).*/\1/p')
        at_least "$version" "$least_cmake" ||
            old="CMake $version is too old, $least_cmake is needed (newer ones: https://cmake.org/download)"
        ;;
    ninja) command -v ninja >/dev/null 2>&1 || command -v ninja-build >/dev/null 2>&1 ;;
    cxx | gxx | clang)
        case $1 in
        cxx) choices="${CXX:-c++} g++ clang++" ;;
        gxx) choices=g++ ;;
        clang) choices=clang++ ;;
        esac
        for compiler in $choices; do
            if command -v "$compiler" >/dev/null 2>&1; then
                recent_enough "$compiler"
                return
            fi
        done
        return 1
        ;;
    boost)
        file=$(have_header boost/version.hpp) || return 1
        [ -f "$(dirname "$file")/units/quantity.hpp" ] || return 1
        version=$(sed -n 's/^#define BOOST_VERSION \([0-9]*\).*/\1/p' "$file")
        [ "$version" -ge "$least_boost" ] ||
            old="Boost $((version / 100000)).$((version / 100 % 1000)) is too old, 1.74 is needed"
        ;;
    doctest) have_header doctest/doctest.h >/dev/null ;;
    benchmark) have_header benchmark/benchmark.h >/dev/null ;;
    cli11) have_header CLI/CLI.hpp >/dev/null ;;
    fmt) have_header fmt/core.h >/dev/null ;;
    json) have_header nlohmann/json.hpp >/dev/null ;;
    toml) have_header toml++/toml.h >/dev/null || have_header toml++/toml.hpp >/dev/null ;;
    chromium)
        command -v chromium >/dev/null 2>&1 || command -v chromium-browser >/dev/null 2>&1 ||
            command -v google-chrome >/dev/null 2>&1
        ;;
    fonts) find /usr/share/fonts /Library/Fonts "$HOME/Library/Fonts" 2>/dev/null | grep -qi liberationsans ;;
    python) command -v python3 >/dev/null 2>&1 ;;
    node | npm | pdftotext | doxygen) command -v "$1" >/dev/null 2>&1 ;;
    esac
}

find_missing() {
    missing=
    for part in $parts; do
        is_there "$part" || missing="$missing $part"
        [ -z "$old" ] || stop "$old"
    done
}

# The package manager's words for a system we do not install on.
tell_packages() {
    cat >&2 <<TELL
  Debian, Ubuntu   apt-get install $(package_list 1 $missing)
  Fedora           dnf install $(package_list 2 $missing)
  Homebrew         brew install $(package_list 3 $missing)
  vcpkg            vcpkg install $(package_list 4 $missing)
TELL
}

install_missing() {
    names=$(package_list 1 $missing)
    if ! command -v apt-get >/dev/null 2>&1; then
        printf 'setup.sh: missing here:%s. This script installs on Debian and Ubuntu only; get them by\n' \
            "$missing" >&2
        tell_packages
        exit 1
    fi

    if [ "$(id -u)" -eq 0 ]; then
        as_root=
    elif command -v sudo >/dev/null 2>&1 && { [ -t 0 ] || sudo -n true 2>/dev/null; }; then
        as_root=sudo
    else
        stop "these packages are missing, and installing them takes root or sudo: $names"
    fi

    say "missing:$missing; installing $names"
    apt="$as_root env DEBIAN_FRONTEND=noninteractive apt-get -q -o DPkg::Lock::Timeout=300"
    say 'apt-get update'
    $apt update || say 'apt-get update failed; trying with the package lists there are'
    say "apt-get install $names"
    $apt install -y --no-install-recommends $names </dev/null ||
        stop "apt-get could not install $names; its reason stands above"

    find_missing
    [ -z "$missing" ] || stop "installed, but still not found:$missing"
}

find_missing
if [ -n "$missing" ]; then
    install_missing
else
    say 'everything needed is installed'
fi

# Without these the tests that take them are left out; in CI that won't do.
if [ -n "$extras" ]; then
    parts=$extras
    find_missing
    if [ -n "$missing" ] && ! (install_missing); then
        [ -z "${CI-}" ] || exit 1
        say "going on without:$missing; some tests are left out"
    fi
fi

# One job a core, unless the caller has chosen.
cores=$(getconf _NPROCESSORS_ONLN 2>/dev/null) || cores=2
export CMAKE_BUILD_PARALLEL_LEVEL="${CMAKE_BUILD_PARALLEL_LEVEL:-$cores}"
export CTEST_PARALLEL_LEVEL="${CTEST_PARALLEL_LEVEL:-$cores}"

say "cmake --workflow --preset $preset"
exec cmake --workflow --preset "$preset"
