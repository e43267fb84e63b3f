// The lane “Wrap points”: a tick at each width at which a text changes its line count. Ticks of the selected
// part are longer.
#pragma once

#include <QWidget>
#include <optional>

#include "axis/width_scale.h"
#include "controls/data_table.h"
#include "session/check_runner.h"

namespace tenter::desktop::axis {

class WrapsLane : public QWidget, public controls::HasData {
    Q_OBJECT

public:
    WrapsLane(const LayoutCache& layouts, const SelectionModel& selection, const CheckRunner& checks,
              const WidthScale& scale, QWidget* parent);
    /// The first whole width beyond a wrap point, and the change there.
    struct Stop {
        double width = 0;  ///< CSS px
        QString text;      ///< `784 px: heading, card 2: from 2 to 3 lines`
    };
    /// The stop beyond the next wrap point at larger (+1) or smaller (−1) widths; empty if there is none.
    [[nodiscard]] std::optional<Stop> next(int direction) const;
    /// The wrap points near position `x` (px in the lane), a line for each; empty if there are none.
    [[nodiscard]] QString toolTipAt(double x) const;
    [[nodiscard]] controls::DataTable data() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    bool event(QEvent* event) override;

private:
    [[nodiscard]] QString changeTitle(const sweep::WrapPoint& wrap, int direction) const;
    const LayoutCache& layouts_;
    const SelectionModel& selection_;
    const CheckRunner& checks_;
    const WidthScale& scale_;
};

}  // namespace tenter::desktop::axis
