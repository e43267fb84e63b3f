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

constexpr std::size_t atOnce = 16;  // widths, between two words of progress
constexpr int patienceSeconds = 120;
constexpr int farewellMilliseconds = 5000;
constexpr int mostTries = 20;  // at removing its folder
constexpr int restMilliseconds = 25;

}  // namespace

/// The browser's process with all that it starts, and its folder, which goes with it.
struct BrowserRun::Process {
    QTemporaryDir folder;
    QProcess process;

    void start(const QString& program, const QStringList& arguments) {
#ifdef Q_OS_UNIX
        // A group of its own, so that its helpers end with it.
        process.setChildProcessModifier([] {
            ::setpgid(0, 0);
#ifdef Q_OS_LINUX
            // Nor does it outlive a window that is killed.
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
        process.waitForFinished(farewellMilliseconds);
        // A helper that is just being ended may still write.
        folder.setAutoRemove(false);
        for (int tries = 0; tries < mostTries && !QDir(folder.path()).removeRecursively(); ++tries)
            QThread::msleep(restMilliseconds);
    }
};

BrowserRun::BrowserRun(Browser browser, const QByteArray& html, std::vector<double> widths, QObject* parent)
    : QObject(parent),
      browser_(std::move(browser)),
      widths_(std::move(widths)),
      host_(std::make_unique<PageHost>()) {
    host_->addPage("frame", measuringPage());
    host_->addPage("row", html);
    host_->addAnswer("readings", [this](const QByteArray& sent) { return next(sent); });
    host_->addAnswer("failed", [this](const QByteArray& says) {
        // Later: the host is in the midst of answering.
        const QString why =
            browser_.title + " opened the page, but " + QString::fromUtf8(says.left(400)) + '.';
        QTimer::singleShot(0, this, [this, why] { fail(why); });
        return QByteArray("{}");
    });
    patience_.setSingleShot(true);
    patience_.setInterval(patienceSeconds * 1000);
    connect(&patience_, &QTimer::timeout, this, [this] {
        fail(browser_.title + " has said nothing for " + QString::number(patienceSeconds) +
             " seconds and was ended. Try again when the machine has less to do.");
    });
}

BrowserRun::~BrowserRun() = default;

void BrowserRun::start() {
    process_ = std::make_unique<Process>();
    if (!process_->folder.isValid() || !prepareFolder(browser_, process_->folder.path())) {
        fail("No folder could be made for " + browser_.title + "’s own files; make room on the disk.");
        return;
    }
    if (!host_->listen()) {
        fail("No port of this machine could be had to show " + browser_.title + " the page.");
        return;
    }
    connect(&process_->process, &QProcess::errorOccurred, this, [this](QProcess::ProcessError error) {
        if (error == QProcess::FailedToStart)
            fail(browser_.program + " could not be started: " + process_->process.errorString() + '.');
    });
    connect(&process_->process, &QProcess::finished, this, &BrowserRun::ended);
    patience_.start();
    process_->start(browser_.program, arguments(browser_, process_->folder.path(), host_->address("frame")));
}

QByteArray BrowserRun::next(const QByteArray& sent) {
    patience_.start();
    if (!asking_.empty()) emit read(std::exchange(asking_, {}), sent);
    const std::size_t count = std::min(atOnce, widths_.size() - asked_);
    const auto from = widths_.begin() + static_cast<std::ptrdiff_t>(asked_);
    asking_.assign(from, from + static_cast<std::ptrdiff_t>(count));
    asked_ += count;
    QByteArray list;
    for (const double width : asking_)
        list += (list.isEmpty() ? "" : ",") + QByteArray::number(width, 'g', 17);
    if (asking_.empty())
        QTimer::singleShot(0, this, [this] {
            if (std::exchange(over_, true)) return;
            patience_.stop();
            process_.reset();
            emit finished();
        });
    return "{\"widths\": [" + list + "]}";
}

void BrowserRun::fail(const QString& why) {
    if (std::exchange(over_, true)) return;
    patience_.stop();
    emit failed(why);
}

void BrowserRun::ended() {
    const QString said = QString::fromUtf8(process_->process.readAllStandardError()).trimmed();
    const QString last = said.section('\n', -1).left(300);
    fail(browser_.title + " ended before it had read everything" +
         (last.isEmpty() ? QString(".") : ". Its last words: " + last));
}

}  // namespace tenter::desktop::compare
