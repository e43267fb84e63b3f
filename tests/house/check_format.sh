#!/usr/bin/env bash
# Fails if a C++ file is not formatted by .clang-format. Arguments: the source folder, clang-format.
set -euo pipefail
source=$1
clang_format=$2
cd "$source"
mapfile -d '' files < <(find core app tests sample-projects -name node_modules -prune -o \( -name '*.cpp' -o -name '*.h' \) -print0)
((${#files[@]} > 0)) || { echo "no files found"; exit 1; }
if ! "$clang_format" --dry-run --Werror "${files[@]}"; then
    echo "fix with: $clang_format -i FILE"
    exit 1
fi
echo "${#files[@]} files are formatted"
