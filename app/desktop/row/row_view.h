// The row at one width, true to the pixel; or every variant of it at that width.
#pragma once

#include <QAbstractScrollArea>
#include <QAction>
#include <memory>
#include <optional>
#include <vector>

#include "document/sisters.h"
#include "document/survey.h"
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

    /// Toggles of what is laid over the row: boxes and spacing, measure, tight fits, other engines.
    [[nodiscard]] QList<QAction*> overlayActions() const { return {boxes_, measure_, tight_, engines_}; }
    /// Toggle, fit to the window; and actual size, which undoes it and any zoom.
    [[nodiscard]] QAction* fitAction() const { return fitAction_; }
    [[nodiscard]] QAction* actualSizeAction() const { return actualSize_; }
    /// Toggle: every variant at this width, beside or below each other.
    [[nodiscard]] QAction* allVariantsAction() const { return allVariants_; }
    /// Shows the page's whole width; turned off by any other zoom.
    void setFit(bool fit);
    [[nodiscard]] bool fit() const { return fit_; }
    /// View px to one CSS px.
    [[nodiscard]] double zoom() const { return zoom_; }
    void setZoom(double zoom);
    /// Scrolls so that the part of the layout with this index can be seen.
    void ensureVisible(std::size_t part);
    /// The point of the page (CSS px) of the variant in view that is under a point of the viewport.
    [[nodiscard]] QPointF pageAt(const QPointF& view) const;
    /// Where variants' pages and captions stand, view px from the viewport's corner.
    [[nodiscard]] std::vector<Sheet> sheetsInView() const;
    /// The card, and if possible its part, under a point of the viewport.
    [[nodiscard]] std::optional<Viewing::Selection> placeAt(const QPointF& view) const;
    [[nodiscard]] QSize sizeHint() const override { return {900, 520}; }

signals:
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
    /// A part of a variant's layout, by its index.
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
    /// Several sheets stand in the view: one for each variant, by index. Else there is the one in view.
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
    /// The sheet whose edge is near enough to be held.
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
    mutable Sisters sisters_;                                  // made and brought up to date when asked for
    std::vector<std::unique_ptr<RowPainter>> sisterPainters_;  // by variant
    Sheets sheets_;
    int across_ = 1;  // pages to a line
    Canvas canvas_;
    FigureBox* figures_ = nullptr;
    QAction *boxes_ = nullptr, *measure_ = nullptr, *tight_ = nullptr, *engines_ = nullptr,
            *fitAction_ = nullptr, *actualSize_ = nullptr, *allVariants_ = nullptr;
    bool stale_ = true;
    bool fit_ = false;
    bool fitAlone_ = false;  // when one variant was last looked at
    double zoom_ = 1;
    Drag drag_ = Drag::None;
    QPointF dragFrom_;
    double dragWidth_ = 0;
    QPoint dragScroll_;
    std::optional<std::size_t> hotEdge_;  // of which sheet
    bool byKeyboard_ = false;
    std::optional<Pointed> hovered_;
    std::optional<std::size_t> focused_;  // a part of the variant in view
    std::optional<Pointed> figured_;      // the part whose figures the pointer asks for
};

}  // namespace tenter::desktop::row
