#include "panels/tabs.h"

#include <QPainter>

#include "controls/inks.h"
#include "controls/text_scale.h"

namespace tenter::desktop::panels {

Tabs::Tabs(QWidget* parent) : QTabBar(parent) {
    setDrawBase(false);
    setExpanding(true);
    setUsesScrollButtons(false);
    setElideMode(Qt::ElideNone);
    setFocusPolicy(Qt::TabFocus);
    setAccessibleName(QObject::tr("Panels"));
}

QSize Tabs::tabSizeHint(int index) const {
    return {fontMetrics().horizontalAdvance(tabText(index)) + 14, controls::scaled(40)};
}

QSize Tabs::minimumTabSizeHint(int index) const {
    return {fontMetrics().horizontalAdvance(tabText(index)) + 4, controls::scaled(40)};
}

void Tabs::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setPen(controls::hairline(palette()));
    painter.drawLine(0, height() - 1, width(), height() - 1);
    for (int i = 0; i < count(); ++i) {
        const QRect box = tabRect(i);
        const bool current = i == currentIndex();
        painter.setPen(current ? palette().color(QPalette::WindowText) : controls::quiet(palette()));
        painter.drawText(box, Qt::AlignCenter, tabText(i));
        const int wide = fontMetrics().horizontalAdvance(tabText(i));
        if (current)
            painter.fillRect(QRect(box.center().x() - wide / 2, height() - 2, wide + 1, 2),
                             palette().color(QPalette::Highlight));
        if (current && hasFocus()) {
            painter.setPen(QPen(palette().color(QPalette::Highlight), 2));
            painter.drawRect(box.adjusted(2, 6, -2, -7));
        }
    }
}

}  // namespace tenter::desktop::panels
