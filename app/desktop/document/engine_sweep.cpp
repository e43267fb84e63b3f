#include "document/engine_sweep.h"

#include <utility>

namespace tenter::desktop {

namespace {

// While a value is dragged the row changes at every frame, so computing starts only after this pause.
constexpr int sweepDelay = 120;  // ms

}  // namespace

EngineSweep::EngineSweep(Viewing& viewing, QObject* parent) : QObject(parent), viewing_(viewing) {
    idleTimer_.setSingleShot(true);
    idleTimer_.setInterval(sweepDelay);
    connect(&idleTimer_, &QTimer::timeout, this, &EngineSweep::startJob);
    connect(&viewing_, &Viewing::rowChanged, this, [this] {
        job_.cancel();
        idleTimer_.start();
        if (!std::exchange(fresh_, false)) return;
        Q_EMIT changed();
    });
    // Results of another project or variant are never shown for this one.
    connect(&viewing_, &Viewing::variantChanged, this, [this] {
        job_.cancel();
        differences_.clear();
        ranges_.clear();
        fresh_ = false;
        idleTimer_.start();
        Q_EMIT changed();
    });
}

void EngineSweep::startJob() {
    std::vector<std::shared_ptr<const layout::PreparedRow>> rows;
    for (const text::BreakProfile* profile : text::profiles())
        rows.push_back(viewing_.rowUnder(*profile));
    job_.start(
        [rows = std::move(rows), least = viewing_.shown().leastWidth,
         most = viewing_.shown().mostWidth](const std::stop_token& stop) {
            std::vector<const layout::PreparedRow*> compared;
            compared.reserve(rows.size());
            for (const auto& row : rows)
                compared.push_back(row.get());
            return sweep::lineDifferences(compared, least, most, [&] { return !stop.stop_requested(); });
        },
        [this](std::vector<sweep::LineDifference> differences) {
            differences_ = std::move(differences);
            ranges_ = sweep::widthRangesOf(differences_);
            fresh_ = true;
            Q_EMIT changed();
        });
}

}  // namespace tenter::desktop
