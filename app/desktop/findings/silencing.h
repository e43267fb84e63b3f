// Silences a check with a reason, or stops silencing it. Both are undoable steps.
#pragma once

#include <QMenu>

#include "document/document.h"

namespace tenter::desktop::findings {

/// Asks for a reason in a dialog, then silences `check`. Does nothing if the user gives no reason.
void silence(QWidget* parent, Document& document, const std::string& check);

/// Replaces the entries of `menu`: one to silence `check` (unless it is empty), and one for each silenced
/// check to stop silencing it.
void fillSilenceMenu(QMenu& menu, Document& document, const std::string& check);

}  // namespace tenter::desktop::findings
