// The sample projects that are installed with the program.
#pragma once

#include <QString>
#include <filesystem>
#include <vector>

namespace tenter::desktop {

struct Sample {
    std::filesystem::path file;
    QString name;
    QString description;  ///< one line about its content
};

/// The installed samples, or those of the source tree if none are installed; sorted by file name.
std::vector<Sample> findSamples();

}  // namespace tenter::desktop
