#include "compare/browser_run.h"

#include <QDir>
#include <QTemporaryDir>
#include <QThread>
#include <algorithm>
#include <utility>

#include "compare/measuring_page.h"
#include "compare/page_host.h"

#ifdef Q_OS_LINUX
#include <sys/prctl.h>
#endif
#ifdef Q_OS_UNIX
#include <unistd.h>
#include <csignal>
#endif

namespace tenter::desktop::compare {

namespace {

constexpr std::size_t widthsPerRequest = 16;  // progress is shown after each request
constexpr int timeoutSeconds = 120;
constexpr int exitMilliseconds = 5000;
constexpr int mostTries = 20;  // to remove the folder
constexpr int retryMilliseconds = 25;

}  // namespace

/// The browser's process group and its temporary folder. Both end with this object.
struct BrowserRun::Process {
    QTemporaryDir folder;
    QProcess process;

    void start(const QString& program, const QStringList& arguments) {
#ifdef Q_OS_UNIX
        // A process group, so that the browser's helper processes end with it.
        process.setChildProcessModifier([] {
            ::setpgid(0, 0);
#ifdef Q_OS_LINUX
            // The browser also ends if this program is killed.
            ::prctl(PR_SET_PDEATHSIG, SIGKILL);
#endif
        });
#endif
        process.setStandardInputFile(QProcess::nullDevice());
        process.setStandardOutputFile(QProcess::nullDevice());
        process.start(program, arguments);
    }

    ~Process() {
        process.disconnect();
#ifdef Q_OS_UNIX
        if (process.processId() > 0) ::kill(static_cast<pid_t>(-process.processId()), SIGKILL);
#endif
        process.kill();
        process.waitForFinished(exitMilliseconds);
        // A helper process that is just ending may still write files, so removing is tried several times.
        folder.setAutoRemove(false);
        for (int tries = 0; tries < mostTries && !QDir(folder.path()).removeRecursively(); ++tries)
            QThread::msleep(retryMilliseconds);
    }
};

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
        const QString why =
            browser_.title + " could not measure the page: " + QString::fromUtf8(message.left(400)) + '.';
        QTimer::singleShot(0, this, [this, why] { fail(why); });
        return QByteArray("{}");
    });
    timeout_.setSingleShot(true);
    timeout_.setInterval(timeoutSeconds * 1000);
    connect(&timeout_, &QTimer::timeout, this, [this] {
        fail(browser_.title + " did not respond for " + QString::number(timeoutSeconds) +
             " seconds and was stopped. Try again when the computer is less busy.");
    });
}

BrowserRun::~BrowserRun() = default;

void BrowserRun::start() {
    process_ = std::make_unique<Process>();
    if (!process_->folder.isValid() || !prepareFolder(browser_, process_->folder.path())) {
        fail("The temporary folder for " + browser_.title +
             " could not be created. Free some disk space and try again.");
        return;
    }
    if (!host_->listen()) {
        fail("No free network port was found on this computer to show the page to " + browser_.title +
             ". Try again later.");
        return;
    }
    connect(&process_->process, &QProcess::errorOccurred, this, [this](QProcess::ProcessError error) {
        if (error == QProcess::FailedToStart)
            fail(browser_.program + " could not be started: " + process_->process.errorString() + '.');
    });
    connect(&process_->process, &QProcess::finished, this, &BrowserRun::ended);
    timeout_.start();
    process_->start(browser_.program, arguments(browser_, process_->folder.path(), host_->address("frame")));
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

void BrowserRun::ended() {
    const QString output = QString::fromUtf8(process_->process.readAllStandardError()).trimmed();
    const QString last = output.section('\n', -1).left(300);
    fail(browser_.title + " closed before the comparison was finished." +
         (last.isEmpty() ? QString() : " Its last message: " + last));
}

}  // namespace tenter::desktop::compare
