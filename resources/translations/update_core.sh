#!/usr/bin/env bash
# Writes the texts of core into its .ts file of each language. Texts that are no longer used are removed; new ones are
# marked as unfinished. Arguments: the source folder, Qt's lupdate, and the folder of the .ts files to update.
set -euo pipefail
source=$1 lupdate=$2 folder=$(realpath "$3")
cd "$source"
# Files one by one: the context of a text is what stands before `::say`, as long as lupdate knows no such namespace.
mapfile -t files < <(grep -rlE 'wording::(say|noted|sayCount)\(' core --include='*.cpp' --include='*.h' |
    grep -v '^core/wording/' | LC_ALL=C sort)
for file in "$folder"/core_*.ts; do
    code=$(basename "$file" .ts)
    # lupdate warns about functions of the standard library.
    "$lupdate" "${files[@]}" -tr-function-alias tr+=say,tr+=noted,QT_TR_N_NOOP+=sayCount -locations none -no-obsolete \
        -silent -source-language en -target-language "${code#core_}" -ts "$file" 2> >(grep -v '^.*Qualifying with unknown namespace/class ::\|Ignoring definition of undeclared' >&2)
done
