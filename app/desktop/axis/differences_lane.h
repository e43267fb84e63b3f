// The lane “Chromium/Firefox”: hatches the widths at which browsers give some text a different number of
// lines.
#pragma once

#include <QWidget>
#include <optional>

#include "axis/width_scale.h"
#include "controls/data_table.h"
#include "session/engine_sweep.h"

namespace tenter::desktop::axis {

class DifferencesLane : public QWidget, public controls::HasData {
    Q_OBJECT

public:
    DifferencesLane(const LayoutCache& layouts, const EngineSweep& sweep, const WidthScale& scale,
                    QWidget* parent);
    /// The first width of the next (+1) or previous (−1) range of differences, CSS px; empty if there is
    /// none.
    [[nodiscard]] std::optional<double> next(int direction) const;
    /// The differences near position `x` (px in the lane), a line for each part: `784–792 px: heading, card
    /// 2: 2 lines in Chromium, 3 lines in Firefox`. Empty if there are none.
    [[nodiscard]] QString toolTipAt(double x) const;
    [[nodiscard]] controls::DataTable data() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    bool event(QEvent* event) override;

private:
    void describe();
    const LayoutCache& layouts_;
    const EngineSweep& sweep_;
    const WidthScale& scale_;
};

}  // namespace tenter::desktop::axis
