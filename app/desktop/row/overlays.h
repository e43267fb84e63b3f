// The overlays of the row view: boxes and spacing, measure, tight fits, Chromium/Firefox differences.
#pragma once

#include <QPainter>

#include "row/ink.h"
#include "session/layout_cache.h"

namespace tenter::desktop::row {

/// Converts CSS px on the page to px of the view.
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
    const LayoutCache& layouts;
    std::size_t variant;
    LaidOutRow row;  ///< that variant at the current width
    Projection at;
    QRectF view;  ///< visible area, px of the view
    Ink ink;
};

/// Boxes as in a technical drawing: hatching for padding, dimension lines for margins and gaps, each with its
/// value. Values that are set are shown in their own unit, computed ones in px.
void paintBoxes(OverlayTools& tools);
/// Ticks above paragraphs at the ends of the shortest and the longest comfortable line, and the measure at
/// the end of the column.
void paintMeasure(OverlayTools& tools);
/// A mark and the slack at the end of each line that is a tight fit.
void paintTightFits(OverlayTools& tools);
/// A bracket beside each text that another browser gives a different number of lines, with that number.
void paintEngines(OverlayTools& tools);

}  // namespace tenter::desktop::row
