// One run of a browser without a window, which opens a page and waits for what the page posts.
#pragma once

#include <QObject>
#include <QTimer>
#include <memory>

#include "compare/browser.h"

namespace tenter::desktop::compare {

class BrowserProcess;
class PageHost;

class PageRun : public QObject {
    Q_OBJECT

public:
    /// The script of `html` posts one text to the address `result`, relative to that of the page.
    PageRun(Browser browser, const QByteArray& html, QObject* parent = nullptr);
    /// Stops the browser if it is running and removes its temporary folder.
    ~PageRun() override;
    void start();

Q_SIGNALS:
    void posted(const QByteArray& text);
    void failed(const QString& why);  ///< `why` is a message for the user

private:
    void fail(const QString& why);

    Browser browser_;
    std::unique_ptr<PageHost> host_;
    std::unique_ptr<BrowserProcess> process_;
    QTimer timeout_;
    bool over_ = false;
};

}  // namespace tenter::desktop::compare
