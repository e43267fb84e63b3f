// What rows of settings have in common: a dot that says "set here", a button that resets.
#pragma once

#include <QToolButton>
#include <QWidget>

namespace tenter::desktop::panels {

inline constexpr int titleWidth = 96;
inline constexpr int buttonSide = 20;
inline constexpr int markRoom = 12;  ///< left of the title, for the dot

/// A button that keeps its room while it is hidden.
QToolButton* resetButton(QWidget* parent);
/// The dot, left of a title whose middle is at `y`.
void paintSetHere(QWidget* row, int y);

}  // namespace tenter::desktop::panels
