// Paints the row as a browser would with the emitted CSS.
#pragma once

#include <QPainter>
#include <optional>

#include "document/viewing.h"
#include "row/canvas.h"
#include "row/pictures.h"
#include "row/shadows.h"
#include "row/text_painter.h"

namespace tenter::desktop::row {

/// The parts with the pointer and with the keyboard focus, as indices into `Layout::parts`.
struct Attention {
    std::optional<std::size_t> hovered;
    std::optional<std::size_t> focused;
    friend bool operator==(const Attention&, const Attention&) = default;
};

class RowPainter {
public:
    RowPainter(const Viewing& viewing, Pictures& pictures) : viewing_(viewing), pictures_(pictures) {}
    /// Paints the page into the canvas. `desk` is the colour of the area around the page.
    void paint(Canvas& canvas, const Attention& attention, const QColor& desk);
    /// Drops cached glyphs; call it after fonts have changed.
    void clear() { text_.clear(); }
    /// The background colour below the parts of a card.
    [[nodiscard]] QColor groundOf(const layout::LaidCard& card) const;

private:
    void card(QPainter& painter, Canvas& canvas, std::size_t index, const Attention& attention);
    void picture(QPainter& painter, Canvas& canvas, std::size_t card, const layout::LaidPart& part);
    void text(QPainter& painter, Canvas& canvas, const layout::LaidPart& part, bool hovered, bool focused);
    [[nodiscard]] double cardRadius(const layout::LaidCard& card) const;
    [[nodiscard]] Corners pictureCorners(const layout::LaidCard& card, const layout::LaidPart& part,
                                         double scale) const;
    const Viewing& viewing_;
    Pictures& pictures_;
    Shadows shadows_;
    TextPainter text_;
};

/// The part that shows its hover colours while the pointer is at point `page` (CSS px), as an index into
/// `Layout::parts`: the part at the point, or the button if the whole card is a link.
std::optional<std::size_t> hoverTarget(const Viewing& viewing, const QPointF& page);

}  // namespace tenter::desktop::row
