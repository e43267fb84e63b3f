// What an export will write, how far it is, and what it has written. (`export` is a keyword of C++, so the
// namespace of this folder is `exporting`.)
#pragma once

#include <QString>
#include <QStringList>
#include <functional>
#include <stop_token>
#include <vector>

namespace tenter::desktop::exporting {

/// A file that an export will write, or has written.
struct ExportFile {
    QString name;       ///< relative to the destination folder
    QString content;    ///< such as `800 × 533 px`
    qint64 bytes = -1;  ///< size, before writing an estimate; −1: not known
    QString state;      ///< such as `new`, `replaced`, `up to date`
};

/// What an export will write.
struct Plan {
    std::vector<ExportFile> files;
    QStringList notes;       ///< sentences that the person should know before writing
    QString problem;         ///< why nothing can be written, and how to fix it; empty: it can be written
    bool isEstimate = true;  ///< false if the sizes of all files are exact
};

struct Progress {
    int done = 0;
    int total = 0;    ///< 0: not known
    QString current;  ///< what is being written
};

/// What an export has written.
struct Outcome {
    std::vector<ExportFile> files;
    QStringList notes;       ///< sentences about single files
    QString failure;         ///< why it did not end; files that were complete by then stay. Empty: it ended.
    bool isStopped = false;  ///< by the person
};

/// Can be called on any thread.
using Report = std::function<void(const Progress&)>;
/// Makes the plan, off the GUI thread.
using Planner = std::function<Plan(const std::stop_token&)>;
/// Writes the files, off the GUI thread. Returns soon after a stop request, without half-written files.
using Writer = std::function<Outcome(const std::stop_token&, const Report&)>;

/// `640 kB`, `1.4 MB`: bytes in SI units (1 kB = 1000 bytes) with a no-break space.
QString bytesTitle(qint64 bytes);
/// `1 file`, `8 files`.
QString filesTitle(std::size_t count);

}  // namespace tenter::desktop::exporting
