# Functions for app/run and tests/run: the packages they need, and the build.
# shellcheck shell=bash

root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
build=$root/build
me=$(basename "$(dirname "$0")")/${0##*/}

say() { printf '%s\n' "$*" >&2; }
fail() {
    say "$me: $*"
    exit 2
}

# Prints the packages for `run` or `tests`, one per line: name, tab, reason. Leaves out packages whose command exists.
needed_packages() {
    local purpose=$1 name for unless why
    while IFS='|' read -r name for unless why; do
        read -r name <<<"${name%%#*}"
        read -r for <<<"$for"
        read -r unless <<<"$unless"
        read -r why <<<"$why"
        [[ -n $name ]] || continue
        [[ $for == run || $purpose == tests ]] || continue
        [[ $unless != - ]] && command -v "$unless" >/dev/null && continue
        printf '%s\t%s\n' "$name" "$why"
    done <"$root/resources/packages.txt"
}

installed() { [[ $(dpkg-query -W -f='${db:Status-Status}' "$1" 2>/dev/null) == installed ]]; }

missing_packages() {
    local name why
    while IFS=$'\t' read -r name why; do
        installed "$name" || printf '%s\t%s\n' "$name" "$why"
    done < <(needed_packages "$1")
}

# Prints the packages for `run` or `tests` ($1) and installs missing ones. $2: yes to install without a question.
ensure_packages() {
    local purpose=$1 yes=$2 name why answer
    local -a all=() absent=() as_root=()
    while IFS=$'\t' read -r name why; do all+=("$name"); done < <(needed_packages "$purpose")
    say "$me: Required packages: ${all[*]}"
    if ! command -v dpkg-query >/dev/null || ! command -v apt-get >/dev/null; then
        say "$me: This is not a Debian system, so packages are neither checked nor installed."
        return
    fi
    while IFS=$'\t' read -r name why; do absent+=("$name"); done < <(missing_packages "$purpose")
    if ((${#absent[@]} == 0)); then
        say "$me: All of them are installed."
        return
    fi
    say "$me: Missing packages:"
    missing_packages "$purpose" | while IFS=$'\t' read -r name why; do say "  $(printf '%-22s %s' "$name" "$why")"; done

    local line="apt-get update && apt-get install --no-install-recommends ${absent[*]}"
    if ((EUID != 0)); then
        if ! command -v sudo >/dev/null || ! { sudo -n true 2>/dev/null || [[ -t 0 ]]; }; then
            say "$me: You do not have permission to install them. Run as root:"
            say "$line"
            exit 2
        fi
        as_root=(sudo)
    fi
    if [[ $yes != yes ]]; then
        if [[ ! -t 0 ]]; then
            say "$me: There is no terminal for a question. Run it again with --yes, or run as root:"
            say "$line"
            exit 2
        fi
        read -r -p "$me: Install them? [y/N] " answer
        if [[ $answer != [yY]* ]]; then
            say "$me: Nothing was installed. Run as root:"
            say "$line"
            exit 2
        fi
    fi
    "${as_root[@]}" apt-get update >&2 || fail "apt-get update failed. Correct the package sources and run it again."
    "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get install -y --no-install-recommends "${absent[@]}" >&2 ||
        fail "apt-get install failed. Read the messages above, correct the cause and run it again."
}

# Builds Release into build/. $1: ON to build the tests, else OFF; the other arguments: targets.
build_release() {
    local tests=$1
    shift
    # A build with tests keeps them, so that app/run does not undo tests/run.
    [[ $tests == OFF ]] && grep -qs '^TENTER_TESTS:BOOL=ON' "$build/CMakeCache.txt" && tests=ON
    cmake -S "$root" -B "$build" -G Ninja -DCMAKE_BUILD_TYPE=Release -DTENTER_TESTS="$tests" >&2 ||
        fail "The configuration failed. Read the messages above."
    cmake --build "$build" ${1:+--target "$@"} >&2 || fail "The build failed. Read the messages above."
}
