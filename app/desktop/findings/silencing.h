// Silencing a check with a reason, and hearing it again: both are steps that can be undone.
#pragma once

#include <QMenu>

#include "document/document.h"

namespace tenter::desktop::findings {

/// Asks why, and silences `check`; nothing without a reason.
void silence(QWidget* parent, Document& document, const std::string& check);

/// Fills `menu` anew: silences `check`, unless it is empty, and has every silenced one told again.
void fillSilencing(QMenu& menu, Document& document, const std::string& check);

}  // namespace tenter::desktop::findings
