// Room for text: how much longer a text may become before it has more lines than wished.
#pragma once

#include <cstdint>
#include <vector>

#include "checks/options.h"
#include "project/project.h"
#include "text/paragraph_store.h"

namespace tenter::checks {

/// The room of one part at the width that has the least. Characters are grapheme clusters, UAX #29.
struct RoomForCopy {
    project::PartRef place;
    int lines = 0;       ///< the wish there, or the line count that breaks in the text force if that is more
    int characters = 0;  ///< in the text now
    /// Characters that certainly still fit, including the space before the first of them. Below 0 the text
    /// has too many lines; removing that many characters at its end satisfies the wish.
    int spare = 0;
    double width = 0;  ///< viewport width with the least room, a whole number if possible, CSS px
};

/// The room of every text with a wish on its line count (`project::effectiveWishes`), by card, then part. The
/// least over all widths and, unless `options` name one, all break profiles.
///
/// The result is a safe lower bound. Assumption: the added words are like those of the text, so no added word
/// is wider than its widest word, and no run of characters from the start of a word is wider, per character,
/// than the widest such run. Then at least this fits: the free space of the last line, and for each further
/// line wished the free space beside a widest word, because that is the most a line loses to a word that no
/// longer fits. Each line keeps `text::tightSlack` free. Real texts usually have more room. (Joined letters
/// change their shape when a word is cut; that is not covered.)
std::vector<RoomForCopy> roomForCopy(const project::Project& project, std::size_t variant,
                                     text::ParagraphStore& store, const Options& options = {});

}  // namespace tenter::checks
