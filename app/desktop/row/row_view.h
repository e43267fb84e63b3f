// The row view: the row at the current width, pixel by pixel as in a browser; or all variants at that width.
#pragma once

#include <QAbstractScrollArea>
#include <QAction>
#include <optional>
#include <vector>

#include "row/editing/row_editing.h"
#include "row/overlay_actions.h"
#include "row/pictures.h"
#include "row/pointer.h"
#include "row/sheet_layout.h"
#include "row/sheet_marks.h"
#include "row/sheet_painter.h"
#include "session/session.h"

namespace tenter::desktop::row {

class FigureBox;

class RowView : public QAbstractScrollArea {
    Q_OBJECT

public:
    RowView(Session& session, QWidget* parent = nullptr);
    ~RowView() override;

    /// Toggle actions for the overlays: boxes and spacing, measure, tight fits, Chromium/Firefox differences.
    [[nodiscard]] QList<QAction*> overlayActions() const { return overlays_.all(); }
    /// The toggle Fit to window, and the action Actual size, which ends it and any zoom.
    [[nodiscard]] QAction* fitAction() const { return fitAction_; }
    [[nodiscard]] QAction* actualSizeAction() const { return actualSize_; }
    /// The toggle All variants: shows every variant at the current width, beside or below each other.
    [[nodiscard]] QAction* allVariantsAction() const { return allVariants_; }
    /// The context menu.
    [[nodiscard]] editing::RowMenu& menu() { return editing_.menu(); }
    /// Fits the width of the page and the height of a whole card into the window. Any other zoom ends it.
    void setFit(bool fit);
    [[nodiscard]] bool fit() const { return sheets_.fit(); }
    /// View px per CSS px.
    [[nodiscard]] double zoom() const { return sheets_.zoom(); }
    void setZoom(double zoom);
    /// Scrolls so that the part with this index in the layout is visible.
    void ensureVisible(std::size_t part) { sheets_.ensureVisible(part); }
    /// Converts a point of the viewport to a point of the page (CSS px) of the current variant.
    [[nodiscard]] QPointF pageAt(const QPointF& view) const { return sheets_.pageAt(view, sheets_.active()); }
    /// The rectangles of the pages and captions of the variants, view px from the top left corner of the
    /// viewport.
    [[nodiscard]] std::vector<Sheet> sheetsInView() const { return sheets_.inView(); }
    /// The card at a point of the viewport, and its part if there is one at that point.
    [[nodiscard]] std::optional<Place> placeAt(const QPointF& view) const;
    /// The rectangle of a card or a part of the current variant, px of the viewport; empty if it is not laid
    /// out.
    [[nodiscard]] QRectF rectOf(const Place& place) const;
    [[nodiscard]] Session& session() const { return session_; }
    [[nodiscard]] QSize sizeHint() const override { return {900, 520}; }

Q_SIGNALS:
    void zoomChanged(double zoom);
    void message(const QString& text);  ///< for the status line

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void scrollContentsBy(int dx, int dy) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override { editing_.openMenu(*event); }
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    bool focusNextPrevChild(bool next) override;
    bool viewportEvent(QEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void addActions();
    void onLayout();
    void onOpened();
    void onSelection(SelectionModel::Changes changes);
    void describe();
    void announceSelection();
    void redraw();
    void zoomAbout(double zoom, const QPointF& view);
    void setAllVariants(bool on);
    void ensureSheetVisible();
    void showFigures();
    bool moveSelection(int cards, int parts);
    [[nodiscard]] LaidOutRow currentRow() const { return session_.layouts.current(); }
    /// The selected part as an index into the parts of the current layout.
    [[nodiscard]] std::optional<std::size_t> selectedPart() const;
    [[nodiscard]] Attention attentionTo(std::size_t sheet) const;

    Session& session_;
    Pictures pictures_;
    SheetLayout sheets_;
    OverlayActions overlays_;
    SheetMarks marks_;
    SheetPainter painter_;
    Pointer pointer_;
    editing::RowEditing editing_;
    FigureBox* figures_;
    QAction *fitAction_ = nullptr, *actualSize_ = nullptr, *allVariants_ = nullptr;
    bool fitAlone_ = false;  // whether the page was fitted when the view last showed a single variant
    bool byKeyboard_ = false;
    std::optional<std::size_t> focused_;  // a button of the current variant
};

}  // namespace tenter::desktop::row
