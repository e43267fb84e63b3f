// The choice of the browser whose line-breaking rules the views use.
#pragma once

#include <QAction>
#include <QObject>

#include "session/view_state.h"

namespace tenter::desktop::window {

/// Kept in the settings of the program, because it is not part of the project.
class BreakChoice : public QObject {
    Q_OBJECT

public:
    /// Applies the choice that the settings keep.
    BreakChoice(ViewState& view, QObject* parent);
    /// A checkable action for each profile, in the order of `text::profiles()`.
    [[nodiscard]] const QList<QAction*>& actions() const { return actions_; }
    /// The index of the current profile in `text::profiles()`.
    [[nodiscard]] int current() const;
    /// Chooses a profile by its index in `text::profiles()`.
    void choose(int index);

Q_SIGNALS:
    void changed();  ///< `current()` has changed

private:
    void show();
    ViewState& view_;
    QList<QAction*> actions_;
};

}  // namespace tenter::desktop::window
