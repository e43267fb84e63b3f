#include "row/sheets.h"

#include <algorithm>
#include <cmath>

#include "controls/text_scale.h"

namespace tenter::desktop::row {

namespace {

constexpr int belowSheet = 24;  // view px below a page if there are several
constexpr double zoomStep = 0.05;
constexpr double readable = 0.3;  // smallest zoom at which text can be read
constexpr double sides = gutter + edgeRoom;

}  // namespace

Sheets arranged(const std::vector<QSizeF>& pages, double zoom, int across) {
    Sheets sheets;
    if (pages.empty()) return sheets;
    const double width = std::ceil(pages.front().width() * zoom);
    const double above = pages.size() > 1 ? controls::scaled(captionHeight) : 0;
    double top = 0;
    double bottom = 0;
    for (std::size_t i = 0; i < pages.size(); ++i) {
        const int place = static_cast<int>(i) % across;
        if (place == 0) top = bottom;
        const double left = gutter + place * (width + sides);
        const QRectF page(left, top + above, pages[i].width() * zoom, pages[i].height() * zoom);
        sheets.all.push_back({above > 0 ? QRectF(left, top, width, above) : QRectF(), page, place});
        bottom = std::max(bottom, std::ceil(page.bottom()) + (above > 0 ? belowSheet : 0));
    }
    sheets.size = {std::min<double>(across, static_cast<double>(pages.size())) * (width + sides), bottom};
    return sheets;
}

int fittingAcross(const std::vector<QSizeF>& pages, double zoom, double room) {
    if (pages.empty()) return 1;
    const double each = std::ceil(pages.front().width() * zoom) + sides;
    return std::clamp(static_cast<int>(room / each), 1, static_cast<int>(pages.size()));
}

double fittingZoom(const std::vector<QSizeF>& pages, const QSizeF& room) {
    double best = 0;
    for (int across = 1; across <= static_cast<int>(pages.size()); ++across) {
        const double wide = (room.width() / across - sides) / pages.front().width();
        // Height of captions and gaps, which does not depend on the zoom.
        const double fixed = arranged(pages, 0, across).size.height();
        double tall =
            (room.height() - fixed) / std::max(1.0, arranged(pages, 1, across).size.height() - fixed);
        // In steps, so that the zoom does not follow every change of a line count.
        if (tall < 1) tall = std::floor(tall / zoomStep) * zoomStep;
        best = std::max(best, std::min({1.0, wide, std::max(tall, readable)}));
    }
    return best;
}

}  // namespace tenter::desktop::row
