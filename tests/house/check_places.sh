#!/usr/bin/env bash
# Fails if a file names a place that exists on one machine only: an absolute path to a user's folder, a host of packages,
# or a download address in the lock file. Argument: the source folder.
set -euo pipefail
cd "$1"
status=0

list() {
    find . \( -name .git -o -name node_modules -o -name build -o -name 'build-*' -o -name .cache \) -prune -o -type f -print0
}
complain() {
    local says=$1 pattern=$2 found
    found=$(list | xargs -0 grep -nIE "$pattern" || true)
    [[ -n $found ]] || return 0
    echo "$says:"
    echo "$found" | cut -c 1-200
    status=1
}

complain "a path of one machine" '(^|[^A-Za-z0-9_.})-])/(work|home|root|Users|opt)/[A-Za-z0-9_.-]'
complain "a host that packages come from" '\b(registry|registries|deb|mirrors?|proxy|artifacts?|pypi)\.[a-z0-9-]+\.(org|com|net|io|dev)\b'
lock=tests/engines/package-lock.json
if [[ ! -e $lock ]]; then
    echo "$lock is missing"
    status=1
elif grep -n '"resolved"' "$lock" | head -n 3 | grep .; then
    echo "the lock file holds download addresses; make it with omit-lockfile-registry-resolved"
    status=1
fi
exit "$status"
