// Help: which keys do what, and what the program is.
#pragma once

#include <QWidget>

namespace tenter::desktop::window {

void showKeys(QWidget* parent);
/// With what it does not promise, and its licence.
void showAbout(QWidget* parent);

}  // namespace tenter::desktop::window
