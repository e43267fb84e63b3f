#!/usr/bin/env bash
# check_translations.py lets a translated source pass and names what is wrong in others. Arguments: the source folder,
# Python, and Qt's lupdate.
set -euo pipefail
source=$1 python=$2 lupdate=$3
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
mkdir -p "$folder/app/desktop" "$folder/resources/translations"
cp "$source/resources/translations/update.sh" "$folder/resources/translations"
good='void f(QLabel& label) { label.setText(QObject::tr("Size of %1").arg(3)); label.setObjectName("size"); }'
status=0

# ts CODE CONTENT: the .ts file of a language.
ts() {
    printf '<?xml version="1.0" encoding="utf-8"?>\n<!DOCTYPE TS>\n<TS version="2.1" language="%s" sourcelanguage="en">%s</TS>\n' \
        "$1" "$2" >"$folder/resources/translations/tenter_$1.ts"
}

# write CODE TEXT TRANSLATION: the source, and the German file for one text.
write() {
    printf '#include <QLabel>\n%s\n' "$1" >"$folder/app/desktop/a.cpp"
    ts en ''
    ts de "<context><name>QObject</name><message><source>$2</source><translation$3</translation></message></context>"
}

# expect 0|1 PATTERN: the result of the check, and a part of what it says.
expect() {
    local said result=0
    said=$("$python" "$source/tests/house/check_translations.py" "$folder" "$lupdate" 2>&1) || result=$?
    if [[ $result != "$1" ]] || ! grep -q -- "$2" <<<"$said"; then
        echo "expected exit $1 and “$2”, but the check ended with $result and said:"
        echo "$said"
        status=1
    fi
}

write "$good" 'Size of %1' '>Größe von %1'
expect 0 '1 texts'
write "$good label_->setText(\"Not translated\");" 'Size of %1' '>Größe von %1'
expect 1 '"Not translated" is shown'
write "$good label_->setText(\"untranslated\");" 'Size of %1' '>Größe von %1'
expect 1 '"untranslated" is shown'
write "$good const QString word = \"Two words\";" 'Size of %1' '>Größe von %1'
expect 1 '"Two words" is neither'
write "$good QString g() { return tr(\"Size of %1\"); }" 'Size of %1' '>Größe von %1'
expect 1 'write QObject::tr'
write "$good QString g() { return QObject::tr(\"More\"); }" 'Size of %1' '>Größe von %1'
expect 1 '“More” is missing'
write "$good" 'Width of %1' '>Breite von %1'
expect 1 '“Width of %1” is in no source'
write "$good" 'Size of %1' ' type="unfinished">Größe von %1'
expect 1 '“Size of %1” is not translated'
write "$good" 'Size of %1' '>Größe'
expect 1 'does not have the placeholders'
write "${good//Size/&Size}" '&amp;Size of %1' '>Größe von %1'
expect 1 'must have & before a letter'
# lupdate reads the letter after the code as a part of it.
write "${good//of %1/of %1\\u00A0em}" 'Size of %1&#xa0;em' '>Größe von %1&#xa0;em'
expect 1 'lupdate does not find'
exit "$status"
