#include "about/about.h"

#include <cairo.h>
#include <cmark_version.h>
#include <fontconfig/fontconfig.h>
#include <ft2build.h>
#include <glpk.h>
#include <hb.h>
#include <unicode/uvernum.h>
#include <vips/version.h>
#include <zlib.h>

#include <nlohmann/json.hpp>

#include FT_FREETYPE_H

namespace tenter::about {

namespace {

std::string numbers(int major, int minor, int patch) {
    std::string text = std::to_string(major);
    text.append(".").append(std::to_string(minor)).append(".").append(std::to_string(patch));
    return text;
}

/// `2.14.1` for fontconfig's number 21401.
std::string fontconfigVersion() {
    const int number = FcGetVersion();
    return numbers(number / 10000, number / 100 % 100, number % 100);
}

}  // namespace

std::string_view version() {
    return TENTER_VERSION;
}

std::vector<Library> libraries() {
    return {
        {"Cairo", cairo_version_string()},
        {"cmark", CMARK_VERSION_STRING},
        {"Fontconfig", fontconfigVersion()},
        {"FreeType", numbers(FREETYPE_MAJOR, FREETYPE_MINOR, FREETYPE_PATCH)},
        {"GLPK", glp_version()},
        {"Gumbo", TENTER_GUMBO_VERSION},
        {"HarfBuzz", hb_version_string()},
        {"ICU", U_ICU_VERSION},
        {"JSON for Modern C++",
         numbers(NLOHMANN_JSON_VERSION_MAJOR, NLOHMANN_JSON_VERSION_MINOR, NLOHMANN_JSON_VERSION_PATCH)},
        {"libvips", VIPS_VERSION},
        {"libwoff2", TENTER_WOFF2_VERSION},
        {"zlib", zlibVersion()},
    };
}

std::string versionText(std::string_view program, const std::vector<Library>& more) {
    std::string text(program);
    text.append(" ").append(version()).append("\nCommit: ").append(commit()).append("\nLibraries:");
    const auto add = [&](const Library& library) {
        text.append("\n  ").append(library.name).append(" ").append(library.version);
    };
    for (const Library& library : more)
        add(library);
    for (const Library& library : libraries())
        add(library);
    return text + "\n";
}

}  // namespace tenter::about
