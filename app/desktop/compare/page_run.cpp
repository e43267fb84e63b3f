#include "compare/page_run.h"

#include <utility>

#include "compare/browser_process.h"
#include "compare/page_host.h"

namespace tenter::desktop::compare {

namespace {

constexpr int pageTimeoutSeconds = 60;

}  // namespace

PageRun::PageRun(Browser browser, const QByteArray& html, QObject* parent)
    : QObject(parent), browser_(std::move(browser)), host_(std::make_unique<PageHost>()) {
    host_->addPage("page", html);
    host_->addAnswer("result", [this](const QByteArray& text) {
        // Queued, because the host is still answering this request.
        QTimer::singleShot(0, this, [this, text] {
            if (std::exchange(over_, true)) return;
            timeout_.stop();
            process_.reset();
            Q_EMIT posted(text);
        });
        return QByteArray("{}");
    });
    timeout_.setSingleShot(true);
    timeout_.setInterval(pageTimeoutSeconds * 1000);
    connect(&timeout_, &QTimer::timeout, this,
            [this] { fail(noResponseText(browser_, pageTimeoutSeconds)); });
}

PageRun::~PageRun() = default;

void PageRun::start() {
    process_ = std::make_unique<BrowserProcess>(browser_);
    connect(process_.get(), &BrowserProcess::failed, this, &PageRun::fail);
    if (!host_->listen()) {
        fail(noPortText(browser_));
        return;
    }
    timeout_.start();
    process_->open(host_->address("page"));
}

void PageRun::fail(const QString& why) {
    if (std::exchange(over_, true)) return;
    timeout_.stop();
    Q_EMIT failed(why);
}

}  // namespace tenter::desktop::compare
