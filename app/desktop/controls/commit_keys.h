// The keys that finish a dialog in which Enter alone belongs to a text.
#pragma once

#include <QShortcut>

namespace tenter::desktop::controls {

/// Calls the slot `commit` of `dialog` when Ctrl+Enter is pressed in it.
template <class Dialog, class Commit>
void onCtrlEnter(Dialog* dialog, Commit commit) {
    for (const int key : {Qt::Key_Return, Qt::Key_Enter})
        QObject::connect(new QShortcut(QKeySequence(Qt::CTRL | static_cast<Qt::Key>(key)), dialog),
                         &QShortcut::activated, dialog, commit);
}

}  // namespace tenter::desktop::controls
