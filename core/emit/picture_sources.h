// Cut files of a picture as markup refers to them.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "pictures/listing.h"

namespace tenter::emit {

/// The files of one picture. HTML § 4.8.4.
struct PictureSources {
    /// Files in a newer format, for the browsers that know it.
    struct Alternative {
        std::string type;  ///< media type
        std::string srcset;
    };
    std::vector<Alternative> alternatives;  ///< the smallest files first
    std::string srcset;                     ///< files in the format that all browsers know
    std::string sizes;
    std::string src;           ///< for browsers that do not know `srcset`
    pictures::PixelSize size;  ///< of the largest file: the ratio of its sides is what browsers use
    /// `aspect-ratio` of a picture that is shown in the ratio of its source: whole pixels do not give each
    /// file exactly that ratio. Empty if the stylesheet has the ratio.
    std::string ratio = {};
};

/// `picture` with its files in the folder at `address`, which is empty or ends in `/`.
PictureSources pictureSources(const pictures::ListedPicture& picture, const std::string& address);

/// Cut files that markup refers to.
struct CutPictures {
    const pictures::Listing* listing = nullptr;  ///< null: none
    std::string address;                         ///< of their folder: empty, or ending in `/`
};

/// The sources of the parts of `variant`; a part whose picture is another file than the one that was cut has
/// none. `project` and the listing must outlive the result.
std::function<std::optional<PictureSources>(std::size_t card, std::size_t part)> sourcesIn(
    const project::Project& project, std::size_t variant, const CutPictures& cut);

/// The parts of `variant` with pictures that `listing` has no files for.
std::vector<project::PartRef> uncutPictures(const project::Project& project, std::size_t variant,
                                            const pictures::Listing& listing);

}  // namespace tenter::emit
