#include "row/finding_mark.h"

#include <algorithm>

#include "row/canvas.h"
#include "row/dimension.h"
#include "row/lookup.h"
#include "row/row_painter.h"

namespace tenter::desktop::row {

namespace {

constexpr double apart =
    6;  // view px between the part and the mark, with room for the corners of the selection
constexpr double wide = 5;  // view px, thickness of the hatching

bool isFoundAt(const checks::Finding& finding, double width) {
    return std::ranges::any_of(
        finding.widths, [width](const sweep::Interval& run) { return run.from <= width && width <= run.to; });
}

}  // namespace

void paintFinding(OverlayTools& tools, const checks::Finding& finding) {
    const layout::Layout& layout = tools.row.layout;
    if (!finding.place || finding.place->card >= layout.cards.size()) return;
    const layout::LaidCard& card = layout.cards[finding.place->card];
    const auto part = indexOf(layout, finding.place);
    const QRectF box = tools.at.rect(part ? layout.parts[*part].box : card.box).toAlignedRect();
    const QColor ground = groundOf(tools.row);
    const QColor ink = contrast(ground, Qt::black) > contrast(ground, Qt::white) ? Qt::black : Qt::white;
    const QRectF inner = box.adjusted(-apart, -apart, apart, apart);
    const QRectF outer = inner.adjusted(-wide, -wide, wide, wide);
    const bool there = isFoundAt(finding, layout.width);
    if (there) paintHatching(tools.painter, outer, inner, mixed(ground, ink, 0.75));
    tools.painter.setRenderHint(QPainter::Antialiasing, false);
    tools.painter.setBrush(Qt::NoBrush);
    QPen pen(mixed(ground, ink, 0.85), 1);
    if (!there) pen.setStyle(Qt::DashLine);
    tools.painter.setPen(pen);
    tools.painter.drawRect(outer.adjusted(0, 0, -1, -1));
    if (there) tools.painter.drawRect(inner.adjusted(0, 0, -1, -1));
}

}  // namespace tenter::desktop::row
