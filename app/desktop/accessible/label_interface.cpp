#include "accessible/label_interface.h"

#include <QTextDocumentFragment>

namespace tenter::desktop::accessible {

QString LabelInterface::text(QAccessible::Text kind) const {
    if (kind != QAccessible::Name) return QAccessibleWidget::text(kind);
    const bool rich = label().textFormat() == Qt::RichText ||
                      (label().textFormat() == Qt::AutoText && Qt::mightBeRichText(label().text()));
    const QString text =
        rich ? QTextDocumentFragment::fromHtml(label().text()).toPlainText() : label().text();
    const QString name = label().accessibleName();
    if (text.isEmpty() || name.contains(text)) return name;
    return name.isEmpty() ? text : name + ": " + text;
}

QAccessible::State LabelInterface::state() const {
    QAccessible::State state = QAccessibleWidget::state();
    state.readOnly = true;
    return state;
}

}  // namespace tenter::desktop::accessible
