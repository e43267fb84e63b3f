// What a browser said of each width: a rule where it agrees, a bar as tall as it is off where it does not.
#pragma once

#include <QWidget>

#include "axis/width_scale.h"
#include "compare/comparison.h"

namespace tenter::desktop::axis {

class VerdictLane : public QWidget {
    Q_OBJECT

public:
    VerdictLane(const compare::Comparison& comparison, const WidthScale& scale, QWidget* parent);
    /// About a position; the worst verdict of the widths that lie there.
    [[nodiscard]] QString says(double x) const;

protected:
    void paintEvent(QPaintEvent* event) override;
    bool event(QEvent* event) override;

private:
    const compare::Comparison& comparison_;
    const WidthScale& scale_;
};

/// How tall a verdict's bar is, 0 (agrees) to 1: a line more or less, or 16 px.
double barOf(const judge::Verdict& verdict);

}  // namespace tenter::desktop::axis
