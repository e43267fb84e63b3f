// Writes the files of a plan into a folder.
#pragma once

#include <functional>
#include <stop_token>

#include "pictures/cut_plan.h"

namespace tenter::pictures {

/// The file beside the cut ones that lists them. It says which files are up to date and what markup needs.
inline constexpr const char* listingName = "pictures.json";

struct WrittenFile {
    std::string name;
    PixelSize size;
    std::size_t bytes = 0;
    bool isKept = false;  ///< it was there and up to date
};

struct CutResult {
    std::vector<WrittenFile> files;  ///< in the order of the plan; without those that were not written
    project::Problems problems;
    bool isStopped = false;
    /// True if every file of the plan is there.
    bool isComplete = false;
};

struct CutProgress {
    std::size_t done = 0;  ///< files
    std::size_t total = 0;
    std::string name;  ///< of the file that is done
};

/// Which files of the plan are in `folder` and up to date: made from the same source in the same way, and not
/// changed since. In the order of the plan.
std::vector<bool> upToDate(const CutPlan& plan, const std::filesystem::path& folder);

/// Writes the files of `plan` into `folder`, which is made if it does not exist. Files that are up to date
/// are kept. Each file is replaced whole or not at all; no source is written over, not through links either.
/// A stop request takes effect after the file that is being written. Decodes each source once; two sources at
/// a time. `progress` is called from several threads, one at a time.
CutResult writeCuts(const CutPlan& plan, const project::Project& project, const std::filesystem::path& folder,
                    const std::stop_token& stop = {},
                    const std::function<void(const CutProgress&)>& progress = {});

}  // namespace tenter::pictures
