// The list of all steps that can be undone or redone.
#pragma once

#include <QUndoStack>
#include <QWidget>

namespace tenter::desktop::window {

/// Opens the list beside `parent`, or brings it to the front. A click on a step undoes or redoes up to it.
void showUndoList(QUndoStack& undo, QWidget* parent);

}  // namespace tenter::desktop::window
