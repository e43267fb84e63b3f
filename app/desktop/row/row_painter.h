// The row, painted as the emitted CSS would look.
#pragma once

#include <QPainter>
#include <optional>

#include "document/viewing.h"
#include "row/canvas.h"
#include "row/pictures.h"
#include "row/shadows.h"
#include "row/text_painter.h"

namespace tenter::desktop::row {

/// What the pointer and the keyboard are on, as indices into `Layout::parts`.
struct Attention {
    std::optional<std::size_t> hovered;
    std::optional<std::size_t> focused;
    friend bool operator==(const Attention&, const Attention&) = default;
};

class RowPainter {
public:
    RowPainter(const Viewing& viewing, Pictures& pictures) : viewing_(viewing), pictures_(pictures) {}
    /// Paints the page into the canvas; `desk` lies around it.
    void paint(Canvas& canvas, const Attention& attention, const QColor& desk);
    /// After fonts changed.
    void clear() { text_.clear(); }
    /// The colour that lies under a card's parts.
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

/// The style whose hover colours show while the pointer is over part `part`: its own, or in a linked card the
/// button's. An index into `Layout::parts`.
std::optional<std::size_t> hoverTarget(const Viewing& viewing, const QPointF& page);

}  // namespace tenter::desktop::row
