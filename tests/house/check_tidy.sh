#!/usr/bin/env bash
# core is clean under .clang-tidy. Folders are read together, one lot for each processor, since headers take most of the
# time and each is a namespace of its own; paths are followed only so far, for the same reason: clang-tidy on one file
# follows them all. A folder that was clean and has not changed since is not read again: a stamp is the hash of everything
# a verdict may depend on.
# Arguments: the source folder, the build folder, clang-tidy.
set -euo pipefail
source=$1
build=$2
export clang_tidy=$3
export stamps=$build/tidy-stamps
rm -rf "$build/tidy"
mkdir -p "$stamps" "$build/tidy"
cp "$source/.clang-tidy" "$build/tidy"
cd "$source"

common=$({ "$clang_tidy" --version; cat .clang-tidy "${BASH_SOURCE[0]}"; find core -name '*.h' -print0 | sort -z | xargs -0 cat; } | sha256sum)
total=0
stale=()
for folder in core/*/; do
    mapfile -d '' files < <(find "$folder" -name '*.cpp' -print0 | sort -z)
    ((${#files[@]} > 0)) || continue
    total=$((total + ${#files[@]}))
    text=$build/tidy/$(basename "$folder").txt
    for file in "${files[@]}"; do
        echo "// ---- $file"
        cat "$file"
    done >"$text"
    stamp=$({ echo "$common"; cat "$text"; } | sha256sum | cut -d ' ' -f 1)
    [[ -e $stamps/$stamp ]] || stale+=("$(wc -l <"$text") $text $stamp")
done
((total > 0)) || { echo "no files found"; exit 1; }
echo "$total files, ${#stale[@]} folders of them new or changed"
((${#stale[@]} > 0)) || exit 0

# The longest first, each to the lot that is shortest so far.
lots=()
for ((i = 0; i < $(nproc); ++i)); do lots+=(0); done
while read -r lines text stamp; do
    least=0
    for i in "${!lots[@]}"; do ((lots[i] >= lots[least])) || least=$i; done
    lots[least]=$((lots[least] + lines))
    cat "$text" >>"$build/tidy/$least.cpp"
    echo "$stamp" >>"$build/tidy/$least.stamps"
done < <(printf '%s\n' "${stale[@]}" | sort -rn)

flags="-std=c++20 -I$source/core $(pkg-config --cflags harfbuzz icu-uc icu-i18n fontconfig libwoff2dec gumbo)"
export flags
# The compiler's warnings are the build's business. A line is told by the file it came from.
one() {
    local unit=$1 out stamp
    # shellcheck disable=SC2086
    if out=$("$clang_tidy" --quiet --extra-arg=-Wno-unknown-warning-option --extra-arg=-Xclang --extra-arg=-analyzer-config \
        --extra-arg=-Xclang --extra-arg=mode=shallow,max-nodes=10000 "$unit" -- $flags 2>/dev/null); then
        while read -r stamp; do touch "$stamps/$stamp"; done <"${unit%.cpp}.stamps"
    else
        awk -v unit="$unit" '
            NR == FNR { if ($1 == "//" && $2 == "----") { file = $3; start = FNR } from[FNR] = file; at[FNR] = FNR - start; next }
            index($0, unit ":") == 1 {
                rest = substr($0, length(unit) + 2); line = rest + 0
                sub(/^[0-9]+/, "", rest); $0 = from[line] ":" at[line] rest
            }
            { print }' "$unit" <(printf '%s\n' "$out")
        return 1
    fi
}
export -f one
printf '%s\0' "$build"/tidy/*.cpp | xargs -0 -n 1 -P "$(nproc)" bash -c 'one "$1"' one
