#include "window/tooltips.h"

#include <QTextDocument>
#include <QToolTip>
#include <QWidget>

#include "document/wording.h"

namespace tenter::desktop::window {

namespace {

constexpr qsizetype longestLine = 72;  // characters

}  // namespace

bool showWrapped(const QHelpEvent& event, QObject* watched) {
    auto* widget = qobject_cast<QWidget*>(watched);
    if (widget == nullptr) return false;
    const QString tip = widget->toolTip();
    if (tip.size() <= longestLine || Qt::mightBeRichText(tip)) return false;
    QToolTip::showText(event.globalPos(), toolTipText(tip), widget);
    return true;
}

}  // namespace tenter::desktop::window
