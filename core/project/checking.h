// What of the checks is a project's own: the figures by which they tell, and which of them are silenced, and
// why.
#pragma once

#include <array>
#include <string>
#include <string_view>
#include <vector>

#include "project/described.h"

namespace tenter::project {

/// Every check there is, by the name that findings carry.
inline constexpr std::array<std::string_view, 30> checkNames{
    "alternative",  "button-lines",   "contrast",      "engines",      "focus",   "font",
    "growth",       "heading-levels", "heading-lines", "holes",        "inset",   "label-in-name",
    "last-word",    "late-font",      "link-name",     "link-purpose", "measure", "out-of-line",
    "picture",      "reflow",         "small-type",    "spare-room",   "stops",   "target",
    "text-spacing", "theme-gap",      "tight-fit",     "unit",         "word",    "zoom"};

/// Where a figure becomes a finding, besides those that wishes hold (wishes.h). Common practice, no source,
/// unless said otherwise. CSS px where nothing else is said.
struct Limits {
    double tightRun = 24;        ///< widths over which a fit may be tight
    double pictureFactor = 1.5;  ///< pixels of a picture to a px of its slot
    double pictureComfort = 2;   ///< the same, for a note
    double comfortTarget = 44;   ///< WCAG 2.2 SC 2.5.5
    double jump = 0.5;           ///< step of type at a breakpoint
    double apart = 80;           ///< widths between type's end of growth and its column's
    double shortWord = 6;        ///< characters of a last line that is one short word
    double lastWordRun = 160;    ///< widths over which it stands
    double leastRun = 40;        ///< widths under which what is only unlovely is not told
    double spareLines = 4;       ///< lines of body that would fit into a card's spare room
    double leastZoom = 3;        ///< a large desktop browser's limit of zoom, from memory
    double usualZoom = 5;        ///< most browsers'
    template <class V>
    static void members(V&& v) {
        v("tightRun", &Limits::tightRun);
        v("pictureFactor", &Limits::pictureFactor);
        v("pictureComfort", &Limits::pictureComfort);
        v("comfortTarget", &Limits::comfortTarget);
        v("jump", &Limits::jump);
        v("apart", &Limits::apart);
        v("shortWord", &Limits::shortWord);
        v("lastWordRun", &Limits::lastWordRun);
        v("leastRun", &Limits::leastRun);
        v("spareLines", &Limits::spareLines);
        v("leastZoom", &Limits::leastZoom);
        v("usualZoom", &Limits::usualZoom);
    }
    Remembered remembered = {};
    friend bool operator==(const Limits&, const Limits&) = default;
};

/// A check whose findings are not told, and why: whoever comes back in a year wants to know.
struct Silence {
    std::string check;
    std::string reason;
    Remembered remembered = {};
    friend bool operator==(const Silence&, const Silence&) = default;
};

struct Checking {
    std::vector<Silence> silenced;
    Limits limits;
    Remembered remembered = {};
    friend bool operator==(const Checking&, const Checking&) = default;
};

}  // namespace tenter::project
