// The samples that are measured.
#pragma once

#include <filesystem>
#include <string>

#include "project/file.h"

namespace tenter::bench {

inline std::filesystem::path sampleFile(const std::string& name) {
    return std::filesystem::path(TENTER_SOURCE_DIR) / "sample-projects" / (name + ".tenter.json");
}

/// The sample of twelve cards.
inline const std::string twelveCards = "season";

/// A sample; ends the program with its problems if it cannot be read.
project::Project sample(const std::string& name);

}  // namespace tenter::bench
