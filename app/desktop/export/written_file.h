// Exports that consist of one file.
#pragma once

#include <functional>
#include <optional>
#include <string>

#include "export/plan.h"
#include "project/problem.h"

namespace tenter::desktop::exporting {

/// What one file will contain. `problems` and `notes` may be filled beside it; empty if it cannot be made.
struct FileContent {
    std::optional<std::string> text;
    QString about;  ///< for the list of files, such as `214 lines`
    project::Problems problems;
    QStringList notes;
};
using ContentMaker = std::function<FileContent()>;

/// The planner and the writer of a file at the absolute path `path`.
Planner filePlanner(const QString& path, ContentMaker make);
Writer fileWriter(const QString& path, ContentMaker make);

/// The sentences of problems.
QStringList sentencesOf(const project::Problems& problems);

}  // namespace tenter::desktop::exporting
