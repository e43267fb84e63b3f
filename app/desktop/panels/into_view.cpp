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
    // Panels follow what has changed once the event loop is idle; their new heights come after that.
    constexpr int settled = 20;
    QTimer::singleShot(0, box, [box, reveal] { QTimer::singleShot(settled, box, reveal); });
}

}  // namespace tenter::desktop::panels
