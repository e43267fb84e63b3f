// The ruler: viewport widths in CSS px.
#pragma once

#include <QWidget>
#include <vector>

#include "axis/width_scale.h"

namespace tenter::desktop::axis {

struct Tick {
    double width = 0;
    bool numbered = false;
};

/// Ticks for the visible part of the scale, at round widths. Numbered ticks are at least `room` px apart.
std::vector<Tick> ticks(const WidthScale& scale, double room);

class Ruler : public QWidget {
    Q_OBJECT

public:
    Ruler(const WidthScale& scale, QWidget* parent);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    const WidthScale& scale_;
};

}  // namespace tenter::desktop::axis
