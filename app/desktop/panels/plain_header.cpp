#include "panels/plain_header.h"

#include <QPainter>

#include "row/ink.h"

namespace tenter::desktop::panels {

PlainHeader::PlainHeader(int margin, QWidget* parent) : QHeaderView(Qt::Horizontal, parent), margin_(margin) {
    setHighlightSections(false);
    setSectionsClickable(false);
    setMinimumSectionSize(1);
}

void PlainHeader::paintSection(QPainter* painter, const QRect& rect, int column) const {
    painter->fillRect(rect, palette().color(QPalette::Window));
    painter->fillRect(QRect(rect.left(), rect.bottom(), rect.width(), 1),
                      palette().color(QPalette::Midlight));
    painter->setPen(row::Ink::of(palette()).quiet);
    painter->drawText(rect.adjusted(margin_, 0, -margin_, 0),
                      Qt::AlignVCenter | (column == 0 ? Qt::AlignLeft : Qt::AlignRight),
                      model()->headerData(column, Qt::Horizontal).toString());
}

}  // namespace tenter::desktop::panels
