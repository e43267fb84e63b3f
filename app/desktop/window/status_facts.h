// Facts about the project at the right end of the status bar: the text test, an imported row, font problems.
#pragma once

#include <QLabel>
#include <QPushButton>
#include <QStatusBar>

#include "session/session.h"

namespace tenter::desktop::window {

class StatusFacts : public QObject {
    Q_OBJECT

public:
    /// Adds its labels to `bar`, which owns them and this object.
    StatusFacts(Session& session, QStatusBar& bar);

private:
    void showFonts();
    void showGiven();
    void showTrial();

    Session& session_;
    QPushButton* trialNote_;  // names the current text test; a click ends it
    QLabel* givenNote_;
    QLabel* fontNotes_;
};

}  // namespace tenter::desktop::window
