// The listing of cut files: what was made from what, and what markup needs of it.
#pragma once

#include <filesystem>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "pictures/cut_files.h"

namespace tenter::pictures {

/// How a file was made. If it would be made differently now, it is not up to date.
struct MadeFile {
    std::string from;  ///< source, its size and time, part, size, format, quality
    std::size_t bytes = 0;
    friend bool operator==(const MadeFile&, const MadeFile&) = default;
};

/// One format of a picture.
struct ListedFormat {
    Format format = Format::Jpeg;
    std::vector<std::pair<std::string, PixelSize>> files;  ///< names and sizes, by rising width
};

/// A picture part as markup needs it.
struct ListedPicture {
    std::string variant;  ///< its class
    std::size_t card = 0;
    std::size_t part = 0;
    std::string source;  ///< the file as the project names it
    std::string sizes;
    std::vector<ListedFormat> formats;
    std::string fallback;  ///< the file for browsers that know no `srcset`
    PixelSize upload;
    bool isTooSmall = false;
    double surplusShare = 0;
};

struct Listing {
    std::map<std::string, MadeFile> files;
    std::vector<ListedPicture> pictures;

    /// The picture of that part in the variant with that class; null if it is not listed.
    [[nodiscard]] const ListedPicture* find(const std::string& variant, std::size_t card,
                                            std::size_t part) const;
};

/// The pictures of a plan.
std::vector<ListedPicture> listed(const CutPlan& plan, const project::Project& project);

/// The listing as JSON: `{"format": "tenter-pictures", "version": 1, "files": …, "pictures": …}`.
std::string listingJson(const Listing& listing);
/// Its inverse; empty if `text` is not a listing.
std::optional<Listing> readListing(const std::string& text);
/// The listing in `folder`; empty if there is none that can be read.
std::optional<Listing> listingIn(const std::filesystem::path& folder);

}  // namespace tenter::pictures
