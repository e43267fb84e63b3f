#include "window/tooltips.h"

#include <QApplication>
#include <QHelpEvent>
#include <QTextDocument>
#include <QToolTip>
#include <QWidget>

#include "document/wording.h"

namespace tenter::desktop::window {

namespace {

constexpr qsizetype longestLine = 72;  // characters

}  // namespace

WrappedTooltips::WrappedTooltips() {
    qApp->installEventFilter(this);
}

bool WrappedTooltips::eventFilter(QObject* watched, QEvent* event) {
    auto* widget = qobject_cast<QWidget*>(watched);
    if (event->type() != QEvent::ToolTip || widget == nullptr) return false;
    const QString tip = widget->toolTip();
    if (tip.size() <= longestLine || Qt::mightBeRichText(tip)) return false;
    QToolTip::showText(static_cast<QHelpEvent*>(event)->globalPos(), toolTipText(tip), widget);
    return true;
}

}  // namespace tenter::desktop::window
