#include "help/libraries.h"

#include <QObject>
#include <QtGlobal>
#include <map>
#include <string>

#include "about/about.h"

namespace tenter::desktop::help {

namespace {

/// What a library is used for, and its licence.
struct Terms {
    QString use;
    const char* licence;
};

/// Made at each call, because the language of the window can change.
std::map<std::string, Terms> termsByName() {
    return {
        {"HarfBuzz", {QObject::tr("shaping of text"), "MIT-Modern-Variant"}},
        {"ICU", {QObject::tr("line breaks, letter case"), "Unicode-DFS-2016"}},
        {"FreeType", {QObject::tr("outlines of glyphs"), "FTL OR GPL-2.0-only"}},
        {"Fontconfig", {QObject::tr("files of font families"), "HPND-sell-variant"}},
        {"Cairo", {QObject::tr("pictures, PDF"), "LGPL-2.1-only OR MPL-1.1"}},
        {"GLPK", {QObject::tr("linear programmes of Solve sizes"), "GPL-3.0-or-later"}},
        {"libvips", {QObject::tr("cutting of pictures"), "LGPL-2.1-or-later"}},
        {"JSON for Modern C++", {QObject::tr("project files"), "MIT"}},
        {"Gumbo", {QObject::tr("HTML of imported pages"), "Apache-2.0"}},
        {"cmark", {QObject::tr("Markdown of a new row"), "BSD-2-Clause"}},
        {"libwoff2", {QObject::tr("WOFF2 fonts"), "MIT"}},
        {"zlib", {QObject::tr("WOFF fonts"), "Zlib"}},
    };
}

}  // namespace

std::vector<Library> libraries() {
    std::vector<Library> all{{"Qt", qVersion(), QObject::tr("the window, plots"), "GPL-3.0-only"}};
    const std::map<std::string, Terms> terms = termsByName();
    for (const about::Library& library : about::libraries()) {
        const Terms& own = terms.at(library.name);
        all.push_back({QString::fromStdString(library.name), QString::fromStdString(library.version), own.use,
                       own.licence});
    }
    return all;
}

}  // namespace tenter::desktop::help
