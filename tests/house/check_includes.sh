#!/usr/bin/env bash
# Fails if dependencies do not run one way. A folder of core may use only folders above it in the list. core uses nothing
# of app, and no Qt except to decode pictures. The command line uses no Qt and nothing of the window. Argument: the
# source folder.
set -euo pipefail
cd "$1"
mapfile -d '' files < <(find core app \( -name '*.cpp' -o -name '*.h' \) -print0 | sort -z)

awk '
BEGIN {
    split("wording units css project text markup layout sweep judge checks solve remedy pictures draw emit sheet intake start about", order, " ")
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
    if (area == "core" && !(folder in rank)) fault("core/" folder " is not in the list of folders")
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
        else if (rank[part[1]] + 0 > rank[folder] + 0) fault("core/" folder " includes " name ", which is below it in the list")
    }
    if (area == "app" && folder == "command" && own && name ~ /(^|\/)(desktop|document|window|panels|axis|row|controls|given)\//)
        fault("the command line includes the window: " name)
}
END {
    if (seen == 0) exit 1
    if (faults > 0) exit 1
    print seen " files have dependencies in one direction only"
}
' "${files[@]}"
