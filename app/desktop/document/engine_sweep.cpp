#include "document/engine_sweep.h"

#include <utility>

namespace tenter::desktop {

namespace {

// While a value is dragged the row changes at every frame, so computing starts only after this pause.
constexpr int sweepDelay = 120;  // ms

}  // namespace

EngineSweep::EngineSweep(Viewing& viewing, QObject* parent) : QObject(parent), viewing_(viewing) {
    pool_.setMaxThreadCount(1);
    idleTimer_.setSingleShot(true);
    idleTimer_.setInterval(sweepDelay);
    connect(&idleTimer_, &QTimer::timeout, this, &EngineSweep::startJob);
    connect(&viewing_, &Viewing::rowChanged, this, [this] {
        cancel();
        idleTimer_.start();
        if (!std::exchange(fresh_, false)) return;
        emit changed();
    });
    // Results of another project or variant are never shown for this one.
    connect(&viewing_, &Viewing::variantChanged, this, [this] {
        cancel();
        differences_.clear();
        ranges_.clear();
        fresh_ = false;
        idleTimer_.start();
        emit changed();
    });
}

EngineSweep::~EngineSweep() {
    cancel();
    pool_.waitForDone();
}

void EngineSweep::cancel() {
    ++job_;
    if (keepRunning_) keepRunning_->store(false);
    keepRunning_.reset();
}

void EngineSweep::startJob() {
    cancel();
    keepRunning_ = std::make_shared<std::atomic<bool>>(true);
    std::vector<std::shared_ptr<const layout::PreparedRow>> rows;
    for (const text::BreakProfile* profile : text::profiles())
        rows.push_back(viewing_.rowUnder(*profile));
    const double least = viewing_.shown().leastWidth;
    const double most = viewing_.shown().mostWidth;
    pool_.start([this, job = job_, keepRunning = keepRunning_, rows = std::move(rows), least, most] {
        std::vector<const layout::PreparedRow*> compared;
        compared.reserve(rows.size());
        for (const auto& row : rows)
            compared.push_back(row.get());
        Differences found =
            sweep::lineDifferences(compared, least, most, [&] { return keepRunning->load(); });
        QMetaObject::invokeMethod(
            this, [this, job, found = std::move(found)] { onResult(job, found); }, Qt::QueuedConnection);
    });
}

void EngineSweep::onResult(int job, Differences differences) {
    // The row changed while this job was running: its result is out of date.
    if (job != job_) return;
    differences_ = std::move(differences);
    ranges_ = sweep::widthRangesOf(differences_);
    fresh_ = true;
    emit changed();
}

}  // namespace tenter::desktop
