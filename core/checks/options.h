// What checks are told: thresholds, break profile, audience.
#pragma once

#include "checks/audience.h"
#include "text/profile.h"

namespace tenter::checks {

/// Where a figure becomes a finding, besides those that wishes hold (project/wishes.h). Common practice, no
/// source, unless said otherwise. Sizes in CSS px.
struct Thresholds {
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
