#include "document/engine_sweep.h"

#include <utility>

namespace tenter::desktop {

namespace {

// A drag changes the row at every frame: not before it rests.
constexpr int settleMilliseconds = 120;

}  // namespace

EngineSweep::EngineSweep(Viewing& viewing, QObject* parent) : QObject(parent), viewing_(viewing) {
    pool_.setMaxThreadCount(1);
    settled_.setSingleShot(true);
    settled_.setInterval(settleMilliseconds);
    connect(&settled_, &QTimer::timeout, this, &EngineSweep::start);
    connect(&viewing_, &Viewing::rowChanged, this, [this] {
        leaveOff();
        settled_.start();
        if (!std::exchange(fresh_, false)) return;
        emit changed();
    });
    // Of another project, or variant, nothing is told.
    connect(&viewing_, &Viewing::variantChanged, this, [this] {
        leaveOff();
        stretches_.clear();
        spans_.clear();
        fresh_ = false;
        settled_.start();
        emit changed();
    });
}

EngineSweep::~EngineSweep() {
    leaveOff();
    pool_.waitForDone();
}

void EngineSweep::leaveOff() {
    ++job_;
    if (goOn_) goOn_->store(false);
    goOn_.reset();
}

void EngineSweep::start() {
    leaveOff();
    goOn_ = std::make_shared<std::atomic<bool>>(true);
    std::vector<std::shared_ptr<const layout::PreparedRow>> rows;
    for (const text::BreakProfile* profile : text::profiles())
        rows.push_back(viewing_.rowUnder(*profile));
    const double least = viewing_.shown().leastWidth;
    const double most = viewing_.shown().mostWidth;
    pool_.start([this, job = job_, goOn = goOn_, rows = std::move(rows), least, most] {
        std::vector<const layout::PreparedRow*> compared;
        compared.reserve(rows.size());
        for (const auto& row : rows)
            compared.push_back(row.get());
        Stretches found = sweep::lineDifferences(compared, least, most, [&] { return goOn->load(); });
        QMetaObject::invokeMethod(
            this, [this, job, found = std::move(found)] { take(job, found); }, Qt::QueuedConnection);
    });
}

void EngineSweep::take(int job, Stretches stretches) {
    // A late answer is of a row that is no more.
    if (job != job_) return;
    stretches_ = std::move(stretches);
    spans_ = sweep::spansOf(stretches_);
    fresh_ = true;
    emit changed();
}

}  // namespace tenter::desktop
