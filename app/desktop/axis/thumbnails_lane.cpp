#include "axis/thumbnails_lane.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

#include "row/ink.h"
#include "session/changes.h"

namespace tenter::desktop::axis {

namespace {

// While a value is dragged the row changes at every frame, so thumbnails are drawn only after this pause.
constexpr int thumbnailDelay = 150;  // ms
constexpr int widestCell = 176;      // px

}  // namespace

ThumbnailsLane::ThumbnailsLane(Session& session, const WidthScale& scale, QWidget* parent)
    : QWidget(parent), session_(session), scale_(scale) {
    setAccessibleName(QObject::tr("Thumbnails at key widths"));
    idleTimer_.setSingleShot(true);
    idleTimer_.setInterval(thumbnailDelay);
    connect(&idleTimer_, &QTimer::timeout, this, &ThumbnailsLane::rebuild);
    const auto later = [this] {
        if (isVisible()) idleTimer_.start();
    };
    onChange(session_.layouts, LayoutCache::Change::Row, this, later);
    onChange(session_.checks, CheckRunner::Change::Findings, this, later);
    onChange(session_.view, ViewState::Change::Width, this, &ThumbnailsLane::onWidth);
}

void ThumbnailsLane::showEvent(QShowEvent*) {
    rebuild();
}

void ThumbnailsLane::rebuild() {
    if (!isVisible()) return;
    const auto keyWidths =
        checks::keyWidths(session_.shown.project(), session_.view.variant(), session_.checks.findings());
    while (thumbnails_.size() > keyWidths.size()) {
        thumbnails_.back()->hide();
        spare_.push_back(thumbnails_.back());
        thumbnails_.pop_back();
    }
    while (thumbnails_.size() < keyWidths.size()) {
        if (spare_.empty()) {
            auto* made = new Thumbnail(session_.layouts, session_.document, this);
            connect(made, &QAbstractButton::clicked, this,
                    [this, made] { session_.view.setWidth(made->pageWidth()); });
            spare_.push_back(made);
        }
        thumbnails_.push_back(spare_.back());
        spare_.pop_back();
    }
    for (std::size_t i = 0; i < keyWidths.size(); ++i)
        thumbnails_[i]->show(keyWidths[i]);
    arrange();
    for (Thumbnail* thumbnail : thumbnails_)
        thumbnail->redraw();
    onWidth();
    update();
}

void ThumbnailsLane::arrange() {
    if (thumbnails_.empty()) return;
    const double room = scale_.right() - scale_.left();
    const double cell = std::min<double>(widestCell, room / static_cast<double>(thumbnails_.size()));
    // Spread evenly from one end of the axis to the other.
    const double step =
        thumbnails_.size() == 1 ? 0 : (room - cell) / static_cast<double>(thumbnails_.size() - 1);
    for (std::size_t i = 0; i < thumbnails_.size(); ++i)
        thumbnails_[i]->setGeometry(
            static_cast<int>(std::lround(scale_.left() + step * static_cast<double>(i))), leaderHeight,
            static_cast<int>(std::floor(cell)), Thumbnail::pictureHeight + Thumbnail::captionHeight());
}

void ThumbnailsLane::onWidth() {
    for (Thumbnail* thumbnail : thumbnails_)
        thumbnail->setCurrent(thumbnail->pageWidth() == session_.view.width());
}

void ThumbnailsLane::resizeEvent(QResizeEvent*) {
    arrange();
}

void ThumbnailsLane::paintEvent(QPaintEvent*) {
    const row::Ink ink = row::Ink::of(palette());
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing, true);
    painter.setPen(QPen(ink.line, 1));
    for (const Thumbnail* thumbnail : thumbnails_) {
        const double x = scale_.x(thumbnail->pageWidth());
        if (x < scale_.left() - 1 || x > scale_.right() + 1) continue;
        painter.drawLine(QPointF(x + 0.5, 0),
                         QPointF(thumbnail->geometry().center().x() + 0.5, leaderHeight - 1));
    }
}

}  // namespace tenter::desktop::axis
