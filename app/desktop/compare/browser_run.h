// A browser, run once without a window, that reads a page at many widths.
#pragma once

#include <QElapsedTimer>
#include <QObject>
#include <QProcess>
#include <QTimer>
#include <memory>
#include <vector>

#include "compare/browser.h"

namespace tenter::desktop::compare {

class PageHost;

class BrowserRun : public QObject {
    Q_OBJECT

public:
    /// Reads `html`, a page as the `page` verb prints it, at each of `widths` (CSS px, whole) in that order.
    BrowserRun(Browser browser, const QByteArray& html, std::vector<double> widths,
               QObject* parent = nullptr);
    /// Ends the browser, if it runs, and removes what it kept.
    ~BrowserRun() override;
    void start();

signals:
    /// Readings at `widths`, in their order, as judge::parseBrowserLayouts takes them.
    void read(const std::vector<double>& widths, const QByteArray& json);
    void finished();
    void failed(const QString& why);

private:
    struct Process;
    QByteArray next(const QByteArray& sent);
    void fail(const QString& why);
    void ended();

    Browser browser_;
    std::vector<double> widths_;
    std::size_t asked_ = 0;       // of `widths_`, so many
    std::vector<double> asking_;  // those that the browser reads now
    std::unique_ptr<PageHost> host_;
    std::unique_ptr<Process> process_;
    QTimer patience_;
    bool over_ = false;
};

}  // namespace tenter::desktop::compare
