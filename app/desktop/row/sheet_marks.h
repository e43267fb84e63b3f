// What the row view paints around the pages: captions, marks of the selection, edges to drag.
#pragma once

#include <QPainter>
#include <optional>

#include "row/sheet_layout.h"
#include "session/selection_model.h"

namespace tenter::desktop::row {

/// Caption of a variant: `1 column at this width, heading 24.13 px`.
QString captionOf(const LaidOutRow& row, const std::string& role);

class SheetMarks {
public:
    /// Paints in the font and palette of `area`.
    SheetMarks(const SelectionModel& selection, const SheetLayout& sheets, const QAbstractScrollArea& area)
        : selection_(selection), sheets_(sheets), area_(area) {}
    /// Paints the caption above a page, underlined for the current variant.
    void paintCaption(QPainter& painter, std::size_t sheet) const;
    /// Marks the corners of what is selected on a page; `box` in CSS px. `ground` is the background colour
    /// below it.
    void paintSelection(QPainter& painter, std::size_t sheet, const layout::Box& box,
                        const QColor& ground) const;
    /// Paints the right edge of a page with its grip; `hot`: it is hovered or dragged.
    void paintEdge(QPainter& painter, std::size_t sheet, bool hot) const;
    /// Paints the advice for a row without cards.
    void paintEmpty(QPainter& painter) const;
    /// Paints the frame that shows the keyboard focus.
    void paintFocus(QPainter& painter) const;

private:
    [[nodiscard]] QRectF view() const { return area_.viewport()->rect(); }
    const SelectionModel& selection_;
    const SheetLayout& sheets_;
    const QAbstractScrollArea& area_;
};

}  // namespace tenter::desktop::row
