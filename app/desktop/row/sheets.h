// Where the pages stand that the row view shows: one, or one for each variant, each under a caption.
#pragma once

#include <QRectF>
#include <QSizeF>
#include <vector>

namespace tenter::desktop::row {

inline constexpr int gutter = 24;         ///< desk left of a page, view px
inline constexpr int edgeRoom = 48;       ///< and right of it, where the edge is held
inline constexpr int captionHeight = 32;  ///< above a page that is one of several, view px

/// View px from the top left corner of all that can be scrolled over.
struct Sheet {
    QRectF caption;  ///< empty if the page stands alone
    QRectF page;
    int place = 0;  ///< how many pages stand left of it
};

struct Sheets {
    std::vector<Sheet> all;
    QSizeF size;
};

/// `pages` (CSS px, all of one width) at `zoom`, `across` of them to a line.
Sheets arranged(const std::vector<QSizeF>& pages, double zoom, int across);
/// How many pages stand beside each other in `room` view px: at least one.
int fittingAcross(const std::vector<QSizeF>& pages, double zoom, double room);
/// The largest zoom, up to 1, at which the pages are in sight in `room`: their whole width, and the height of
/// several too, as far as type can still be read.
double fittingZoom(const std::vector<QSizeF>& pages, const QSizeF& room);

}  // namespace tenter::desktop::row
