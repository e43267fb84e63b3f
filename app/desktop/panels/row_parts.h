// What rows of settings have in common: a dot for "set here", a reset button, the name of an undo step.
#pragma once

#include <QString>
#include <QToolButton>
#include <QWidget>

#include "controls/editor.h"
#include "controls/text_scale.h"

namespace tenter::desktop::panels {

/// Width in px that fits the longest label.
inline int titleWidth() {
    return controls::scaled(104);
}
inline constexpr int buttonSide = 24;  ///< px. WCAG 2.2 SC 2.5.8
inline constexpr int markRoom = 12;    ///< left of the title, for the dot

/// True if there is no room for an editor beside its title, because its words are long in this language.
inline bool isTooWide(const controls::Editor& editor) {
    return editor.minimumSizeHint().width() > controls::scaled(168);
}

/// A reset button that keeps its space while it is hidden.
QToolButton* resetButton(QWidget* parent);
/// Sets the text for What’s this of `row` and of the fields of `editor`. Without help there is none.
void setHelp(QWidget& row, const controls::Editor& editor, const QString& title, const QString& help);
/// Paints the dot left of a title whose vertical centre is at `y`.
void paintSetHere(QWidget* row, int y);
/// `Change heading line height`, or `Reset …`, for the setting with the accessible name `name`.
QString undoName(const QString& name, bool resets = false);

}  // namespace tenter::desktop::panels
