// The row at one width, true to the pixel.
#pragma once

#include <QAbstractScrollArea>
#include <QAction>
#include <memory>
#include <optional>

#include "document/survey.h"
#include "document/viewing.h"
#include "row/canvas.h"
#include "row/overlays.h"
#include "row/row_painter.h"

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
    /// Shows the page's whole width; turned off by any other zoom.
    void setFit(bool fit);
    [[nodiscard]] bool fit() const { return fit_; }
    /// View px to one CSS px.
    [[nodiscard]] double zoom() const { return zoom_; }
    void setZoom(double zoom);
    /// Scrolls so that the part of the layout with this index can be seen.
    void ensureVisible(std::size_t part);
    /// The point of the page (CSS px) under a point of the viewport.
    [[nodiscard]] QPointF pageAt(const QPointF& view) const;
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
    void addActions();
    void onLayout();
    void onOpened();
    void onSelection();
    void redraw();
    void updateScrollBars();
    void zoomAbout(double zoom, const QPointF& view);
    void render();
    [[nodiscard]] Projection projection() const;
    [[nodiscard]] double edgeX() const;
    [[nodiscard]] bool overEdge(const QPointF& view) const;
    [[nodiscard]] QRect edgeStrip() const;
    void hover(const QPointF& view);
    void unhover();
    void showFigures();
    bool moveSelection(int cards, int parts);
    void paintSelection(QPainter& painter);
    void revealChosen();
    void paintEdge(QPainter& painter);
    void paintEmpty(QPainter& painter);

    Viewing& viewing_;
    const Survey& survey_;
    Pictures pictures_;
    RowPainter row_;
    Canvas canvas_;
    FigureBox* figures_ = nullptr;
    QAction *boxes_ = nullptr, *measure_ = nullptr, *tight_ = nullptr, *engines_ = nullptr,
            *fitAction_ = nullptr, *actualSize_ = nullptr;
    bool stale_ = true;
    bool fit_ = false;
    double zoom_ = 1;
    Drag drag_ = Drag::None;
    QPointF dragFrom_;
    double dragWidth_ = 0;
    QPoint dragScroll_;
    bool edgeHot_ = false;
    bool byKeyboard_ = false;
    Attention attention_;
    std::optional<std::size_t> figured_;  // the part whose figures the pointer asks for
};

}  // namespace tenter::desktop::row
