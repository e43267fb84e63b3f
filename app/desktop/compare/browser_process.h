// A browser without a window, with a temporary folder for its profile.
#pragma once

#include <QObject>
#include <QProcess>
#include <QTemporaryDir>
#include <QUrl>

#include "compare/browser.h"

namespace tenter::desktop::compare {

/// The browser's process group and its temporary folder. Both end with this object.
class BrowserProcess : public QObject {
    Q_OBJECT

public:
    explicit BrowserProcess(Browser browser, QObject* parent = nullptr);
    ~BrowserProcess() override;
    /// Starts the browser with a page.
    void open(const QUrl& page);

Q_SIGNALS:
    /// The browser did not start, or it closed by itself. `why` is a message for the user.
    void failed(const QString& why);

private:
    void ended();

    Browser browser_;
    QTemporaryDir folder_;
    QProcess process_;
};

}  // namespace tenter::desktop::compare
