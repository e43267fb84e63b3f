// Widths at which engines set some text on other numbers of lines, hatched.
#pragma once

#include <QWidget>
#include <optional>

#include "axis/width_scale.h"
#include "document/engine_sweep.h"

namespace tenter::desktop::axis {

class EnginesLane : public QWidget {
    Q_OBJECT

public:
    EnginesLane(Viewing& viewing, const EngineSweep& sweep, const WidthScale& scale, QWidget* parent);
    /// The first differing width of the next (+1) run, or of the previous one (−1).
    [[nodiscard]] std::optional<double> next(int direction) const;
    /// What differs about a position: `784 to 792 px` and a line for each part.
    [[nodiscard]] QString says(double x) const;

protected:
    void paintEvent(QPaintEvent* event) override;
    bool event(QEvent* event) override;

private:
    void describe();
    Viewing& viewing_;
    const EngineSweep& sweep_;
    const WidthScale& scale_;
};

}  // namespace tenter::desktop::axis
