// Room for copy: how much longer a part's copy may get before a wish on its lines breaks.
#pragma once

#include <cstdint>
#include <vector>

#include "checks/options.h"
#include "project/project.h"
#include "text/paragraph_store.h"

namespace tenter::checks {

/// What one part's copy may grow by, where that is least. Characters are grapheme clusters, UAX #29.
struct RoomForCopy {
    std::size_t card = 0;
    std::size_t part = 0;
    int lines = 0;       ///< wished there: at most so many, or as many as the copy's own breaks force
    int characters = 0;  ///< the copy has now
    /// That surely still fit, the space before the first of them counted in. Below 0: the wish is broken, and
    /// copy shorter by as many at its end keeps it.
    int spare = 0;
    double width = 0;  ///< viewport width at which it is so, a whole one if there is any. CSS px
};

/// The room of every part that a wish on lines is held to (`project::effectiveWishes`) and that says anything, by
/// card, then part. Over all widths and, unless `options` name one, all break profiles.
///
/// Longer copy is taken to go on in words like its own: none wider than its widest, no run of characters from
/// a word's start wider than its widest such run. Then as much surely fits as the last line has left, and for
/// each line more that is wished what is left beside a widest word, since that is the most a line loses to a
/// word that does not fit any more. Each line keeps `text::tightSlack` free. So the figure is a safe one: no
/// more than copy of like words may have, and mostly less. (Joined letters cut within a word take other
/// shapes, of which nothing is known.)
std::vector<RoomForCopy> roomForCopy(const project::Project& project, std::size_t variant,
                                     text::ParagraphStore& store, const Options& options = {});

}  // namespace tenter::checks
