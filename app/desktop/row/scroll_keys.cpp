#include "row/scroll_keys.h"

#include <QScrollBar>

namespace tenter::desktop::row {

bool scrollByKey(QAbstractScrollArea& area, int key) {
    QScrollBar* const bar = area.verticalScrollBar();
    switch (key) {
        case Qt::Key_PageUp:
            bar->triggerAction(QAbstractSlider::SliderPageStepSub);
            return true;
        case Qt::Key_PageDown:
            bar->triggerAction(QAbstractSlider::SliderPageStepAdd);
            return true;
        case Qt::Key_Home:
            bar->setValue(0);
            return true;
        case Qt::Key_End:
            bar->setValue(bar->maximum());
            return true;
        default:
            return false;
    }
}

}  // namespace tenter::desktop::row
