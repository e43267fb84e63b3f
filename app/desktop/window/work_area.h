// The work view: row view above the width axis, and beside them the panels above the findings.
#pragma once

#include <QSplitter>

#include "axis/axis_pane.h"
#include "findings/panel.h"
#include "panels/side_panel.h"
#include "row/row_view.h"

namespace tenter::desktop::window {

/// Divides its room by what is open: the axis takes what its open lanes need, and the findings are a drawer.
/// The splits, the open lanes, the drawer and the zoom mode are kept from one start of the program to the
/// next.
class WorkArea : public QSplitter {
    Q_OBJECT

public:
    WorkArea(row::RowView& row, axis::AxisPane& axis, panels::SidePanel& side, findings::Panel& findings,
             QWidget* parent = nullptr);
    /// Keeps the arrangement for the next start.
    void save() const;
    /// Arranges everything as at the first start.
    void reset();

protected:
    void showEvent(QShowEvent* event) override;

private:
    void restore();
    void arrangeFirst();
    void fitAxis();
    void fitFindings(bool open);

    row::RowView& row_;
    axis::AxisPane& axis_;
    panels::SidePanel& side_;
    findings::Panel& findings_;
    QSplitter* left_;
    QSplitter* right_;
    int axisHint_ = 0;        ///< comfortable height of the axis for the lanes that were open last, px
    int findingsHeight_ = 0;  ///< of the open drawer, px; 0: as at the first start
    bool restored_ = false;
};

}  // namespace tenter::desktop::window
