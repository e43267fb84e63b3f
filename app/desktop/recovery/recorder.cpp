#include "recovery/recorder.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QDir>
#include <QFile>
#include <utility>

#include "project/file.h"
#include "recovery/unsaved_work.h"

namespace tenter::desktop::recovery {

namespace {

constexpr int longestWrite = 5000;       // ms
constexpr int pauseAfterFailure = 2000;  // ms

}  // namespace

Recorder::Recorder(const Document& document, const QString& folder, QObject* parent)
    : QObject(parent),
      document_(document),
      file_(folder + QString("/%1-%2.recovery")
                         .arg(QDateTime::currentMSecsSinceEpoch())
                         .arg(QCoreApplication::applicationPid())) {
    QDir().mkpath(folder);
    QFile::setPermissions(folder, QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
    lock_ = std::make_unique<QLockFile>(lockOf(file_));
    lock_->setStaleLockTime(0);
    timer_.setSingleShot(true);
    connect(&timer_, &QTimer::timeout, this, &Recorder::record);
    connect(&document_, &Document::changed, this, &Recorder::follow);
    connect(&document_, &Document::fileChanged, this, &Recorder::follow);
}

Recorder::~Recorder() {
    if (timer_.isActive()) record();
    finish();
}

void Recorder::follow() {
    if (!document_.isModified())
        discard();
    else if (document_.revision() != recorded_ && !timer_.isActive())
        timer_.start(delay);
}

void Recorder::record() {
    timer_.stop();
    if (!document_.isModified()) return;
    if (job_.isRunning()) {
        // One write after the other; the next has everything up to then.
        timer_.start(delay);
        return;
    }
    if (!lock_->isLocked()) lock_->tryLock(0);
    recorded_ = document_.revision();
    exists_ = true;
    job_.add(
        [project = document_.snapshot(), file = document_.file(), folder = document_.folder(),
         to = file_](const std::stop_token&) {
            project::Problems problems;
            project::replaceFile(to.toStdString(),
                                 recoveryText({*project, file, folder, QDateTime::currentDateTimeUtc()}),
                                 problems);
            return problems;
        },
        [this](const project::Problems& problems) {
            const bool failedBefore = std::exchange(hasFailed_, !problems.empty());
            if (hasFailed_ && !failedBefore) Q_EMIT failed(QString::fromStdString(problems.front().what));
            if (!hasFailed_) return follow();
            // The disk may have room again.
            recorded_ = -1;
            timer_.start(pauseAfterFailure);
        });
}

void Recorder::discard() {
    timer_.stop();
    recorded_ = -1;
    if (!std::exchange(exists_, false)) return;
    finish();
    QFile::remove(file_);
}

void Recorder::adopt(const QString& recoveryFile) {
    finish();
    QFile::remove(file_);
    if (!lock_->isLocked()) lock_->tryLock(0);
    exists_ = QFile::rename(recoveryFile, file_);
}

void Recorder::finish() {
    job_.waitFor(longestWrite);
}

}  // namespace tenter::desktop::recovery
