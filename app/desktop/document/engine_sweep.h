// Line counts that differ between browser engines, over all widths, computed on a background thread.
#pragma once

#include <QObject>
#include <QTimer>
#include <vector>

#include "document/background_job.h"
#include "document/viewing.h"
#include "sweep/differences.h"

namespace tenter::desktop {

/// Follows the row in view. When the row has not changed for a moment, every whole width is laid out under
/// every break profile and the line counts are compared.
class EngineSweep : public QObject {
    Q_OBJECT

public:
    explicit EngineSweep(Viewing& viewing, QObject* parent = nullptr);

    /// Parts and widths at which line counts differ. The counts are in the order of `text::profiles()`.
    [[nodiscard]] const std::vector<sweep::LineDifference>& differences() const { return differences_; }
    /// The widths of `differences()`, joined where they overlap or touch, in ascending order.
    [[nodiscard]] const std::vector<sweep::WidthRange>& ranges() const { return ranges_; }
    /// False while `differences()` belong to an earlier state of the row.
    [[nodiscard]] bool isFresh() const { return fresh_; }

Q_SIGNALS:
    void changed();

private:
    void startJob();

    Viewing& viewing_;
    QTimer idleTimer_;
    BackgroundJob job_;
    std::vector<sweep::LineDifference> differences_;
    std::vector<sweep::WidthRange> ranges_;
    bool fresh_ = false;
};

}  // namespace tenter::desktop
