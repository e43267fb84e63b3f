#include "start_page/tile_grid.h"

#include <algorithm>

namespace tenter::desktop::start_page {

namespace {

constexpr int gap = 16;  // px

}  // namespace

TileGrid::TileGrid(QWidget* parent) : QWidget(parent) {
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

void TileGrid::setTiles(const QList<QWidget*>& tiles) {
    qDeleteAll(tiles_);
    tiles_ = tiles;
    for (QWidget* tile : tiles_)
        tile->setParent(this);
    arrange();
    updateGeometry();
}

int TileGrid::across(int width) const {
    if (tiles_.isEmpty()) return 1;
    return std::max(1, (width + gap) / (tiles_.first()->sizeHint().width() + gap));
}

qsizetype TileGrid::shownCount(int width) const {
    return std::min<qsizetype>(tiles_.size(), static_cast<qsizetype>(across(width)) * mostLines_);
}

int TileGrid::heightForWidth(int width) const {
    if (tiles_.isEmpty()) return 0;
    const int lines = static_cast<int>((shownCount(width) + across(width) - 1) / across(width));
    return lines * (tiles_.first()->sizeHint().height() + gap) - gap;
}

QSize TileGrid::sizeHint() const {
    return {width(), heightForWidth(width())};
}

void TileGrid::resizeEvent(QResizeEvent*) {
    arrange();
    updateGeometry();
}

void TileGrid::arrange() {
    const int count = across(width());
    for (qsizetype i = 0; i < tiles_.size(); ++i) {
        const QSize size = tiles_[i]->sizeHint();
        const int column = static_cast<int>(i % count);
        const int line = static_cast<int>(i / count);
        const int left = column * (size.width() + gap);
        tiles_[i]->setGeometry(layoutDirection() == Qt::RightToLeft ? width() - left - size.width() : left,
                               line * (size.height() + gap), size.width(), size.height());
        tiles_[i]->setVisible(i < shownCount(width()));
    }
    setMinimumHeight(heightForWidth(width()));
}

}  // namespace tenter::desktop::start_page
