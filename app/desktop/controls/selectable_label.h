// A label whose plain text wraps and can be selected, for messages that a person may want to copy.
#pragma once

#include <QLabel>

namespace tenter::desktop::controls {

inline QLabel* selectableLabel(const QString& text, QWidget* parent) {
    auto* label = new QLabel(text, parent);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    return label;
}

}  // namespace tenter::desktop::controls
