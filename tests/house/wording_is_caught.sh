#!/usr/bin/env bash
# check_wording.py must refuse each kind of fault that it reads, with its place and reason, and nothing else. Argument:
# python.
set -euo pipefail
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
python=$1
tree=$(mktemp -d)
trap 'rm -rf "$tree"' EXIT
mkdir -p "$tree/core/checks" "$tree/core/css" "$tree/resources/translations"

message() { printf '<message>\n<source>%s</source>\n<translation>x</translation>\n</message>\n' "$1"; }
known() {
    message 'The row is %1 wide'
    printf '<message numerus="yes">\n<source>%%n line</source>\n<comment>%%n lines</comment>\n</message>\n'
}
plant() {
    known >"$tree/resources/translations/core_de.ts"
    printf '%s\n' 'auto a = wording::say("The row is %1 wide", {b}) + wording::sayCount("%n line", "%n lines", c);' \
        "$2" >"$tree/$1"
}
# refused FILE TEXT REASON
refused() {
    local output
    plant "$1" "$2"
    if output=$("$python" "$here/check_wording.py" "$tree" 2>&1); then
        echo "not refused: $2 in $1"
        exit 1
    fi
    grep -qF "$3" <<<"$output" || { echo "refused without its place or reason: $2 in $1: $output"; exit 1; }
    rm "$tree/$1"
}
allowed() {
    local output
    plant "$1" "$2"
    output=$("$python" "$here/check_wording.py" "$tree" 2>&1) || { echo "refused: $2 in $1: $output"; exit 1; }
    rm "$tree/$1"
}

file=core/checks/a.cpp
refused $file 'auto d = "A heading has 3 lines";' "$file:2: “A heading has 3 lines” is not in wording::say"
refused $file 'auto d = text + " on hover";' "“ on hover” is not in wording::say"
refused $file 'auto d = wording::say("The row is %1 wide", {text + " at most"});' "“ at most” is not in wording::say"
refused $file 'auto d = wording::say(e ? "The row is %1 wide" : "It is wide");' 'is no string literal'
refused $file 'auto d = wording::say("The row is " + b);' '“The row is ” is not in wording::say'
refused $file 'auto d = wording::say(text);' 'text is no string literal'
refused $file 'auto d = wording::sayCount("%n line", "%n rows", e);' 'has other forms elsewhere'
refused $file 'auto d = wording::say("The row "
    "is high");' 'core_de.ts: “The row is high” is missing'
# In all of core a text must be in the catalogue; elsewhere a sentence may stay English.
refused core/css/a.cpp 'auto d = wording::say("The row is high");' 'core_de.ts: “The row is high” is missing'
allowed core/css/a.cpp 'auto d = "The row is high";'
allowed $file 'auto d = wording::say("The row "
    "is %1 wide", {e ? "px" : "em"});'
allowed $file 'auto d = wording::noted("The row is %1 wide");'
allowed $file 'auto d = "heading-lines" + "WCAG 2.2 SC 1.4.12";  // A sentence in a comment'

plant $file ''
{ known; message 'The row was wide'; } >"$tree/resources/translations/core_de.ts"
output=$("$python" "$here/check_wording.py" "$tree" 2>&1 || true)
grep -qF '“The row was wide” is in no source file' <<<"$output" || { echo "a text without a source is not refused"; exit 1; }
