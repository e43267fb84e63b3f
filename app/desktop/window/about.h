// The dialogs of the Help menu.
#pragma once

#include <QWidget>

namespace tenter::desktop::window {

/// Shows the keyboard shortcuts.
void showShortcuts(QWidget* parent);
/// Shows the version, the limits of the results, and the licence.
void showAbout(QWidget* parent);

}  // namespace tenter::desktop::window
