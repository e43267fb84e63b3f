// The sample projects that come with the program.
#pragma once

#include <QString>
#include <filesystem>
#include <vector>

namespace tenter::desktop {

struct Sample {
    std::filesystem::path file;
    QString name;
    QString description;  ///< what it shows, in a few words
};

/// The samples beside the installed program, else those of the source tree, sorted by file name.
std::vector<Sample> findSamples();

}  // namespace tenter::desktop
