// Paints the pages of the row view into an image, with overlays, captions and the mark of a chosen finding.
#pragma once

#include <QAbstractScrollArea>
#include <functional>
#include <memory>
#include <vector>

#include "row/canvas.h"
#include "row/overlay_actions.h"
#include "row/row_painter.h"
#include "row/sheet_layout.h"
#include "row/sheet_marks.h"
#include "session/session.h"

namespace tenter::desktop::row {

class SheetPainter {
public:
    /// Paints in the font and palette of `area`, in the size of its viewport.
    SheetPainter(const Session& session, const SheetLayout& sheets, const OverlayActions& overlays,
                 const SheetMarks& marks, const QAbstractScrollArea& area, Pictures& pictures);
    /// The image must be painted again before it is shown.
    void invalidate() { stale_ = true; }
    /// Drops cached glyphs; call it after fonts have changed.
    void clear();
    /// The image of the viewport, device px. `attention` gives the parts with the pointer and the keyboard
    /// focus on a page.
    const QImage& image(const std::function<Attention(std::size_t sheet)>& attention);

private:
    using AttentionTo = std::function<Attention(std::size_t)>;
    void render(const AttentionTo& attention);
    void renderSheets(const AttentionTo& attention);
    void paintOver(QPainter& painter, std::size_t sheet);
    [[nodiscard]] RowPainter& painterOf(std::size_t sheet);

    const Session& session_;
    const SheetLayout& sheets_;
    const OverlayActions& overlays_;
    const SheetMarks& marks_;
    const QAbstractScrollArea& area_;
    Pictures& pictures_;
    RowPainter row_;                                            // of the current variant
    std::vector<std::unique_ptr<RowPainter>> variantPainters_;  // by variant
    Canvas canvas_;
    bool stale_ = true;
};

}  // namespace tenter::desktop::row
