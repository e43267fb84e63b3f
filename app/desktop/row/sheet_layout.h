// The pages of the row view: which are shown, at which zoom, and their places in the viewport.
#pragma once

#include <QAbstractScrollArea>
#include <QObject>
#include <optional>
#include <vector>

#include "row/overlays.h"
#include "row/sheets.h"
#include "session/layout_cache.h"

namespace tenter::desktop::row {

/// Arranges one page, or a page for each variant, in a scroll area, and converts between points of its
/// viewport and points of a page. Points and rectangles are in view px from the top left corner of the
/// viewport, unless another unit is named.
class SheetLayout : public QObject {
    Q_OBJECT

public:
    SheetLayout(const LayoutCache& layouts, QAbstractScrollArea& area) : layouts_(layouts), area_(area) {}

    /// Shows a page for each variant from the next `arrange` on.
    void setAllVariants(bool all) {
        allVariants_ = all;
        zoomHeld_ = false;
    }
    /// While true, no page moves to another line.
    void holdLines(bool hold) { linesHeld_ = hold; }
    /// While true, fitting does not change the zoom; `setFit` and `setAllVariants` end that.
    void holdZoom(bool hold) { zoomHeld_ = hold; }
    /// Arranges the pages again and sets the ranges of the scroll bars.
    void arrange();

    [[nodiscard]] std::size_t count() const { return sheets_.all.size(); }
    /// True if there is a page for each variant; otherwise there is one page.
    [[nodiscard]] bool showsAll() const { return count() > 1; }
    /// The page of the current variant.
    [[nodiscard]] std::size_t active() const { return showsAll() ? layouts_.variant() : 0; }
    /// The variant on a page.
    [[nodiscard]] std::size_t variantOn(std::size_t sheet) const {
        return showsAll() ? sheet : layouts_.variant();
    }
    /// The row on a page.
    [[nodiscard]] LaidOutRow rowOn(std::size_t sheet) const { return layouts_.of(variantOn(sheet)); }
    /// The number of pages to the left of this one.
    [[nodiscard]] int placeOf(std::size_t sheet) const { return sheets_.all[sheet].place; }

    /// Fits the width of the page, and its top with whole cards, into the viewport. Any other zoom ends it.
    void setFit(bool fit);
    [[nodiscard]] bool fit() const { return fit_; }
    /// View px per CSS px.
    [[nodiscard]] double zoom() const { return zoom_; }
    /// Changes the zoom, within its limits; the point `view` shows the same point of its page as before.
    void zoomAbout(double zoom, const QPointF& view);

    [[nodiscard]] QPoint scrolled() const;
    [[nodiscard]] Projection projection() const { return projection(active()); }
    [[nodiscard]] Projection projection(std::size_t sheet) const;
    /// The point of a page (CSS px) at a point of the viewport.
    [[nodiscard]] QPointF pageAt(const QPointF& view, std::size_t sheet) const;
    [[nodiscard]] std::vector<Sheet> inView() const;
    /// The page with its caption at a point; the only page is everywhere.
    [[nodiscard]] std::optional<std::size_t> sheetAt(const QPointF& view) const;
    /// The right edge of a page.
    [[nodiscard]] double edgeX(std::size_t sheet) const;
    /// The page whose right edge is near enough to the point to be dragged.
    [[nodiscard]] std::optional<std::size_t> edgeAt(const QPointF& view) const;
    /// The area in which the edge of a page is painted.
    [[nodiscard]] QRect edgeStrip(std::size_t sheet) const;

    /// Scrolls so that the part with this index in the current layout is visible.
    void ensureVisible(std::size_t part);
    /// Scrolls down to the first line of cards, if it then fits the view and does not without.
    void revealCards();
    /// Scrolls so that the page of the current variant is visible, if there are several pages.
    void ensureActiveVisible();

Q_SIGNALS:
    void zoomChanged(double zoom);
    void fitChanged(bool fit);

private:
    void setScrollRanges();
    const LayoutCache& layouts_;
    QAbstractScrollArea& area_;
    Sheets sheets_;
    int across_ = 1;  // pages beside each other
    bool allVariants_ = false;
    bool linesHeld_ = false;
    bool zoomHeld_ = false;
    bool fit_ = false;
    double zoom_ = 1;
};

}  // namespace tenter::desktop::row
