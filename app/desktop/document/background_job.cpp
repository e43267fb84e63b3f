#include "document/background_job.h"

#include <QCoreApplication>
#include <QEvent>

namespace tenter::desktop {

BackgroundJob::BackgroundJob(QObject* parent) : QObject(parent) {
    pool_.setMaxThreadCount(1);
}

BackgroundJob::~BackgroundJob() {
    stop_.request_stop();
    pool_.clear();
    pool_.waitForDone();
    // The worker's last use of the queues is before this, for the thread sanitizer too.
    const std::scoped_lock lock(mutex_);
}

void BackgroundJob::run(Task task) {
    ++pending_;
    {
        const std::scoped_lock lock(mutex_);
        tasks_.push_back({serial_, stop_.get_token(), std::move(task)});
    }
    pool_.start([this] { runNext(); });
    announce();
}

void BackgroundJob::runNext() {
    std::unique_lock lock(mutex_);
    if (tasks_.empty()) return;
    Waiting next = std::move(tasks_.front());
    tasks_.pop_front();
    lock.unlock();
    if (next.stop.stop_requested()) return;
    Delivery delivery = next.task(next.stop);
    // What the task holds must not be destroyed on the GUI thread while it may still be in use here.
    next.task = nullptr;
    lock.lock();
    results_.push_back({next.serial, std::move(delivery)});
    lock.unlock();
    QMetaObject::invokeMethod(this, "deliverNext", Qt::QueuedConnection);
}

void BackgroundJob::deliverNext() {
    std::unique_lock lock(mutex_);
    if (results_.empty()) return;
    const Ready ready = std::move(results_.front());
    results_.pop_front();
    lock.unlock();
    if (ready.serial != serial_) return;
    --pending_;
    ready.delivery();
    announce();
}

void BackgroundJob::announce() {
    if (std::exchange(wasRunning_, isRunning()) != isRunning()) Q_EMIT runningChanged(isRunning());
}

void BackgroundJob::cancel() {
    stop_.request_stop();
    stop_ = std::stop_source();
    pool_.clear();
    {
        const std::scoped_lock lock(mutex_);
        tasks_.clear();
    }
    ++serial_;
    pending_ = 0;
    announce();
}

bool BackgroundJob::waitFor(int milliseconds) {
    pool_.waitForDone(milliseconds);
    QCoreApplication::sendPostedEvents(this, QEvent::MetaCall);
    return !isRunning();
}

}  // namespace tenter::desktop
