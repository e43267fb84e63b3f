#include "recovery/safe_application.h"

#include <exception>

#include "recovery/failure_report.h"

namespace tenter::desktop::recovery {

bool SafeApplication::notify(QObject* receiver, QEvent* event) {
    try {
        return QApplication::notify(receiver, event);
    } catch (const std::exception& error) {
        if (isShowing_) throw;
        isShowing_ = true;
        showFailure(
            activeWindow(), QObject::tr("Tenter could not finish the last action."),
            QObject::tr(
                "Your project is open as it was before it, and its changes are kept for the next start. "
                "Save the project under another name and start Tenter again. The report helps to fix the "
                "error; it has no content of your files."),
            failureText(QString("An action failed: ") + error.what()));
        isShowing_ = false;
        return false;
    }
}

}  // namespace tenter::desktop::recovery
