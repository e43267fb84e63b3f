// The lane “Audience”: visits at each viewport width, as bars.
#pragma once

#include <QWidget>

#include "axis/width_scale.h"
#include "controls/data_table.h"
#include "session/check_runner.h"

namespace tenter::desktop::axis {

class AudienceLane : public QWidget, public controls::HasData {
    Q_OBJECT

public:
    AudienceLane(const CheckRunner& checks, const WidthScale& scale, QWidget* parent);
    /// The visits near position `x` (px in the lane): `360–393 px: 4120 visits, 31 % of all visits`. Empty if
    /// there are none.
    [[nodiscard]] QString toolTipAt(double x) const;
    [[nodiscard]] controls::DataTable data() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    bool event(QEvent* event) override;

private:
    const CheckRunner& checks_;
    const WidthScale& scale_;
};

}  // namespace tenter::desktop::axis
