#include "help/libraries.h"

#include <cairo.h>
#include <cmark_version.h>
#include <fontconfig/fontconfig.h>
#include <ft2build.h>
#include <glpk.h>
#include <hb.h>
#include <unicode/uvernum.h>
#include <zlib.h>

#include <QtGlobal>
#include <nlohmann/json.hpp>
#include FT_FREETYPE_H

namespace tenter::desktop::help {

namespace {

/// `2.14.1` for fontconfig’s number 21401.
QString fontconfigVersion() {
    const int number = FcGetVersion();
    return QString("%1.%2.%3").arg(number / 10000).arg(number / 100 % 100).arg(number % 100);
}

QString numbers(int major, int minor, int patch) {
    return QString("%1.%2.%3").arg(major).arg(minor).arg(patch);
}

}  // namespace

std::vector<Library> libraries() {
    return {
        {"Qt", qVersion(), QObject::tr("the window, plots"), "GPL-3.0-only"},
        {"HarfBuzz", hb_version_string(), QObject::tr("shaping of text"), "MIT-Modern-Variant"},
        {"ICU", U_ICU_VERSION, QObject::tr("line breaks, letter case"), "Unicode-DFS-2016"},
        {"FreeType", numbers(FREETYPE_MAJOR, FREETYPE_MINOR, FREETYPE_PATCH),
         QObject::tr("outlines of glyphs"), "FTL OR GPL-2.0-only"},
        {"Fontconfig", fontconfigVersion(), QObject::tr("files of font families"), "HPND-sell-variant"},
        {"Cairo", cairo_version_string(), QObject::tr("pictures, PDF"), "LGPL-2.1-only OR MPL-1.1"},
        {"GLPK", glp_version(), QObject::tr("linear programmes of Solve sizes"), "GPL-3.0-or-later"},
        {"libvips", {}, QObject::tr("cutting of pictures"), "LGPL-2.1-or-later"},
        {"JSON for Modern C++",
         numbers(NLOHMANN_JSON_VERSION_MAJOR, NLOHMANN_JSON_VERSION_MINOR, NLOHMANN_JSON_VERSION_PATCH),
         QObject::tr("project files"), "MIT"},
        {"Gumbo", {}, QObject::tr("HTML of imported pages"), "Apache-2.0"},
        {"cmark", CMARK_VERSION_STRING, QObject::tr("Markdown of a new row"), "BSD-2-Clause"},
        {"libwoff2", {}, QObject::tr("WOFF2 fonts"), "MIT"},
        {"zlib", zlibVersion(), QObject::tr("WOFF fonts"), "Zlib"},
    };
}

}  // namespace tenter::desktop::help
