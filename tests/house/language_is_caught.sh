#!/usr/bin/env bash
# check_language.py must refuse each kind of text that it reads, with the reason, and nothing else. Argument: python.
set -euo pipefail
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
python=$1
tree=$(mktemp -d)
trap 'rm -rf "$tree"' EXIT

plant() {
    rm -rf "${tree:?}"/*
    mkdir -p "$tree/core/a" "$tree/$(dirname "$1")"
    echo 'int a();' >"$tree/core/a/b.h"
    printf '%s\n' "$2" >"$tree/$1"
}
# refused FILE TEXT REASON LINE
refused() {
    local output
    plant "$1" "$2"
    if output=$("$python" "$here/check_language.py" "$tree" 2>&1); then
        echo "not refused: $2 in $1"
        exit 1
    fi
    grep -qF "$1:$4: " <<<"$output" && grep -qF "$3" <<<"$output" ||
        { echo "refused without its place or reason: $2 in $1: $output"; exit 1; }
}
allowed() {
    local output
    plant "$1" "$2"
    output=$("$python" "$here/check_language.py" "$tree" 2>&1) || { echo "refused: $2 in $1: $output"; exit 1; }
}

# Strings, also in several pieces, and with escapes.
refused core/a/a.cpp 'const char* a = "Which wish decides is told below.";' 'say who shows or reports it' 1
refused core/a/a.cpp 'const char* a = "A shorter heading "
    "mends it.";' 'write fix' 2
refused core/a/a.cpp 'std::string a = std::string("Another browser may wrap ") +
    "it otherwise.";' 'write differently' 1
refused app/desktop/a.cpp 'auto a = tr("The row is 1 320 px wide");' 'no thousands separator' 1
refused app/desktop/a.cpp 'auto a = tr("The row is 1\u202f320\u00a0px wide");' 'no thousands separator' 1
refused app/desktop/a.cpp 'auto a = tr("a margin of -12 px");' 'U+2212' 1
refused app/desktop/a.cpp 'auto a = tr("&Level parts");' 'the label is Align parts' 1
refused app/command/a.cpp 'auto a = "Whose rules for line breaks";' 'write Which' 1
# Comments.
refused core/a/a.cpp '/// Nothing of like length.' 'write similar' 1
refused core/a/a.h '// A title at its shortest.' 'write shortest' 1
refused core/a/a.h 'int a = 0;  ///< may be had by
            ///< nobody' 'write available' 1
refused core/a/a.h '/// First line.
/// Wishes keep
/// company with others.' 'write with, or next to' 2
# Documents.
refused README.md 'Thumbnails at telling widths.' 'write key widths' 1
refused resources/project.schema.json '  "description": "what may be taken over",' 'write apply' 1

# Code, markup and examples in backticks are no prose; a comment in the middle of code is not read by users.
allowed core/a/a.cpp 'const char* css = "margin: -12px; width: 1 320px {";'
allowed core/a/a.cpp '// A shorter heading mends it.'
allowed core/a/a.cpp 'int told = mend("told");  // told'
allowed core/a/a.h '/// Reads `-12 px` and `what is told`.'
allowed core/a/a.h '#include "told of what mends.h"'
allowed core/a/a.cpp 'auto a = R"(<p>{ is told }</p>)"; int b = 1'"'"'320; auto c = tr("a \"quoted\" −12 px, 1320 px");'
allowed app/desktop/window/setting_search.cpp 'auto a = "level parts";'
refused app/desktop/window/setting_search.cpp 'auto a = "Level parts of cards.";' 'write align' 1
allowed tests/a/a.cpp 'const char* a = "is told here";'
allowed README.md '    code that is told'
echo "every wrong word is caught"
