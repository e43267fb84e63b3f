// The arrangement of pages in the row view: one page, or one for each variant below a caption.
#pragma once

#include <QRectF>
#include <QSizeF>
#include <vector>

namespace tenter::desktop::row {

inline constexpr int gutter = 24;         ///< view px left of a page
inline constexpr int edgeRoom = 48;       ///< view px right of a page, with room to drag its edge
inline constexpr int captionHeight = 32;  ///< view px above a page if there are several

/// A page and its caption, in view px from the top left corner of the scrollable area.
struct Sheet {
    QRectF caption;  ///< empty if there is only one page
    QRectF page;
    int place = 0;  ///< number of pages to the left of it
};

struct Sheets {
    std::vector<Sheet> all;
    QSizeF size;  ///< of the scrollable area, view px
};

/// Arranges `pages` (sizes in CSS px, all of the same width) at `zoom` in lines of `across` pages.
Sheets arranged(const std::vector<QSizeF>& pages, double zoom, int across);
/// The number of pages that fit beside each other in `room` view px; at least 1.
int fittingAcross(const std::vector<QSizeF>& pages, double zoom, double room);
/// The largest zoom, at most 1, at which the pages fit into `room` (view px) in width, and in height unless
/// their text would become too small to read.
double fittingZoom(const std::vector<QSizeF>& pages, const QSizeF& room);

}  // namespace tenter::desktop::row
