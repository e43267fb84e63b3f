#include "session/engine_sweep.h"

#include <utility>

namespace tenter::desktop {

namespace {

// While a value is dragged the row changes at every frame, so computing starts only after this pause.
constexpr int sweepDelay = 120;  // ms

}  // namespace

EngineSweep::EngineSweep(const LayoutCache& layouts, QObject* parent) : QObject(parent), layouts_(layouts) {
    idleTimer_.setSingleShot(true);
    idleTimer_.setInterval(sweepDelay);
    connect(&idleTimer_, &QTimer::timeout, this, &EngineSweep::startJob);
    connect(&layouts_, &LayoutCache::changed, this, &EngineSweep::onRow);
}

void EngineSweep::onRow(LayoutCache::Changes changes) {
    if (!(changes & LayoutCache::Change::Row)) return;
    job_.cancel();
    idleTimer_.start();
    if (std::exchange(announcedFresh_, false) || changes & LayoutCache::Change::Variant) Q_EMIT changed();
}

// Differences of another project or variant are never shown for this one.
void EngineSweep::follow() const {
    if (compared_.hasSameVariant(layouts_.key())) return;
    compared_ = {};
    differences_.clear();
    ranges_.clear();
}

const std::vector<sweep::LineDifference>& EngineSweep::differences() const {
    follow();
    return differences_;
}

const std::vector<sweep::WidthRange>& EngineSweep::ranges() const {
    follow();
    return ranges_;
}

void EngineSweep::startJob() {
    std::vector<std::shared_ptr<const layout::PreparedRow>> rows;
    for (const text::BreakProfile* profile : text::profiles())
        rows.push_back(layouts_.sharedRow(*profile));
    job_.start(
        [rows = std::move(rows), least = layouts_.project().leastWidth,
         most = layouts_.project().mostWidth](const std::stop_token& stop) {
            std::vector<const layout::PreparedRow*> compared;
            compared.reserve(rows.size());
            for (const auto& row : rows)
                compared.push_back(row.get());
            return sweep::lineDifferences(compared, least, most, [&] { return !stop.stop_requested(); });
        },
        [this, key = layouts_.key()](std::vector<sweep::LineDifference> differences) {
            compared_ = key;
            differences_ = std::move(differences);
            ranges_ = sweep::widthRangesOf(differences_);
            announcedFresh_ = true;
            Q_EMIT changed();
        });
}

}  // namespace tenter::desktop
