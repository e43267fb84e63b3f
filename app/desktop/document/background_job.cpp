#include "document/background_job.h"

#include <QCoreApplication>
#include <QEvent>

#if defined(__SANITIZE_THREAD__)
#include <sanitizer/tsan_interface.h>
#endif

namespace tenter::desktop {

namespace {

// Qt hands tasks to the worker and results to the GUI thread, each after what was done before. The thread
// sanitizer does not see that, because Qt is not built with it.
void handOver([[maybe_unused]] void* what) {
#if defined(__SANITIZE_THREAD__)
    __tsan_release(what);
#endif
}
void takeOver([[maybe_unused]] void* what) {
#if defined(__SANITIZE_THREAD__)
    __tsan_acquire(what);
#endif
}

}  // namespace

BackgroundJob::BackgroundJob(QObject* parent) : QObject(parent) {
    pool_.setMaxThreadCount(1);
}

BackgroundJob::~BackgroundJob() {
    stop_.request_stop();
    pool_.clear();
    pool_.waitForDone();
    takeOver(this);
}

void BackgroundJob::run(Task task) {
    ++pending_;
    handOver(this);
    pool_.start([this, serial = serial_, stop = stop_.get_token(), task = std::move(task)]() mutable {
        takeOver(this);
        if (stop.stop_requested()) return;
        Delivery delivery = task(stop);
        // What the task holds must not be destroyed on the GUI thread while it may still be in use here.
        task = nullptr;
        handOver(this);
        QMetaObject::invokeMethod(
            this, [this, serial, delivery = std::move(delivery)] { deliver(serial, delivery); },
            Qt::QueuedConnection);
    });
    announce();
}

void BackgroundJob::deliver(int serial, const Delivery& delivery) {
    takeOver(this);
    if (serial != serial_) return;
    --pending_;
    delivery();
    announce();
}

void BackgroundJob::announce() {
    if (std::exchange(wasRunning_, isRunning()) != isRunning()) Q_EMIT runningChanged(isRunning());
}

void BackgroundJob::cancel() {
    stop_.request_stop();
    stop_ = std::stop_source();
    pool_.clear();
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
