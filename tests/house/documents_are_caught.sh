#!/usr/bin/env bash
# check_documents.py must refuse each kind of wrong statement. Arguments: the source folder, python, tenter-cli.
set -euo pipefail
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
source=$1
python=$2
program=$3
tree=$(mktemp -d)
trap 'rm -rf "$tree"' EXIT
for top in app core resources sample-projects tests; do ln -s "$source/$top" "$tree/$top"; done

# The table of commands, which README.md must have in any case.
verbs=$("$program" --help | sed -n '/^Verbs:/,/^$/p' | sed -nE 's/^  ([a-z]+) .*/| `\1 X` | |/p')
plant() {
    printf '%s\n\n%s\n' "$verbs" "$1" >"$tree/README.md"
    printf '%s\n' "${2:-}" >"$tree/DEVELOPERS.md"
}
refused() {
    plant "$@"
    if "$python" "$here/check_documents.py" "$tree" "$program" >/dev/null 2>&1; then
        echo "not refused: $1 ${2:-}"
        exit 1
    fi
}
allowed() {
    local output
    plant "$@"
    output=$("$python" "$here/check_documents.py" "$tree" "$program" 2>&1) || { echo "refused: $1 ${2:-}: $output"; exit 1; }
}
size='    $ build/bin/tenter-cli size 20px'

allowed "$size
    20 px
    …"
allowed 'Press *View › Overlays*, and *Apply sizes*. It is *not* a label.' 'See `core/units/length.h`, `EditScope::setSetting`.'
refused "$size
    21 px"
refused '    $ build/bin/tenter-cli size nonsense'
refused '| `conjure X` | |'
refused 'Press *View › Overlooks*.'
refused '![A picture](resources/screenshots/nothing.png)'
refused '' 'See `core/units/nothing.h`.'
refused '' 'See `EditScope::conjure`.'
echo "every wrong statement is caught"
