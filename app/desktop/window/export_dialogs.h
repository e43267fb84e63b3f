// The entries of the menu Export that open a dialog.
#pragma once

#include "session/session.h"
#include "window/exports.h"

namespace tenter::desktop::window {

/// Adds them to `exports`. Each dialog is made when it is first opened, and kept.
void addExportDialogs(Exports& exports, Session& session, QWidget& window);

}  // namespace tenter::desktop::window
