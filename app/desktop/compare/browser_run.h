// One run of a browser without a window, which measures the layout of a page at many widths.
#pragma once

#include <QObject>
#include <QTimer>
#include <memory>
#include <vector>

#include "compare/browser.h"

namespace tenter::desktop::compare {

class BrowserProcess;
class PageHost;

class BrowserRun : public QObject {
    Q_OBJECT

public:
    /// `html` is a page as the verb `page` prints it. It is measured at each of `widths` (whole CSS px), in
    /// this order.
    BrowserRun(Browser browser, const QByteArray& html, std::vector<double> widths,
               QObject* parent = nullptr);
    /// Stops the browser if it is running and removes its temporary folder.
    ~BrowserRun() override;
    void start();

Q_SIGNALS:
    /// The layouts at `widths`, in their order, as JSON for judge::parseBrowserLayouts.
    void measured(const std::vector<double>& widths, const QByteArray& json);
    void finished();
    void failed(const QString& why);

private:
    /// Passes on the layouts that the page has sent, and returns the widths to measure next as JSON.
    QByteArray next(const QByteArray& sent);
    void fail(const QString& why);

    Browser browser_;
    std::vector<double> widths_;
    std::size_t requestedCount_ = 0;  // number of `widths_` that were sent to the browser
    std::vector<double> requested_;   // the widths that the browser measures now
    std::unique_ptr<PageHost> host_;
    std::unique_ptr<BrowserProcess> process_;
    QTimer timeout_;
    bool over_ = false;
};

}  // namespace tenter::desktop::compare
