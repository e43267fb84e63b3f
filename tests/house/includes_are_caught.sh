#!/usr/bin/env bash
# check_includes.sh must refuse each kind of wrong include: every case plants one in a tree of its own.
set -euo pipefail
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
tree=$(mktemp -d)
trap 'rm -rf "$tree"' EXIT

plant() {
    rm -rf "${tree:?}"/*
    mkdir -p "$tree/core/units" "$tree/app/command" "$tree/$(dirname "$1")"
    echo '#include "units/length.h"' >"$tree/core/units/length.cpp"
    echo '#include "units/length.h"' >"$tree/app/command/main.cpp"
    echo "$2" >"$tree/$1"
}
refused() {
    plant "$@"
    if bash "$here/check_includes.sh" "$tree" >/dev/null; then
        echo "not refused: $2 in $1"
        exit 1
    fi
}
allowed() {
    plant "$@"
    bash "$here/check_includes.sh" "$tree" >/dev/null || { echo "refused: $2 in $1"; exit 1; }
}

allowed core/layout/a.cpp '#include "text/lines.h"'
allowed core/layout/a.cpp '#include "layout/frame.h"'
allowed core/emit/a.cpp '#include "layout/layout.h"'
allowed app/desktop/a.cpp '#include <QWidget>'
refused core/text/a.cpp '#include "layout/layout.h"'
refused core/units/a.h '#include "project/project.h"'
refused core/layout/a.cpp '#include <QString>'
refused core/layout/a.cpp '#include <QtGui/QImage>'
refused core/layout/a.cpp '#include "document/document.h"'
refused core/other/a.cpp '#include "units/length.h"'
refused app/command/a.cpp '#include <QString>'
refused app/command/a.cpp '#include "desktop/document/document.h"'
refused app/command/a.cpp '#  include "document/document.h"'
echo "every wrong include is caught"
