// Unsaved changes of a project, as they are kept for the case that the program does not close by itself.
#pragma once

#include <QDateTime>
#include <QLockFile>
#include <QString>
#include <filesystem>
#include <memory>
#include <optional>
#include <vector>

#include "project/problem.h"
#include "project/project.h"

namespace tenter::desktop::recovery {

/// `$XDG_STATE_HOME/tenter`, or `~/.local/state/tenter`. XDG Base Directory Specification 0.8.
QString stateFolder();

struct UnsavedWork {
    project::Project project;
    std::filesystem::path file;    ///< the project file; empty if the project was never saved
    std::filesystem::path folder;  ///< where its pictures and fonts are
    QDateTime time;                ///< of the last change
};

/// The content of a recovery file: a line of JSON about the project, then the project as in a project file.
std::string recoveryText(const UnsavedWork& work);
/// The unsaved changes in a recovery file; empty, with `problems`, if it cannot be read.
std::optional<UnsavedWork> readRecovery(const QString& file, project::Problems& problems);

/// Unsaved changes of a program that runs no more. While it exists, no other window offers them.
struct Leftover {
    QString recoveryFile;
    UnsavedWork work;
    std::unique_ptr<QLockFile> lock;
};

/// The name of the lock of a recovery file.
QString lockOf(const QString& recoveryFile);
/// The leftovers in `folder`, newest first. Recovery files that cannot be read stay where they are.
std::vector<Leftover> leftovers(const QString& folder);

}  // namespace tenter::desktop::recovery
