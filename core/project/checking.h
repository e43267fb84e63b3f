// The project's own settings for checks: limits, and checks that are silenced.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "project/members.h"

namespace tenter::project {

/// The limits beyond which a value becomes a finding, besides those in wishes (wishes.h). In CSS px where no
/// other unit is given. Common practice without a source, except where one is given.
struct Limits {
    double tightRun = 24;        ///< longest range of widths with a tight fit that is no finding
    double pictureFactor = 1.5;  ///< pixels of a picture per CSS px of its slot, below: a warning
    double pictureComfort = 2;   ///< the same, below: a note
    double comfortTarget = 44;   ///< WCAG 2.2 SC 2.5.5
    double jump = 0.5;           ///< step of a font size at a breakpoint
    double apart = 80;           ///< distance of the width where type stops growing from that of its column
    double shortWord = 6;        ///< longest last line, in characters, that counts as one short word
    double lastWordRun = 160;    ///< range of widths with such a line, above: a finding
    double leastRun = 40;        ///< shortest range of widths for which a note is reported
    double spareLines = 4;  ///< lines of body text that fit into the spare room of a card, above: a finding
    double leastZoom = 3;   ///< zoom factor that the strictest desktop browser allows, from memory
    double usualZoom = 5;   ///< zoom factor that most browsers allow
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
    FileKeys fileKeys = {};
    friend bool operator==(const Limits&, const Limits&) = default;
};

/// A check whose findings are not reported, and why, for the next maintainer.
struct Silence {
    std::string check;  ///< its name, as its findings give it
    std::string reason;
    FileKeys fileKeys = {};
    friend bool operator==(const Silence&, const Silence&) = default;
};

/// The most checks that a file may silence.
inline constexpr std::size_t mostSilenced = 100;

/// The settings for checks in a project file.
struct Checking {
    std::vector<Silence> silenced;
    Limits limits;
    FileKeys fileKeys = {};
    friend bool operator==(const Checking&, const Checking&) = default;
};

}  // namespace tenter::project
