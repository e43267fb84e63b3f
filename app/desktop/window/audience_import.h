// Imports the visits per viewport width, by which findings are weighted.
#pragma once

#include <QString>

#include "session/check_runner.h"
#include "window/file_controller.h"
#include "window/problem_panel.h"
#include "window/status_note.h"

namespace tenter::desktop::window {

class AudienceImport {
public:
    AudienceImport(CheckRunner& checks, const FileController& files, StatusNote& note, ProblemPanel& problems)
        : checks_(checks), files_(files), note_(note), problems_(problems) {}
    /// Asks for a file in a dialog of `window` and reads it.
    void choose(QWidget* window);
    /// Reads a file of comma-separated values. The status bar says what was read, the list of problems what
    /// was not.
    void read(const QString& file);

private:
    CheckRunner& checks_;
    const FileController& files_;
    StatusNote& note_;
    ProblemPanel& problems_;
};

}  // namespace tenter::desktop::window
