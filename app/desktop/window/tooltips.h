// Tooltips that wrap: Qt shows a plain text of any length on one line.
#pragma once

#include <QObject>

namespace tenter::desktop::window {

/// While it exists, long plain tooltips of all widgets are shown in several lines.
class WrappedTooltips : public QObject {
    Q_OBJECT

public:
    WrappedTooltips();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
};

}  // namespace tenter::desktop::window
