// The row as in a browser that a reader has zoomed.
#pragma once

#include <QAction>
#include <QObject>

#include "row/row_view.h"
#include "session/view_state.h"
#include "window/status_note.h"

namespace tenter::desktop::window {

/// Shows the row as in a browser window of the current width at a zoom: a viewport narrower by that factor,
/// enlarged. Any other zoom of the row view ends it.
class BrowserZoom : public QObject {
    Q_OBJECT

public:
    BrowserZoom(ViewState& view, row::RowView& row, StatusNote& note, QObject* parent);
    /// A checkable action for each zoom, from 100 % to 500 %.
    [[nodiscard]] const QList<QAction*>& actions() const { return actions_; }

private:
    void set(double zoom);
    void onRowZoom(double zoom);
    ViewState& view_;
    row::RowView& row_;
    StatusNote& note_;
    double zoom_ = 1;
    QList<QAction*> actions_;
};

}  // namespace tenter::desktop::window
