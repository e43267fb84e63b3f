// What checks are told: thresholds, break profile, audience.
#pragma once

#include "checks/audience.h"
#include "text/profile.h"

namespace tenter::checks {

/// Where a figure becomes a finding. Common practice, no source, unless said otherwise. Sizes in CSS px.
struct Thresholds {
    int headingLines = 3;        ///< a heading of more lines is told
    double bodyFloor = 12;       ///< body type smaller than this
    double otherFloor = 11;      ///< any other type
    double leastMeasure = 28;    ///< characters to a line
    double mostMeasure = 80;     ///< WCAG 2.2 SC 1.4.8; half of it in Chinese, Japanese and Korean
    int measuredLines = 3;       ///< copy of fewer lines has no measure to speak of
    double tightRun = 24;        ///< widths over which a fit may be tight
    double pictureFactor = 1.5;  ///< pixels of a picture to a px of its slot
    double pictureComfort = 2;   ///< the same, for a note
    double target = 24;          ///< WCAG 2.2 SC 2.5.8
    double comfortTarget = 44;   ///< WCAG 2.2 SC 2.5.5
    double jump = 0.5;           ///< step of type at a breakpoint
    double apart = 80;           ///< widths between type's end of growth and its column's
    int shortWord = 6;           ///< characters of a last line that is one short word
    double lastWordRun = 160;    ///< widths over which it stands
    double leastRun = 40;        ///< widths under which a narrow measure or spare room is not told
    double spareLines = 4;       ///< lines of body that would fit into a card's spare room
    double leastZoom = 3;        ///< a large desktop browser's limit of zoom, from memory
    double usualZoom = 5;        ///< most browsers'
};

struct Options {
    const text::BreakProfile* profile = nullptr;  ///< null: all, and what only one has is said
    Thresholds thresholds;
    Audience audience;  ///< empty: shares are of the range of widths
};

}  // namespace tenter::checks
