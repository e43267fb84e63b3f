// Paints the row as a browser would with the emitted CSS.
#pragma once

#include <QPainter>
#include <optional>

#include "draw/row_drawing.h"
#include "row/canvas.h"
#include "row/pictures.h"
#include "row/shadows.h"
#include "row/text_painter.h"
#include "session/layout_cache.h"

namespace tenter::desktop::row {

using draw::Attention;

class RowPainter {
public:
    /// Pictures are read from the folder of `document`.
    RowPainter(const Document& document, Pictures& pictures) : document_(document), pictures_(pictures) {}
    /// Paints the page into the canvas. `desk` is the colour of the area around the page.
    void paint(Canvas& canvas, const LaidOutRow& row, const Attention& attention, const QColor& desk);
    /// Drops cached glyphs; call it after fonts have changed.
    void clear() { text_.clear(); }

private:
    struct Painting;
    const Document& document_;
    Pictures& pictures_;
    Shadows shadows_;
    TextPainter text_;
    draw::Drawing drawing_;  // of the last row, for its memory
};

/// The part that shows its hover colours while the pointer is at point `page` (CSS px), as an index into
/// `Layout::parts`: the part at the point, or the button if the whole card is a link.
std::optional<std::size_t> hoverTarget(const LaidOutRow& row, const QPointF& page);

/// The background colour below the parts of the cards.
QColor groundOf(const LaidOutRow& row);

}  // namespace tenter::desktop::row
