// A thin line between areas of a panel.
#pragma once

#include <QFrame>

namespace tenter::desktop::controls {

/// A horizontal line of 1 px, in the colour of hairlines.
inline QFrame* separator(QWidget* parent) {
    auto* line = new QFrame(parent);
    line->setFixedHeight(1);
    line->setAutoFillBackground(true);
    line->setBackgroundRole(QPalette::Midlight);
    return line;
}

}  // namespace tenter::desktop::controls
