// The lane “Browser comparison”: at each width a thin line if the browser agrees, or a bar as high as the
// difference.
#pragma once

#include <QWidget>

#include "axis/width_scale.h"
#include "compare/comparison.h"
#include "controls/data_table.h"

namespace tenter::desktop::axis {

class ComparisonLane : public QWidget, public controls::HasData {
    Q_OBJECT

public:
    ComparisonLane(const compare::Comparison& comparison, const WidthScale& scale, QWidget* parent);
    /// The worst result near position `x` (px in the lane), as text.
    [[nodiscard]] QString toolTipAt(double x) const;
    [[nodiscard]] controls::DataTable data() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    bool event(QEvent* event) override;

private:
    const compare::Comparison& comparison_;
    const WidthScale& scale_;
};

/// Height of the bar of a result as a share of the lane: 0 if the browser agrees, 1 for another line count or
/// a difference of 16 px.
double barOf(const judge::Verdict& verdict);

}  // namespace tenter::desktop::axis
