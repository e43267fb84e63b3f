// The application, which survives an exception in an event handler.
#pragma once

#include <QApplication>

namespace tenter::desktop::recovery {

class SafeApplication : public QApplication {
public:
    using QApplication::QApplication;
    /// Delivers the event. Shows a report if that throws; the work so far stays open.
    bool notify(QObject* receiver, QEvent* event) override;

private:
    bool isShowing_ = false;
};

}  // namespace tenter::desktop::recovery
