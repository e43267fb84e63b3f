#include "compare/browser_process.h"

#include <QDir>
#include <QThread>
#include <utility>

#ifdef Q_OS_LINUX
#include <sys/prctl.h>
#endif
#ifdef Q_OS_UNIX
#include <unistd.h>
#include <csignal>
#endif

namespace tenter::desktop::compare {

namespace {

constexpr int exitMilliseconds = 5000;
constexpr int mostTries = 20;  // to remove the folder
constexpr int retryMilliseconds = 25;

}  // namespace

BrowserProcess::BrowserProcess(Browser browser, QObject* parent)
    : QObject(parent), browser_(std::move(browser)) {
    connect(&process_, &QProcess::errorOccurred, this, [this](QProcess::ProcessError error) {
        if (error == QProcess::FailedToStart)
            Q_EMIT failed(
                QObject::tr("%1 could not be started: %2.").arg(browser_.program, process_.errorString()));
    });
    connect(&process_, &QProcess::finished, this, &BrowserProcess::ended);
}

void BrowserProcess::open(const QUrl& page) {
    if (!folder_.isValid() || !prepareFolder(browser_, folder_.path())) {
        Q_EMIT failed(
            QObject::tr(
                "The temporary folder for %1 could not be created. Free some disk space and try again.")
                .arg(browser_.title));
        return;
    }
#ifdef Q_OS_UNIX
    // A process group, so that the browser's helper processes end with it.
    process_.setChildProcessModifier([] {
        ::setpgid(0, 0);
#ifdef Q_OS_LINUX
        // The browser also ends if this program is killed.
        ::prctl(PR_SET_PDEATHSIG, SIGKILL);
#endif
    });
#endif
    process_.setStandardInputFile(QProcess::nullDevice());
    process_.setStandardOutputFile(QProcess::nullDevice());
    process_.start(browser_.program, arguments(browser_, folder_.path(), page));
}

BrowserProcess::~BrowserProcess() {
    process_.disconnect();
#ifdef Q_OS_UNIX
    if (process_.processId() > 0) ::kill(static_cast<pid_t>(-process_.processId()), SIGKILL);
#endif
    process_.kill();
    process_.waitForFinished(exitMilliseconds);
    // A helper process that is just ending may still write files, so removing is tried several times.
    folder_.setAutoRemove(false);
    for (int tries = 0; tries < mostTries && !QDir(folder_.path()).removeRecursively(); ++tries)
        QThread::msleep(retryMilliseconds);
}

void BrowserProcess::ended() {
    const QString output = QString::fromUtf8(process_.readAllStandardError()).trimmed();
    const QString last = output.section('\n', -1).left(300);
    Q_EMIT failed(QObject::tr("%1 closed before it was finished.").arg(browser_.title) +
                  (last.isEmpty() ? QString() : ' ' + QObject::tr("Its last message: %1").arg(last)));
}

}  // namespace tenter::desktop::compare
