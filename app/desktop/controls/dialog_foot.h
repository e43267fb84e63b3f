// The foot of a dialog in which Enter alone belongs to a text: a hint, Cancel, and the action.
#pragma once

#include <QDialog>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <functional>

namespace tenter::desktop::controls {

struct DialogFoot {
    QHBoxLayout* layout;
    QLabel* hint;         ///< wraps, in the colour of secondary text
    QPushButton* action;  ///< last, after Cancel, which rejects the dialog
};

/// The foot for `dialog`. `action` is the label of its button and `tip` the tooltip; the button and
/// Ctrl+Enter call `act`.
DialogFoot dialogFoot(QDialog* dialog, const QString& action, const QString& tip,
                      const std::function<void()>& act);

}  // namespace tenter::desktop::controls
