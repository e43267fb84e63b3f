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
}

void BackgroundJob::run(Task task) {
    ++pending_;
    pool_.start([this, serial = serial_, stop = stop_.get_token(), task = std::move(task)]() mutable {
        if (stop.stop_requested()) return;
        Delivery delivery = task(stop);
        // What the task holds must not be destroyed on the GUI thread while it may still be in use here.
        task = nullptr;
        QMetaObject::invokeMethod(
            this, [this, serial, delivery = std::move(delivery)] { deliver(serial, delivery); },
            Qt::QueuedConnection);
    });
    announce();
}

void BackgroundJob::deliver(int serial, const Delivery& delivery) {
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
