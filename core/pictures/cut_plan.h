// Which files are cut from the pictures of a row.
#pragma once

#include <filesystem>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

#include "pictures/candidates.h"
#include "pictures/crop.h"
#include "pictures/file_format.h"
#include "project/problem.h"
#include "text/paragraph_store.h"

namespace tenter::pictures {

inline constexpr int usualCandidates = 4;
inline constexpr int mostCandidates = 12;

struct CutOptions {
    std::vector<std::size_t> variants{0};       ///< variants of the row that show the pictures
    std::vector<Format> formats{Format::Jpeg};  ///< each file is written in each of them
    std::optional<int> quality;                 ///< 1 to 100, for all formats; unset: `usualQuality`
    int candidates = usualCandidates;           ///< files of one picture in one format, 1 to `mostCandidates`
    std::vector<Visit> visits;                  ///< audience; empty: every width counts the same
    std::vector<RatioShare> ratios;             ///< pixel ratios; empty: `usualRatios`

    [[nodiscard]] int qualityOf(Format format) const { return quality.value_or(usualQuality(format)); }
};

/// A file to write.
struct CutFile {
    std::string name;  ///< ASCII, without a folder, such as `dunes-800x533.jpg`
    Format format = Format::Jpeg;
    PixelSize size;
    double estimatedBytes = 0;
};

/// One part of one source, and the files cut from it.
struct CutPicture {
    std::string source;          ///< the file as the project names it
    std::filesystem::path path;  ///< the file itself
    PixelSize sourceSize;        ///< upright
    Crop crop;
    double ratio = 0;                ///< width over height of the part
    std::vector<PixelSize> sizes;    ///< rising
    std::vector<CutFile> files;      ///< by format as in `formats`, then by rising width
    std::vector<Format> formats;     ///< PNG in place of JPEG if some part is transparent
    std::vector<std::string> notes;  ///< sentences on how an unusual source is handled
    double surplusShare = 0;         ///< expected surplus pixels per pixel shown
    PixelSize upload;                ///< the one file to upload if the site makes its own candidates
    bool isTooSmall = false;         ///< the source has fewer pixels than `upload`
    SlotPoint largest;  ///< where the slot is largest, and how wide the file is drawn there, CSS px
};

/// A picture part of a variant and what fills it.
struct CutUse {
    std::size_t variant = 0;
    project::PartRef place;
    std::size_t picture = 0;  ///< index into `CutPlan::pictures`
    std::string sizes;        ///< the `sizes` attribute
};

struct CutPlan {
    CutOptions options;
    std::vector<CutPicture> pictures;
    std::vector<CutUse> uses;  ///< by variant, then card, then part
    /// Every picture file of the project, none of which may be written over.
    std::vector<std::filesystem::path> sources;
    project::Problems problems;        ///< pictures that cannot be cut, and those that need no cutting
    std::vector<std::string> vectors;  ///< places of the latter: vector drawings
    bool isCancelled = false;
    [[nodiscard]] std::size_t fileCount() const;
};

/// The plan for the first row of `project`, whose files are in `folder`. Reads the head of each picture;
/// sizes in the project are not trusted. The same part of the same file is cut once, however often it is
/// shown. Nothing is enlarged.
CutPlan planCuts(const project::Project& project, const std::filesystem::path& folder,
                 text::ParagraphStore& store, const text::BreakProfile& profile, const CutOptions& options,
                 const std::stop_token& stop = {});

}  // namespace tenter::pictures
