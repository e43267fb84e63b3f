#include "panels/row_parts.h"

#include <QPainter>

#include "controls/glyphs.h"
#include "document/wording.h"
#include "panels/setting_help.h"

namespace tenter::desktop::panels {

QToolButton* resetButton(QWidget* parent) {
    auto* button = new QToolButton(parent);
    button->setFixedSize(buttonSide, buttonSide);
    button->setIconSize({14, 14});
    button->setAutoRaise(true);
    button->setIcon(controls::glyph(controls::Glyph::Reset));
    button->setToolTip(QObject::tr("Reset to inherited value"));
    QSizePolicy keep = button->sizePolicy();
    keep.setRetainSizeWhenHidden(true);
    button->setSizePolicy(keep);
    return button;
}

void setHelp(QWidget& row, const controls::Editor& editor, const QString& title, const QString& help) {
    if (help.isEmpty()) return;
    const QString text = whatsThisText(title, help, editor.accepts());
    row.setWhatsThis(text);
    // Screen readers read it from the field itself.
    for (QWidget* field : editor.findChildren<QWidget*>())
        if (field->focusPolicy() != Qt::NoFocus) field->setWhatsThis(text);
}

void paintSetHere(QWidget* row, int y) {
    QPainter painter(row);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(row->palette().color(QPalette::Highlight));
    const int x = row->layoutDirection() == Qt::RightToLeft ? row->width() - 4 : 4;
    painter.drawEllipse(QPointF(x, y + 0.5), 3, 3);
}

QString undoName(const QString& name, bool resets) {
    return (resets ? QObject::tr("Reset %1", "setting") : QObject::tr("Change %1", "setting"))
        .arg(inSentence(name));
}

}  // namespace tenter::desktop::panels
