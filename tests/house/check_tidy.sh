#!/usr/bin/env bash
# core is clean under .clang-tidy. What was clean and has not changed since is not read again: a file's stamp is the
# hash of everything its verdict may depend on. Arguments: the source folder, the build folder, clang-tidy.
set -euo pipefail
source=$1
build=$2
clang_tidy=$3
stamps=$build/tidy-stamps
mkdir -p "$stamps"
cd "$source"

common=$({ "$clang_tidy" --version; cat .clang-tidy; find core -name '*.h' -print0 | sort -z | xargs -0 cat; } | sha256sum)
todo=()
total=0
while IFS= read -r -d '' file; do
    total=$((total + 1))
    stamp=$stamps/$({ echo "$common $file"; cat "$file"; } | sha256sum | cut -d ' ' -f 1)
    [[ -e $stamp ]] || todo+=("$file" "$stamp")
done < <(find core -name '*.cpp' -print0 | sort -z)
((total > 0)) || { echo "no files found"; exit 1; }
echo "$total files, $((${#todo[@]} / 2)) of them new or changed"
((${#todo[@]} > 0)) || exit 0

# The compiler's warnings are the build's business, and its flags are another compiler's.
one() {
    "$1" -p "$2" --quiet --extra-arg=-Wno-error --extra-arg=-Wno-unknown-warning-option "$3" 2>/dev/null && : >"$4"
}
export -f one
printf '%s\0' "${todo[@]}" | xargs -0 -n 2 -P "$(nproc)" bash -c 'one "$0" "$1" "$2" "$3"' "$clang_tidy" "$build"
