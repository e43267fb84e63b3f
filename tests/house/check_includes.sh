#!/usr/bin/env bash
# Dependencies run one way: a folder of core uses only those above it in the list, core uses no Qt (decoding pictures
# aside) and nothing of app, the command line uses nothing of the window and no Qt. Argument: the source folder.
set -euo pipefail
cd "$1"
mapfile -d '' files < <(find core app \( -name '*.cpp' -o -name '*.h' \) -print0 | sort -z)

awk '
BEGIN {
    split("units css project text markup layout sweep judge checks solve pictures emit intake", order, " ")
    for (i in order) rank[order[i]] = i
    faults = 0
}
function fault(says) {
    print FILENAME ":" FNR ": " says
    faults++
}
FNR == 1 {
    split(FILENAME, path, "/")
    area = path[1]
    folder = path[2]
    seen++
    if (area == "core" && !(folder in rank)) fault("core/" folder " is no folder of the list")
}
/^[ \t]*#[ \t]*include[ \t]*[<"]/ {
    match($0, /[<"][^>"]*[>"]/)
    name = substr($0, RSTART + 1, RLENGTH - 2)
    own = substr($0, RSTART, 1) == "\""
    split(name, part, "/")
    if (!own && (name ~ /^Q[A-Z]/ || name ~ /^Qt/)) {
        if (area == "core" && folder != "pictures") fault("core includes Qt: " name)
        if (area == "app" && folder == "command") fault("the command line includes Qt: " name)
    }
    if (area == "core" && own) {
        if (!(part[1] in rank)) fault("not an include relative to core: " name)
        else if (rank[part[1]] + 0 > rank[folder] + 0) fault("core/" folder " includes " name ", which stands below it")
    }
    if (area == "app" && folder == "command" && own && name ~ /(^|\/)(desktop|document|window|panels|axis|row|controls|given)\//)
        fault("the command line includes the window: " name)
}
END {
    if (seen == 0) exit 1
    if (faults > 0) exit 1
    print seen " files depend one way"
}
' "${files[@]}"
