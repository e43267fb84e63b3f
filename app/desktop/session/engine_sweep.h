// Line counts that differ between browser engines, over all widths, computed on a background thread.
#pragma once

#include <QObject>
#include <QTimer>
#include <vector>

#include "document/background_job.h"
#include "session/layout_cache.h"
#include "sweep/differences.h"

namespace tenter::desktop {

/// When the current row has not changed for a moment, every whole width is laid out under every break profile
/// and the line counts are compared.
class EngineSweep : public QObject {
    Q_OBJECT

public:
    explicit EngineSweep(const LayoutCache& layouts, QObject* parent = nullptr);

    /// Parts and widths of the current variant at which line counts differ. The counts are in the order of
    /// `text::profiles()`.
    [[nodiscard]] const std::vector<sweep::LineDifference>& differences() const;
    /// The widths of `differences()`, joined where they overlap or touch, in ascending order.
    [[nodiscard]] const std::vector<sweep::WidthRange>& ranges() const;
    /// False while `differences()` belong to an earlier state of the row.
    [[nodiscard]] bool isFresh() const { return compared_ == layouts_.key(); }

Q_SIGNALS:
    void changed();  ///< `differences()`, `ranges()` or `isFresh()` has changed

private:
    void onRow(LayoutCache::Changes changes);
    void startJob();
    void follow() const;

    const LayoutCache& layouts_;
    QTimer idleTimer_;
    BackgroundJob job_;
    mutable RowKey compared_;
    mutable std::vector<sweep::LineDifference> differences_;
    mutable std::vector<sweep::WidthRange> ranges_;
    bool announcedFresh_ = false;
};

}  // namespace tenter::desktop
