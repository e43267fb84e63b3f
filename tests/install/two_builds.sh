#!/usr/bin/env bash
# Proves that packages are reproducible: builds the present commit in two different folders, without ccache and without
# what the first build made, and compares every package byte for byte. Takes two full builds.
# usage: tests/install/two_builds.sh
set -euo pipefail
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
export CCACHE_DISABLE=1
commit=$(git -C "$root" rev-parse HEAD)
for folder in one "another folder with a longer name"; do
    git clone --quiet --no-checkout "$root" "$work/$folder/source"
    git -C "$work/$folder/source" checkout --quiet "$commit"
    "$work/$folder/source/app/packaging/package" "$work/$folder/build" >/dev/null
done
status=0
for package in "$work"/one/build/packages/*; do
    name=$(basename "$package")
    if cmp "$package" "$work/another folder with a longer name/build/packages/$name"; then
        echo "same bytes: $name, $(stat -c %s "$package") bytes"
    else
        status=1
    fi
done
exit "$status"
