// How the row is shown, in the status bar: the line-breaking rules, and the zoom of the row view.
#pragma once

#include <QLabel>
#include <QWidget>

#include "controls/segments.h"
#include "row/row_view.h"
#include "window/break_choice.h"

namespace tenter::desktop::window {

class ViewChoices : public QWidget {
    Q_OBJECT

public:
    ViewChoices(row::RowView& row, BreakChoice& breaks, QWidget* parent);

private:
    void addBreaks(BreakChoice& breaks);
    void addZoom();
    void showZoom();

    row::RowView& row_;
    controls::Segments* engines_;
    controls::Segments* zoom_;
};

}  // namespace tenter::desktop::window
