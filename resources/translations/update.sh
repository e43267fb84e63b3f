#!/usr/bin/env bash
# Writes the texts of the window into a .ts file for each language. Texts that are no longer used are removed; new ones
# are marked as unfinished. Arguments: the source folder, Qt's lupdate, and the folder of the .ts files to update.
set -euo pipefail
source=$1 lupdate=$2 folder=$3
cd "$source"
for file in "$folder"/tenter_*.ts; do
    code=$(basename "$file" .ts)
    code=${code#tenter_}
    # Without the places of texts, an edit of the sources changes the file only if it changes a text. English has plurals
    # only.
    "$lupdate" app/desktop -extensions cpp,h -locations none -no-obsolete -no-ui-lines -silent \
        $([[ $code == en ]] && echo -pluralonly) -source-language en -target-language "$code" -ts "$file"
done
