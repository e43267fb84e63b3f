// The list of all steps that can be undone or redone.
#pragma once

#include <QUndoStack>
#include <QWidget>

namespace tenter::desktop::window {

/// Opens the list over `parent`, or raises it. A click on a step undoes or redoes up to it.
void showUndoList(QUndoStack& undo, QWidget* parent);

}  // namespace tenter::desktop::window
