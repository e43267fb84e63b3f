#!/usr/bin/env bash
# check_places.sh must refuse each kind of wrong place. The planted words are put together here, so that this file itself
# passes the check.
set -euo pipefail
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
tree=$(mktemp -d)
trap 'rm -rf "$tree"' EXIT
mkdir -p "$tree/core" "$tree/tests/engines"
lock=$tree/tests/engines/package-lock.json

verdict() {
    echo "$1" >"$tree/core/a.cpp"
    echo "${2:-\{\}}" >"$lock"
    bash "$here/check_places.sh" "$tree" >/dev/null
}
slash=/
dot=.
verdict '// see core/layout/frame.cpp, or app/run' || { echo "refused: paths of the project"; exit 1; }
verdict '// https://www.w3.org/TR/css-values-4/' || { echo "refused: a specification's address"; exit 1; }
! verdict "// ${slash}home/somebody/tenter" || { echo "not refused: a folder of one machine"; exit 1; }
! verdict "#include \"${slash}work/main/core/a.h\"" || { echo "not refused: an absolute include"; exit 1; }
! verdict "https://registry${dot}example${dot}org/thing" || { echo "not refused: a registry"; exit 1; }
! verdict '' '{"resolved": "somewhere"}' || { echo "not refused: a download address in the lock file"; exit 1; }
echo "every wrong place is caught"
