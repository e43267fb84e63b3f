// The menu entries that change the scale of the width axis.
#pragma once

#include <QAction>
#include <QObject>

#include "axis/width_scale.h"
#include "session/view_state.h"

namespace tenter::desktop::axis {

/// Zoom in and Zoom out about the current width, Whole range, and the toggle Equal room for each band.
class ScaleActions : public QObject {
    Q_OBJECT

public:
    ScaleActions(const ViewState& view, WidthScale& scale, QObject* parent);
    [[nodiscard]] const QList<QAction*>& all() const { return all_; }
    /// Zooms by `factor` about the position `x`, px, or the nearest one inside the scale.
    void zoomAbout(double x, double factor);

Q_SIGNALS:
    void changed();  ///< the scale was changed

private:
    template <class Does>
    QAction* add(const QString& text, const QKeySequence& shortcut, Does does);
    const ViewState& view_;
    WidthScale& scale_;
    QList<QAction*> all_;
};

/// Zoom factor of one step of the wheel or of the menu.
inline constexpr double zoomStep = 1.5;

}  // namespace tenter::desktop::axis
