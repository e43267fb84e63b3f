// The dialog “Keyboard shortcuts”.
#pragma once

#include <QDialog>
#include <vector>

#include "help/shortcuts.h"

namespace tenter::desktop::help {

class ShortcutDialog : public QDialog {
    Q_OBJECT

public:
    ShortcutDialog(const std::vector<ShortcutGroup>& groups, QWidget* parent);
};

}  // namespace tenter::desktop::help
