#include "panels/into_view.h"

#include <QScrollArea>
#include <QTimer>

namespace tenter::desktop::panels {

void bringIntoView(QWidget* box, QWidget* head) {
    QTimer::singleShot(0, box, [box, head] {
        for (QWidget* above = box->parentWidget(); above != nullptr; above = above->parentWidget())
            if (auto* scrolled = qobject_cast<QScrollArea*>(above)) {
                scrolled->ensureWidgetVisible(box, 0, 0);
                scrolled->ensureWidgetVisible(head, 0, 8);
            }
    });
}

}  // namespace tenter::desktop::panels
