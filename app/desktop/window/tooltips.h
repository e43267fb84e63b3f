// Tooltips that wrap: Qt shows a plain text of any length on one line.
#pragma once

#include <QHelpEvent>
#include <QObject>

namespace tenter::desktop::window {

/// Shows the tooltip of `watched` in several lines if it is a widget with a long plain one. Returns false if
/// not.
bool showWrapped(const QHelpEvent& event, QObject* watched);

}  // namespace tenter::desktop::window
