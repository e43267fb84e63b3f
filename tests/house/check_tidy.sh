#!/usr/bin/env bash
# Fails if clang-tidy reports something in core. All files of a folder are checked as one file, because headers take most
# of the time and each folder is a namespace of its own. The folders are split into one group for each processor. The
# depth of path analysis is limited to save time; clang-tidy run on a single file has no limit. A folder that passed and
# has not changed since is skipped: its stamp is the hash of everything that the result may depend on.
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

# The longest folders first, each into the group that is shortest so far.
lots=()
for ((i = 0; i < $(nproc); ++i)); do lots+=(0); done
while read -r lines text stamp; do
    least=0
    for i in "${!lots[@]}"; do ((lots[i] >= lots[least])) || least=$i; done
    lots[least]=$((lots[least] + lines))
    cat "$text" >>"$build/tidy/$least.cpp"
    echo "$stamp" >>"$build/tidy/$least.stamps"
done < <(printf '%s\n' "${stale[@]}" | sort -rn)

flags="-std=c++20 -I$source/core -DTENTER_VERSION=\"0\" -DTENTER_GUMBO_VERSION=\"0\" -DTENTER_WOFF2_VERSION=\"0\" $(pkg-config --cflags harfbuzz icu-uc icu-i18n fontconfig libwoff2dec gumbo cairo freetype2 vips)"
export flags
# Warnings of the compiler are left to the build. Messages are reported with the file that the line came from.
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
