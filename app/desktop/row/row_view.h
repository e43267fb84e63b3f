// The row view: the row at the current width, pixel by pixel as in a browser; or all variants at that width.
#pragma once

#include <QAbstractScrollArea>
#include <QAction>
#include <memory>
#include <optional>
#include <vector>

#include "document/survey.h"
#include "document/variant_views.h"
#include "row/canvas.h"
#include "row/overlays.h"
#include "row/row_painter.h"
#include "row/sheets.h"

namespace tenter::desktop::row {

class FigureBox;

class RowView : public QAbstractScrollArea {
    Q_OBJECT

public:
    RowView(Viewing& viewing, const Survey& survey, QWidget* parent = nullptr);
    ~RowView() override;

    /// Toggle actions for the overlays: boxes and spacing, measure, tight fits, browser differences.
    [[nodiscard]] QList<QAction*> overlayActions() const { return {boxes_, measure_, tight_, engines_}; }
    /// The toggle Fit to window, and the action Actual size, which ends it and any zoom.
    [[nodiscard]] QAction* fitAction() const { return fitAction_; }
    [[nodiscard]] QAction* actualSizeAction() const { return actualSize_; }
    /// The toggle All variants: shows every variant at the current width, beside or below each other.
    [[nodiscard]] QAction* allVariantsAction() const { return allVariants_; }
    /// Fits the whole width of the page into the window. Any other zoom ends it.
    void setFit(bool fit);
    [[nodiscard]] bool fit() const { return fit_; }
    /// View px per CSS px.
    [[nodiscard]] double zoom() const { return zoom_; }
    void setZoom(double zoom);
    /// Scrolls so that the part with this index in the layout is visible.
    void ensureVisible(std::size_t part);
    /// Converts a point of the viewport to a point of the page (CSS px) of the current variant.
    [[nodiscard]] QPointF pageAt(const QPointF& view) const;
    /// The rectangles of the pages and captions of the variants, view px from the top left corner of the
    /// viewport.
    [[nodiscard]] std::vector<Sheet> sheetsInView() const;
    /// The card at a point of the viewport, and its part if there is one at that point.
    [[nodiscard]] std::optional<Viewing::Selection> placeAt(const QPointF& view) const;
    [[nodiscard]] QSize sizeHint() const override { return {900, 520}; }

Q_SIGNALS:
    void zoomChanged(double zoom);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void scrollContentsBy(int dx, int dy) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    bool focusNextPrevChild(bool next) override;
    bool viewportEvent(QEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    enum class Drag { None, Edge, Pan };
    /// A part under the pointer: its page and its index in the layout of that page.
    struct Pointed {
        std::size_t sheet = 0;
        std::size_t part = 0;
        friend bool operator==(const Pointed&, const Pointed&) = default;
    };
    void addActions();
    void onLayout();
    void onOpened();
    void onSelection();
    void describe();
    void redraw();
    void updateScrollBars();
    void zoomAbout(double zoom, const QPointF& view);
    void render();
    void renderSheets();
    void paintOver(QPainter& painter, std::size_t sheet);
    void paintCaption(QPainter& painter, std::size_t sheet) const;
    /// True if the view shows a page for each variant; otherwise it shows one page.
    [[nodiscard]] bool showsAll() const { return sheets_.all.size() > 1; }
    [[nodiscard]] std::size_t activeSheet() const { return showsAll() ? viewing_.variant() : 0; }
    [[nodiscard]] const Viewing& viewingOf(std::size_t sheet) const;
    [[nodiscard]] RowPainter& painterOf(std::size_t sheet);
    void setAllVariants(bool on);
    void ensureSheetVisible();
    [[nodiscard]] QPoint scrolled() const;
    [[nodiscard]] std::optional<std::size_t> sheetAt(const QPointF& view) const;
    [[nodiscard]] Projection projection() const { return projection(activeSheet()); }
    [[nodiscard]] Projection projection(std::size_t sheet) const;
    [[nodiscard]] QPointF pageAt(const QPointF& view, std::size_t sheet) const;
    [[nodiscard]] double edgeX(std::size_t sheet) const;
    /// The page whose right edge is near enough to the point to be dragged.
    [[nodiscard]] std::optional<std::size_t> edgeAt(const QPointF& view) const;
    [[nodiscard]] QRect edgeStrip(std::size_t sheet) const;
    [[nodiscard]] Attention attentionTo(std::size_t sheet) const;
    void setHotEdge(std::optional<std::size_t> sheet);
    void setHovered(std::optional<Pointed> pointed);
    void press(const QPointF& view);
    void hover(const QPointF& view);
    void unhover();
    void showFigures();
    bool moveSelection(int cards, int parts);
    void paintSelection(QPainter& painter, std::size_t sheet);
    void revealChosen();
    void paintEdge(QPainter& painter, std::size_t sheet) const;
    void paintEmpty(QPainter& painter);

    Viewing& viewing_;
    const Survey& survey_;
    Pictures pictures_;
    RowPainter row_;
    mutable VariantViews variantViews_;                         // updated on access
    std::vector<std::unique_ptr<RowPainter>> variantPainters_;  // by variant
    Sheets sheets_;
    int across_ = 1;  // pages beside each other
    Canvas canvas_;
    FigureBox* figures_ = nullptr;
    QAction *boxes_ = nullptr, *measure_ = nullptr, *tight_ = nullptr, *engines_ = nullptr,
            *fitAction_ = nullptr, *actualSize_ = nullptr, *allVariants_ = nullptr;
    bool stale_ = true;
    bool fit_ = false;
    bool fitAlone_ = false;  // `fit_` when the view last showed a single variant
    double zoom_ = 1;
    Drag drag_ = Drag::None;
    QPointF dragFrom_;
    double dragWidth_ = 0;
    QPoint dragScroll_;
    std::optional<std::size_t> hotEdge_;  // the page whose edge is hovered or dragged
    bool byKeyboard_ = false;
    std::optional<Pointed> hovered_;
    std::optional<std::size_t> focused_;  // a part of the current variant
    std::optional<Pointed> figured_;      // the part under the pointer, whose figures are shown
};

}  // namespace tenter::desktop::row
