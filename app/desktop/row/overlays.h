// What can be laid over the row: boxes with their spacing, the comfortable measure, tight fits, other
// engines.
#pragma once

#include <QPainter>

#include "document/viewing.h"
#include "row/ink.h"

namespace tenter::desktop::row {

class RowPainter;

/// From CSS px on the page to the view's own px.
struct Projection {
    double zoom = 1;
    double left = 0;
    double top = 0;
    [[nodiscard]] double x(double css) const { return left + css * zoom; }
    [[nodiscard]] double y(double css) const { return top + css * zoom; }
    [[nodiscard]] QRectF rect(const layout::Box& box) const {
        return {x(box.x), y(box.y), box.width * zoom, box.height * zoom};
    }
};

struct OverlayTools {
    QPainter& painter;
    const Viewing& viewing;
    const RowPainter& row;
    Projection at;
    QRectF view;  ///< what is visible
    Ink ink;
};

/// Boxes as a draughtsman dimensions them: hatching for padding, open dimension lines for margins and gaps,
/// each with its value as the settings write it.
void paintBoxes(OverlayTools& tools);
/// Ticks above running text where the shortest and the longest comfortable line would end.
void paintMeasure(OverlayTools& tools);
/// A mark at the end of every line that another browser may break otherwise.
void paintTightFits(OverlayTools& tools);
/// A bracket beside every text that other engines set on more or fewer lines, with how many.
void paintEngines(OverlayTools& tools);

}  // namespace tenter::desktop::row
