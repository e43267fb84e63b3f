#include "compare/browser_run.h"

#include <algorithm>
#include <utility>

#include "compare/browser_process.h"
#include "compare/measuring_page.h"
#include "compare/page_host.h"

namespace tenter::desktop::compare {

namespace {

constexpr std::size_t widthsPerRequest = 16;  // progress is shown after each request
constexpr int timeoutSeconds = 120;

}  // namespace

BrowserRun::BrowserRun(Browser browser, const QByteArray& html, std::vector<double> widths, QObject* parent)
    : QObject(parent),
      browser_(std::move(browser)),
      widths_(std::move(widths)),
      host_(std::make_unique<PageHost>()) {
    host_->addPage("frame", measuringPage());
    host_->addPage("row", html);
    host_->addAnswer("layouts", [this](const QByteArray& sent) { return next(sent); });
    host_->addAnswer("failed", [this](const QByteArray& message) {
        // Queued, because the host is still answering this request.
        const QString why = QObject::tr("%1 could not measure the page: %2.")
                                .arg(browser_.title, QString::fromUtf8(message.left(400)));
        QTimer::singleShot(0, this, [this, why] { fail(why); });
        return QByteArray("{}");
    });
    timeout_.setSingleShot(true);
    timeout_.setInterval(timeoutSeconds * 1000);
    connect(&timeout_, &QTimer::timeout, this, [this] { fail(noResponseText(browser_, timeoutSeconds)); });
}

BrowserRun::~BrowserRun() = default;

void BrowserRun::start() {
    process_ = std::make_unique<BrowserProcess>(browser_);
    connect(process_.get(), &BrowserProcess::failed, this, &BrowserRun::fail);
    if (!host_->listen()) {
        fail(noPortText(browser_));
        return;
    }
    timeout_.start();
    process_->open(host_->address("frame"));
}

QByteArray BrowserRun::next(const QByteArray& sent) {
    timeout_.start();
    if (!requested_.empty()) Q_EMIT measured(std::exchange(requested_, {}), sent);
    const std::size_t count = std::min(widthsPerRequest, widths_.size() - requestedCount_);
    const auto from = widths_.begin() + static_cast<std::ptrdiff_t>(requestedCount_);
    requested_.assign(from, from + static_cast<std::ptrdiff_t>(count));
    requestedCount_ += count;
    QByteArray list;
    for (const double width : requested_)
        list += (list.isEmpty() ? "" : ",") + QByteArray::number(width, 'g', 17);
    if (requested_.empty())
        QTimer::singleShot(0, this, [this] {
            if (std::exchange(over_, true)) return;
            timeout_.stop();
            process_.reset();
            Q_EMIT finished();
        });
    return "{\"widths\": [" + list + "]}";
}

void BrowserRun::fail(const QString& why) {
    if (std::exchange(over_, true)) return;
    timeout_.stop();
    Q_EMIT failed(why);
}

}  // namespace tenter::desktop::compare
