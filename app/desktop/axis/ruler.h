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

/// Ticks for what the scale shows: round widths, numbers no closer than `room` px.
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
