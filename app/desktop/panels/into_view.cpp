#include "panels/into_view.h"

#include <QScrollArea>
#include <QTimer>

namespace tenter::desktop::panels {

void bringIntoView(QWidget* box, QWidget* head) {
    const auto reveal = [box, head] {
        for (QWidget* above = box->parentWidget(); above != nullptr; above = above->parentWidget())
            if (auto* scrolled = qobject_cast<QScrollArea*>(above)) {
                scrolled->ensureWidgetVisible(box, 0, 0);
                scrolled->ensureWidgetVisible(head, 0, 8);
            }
    };
    // Panels are refreshed once the event loop is idle, and get their new heights after that.
    constexpr int settled = 20;
    QTimer::singleShot(0, box, [box, reveal] { QTimer::singleShot(settled, box, reveal); });
}

}  // namespace tenter::desktop::panels
