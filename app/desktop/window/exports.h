// Copies CSS of the project to the clipboard.
#pragma once

#include <vector>

#include "session/session.h"
#include "window/problem_panel.h"
#include "window/status_note.h"

namespace tenter::desktop::window {

class Exports {
public:
    Exports(const Session& session, StatusNote& note, ProblemPanel& problems)
        : session_(session), note_(note), problems_(problems) {}
    /// Copies the stylesheets of variants, given by index.
    void copyStylesheetOf(const std::vector<std::size_t>& variants);
    /// Copies the font size of the role of the selected text, as a CSS declaration.
    void copySize();

private:
    const Session& session_;
    StatusNote& note_;
    ProblemPanel& problems_;
};

}  // namespace tenter::desktop::window
