// The saved version of the project, shown while a key is held or an action is checked.
#pragma once

#include <QAction>
#include <QKeyEvent>
#include <QObject>
#include <QPointer>
#include <QWidget>

#include "session/shown_project.h"
#include "window/status_note.h"

namespace tenter::desktop::window {

class SavedVersion : public QObject {
    Q_OBJECT

public:
    SavedVersion(const Document& document, ShownProject& shown, StatusNote& note, QObject* parent);
    [[nodiscard]] QAction* action() const { return action_; }
    /// Shows the saved version when its key is pressed, and the current one when it is released. Returns
    /// false for other keys, and without a project.
    bool handleKey(const QKeyEvent& event);
    void hide();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    const Document& document_;
    /// Waits for the release of the key in `widget`, which has the focus; null: no longer.
    void awaitReleaseIn(QWidget* widget);
    QAction* action_;
    QPointer<QWidget> awaited_;
};

}  // namespace tenter::desktop::window
