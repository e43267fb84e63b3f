// The sample projects that the benchmark uses.
#pragma once

#include <filesystem>
#include <string>

#include "project/file.h"

namespace tenter::bench {

/// The file of the sample `name`.
inline std::filesystem::path sampleFile(const std::string& name) {
    return std::filesystem::path(TENTER_SOURCE_DIR) / "sample-projects" / (name + ".tenter.json");
}

/// Name of the sample with twelve cards.
inline const std::string twelveCards = "season";

/// The sample `name`. Ends the program with the problems on standard error if it cannot be read.
project::Project sample(const std::string& name);

}  // namespace tenter::bench
