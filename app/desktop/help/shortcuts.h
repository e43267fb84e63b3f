// All keys of the window: those of its actions, and those that its parts handle themselves.
#pragma once

#include <QMenuBar>
#include <QString>
#include <vector>

namespace tenter::desktop::help {

struct Shortcut {
    QString keys;  ///< `Ctrl+Z`; several are separated by commas
    QString does;  ///< `Undo`
};

/// The keys of one menu, or of one part of the window.
struct ShortcutGroup {
    QString title;
    std::vector<Shortcut> shortcuts;
};

/// First the keys of the actions in `menus`, by menu, then the others.
std::vector<ShortcutGroup> shortcutsOf(const QMenuBar& menus);

}  // namespace tenter::desktop::help
