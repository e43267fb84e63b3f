#include "accessible/label_interface.h"

#include <QTextDocumentFragment>

namespace tenter::desktop::accessible {

QString LabelInterface::text(QAccessible::Text kind) const {
    if (kind != QAccessible::Name) return QAccessibleWidget::text(kind);
    const bool rich = label().textFormat() == Qt::RichText ||
                      (label().textFormat() == Qt::AutoText && Qt::mightBeRichText(label().text()));
    QString text = rich ? QTextDocumentFragment::fromHtml(label().text()).toPlainText() : label().text();
    // The mark of a key.
    if (label().buddy() != nullptr) text.remove('&');
    const QString name = label().accessibleName();
    if (text.isEmpty() || name.contains(text)) return name;
    return name.isEmpty() ? text : name + ": " + text;
}

QAccessible::Role LabelInterface::role() const {
    return label().pixmap().isNull() ? QAccessible::StaticText : QAccessible::Graphic;
}

QAccessible::State LabelInterface::state() const {
    QAccessible::State state = QAccessibleWidget::state();
    state.readOnly = true;
    return state;
}

QList<std::pair<QAccessibleInterface*, QAccessible::Relation>> LabelInterface::relations(
    QAccessible::Relation match) const {
    auto all = QAccessibleWidget::relations(match);
    if (label().buddy() != nullptr && match.testFlag(QAccessible::Labelled))
        all.append({QAccessible::queryAccessibleInterface(label().buddy()), QAccessible::Labelled});
    return all;
}

}  // namespace tenter::desktop::accessible
