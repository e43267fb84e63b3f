// The libraries that the program uses, for About Tenter.
#pragma once

#include <QString>
#include <vector>

namespace tenter::desktop::help {

struct Library {
    QString name;
    QString version;
    QString use;
    QString licence;  ///< SPDX identifier
};

/// Versions are those of the libraries that are loaded, where a library reports it, or those that the program
/// was compiled with.
std::vector<Library> libraries();

}  // namespace tenter::desktop::help
